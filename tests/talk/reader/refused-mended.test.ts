import { describe, expect, it } from 'vitest'
import { talkerFor } from './told.ts'

/** A step that cannot be, what is said then, and the step with the number put right. */
const MENDED = [
  ['strained the lemon, 3300 ml at 87', 'oops, it was 33 fl oz', { measured: '33 fl oz', strength: '87%' }],
  ['strained the lemon, 9300 ml', 'sorry 930', { measured: '930 ml' }],
  ['strained the lemon, 9300 ml at 86', '930 not 9300', { measured: '930 ml', strength: '86%' }],
  ['strained the lemon, 930 ml at 105%', 'no, 85 %', { measured: '930 ml', strength: '85%' }],
  ['strained the lemon, 930 l at 85', 'oops, ml', { measured: '930 ml', strength: '85%' }],
  ['strained the lemon, 9.3 l at 85%', 'meant 0.93 l', { measured: '0.93 l', strength: '85%' }],
  ['strained the lemon, 94 litres', 'typo, 94 cl', { measured: '94 cl' }],
  ['ho filtrato il lemon, 9300 ml a 86', 'scusa, 930', { measured: '930 ml', strength: '86%' }],
] as const

describe('a step that was refused goes on with the number put right', () => {
  it.each(MENDED)('%s: %s', async (said, then, options) => {
    const one = await talkerFor({ after: null, shelf: 'lemon' })
    // A plan in between is not what is put right.
    await one.say('10 oranges and a litre of vodka')
    expect((await one.say(said)).recorded).toBe(0)
    const { call, recorded } = await one.say(then)
    expect(call).toMatchObject({ path: 'jar strain', options })
    expect(recorded).toBe(1)
  })

  it('keeps what was asked about it open', async () => {
    const one = await talkerFor({ after: null, shelf: 'lemon_ginger' })
    expect((await one.say('strained it, 390 ml at 87')).code).toBe('question')
    expect((await one.say('sorry, 930 not 390')).code).toBe('question')
    expect((await one.say('the lemon')).call?.options).toMatchObject({
      jar: 'lemon',
      measured: '930 ml',
      strength: '87%',
    })
  })

  it('is let go by a plan', async () => {
    const one = await talkerFor({ after: null, shelf: 'lemon' })
    await one.say('strained the lemon, 9300 ml at 87')
    await one.say('10 limes and a litre of gin')
    expect((await one.say('28%')).call).toMatchObject({ path: 'plan', options: { 'to-strength': '28%' } })
  })
})
