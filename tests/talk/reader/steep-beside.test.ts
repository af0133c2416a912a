import { describe, expect, it } from 'vitest'
import { talker } from './told.ts'

describe('how long it is to steep, said beside a plan', () => {
  it.each([
    ['a pint of 60% with fresh peppermint, in for one day only', '1 day'],
    ['8 oranges and a litre of 60%, strain after two days', '2 days'],
    ['20 g basil in half a litre of 50% just one night', '1 day'],
    ['400 g strawberries and a litre of vodka for 48 hours', '2 days'],
    ['30 g coffee beans and 700 ml of rum, only overnight, for two bottles', '1 day'],
    ['9 limes and a litre of 95% and take them out after a week', '1 week'],
    ['fresh basil in 700 ml of 60% vodka for a day', '1 day'],
    ['basil, 700 ml of 60%, one day', '1 day'],
    ['10 limoni in un litro di alcol a 95 per due settimane', '2 weeks'],
    ['10 limoni e un litro di alcol 95, solo un giorno', '1 day'],
    ['20 g di basilico e mezzo litro di alcol a 50, filtrare dopo due giorni', '2 days'],
  ])('%s: %s', async (text, days) => {
    expect((await talker().say(text)).call).toMatchObject({ path: 'plan', options: { days } })
  })

  it('waits with the question of which mint is meant', async () => {
    const one = talker()
    expect((await one.say('half a litre of 60% with fresh mint, in for one day only')).code).toBe('ambiguous')
    expect((await one.say('spearmint')).call).toMatchObject({ path: 'plan', options: { days: '1 day' } })
  })

  it.each([
    '10 lemons and a litre of 95%, for the fair in two weeks',
    '10 lemons and a litre of 95% for the day of the fair',
    '10 lemons, a litre of 95%, in two weeks',
  ])('%s: says nothing of how long it steeps', async (text) => {
    expect((await talker().say(text)).call?.options.days).toBeUndefined()
  })
})
