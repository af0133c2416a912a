import { describe, expect, it } from 'vitest'
import { talkerFor } from './told.ts'

const LEMONS = '/plan of:10 lemons spirit:1 l 95%'
const WITH_GINGER = '/plan of:10 lemons + 30 g ginger spirit:1 l 95%'
const SYRUP = '/syrup infusion:920 ml strength:82% to-strength:30% to-sweetness:190 g/L'
const GLASS = '/serving pour:40 ml strength:28%'

/** What was said before, what is said then at length, and the call that it makes; none of these stands in the corpus. */
describe.each<readonly [before: string, text: string, read: string]>([
  // A plant that nobody likes goes.
  [WITH_GINGER, 'take the ginger out again would you', LEMONS],
  [WITH_GINGER, 'I can’t stand ginger to be honest', LEMONS],
  [WITH_GINGER, 'out with the ginger', LEMONS],
  [WITH_GINGER, 'via lo zenzero per favore', LEMONS],
  // One in the place of the other.
  [LEMONS, 'and now the same thing for limes, if you’d be so kind', '/plan of:10 limes spirit:1 l 95%'],
  [LEMONS, 'same but 12 mandarins', '/plan of:12 mandarins spirit:1 l 95%'],
  [LEMONS, 'lo stesso ma con le arance', '/plan of:10 arance spirit:1 l 95%'],
  // What there is to be had.
  [LEMONS, 'unfortunately all there is in this house is rum', '/plan of:10 lemons spirit:1 l rum 40%'],
  [LEMONS, 'dalle mie parti vendono soltanto la vodka, come viene?', '/plan of:10 lemons spirit:1 l vodka 40%'],
  // A number that is said stands before a step.
  [SYRUP, 'a bit sweeter, 220 g to the litre perhaps', SYRUP.replace('190', '220')],
  [SYRUP, 'that’s too sweet for us, one hundred and forty grams a litre would do', SYRUP.replace('190', '140')],
  [LEMONS, 'could we get that up to thirty-five percent? The men would like it better', `${LEMONS} to-strength:35%`],
  // The glass is of another size.
  [GLASS, 'i nostri bicchierini sono da 30 ml, e così?', '/serving pour:30 ml strength:28%'],
  // Other measures of the same answer.
  [LEMONS, 'would you mind giving me that in pints and ounces, my scales are old', LEMONS],
  // Explained, not changed.
  [LEMONS, 'why so little sugar', LEMONS],
  [LEMONS, 'forgive me for asking, but how did you get to that much sugar?', LEMONS],
])('after %s: %s', (before, text, read) => {
  it(`is ${read}`, async () => {
    expect(await (await talkerFor({ after: before })).say(text)).toMatchObject({ read, code: null, recorded: 0 })
  })
})

it('does not take a plant out of a plan where it is only asked about', async () => {
  const { read } = await (await talkerFor({ after: WITH_GINGER })).say('when do I take the ginger out')
  expect(read).not.toBe(LEMONS)
})

it.each([
  ['it was the ginger, silly me', 'ginger'],
  ['oh sorry, I meant the lemon of course', 'lemon'],
  ['quello allo zenzero, dovevo dirlo subito', 'ginger'],
])('which jar is answered at length: %s', async (text, jar) => {
  const one = await talkerFor({ after: 'strained, 640 ml', shelf: 'lemon_ginger' })
  expect(await one.say(text)).toMatchObject({ read: `/jar strain ${jar} measured:640 ml`, recorded: 1 })
})

it.each(['not the ginger one, as I said', 'why do you ask about the ginger one again then'])(
  'no jar is taken from what tells of none: %s',
  async (text) => {
    const one = await talkerFor({ after: 'strained, 640 ml', shelf: 'lemon_ginger' })
    expect(await one.say(text)).toMatchObject({ recorded: 0 })
  },
)

it.each(['on second thoughts a 3', 'ripensandoci solo 3'])('a mark is put right: %s', async (text) => {
  const one = await talkerFor({ after: '/jar taste lemon rating:4', shelf: 'lemon' })
  expect(await one.say(text)).toMatchObject({ read: '/jar correct lemon rating:3' })
})
