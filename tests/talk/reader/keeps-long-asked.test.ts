import { describe, expect, it } from 'vitest'
import { talkerFor } from './told.ts'

const ASKED = [
  'how long does it keep',
  'and how long will it last?',
  'what’s its shelf life',
  'quanto dura?',
  'per quanto si conserva',
]

describe('how long it keeps', () => {
  it.each(ASKED)('is told of the jar that was spoken of: %s', async (text) => {
    const one = await talkerFor({ after: null, shelf: 'lemon_ginger' })
    await one.say('/jar show ginger')
    expect(await one.say(text)).toMatchObject({ read: '/keeping ginger', code: null, recorded: 0 })
    await one.say('/jar start plum of:400 g plums spirit:0.5 l vodka 40%')
    expect((await one.say(text)).read).toBe('/keeping plum')
  })

  it('is told of the only jar there is', async () => {
    expect((await (await talkerFor({ after: null, shelf: 'lemon' })).say(ASKED[0]!)).read).toBe('/keeping lemon')
  })

  it('is told in general behind a plan, and asked of which where it may be any of several', async () => {
    const one = await talkerFor({ after: null, shelf: 'lemon_ginger' })
    one.wait(40)
    expect((await one.say(ASKED[0]!)).choices).toEqual(['/keeping lemon', '/keeping ginger'])
    await one.say('10 oranges and a litre of 95%')
    expect((await one.say(ASKED[0]!)).data).toMatchObject({ entry: 'keep_time' })
  })
})
