import { describe, expect, it } from 'vitest'
import { talker, talkerFor } from './told.ts'

// The sentences are ours; no source.
describe('what people from elsewhere type', () => {
  it.each([
    ['fair', 'took two bottles of the raspberry over to my aunt', '/bottles raspberry given:2'],
    ['fair', 'I’ve dropped a bottle of the raspberry round to the vicar', '/bottles raspberry given:1'],
    ['fair', 'joined the lemon and the orange in just one jar', '/jar combine lemon with:orange'],
    ['fair', 'emptied the lemon and the orange into one demijohn', '/jar combine lemon with:orange'],
    ['lemon_ginger', 'gave the lemon a really good swirl', '/jar shake lemon'],
    ['lemon_ginger', 'ho buttato altre due bucce di limone nel vaso del limone', /^\/jar add lemon of:/],
    ['fair', 'remind me when I bottled the raspberry', '/jar show raspberry'],
    ['fair', 'can you remind me what I put in the sloe', '/jar show sloe'],
    ['fair', 'anything needs doing the day', '/jar list'],
    ['lemon', 'move my reminder to 8 in the morning', '/reminders time:8 am'],
    ['lemon', 'could the daily reminder come by 6 in the evening', '/reminders time:6 pm'],
    ['lemon', 'push my daily reminders to 7:15 am', '/reminders time:7:15 am'],
    ['lemon', 'remind me of the lemon in 4 days', '/jar later lemon until:in 4 days'],
  ] as const)('%s: %s', async (shelf, text, read) => {
    expect((await (await talkerFor({ after: null, shelf })).say(text)).read).toMatch(
      read instanceof RegExp ? read : new RegExp(`^${read.replace(/[/\\^$*+?.()|[\]{}]/g, '\\$&')}$`),
    )
  })

  it.each([['what can I get ripe in October', '/botanical month:october']])('of the season: %s', async (text, read) => {
    expect((await talker().say(text)).read).toBe(read)
  })

  it.each([
    ['a fine grey silt at the foot of every bottle', 'sediment'],
    ['been dripping through the paper since breakfast, barely a cupful so far', 'stuck_filter'],
  ])('%s: %s', async (text, symptom) => {
    expect(await talker().say(text)).toMatchObject({ command: 'trouble', data: { symptom } })
  })

  it.each([
    ['do the cherries go in with the bone in or out', 'stones_whole'],
    ['how many weeks do I wait once the bottle is shut', 'rest'],
    ['can I bake a pie with the cherries left over from the jar', 'spent_fruit'],
    ['my shed is freezing, does that throw off the hydrometer', 'hydrometer_temperature'],
    ['a friend has a little still in the cellar, could he burn spirit from my plums', 'home_distilling'],
  ])('%s: %s', async (text, entry) => {
    expect(await talker().say(text)).toMatchObject({ command: 'handbook', data: { entry } })
  })

  it('makes a plan stronger in other words', async () => {
    const one = await talkerFor({ after: '/plan of:10 lemons spirit:1 l 95%' })
    expect((await one.say('bit more strong please')).read).toMatch(/to-strength:3[2-5]%/)
  })
})
