import { expect, it } from 'vitest'
import { jarSizeIn } from '../../../bot/talk/household/jar-filled.ts'
import { toldByVessels } from '../../../bot/talk/household/told-by-vessels.ts'
import { talker, talkerFor } from './told.ts'

// What vessels hold: a wine bottle 750 ml (Directive 2007/45/EC); jam jars, mugs and how fruit fills a jar are common practice, no source.

it.each([
  ['strained it, it came to nearly two wine bottles', '1.45 l'],
  ['strained it, three quarters of a wine bottle', '550 ml'],
  ['sieved it: one wine bottle and a bit', '800 ml'],
  ['filtered it, a magnum and a half', '2.25 l'],
  ['strained it, just over a jam jar', '390 ml'],
  ['filtrato, riempie mezza bottiglia di vino', '380 ml'],
  ['strained it, it filled a gin bottle', '700 ml'],
])('tells what came out by what it fills: %s', (said, ml) => {
  expect(toldByVessels(said, false, false).text).toContain(ml)
})

it('takes a bottle of spirit as it is sold where it is said', () => {
  expect(toldByVessels('strained it, about a bottle', true, false).text).toContain('750 ml')
  expect(toldByVessels('strained it, about a bottle', false, false).text).toContain('700 ml')
})

it.each([
  'strained it into two wine bottles',
  'strained and bottled it, three wine bottles',
  'gave a wine bottle of it to Bea',
  'strained it, 920 ml at 87',
])('leaves what is no measure of it: %s', (said) => {
  expect(toldByVessels(said, false, false).text).toBe(said)
})

it('writes a straining down by the bottle, and says what it took for it', async () => {
  const one = await talkerFor({ after: null, shelf: 'lemon' })
  const { outcome, read } = await one.hear('strained the lemon, nearly filled a wine bottle')
  expect(read).toBe('/jar strain lemon measured:700 ml')
  const notes = outcome.ok && 'reply' in outcome ? outcome.reply.notes : []
  expect(notes).toContainEqual({
    group: 'notes',
    key: 'vessels_taken',
    values: { vessels: [{ name: 'wine bottle', ml: 750 }] },
  })
})

it.each([
  'strained the lemon into a jug, no idea how much',
  'strained the lemon, I haven’t a clue how much there is',
  'lemon filtrato, non so quanto è venuto',
])('writes down what nobody measured, tells how to find out, and takes it then: %s', async (said) => {
  const one = await talkerFor({ after: null, shelf: 'lemon' })
  const { outcome, read } = await one.hear(said)
  expect(read).toBe('/jar strain lemon')
  const notes = outcome.ok && 'reply' in outcome ? outcome.reply.notes : []
  expect(notes[0]?.key).toBe('unmeasured')
  expect((await one.say('it fills a wine bottle')).read).toBe('/jar correct lemon measured:750 ml')
})

it.each([
  ['half a jam jar of blackberries topped up with gin', '/plan of:80 g blackberries spirit:250 ml gin 40%'],
  ['a kilner jar two thirds full of damsons, then gin to the top', '/plan of:300 g damsons spirit:600 ml gin 40%'],
  ['a jam jar of cherries and vodka', '/plan of:170 g cherries spirit:170 ml vodka 40%'],
  ['a 2 l jar half full of sloes, covered with gin', '/plan of:450 g sloes spirit:1.35 l gin 40%'],
  ['8 lemons and two mugs of vodka', '/plan of:8 lemons spirit:550 ml vodka 40%'],
  ['a mug of blackberries and a bottle of gin', '/plan of:140 g blackberries spirit:700 ml gin 40%'],
  ['three jam jars of plums and a bottle of vodka', '/plan of:550 g plums spirit:700 ml vodka 40%'],
])('plans what fills it: %s', async (said, read) => {
  expect(await talker().say(said)).toMatchObject({ read, recorded: 0 })
})

it('asks how large the jar is, once, and plans with the answer', async () => {
  const one = talker()
  const asked = await one.say('two thirds of a jar of raspberries topped up with gin')
  expect(asked).toMatchObject({ code: 'question', recorded: 0 })
  for (const line of asked.choices) expect((await talker().say(line)).code).toBeNull()
  expect((await one.say('about a litre I think')).read).toBe('/plan of:300 g raspberries spirit:600 ml gin 40%')
})

it('asks before it begins what only fills a jar', async () => {
  const one = talker()
  const told = await one.say('I filled a jam jar with raspberries and topped it up with vodka')
  expect(told).toMatchObject({ code: 'question', recorded: 0 })
  expect(await one.say('yes')).toMatchObject({ command: 'jar start', recorded: 1 })
})

it('asks what is in a jar that was filled, or takes it of the plan', async () => {
  expect(await talker().say('filled the jar with spirit')).toMatchObject({ code: 'question', choices: [] })
  const one = talker()
  await one.say('10 lemons and a litre of vodka')
  expect((await one.say('topped the jar up with the vodka')).choices).toEqual([
    '/jar start of:10 lemons spirit:1 litre vodka 40%',
  ])
})

it('takes a jar for an answer to how much there is to be', async () => {
  const one = talker()
  await one.say('8 lemons and a glug of vodka')
  expect((await one.say('fill a jam jar')).read).toBe('/plan of:8 lemons spirit:330 ml 40%')
  const other = talker()
  await other.say('raspberries and some gin')
  expect((await other.say('two mugs')).read).toBe('/plan of:raspberries spirit:550 ml 40%')
})

it('tells the sugar of a plan by spoons to whoever has nothing else', async () => {
  const one = talker()
  expect((await one.say('I only have spoons')).data.entry).toBe('no_scales')
  await one.say('10 lemons and a litre of 95%')
  for (const said of ['I only have spoons', 'how many tablespoons of sugar is that', 'quanti cucchiai sono?'])
    expect((await one.say(said)).data).toMatchObject({ said: 'talk_converted', unit: 'tbsp' })
})

it.each([
  ['a jam jar', 370],
  ['half a litre', 500],
  ['1.5 l', 1500],
  ['it’s a two litre kilner', 2000],
  ['un barattolo da marmellata', 370],
  ['fill a kilner jar', 1000],
] as const)('reads how large a jar is: %s', (said, ml) => {
  expect(jarSizeIn(said)?.ml).toBe(ml)
})

it('takes a jam jar for no jelly', async () => {
  const one = await talkerFor({ after: null, shelf: 'lemon' })
  expect((await one.say('put the lemon in a jam jar')).command).not.toBe('trouble')
})
