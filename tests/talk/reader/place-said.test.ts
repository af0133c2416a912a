import { describe, expect, it } from 'vitest'
import { talkerFor } from './told.ts'

const LEMON = '/jar start lemon of:10 lemons spirit:1 l 95% when:40 days ago'
const PLUM = '/jar start plum of:1 kg plums spirit:1 l 60% when:40 days ago'
const CHERRY = '/jar start cherry of:1 kg cherries spirit:1 l 60% when:40 days ago'

const asked = async (...lines: readonly string[]) => {
  const one = await talkerFor({ after: null })
  for (const line of lines) await one.say(line)
  return one
}

describe('one of several that were asked about is named by its place', () => {
  it.each([
    ['number two', 'plum'],
    ['number 2', 'plum'],
    ['no 2', 'plum'],
    ['2', 'plum'],
    ['option two', 'plum'],
    ['the second one', 'plum'],
    ['second one, thanks', 'plum'],
    ['I mean the second', 'plum'],
    ['the second of the three please', 'plum'],
    ['ok, number two please', 'plum'],
    ['the first', 'lemon'],
    ['the former', 'lemon'],
    ['the last one', 'cherry'],
    ['number three', 'cherry'],
    ['la seconda', 'plum'],
    ['il primo per favore', 'lemon'],
  ])('%s', async (text, jar) => {
    const one = await asked(LEMON, PLUM, CHERRY, 'strained it')
    expect(await one.say(text)).toMatchObject({ read: `/jar strain ${jar}`, recorded: 1 })
  })

  it.each(['number five', 'the fourth one'])('%s of three is asked about once more', async (text) => {
    const one = await asked(LEMON, PLUM, CHERRY, 'strained it')
    expect(await one.say(text)).toMatchObject({ code: 'question', recorded: 0, choices: { length: 3 } })
    expect(await one.say('the second one')).toMatchObject({ read: '/jar strain plum' })
  })

  it('behind a question that names no lines it is asked once more, and no amount', async () => {
    const one = await asked('coffee 50 g in 1 l vodka')
    expect(await one.say('number two')).toMatchObject({ code: 'ambiguous' })
    expect((await one.say('ground')).read).toContain('ground')
  })
})

describe('one of the ways to finish an infusion is named by its place', () => {
  const WAYS = '/syrup infusion:920 ml strength:82%'
  it.each([
    ['the first one', '120 g/L'],
    ['number two', '190 g/L'],
    ['the second one please', '190 g/L'],
    ['the last', '270 g/L'],
  ])('%s', async (text, sweetness) => {
    const { read, call } = await (await asked(WAYS)).say(text)
    expect([read, call?.options['to-sweetness']]).toEqual([expect.stringContaining(WAYS), sweetness])
  })

  it('and is no strength behind the one that was taken', async () => {
    const one = await asked(WAYS, 'the second one')
    expect((await one.say('number two')).call?.options['to-strength']).not.toBe('2%')
  })
})
