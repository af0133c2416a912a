import { describe, expect, it } from 'vitest'
import type { Shelf } from '../shelves.ts'
import { talkerFor } from './told.ts'

const talk = (shelf: Shelf = 'fair') => talkerFor({ after: null, shelf })
const said = async (text: string, shelf?: Shelf) => (await talk(shelf)).say(text)

it.each([
  ['can I put the sloe gin in the freezer?', 'freezer_keep'],
  ['can you freeze sloe gin', 'freezer_keep'],
  ['will damson gin freeze?', 'freezes'],
  ['will it freeze at -18', 'freezes'],
  ['does my liqueur freeze at -20 C', 'freezes'],
  ['si congela a -18?', 'freezes'],
  ['will a plum liqueur freeze at minus 20?', 'freezes'],
  ['il liquore gela a meno 18?', 'freezes'],
  ['is it ok to put my plum liqueur in the freezer', 'freezer_keep'],
  ['can I put the raspberry in the freezer?', 'freezer_keep'],
  ['posso mettere il limoncello in freezer?', 'freezer_keep'],
  ['si può congelare lo sloe gin?', 'freezer_keep'],
  ['can I freeze sloes', 'frozen_fruit'],
  ['what can I put in with the plums?', 'mix_plants'],
  ['what else could we add to the orange', 'mix_plants'],
  ['cosa posso mettere con le prugne?', 'mix_plants'],
  ['can I steep the lemon peels a second time?', 'second_steep'],
  ['could I use the peels again?', 'second_steep'],
  ['can you reuse the sloes for another batch?', 'second_steep'],
  ['posso rifare una seconda infusione con le bucce del limone?', 'second_steep'],
  ['can I put sugar on the leftover sloes?', 'dry_sugar'],
  ['can I sprinkle the spent cherries with sugar?', 'dry_sugar'],
])('%s', async (text, entry) => {
  expect(await said(text)).toMatchObject({ command: 'handbook', data: { entry }, recorded: 0 })
})

it.each([
  ['25% and 200 g/L, will it freeze at -18?', '/blend parts:1 l 25% 200 g/L freezer:-18 C'],
  ['28% with 150 g/L, does it freeze at -20?', '/blend parts:1 l 28% 150 g/L freezer:-20 C'],
  ['25% e 200 g/L, si congela a -18?', '/blend parts:1 l 25% 200 g/L freezer:-18 C'],
  ['will a 30% liqueur with 300 g/l freeze at minus 24?', '/blend parts:1 l 30% 300 g/L freezer:-24 C'],
  ['does vodka 40% freeze at -25 C', '/mix spirit:1 l 40% freezer:-25 C'],
  ['will 22% freeze at -18?', '/mix spirit:1 l 22% freezer:-18 C'],
])('works out what is told of its strength: %s', async (text, read) => {
  expect(await said(text)).toMatchObject({ read, code: null })
})

it.each(['/plan of:10 lemons spirit:1 l 95%', '/mix spirit:1 l 22%', 'will 22% freeze?'])(
  'takes no temperature for an amount after %s',
  async (before) => {
    const one = await talk()
    await one.say(before)
    expect(await one.say('does it freeze at -18?')).toMatchObject({ command: 'handbook', data: { entry: 'freezes' } })
  },
)

it.each(['/plan of:10 lemons spirit:1 l 95%', 'what can I do with sloes'])(
  'answers what went wrong, and not why of what was said before: %s',
  async (before) => {
    const one = await talk()
    await one.say(before)
    expect((await one.say('why did my cream liqueur curdle?')).read).toMatch(/^\/trouble curdled/)
    await one.say(before)
    expect((await one.say('why has it gone fizzy?')).read).toMatch(/^\/trouble fizz/)
  },
)

describe('bottles that were given', () => {
  it.each([
    ['given one bottle of raspberry to my neighbour and one to Mum', '2'],
    ['give away 1 bottle of raspberry', '1'],
    ['one bottle of raspberry went to Anna and two to the hall', '3'],
    ['ho regalato una bottiglia di lampone a mamma e una alla vicina', '2'],
    ['gave Mum a bottle of raspberry', '1'],
    ['gave my sister a bottle of raspberry and my brother two', '3'],
    ['gave my sister a bottle and my brother two', '3'],
    ['gave the neighbours 2 bottles and my uncle one', '3'],
    ['gave one to my sister and one to my brother', '2'],
    ['ho regalato una bottiglia a mia sorella e due a mio fratello', '3'],
  ])('%s', async (text, given) => {
    expect(await said(text)).toMatchObject({
      call: { path: 'bottles', options: { jar: 'raspberry', given } },
      recorded: 1,
    })
  })

  it.each([
    'who should I give a bottle to?',
    'I was given a bottle of gin and 500 g sloes',
    'I’ve been given 2 kg of plums',
  ])('records nothing: %s', async (text) => {
    const told = await said(text)
    expect(told.recorded).toBe(0)
    expect(told.command).not.toBe('bottles')
  })
})

it.each(['where’s the sloe?', 'where did I put the sloe', 'where is my sloe gin?', 'dov’è il prugnolo'])(
  'shows where it stands: %s',
  async (text) => {
    expect((await said(text)).read).toBe('/jar show sloe')
  },
)

describe('of two names that are nearly one', () => {
  it.each([
    ['strained the sloe on 20 November, 950 ml', '/jar strain sloe measured:950 ml when:20 november'],
    ['strained the sloes on 20 November, 950 ml', '/jar strain sloes measured:950 ml when:20 november'],
    ['shook the sloe', '/jar shake sloe'],
  ])('takes the one that was said: %s', async (text, read) => {
    const one = await talkerFor({ after: null })
    await one.say('/jar start sloe of:500 g sloes spirit:700 ml gin 40% when:60 days ago')
    await one.say('/jar start sloes of:500 g sloes spirit:700 ml gin 40% when:50 days ago')
    expect(await one.say(text)).toMatchObject({ read, code: null })
  })
})

it('names what it does not know as it was typed', async () => {
  const one = await talk()
  const { outcome } = await one.hear('put a bottle of lemon in the freezer')
  expect(outcome).toMatchObject({ ok: false, error: { problem: 'talk_number', values: { typed: 'a bottle' } } })
})
