import { expect, test } from 'vitest'
import { talker } from './told.ts'

// Told on 29 November 2026.
test.each([
  ['2 lb cherries and a fifth of bourbon, steep till Christmas', / days:26 days$/],
  ['2 kg plums and 2 litres of vodka, let them soak until 20 December', / days:21 days$/],
  ['2 kg di prugne e 2 litri di vodka, da macerare fino a Natale', / days:26 days$/],
  ['10 lemons and a litre of 95, ready by Easter', / ready-by:/],
  ['10 lemons and a litre of 95 for Easter', / ready-by:/],
])('“%s”: up to the day on which it is strained, or ready', async (said, read) => {
  expect((await talker().say(said)).read).toMatch(read)
})

// Parts of a month are common practice, no source: early is its tenth, the middle its fifteenth, the end its last day.
test.each([
  ['9 oranges, a litre of 95%, ready by the end of January', '31 january'],
  ['9 oranges, a litre of 95%, ready by end of february', '28 february'],
  ['9 oranges, a litre of 95%, ready by the end of february 2028', '29 february 2028'],
  ['9 oranges, a litre of 95%, ready by end april', '30 april'],
  ['9 oranges, a litre of 95%, ready by mid-March', '15 march'],
  ['9 oranges, a litre of 95%, ready by the middle of May', '15 may'],
  ['9 oranges, a litre of 95%, for early June', '10 june'],
  ['9 oranges, a litre of 95%, ready by late february', '25 february'],
  ['9 oranges, a litre of 95%, ready by the end of next month', '2026-12-31'],
  ['9 arance, un litro a 95%, pronto per fine gennaio', '31 gennaio'],
  ['9 arance, un litro a 95%, pronto per metà marzo', '15 marzo'],
])('“%s”: a part of a month is a day', async (said, day) => {
  expect((await talker().say(said)).read).toMatch(new RegExp(` ready-by:${day}$`))
})

test.each([
  ['started 9 oranges in a litre of 95% at the end of october', '31 october'],
  ['I started 9 oranges in a litre of 95% at the end of last month', '2026-10-31'],
])('“%s”: so it is of a day that is over', async (said, day) => {
  expect((await talker().say(said)).read).toMatch(new RegExp(` when:${day}$`))
})

test.each([
  ['9 oranges and a litre of 95%, my gran likes it sticky sweet', 'rich'],
  ['9 oranges and a litre of 95%, sweet like jam', 'rich'],
  ['he wants them sickly sweet, 9 oranges and a litre of 95%', 'rich'],
  ['9 oranges and a litre of 95%, just a whisper of sugar', 'dry'],
  ['9 oranges and a litre of 95%, only a touch of sugar', 'dry'],
  ['9 arance e un litro a 95%, giusto un velo di zucchero', 'dry'],
])('“%s”: how sweet it is wished', async (said, style) => {
  expect((await talker().say(said)).read).toMatch(new RegExp(` to-sweetness:${style}$`))
})

test.each([
  ['plums and bourbon, steep for 20 days', '/plan of:plums spirit:1 l bourbon 40% days:20 days'],
  ['sloes and gin, let them soak for 6 weeks', '/plan of:sloes spirit:1 l gin 40% days:6 weeks'],
  ['1 kg plums and 1 l bourbon, let it sit for 3 weeks', '/plan of:1 kg plums spirit:1 l bourbon 40% days:3 weeks'],
  ['lemons and vodka, infuse for 12 days', '/plan of:lemons spirit:1 l vodka 40% days:12 days'],
  ['raspberries and brandy, soak for a month', '/plan of:raspberries spirit:1 l brandy 40% days:1 month'],
])('“%s”: how long it steeps is no day on which it is ready', async (said, read) => {
  expect((await talker().say(said)).read).toBe(read)
})

test.each([
  ['would a plum one started now be done by the end of january', '31 january'],
  ['would a cherry one started today be ready by mid March', '15 march'],
  ['could a lemon one begun this week be ready for early may', '10 may'],
  ['9 oranges, a litre of 95%, ready at the end of march', '31 march'],
  ['9 arance, un litro a 95%, pronto a fine marzo', '31 marzo'],
])('“%s”: nothing is started by it, and the day is kept', async (said, day) => {
  const told = await talker().say(said)
  expect(told.recorded).toBe(0)
  expect(told.read).toMatch(new RegExp(`^/plan .* ready-by:${day}$`))
})
