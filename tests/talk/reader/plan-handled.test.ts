import { describe, expect, it } from 'vitest'
import { talker } from './told.ts'

const behind = async (plan: string, ...lines: readonly string[]) => {
  const one = talker()
  await one.say(plan)
  for (const line of lines.slice(0, -1)) await one.say(line)
  return one.say(lines.at(-1)!)
}

describe('behind a plan', () => {
  it.each([
    ['steep just a day', '1 day'],
    ['only leave them one night', '1 day'],
    ['solo due giorni', '2 days'],
    ['lasciale una settimana', '1 week'],
    ['no, three weeks instead', '3 weeks'],
    ['let it sit for 10 days max', '10 days'],
  ])('%s: it steeps so long', async (said, days) => {
    expect((await behind('mint leaves and a litre of 60%', 'spearmint', said)).call?.options.days).toBe(days)
  })

  it.each([
    ['do we quarter the quinces', 'quinces'],
    ['should they be peeled?', 'quinces'],
    ['do I have to wash them', 'quinces'],
    ['devo sbucciarle?', 'quinces'],
    ['are they put in whole?', 'quinces'],
    ['do I slice the ginger', 'ginger'],
  ])('%s: the plant tells', async (said, of) => {
    const told = await behind('1 kg quinces, 20 g ginger and a litre of 60%', said)
    expect(told.call ?? told.data.entry).toMatchObject({ path: 'botanical', options: { of } })
  })

  it.each([
    'when do I fish the quinces out',
    'how long do they stay in',
    'quando devo toglierle?',
    'per quanto tempo devono stare dentro',
    'when should I strain it',
  ])('%s: the plan tells', async (said) => {
    expect((await behind('1 kg quinces and a litre of 60%', said)).read).toBe(
      '/plan of:1 kg quinces spirit:1 litre 60%',
    )
  })

  it('tells of the plant behind a start, too', async () => {
    const told = await behind('1 kg quinces and a litre of 60%', 'start it', 'do I cut the quinces?')
    expect(told.call).toMatchObject({ path: 'botanical', options: { of: 'quinces' } })
  })
})

it.each(['steep just a day', 'do I cut the walnuts?', 'quando devo filtrarlo?'])(
  'plans nothing where nothing was planned: %s',
  async (said) => {
    expect((await talker().say(said)).command).not.toBe('plan')
  },
)
