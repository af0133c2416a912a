import { expect, it } from 'vitest'
import { talker, talkerFor } from './told.ts'

// Batches that are told as over, with their day; ours, no source.
it.each([
  ['I began with 8 oranges in 700 ml of 96 % on Saturday.', 'of:8 oranges spirit:700 ml 96% when:saturday'],
  ['last friday I laid down 500 g sloes in 70 cl gin', 'of:500 g sloes spirit:70 cl gin 40% when:last friday'],
  ['set a kilo of damsons off in a litre of gin on monday', 'of:1 kilo damsons spirit:1 litre gin 40% when:monday'],
  [
    'the cherries are in, 600 g with a litre of brandy, did that last night',
    'of:600 g cherries spirit:1 litre brandy 40% when:yesterday',
  ],
  ['500 g rhubarb in with 70cl gin, did it yesterday', 'of:500 g rhubarb spirit:70 cl gin 40% when:yesterday'],
  [
    'raspberries are steeping, 400 g in 70 cl vodka since Tuesday',
    'of:400 g raspberries spirit:70 cl vodka 40% when:tuesday',
  ],
  [
    'le pesche sono dentro, 800 g con 70 cl di vodka, fatto ieri',
    'of:800 g pesche spirit:70 cl vodka 40% when:yesterday',
  ],
  ['ieri ho messo 400 g di lamponi in un litro di grappa', 'of:400 g lamponi spirit:1 litro grappa 40% when:yesterday'],
])('begins a batch that is told as over: %s', async (text, options) => {
  expect(await talker().say(text)).toMatchObject({ read: `/jar start ${options}`, code: null, recorded: 1 })
})

it.each([
  ['Put 1 lb of cherries down in a quart of rum on Sunday.', 'of:1 lb cherries spirit:1 quart rum 40% when:sunday'],
  ['tossed 400 g raspberries in 70 cl of gin this morning', 'of:400 g raspberries spirit:70 cl gin 40%'],
  ['I have on Monday 12 limes in 1 litre of 95 % put', 'of:12 limes spirit:1 litre 95% when:monday'],
])('asks whether a batch was begun: %s', async (text, options) => {
  const told = await talker().say(text)
  expect(told).toMatchObject({ code: 'question', recorded: 0, choices: [`/jar start ${options}`] })
})

it.each([
  'on Saturday I bought 8 oranges and 700 ml of 96 %',
  'yesterday we picked 450 g blackberries, there is a 70cl vodka',
  'got 12 oz of blueberries on Saturday and a pint of brandy',
  'this morning I picked a kilo of sloes, and 70 cl of gin in the cupboard',
  'sabato ho comprato 8 arance e 700 ml di alcol a 96',
  'on Saturday I’ll begin with 8 oranges in 700 ml of 96 %',
  'I want to lay 500 g sloes down in 70 cl gin on Sunday',
  'yesterday my sister laid 500 g sloes down in 70 cl gin',
  'ieri mia zia ha messo 500 g di ciliegie in un litro di grappa',
  'I nearly laid 500 g sloes down in 70 cl gin on Sunday',
  '500 g sloes in 70 cl gin, to be laid down by Sunday',
  'my gran laid down 2 kg damsons in 3 l gin every 3 october',
  'ieri ho messo da parte 500 g di ciliegie e un litro di grappa',
])('begins nothing: %s', async (text) => {
  expect((await talker().say(text)).recorded).toBe(0)
})

it('begins nothing of what goes into a jar that stands', async () => {
  const told = await (await talkerFor({ after: null, shelf: 'lemon' })).say(
    'the cloves are in, 5 with 20 ml of vodka, did it today',
  )
  expect(told.call?.path).not.toBe('jar start')
})
