import { describe, expect, it } from 'vitest'
import { talkerFor } from './told.ts'

const LEMONS = '/plan of:10 lemons spirit:1 l 95%'
const SYRUP = '/syrup infusion:920 ml strength:82% to-strength:30% to-sweetness:190 g/L'

/** What was said before, what is wished of it in several clauses, and the call that has all of them; none stands in the corpus. */
describe.each<readonly [before: string, text: string, read: string]>([
  [LEMONS, 'with gin, and a bit drier', '/plan of:10 lemons spirit:1 l gin 40% to-sweetness:160 g/L'],
  [LEMONS, 'double it and use vodka', '/plan of:20 lemons spirit:2 l vodka 40%'],
  [LEMONS, '12 lemons and down to 28 percent', '/plan of:12 lemons spirit:1 l 95% to-strength:28%'],
  [LEMONS, 'for eight bottles, and less sweet', '/plan of:lemons strength:95% bottles:8 to-sweetness:120 g/L'],
  [LEMONS, 'i need six bottles of it, and make it with vodka', '/plan of:lemons strength:40% bottles:6'],
  [LEMONS, 'the choir is coming, so half of it, and with rum', '/plan of:5 lemons spirit:0.5 l rum 40%'],
  [LEMONS, 'il doppio ma meno dolce', '/plan of:20 lemons spirit:2 l 95% to-sweetness:120 g/L'],
  [LEMONS, 'con la vodka e per sei bottiglie', '/plan of:lemons strength:40% bottles:6'],
  [SYRUP, 'it was 900 ml, and make it drier', SYRUP.replace('920', '900').replace('190', '120')],
  // What is not to be had is no wish.
  [LEMONS, 'pure alcohol can’t be found here, what if i use rum?', '/plan of:10 lemons spirit:1 l rum 40%'],
  [LEMONS, 'they don’t sell 96 here, could gin do?', '/plan of:10 lemons spirit:1 l gin 40%'],
  [LEMONS, 'da noi l’alcol non si trova, posso usare la grappa?', '/plan of:10 lemons spirit:1 l grappa 40%'],
  [LEMONS, 'niente alcol puro al supermercato, e con la vodka?', '/plan of:10 lemons spirit:1 l vodka 40%'],
  [LEMONS, 'no spirit at 95 here, only vodka, and for 5 bottles', '/plan of:lemons strength:40% bottles:5'],
  // Some of one for another.
  [LEMONS, 'swap four of the lemons for limes', '/plan of:6 lemons + 4 limes spirit:1 l 95%'],
])('after %s: %s', (before, text, read) => {
  it(`is ${read}`, async () => {
    expect(await (await talkerFor({ after: before })).say(text)).toMatchObject({ read, code: null, recorded: 0 })
  })
})

it('asks about a number that stands in nothing that a wish came to', async () => {
  const told = await (await talkerFor({ after: LEMONS })).say('sweeter with 7')
  expect(told).toMatchObject({ code: 'question', recorded: 0 })
})
