import { describe, expect, it } from 'vitest'
import { talker, talkerFor } from './told.ts'

// How large a jar is says how much goes in, and is no amount of spirit: half of it, common practice, no source.
it.each([
  ['a one litre jar of cherries covered with vodka', 'of:cherries spirit:500 ml vodka 40%'],
  ['raspberries in a 2 l jar, drowned in gin', 'of:raspberries spirit:1 l gin 40%'],
  ['a 2 litre kilner jar full of damsons, topped up with gin', 'of:damsons spirit:1 l gin 40%'],
  ['a 2 litre kilner full of damsons, topped up with gin', 'of:damsons spirit:1 l gin 40%'],
  ['a quart jar of strawberries and vodka', 'of:strawberries spirit:2 cups vodka 40%'],
  ['un barattolo da un litro di ciliegie coperte di vodka', 'of:ciliegie spirit:500 ml vodka 40%'],
  ['half litre jar of blackberries submerged in vodka', 'of:blackberries spirit:250 ml vodka 40%'],
  ['500 g sloes and 700 ml gin in a 2 l jar', 'of:500 g sloes spirit:700 ml gin 40%'],
])('plans what a jar of that size takes: %s', async (text, options) => {
  expect(await talker().say(text)).toMatchObject({ read: `/plan ${options}`, recorded: 0 })
})

it.each([
  ['I covered cherries with vodka in a litre jar', '/jar start of:cherries spirit:500 ml vodka 40%'],
  ['we put sloes in a 2 l jar with gin', '/jar start of:sloes spirit:1 l gin 40%'],
])('asks before it begins what was not measured: %s', async (text, line) => {
  expect(await talker().say(text)).toMatchObject({ code: 'question', recorded: 0, choices: [line] })
})

it.each([
  '500 g sloes covered with 700 ml gin',
  '1 kg plums, drowned in a litre of brandy',
  '600 g of cherries topped up with 1 l of rum',
])('begins nothing of what is only described: %s', async (text) => {
  expect(await talker().say(text)).toMatchObject({ command: 'plan', recorded: 0 })
})

it.each([
  'I covered 500 g sloes with 700 ml of gin',
  'covered 1 kg plums with a litre of brandy',
  '500 g sloes are covered with 700 ml of gin',
  '600 g cherries, covered with 1 l of rum yesterday',
])('begins what is told as done: %s', async (text) => {
  expect(await talker().say(text)).toMatchObject({ command: 'jar start', recorded: 1 })
})

it('takes the amount of a jar that is of spirit, and the size of one that something moves into', async () => {
  const plan = await talker().say('a litre jar of vodka and 500 g cherries')
  expect(plan.read).toBe('/plan of:500 g cherries spirit:1 litre vodka 40%')
  const moved = await (await talkerFor({ after: null, shelf: 'lemon' })).say('moved the lemon to a 2 l jar')
  expect(moved.read).toBe('/jar note lemon vessel:2 l jar')
})

describe('what is answered when it is asked how large the jar is', () => {
  it.each([
    ['a 1 litre kilner, about two thirds full, topped up with cheap vodka', 'of:300 g plums spirit:600 ml vodka 40%'],
    ['it’s a 2 litre jar, half full', 'of:450 g plums spirit:1.35 l vodka 40%'],
    ['a litre', 'of:450 g plums spirit:450 ml vodka 40% have:450 g plums'],
  ])('may tell how full it is, too: %s', async (text, options) => {
    const one = talker()
    expect((await one.say('I’ve got a big jar of plums and want to make something with vodka')).code).toBe('question')
    expect(await one.say(text)).toMatchObject({ code: null, read: `/plan ${options}` })
  })

  it('is another thing where it names a plant of its own', async () => {
    const one = talker()
    await one.say('I’ve got a big jar of plums and want to make something with vodka')
    expect((await one.say('a 1 litre kilner two thirds full of sloes topped up with gin')).read).toContain('sloes')
  })
})
