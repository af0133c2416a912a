import fc from 'fast-check'
import { expect, test } from 'vitest'
import { allRefusedNames } from '../../../core/botanical/refuse/all-refused.ts'
import { alcohols, drinks, fillers } from '../../../core/botanical/spirit/drink-words.ts'
import { undrinkables } from '../../../core/botanical/spirit/undrinkable.ts'
import { runs, SEED } from '../../runs.ts'
import { jarDesk } from '../commands-jar/desk.ts'

const listOf = (text: string): readonly string[] =>
  text
    .split(',')
    .map((each) => each.trim())
    .filter((each) => each !== '' && !each.includes('*'))

const good = [...listOf(drinks), ...listOf(alcohols)]

const undrinkable = undrinkables.flatMap(({ anywhere, beside, made }) => [anywhere, beside, made ?? ''].flatMap(listOf))

/** Kinds whose names are everyday words; they are refused as well, but a bottle may be named after one. */
const refused = allRefusedNames.map(({ name }) => name)

const bad = fc.constantFrom(...undrinkable, ...refused)
const anyDrink = fc.constantFrom(...good)
const anyFiller = fc.constantFrom('', '', ...listOf(fillers).filter((word) => !/\d/.test(word)))
const anyStrength = fc.constantFrom('95%', '40%', '70 % vol', '50°', '90 proof')

/** Where the bad word stands to the drink. */
const spiritText = fc
  .record({
    drink: anyDrink,
    word: bad,
    filler: anyFiller,
    strength: anyStrength,
    place: fc.constantFrom(0, 1, 2, 3, 4, 5, 6, 7),
    style: fc.constantFrom(0, 1, 2),
  })
  .map(({ drink, word: plain, filler, strength, place, style }) => {
    const word = style === 0 ? plain : style === 1 ? plain.toUpperCase() : plain.replaceAll(' ', '-')
    const texts = [
      `1 l ${word} ${drink} ${strength}`,
      `1 l ${drink} ${word} ${strength}`,
      `${word} 1 l ${drink} ${strength}`,
      `1 l ${drink} ${strength} ${word}`,
      `1 l ${filler} ${word} ${filler} ${drink} ${strength}`,
      `1 l ${drink} ${strength} + 100 ml ${word} ${strength}`,
      `1 l ${drink} with ${word} ${strength}`,
      `1 l ${word}, ${drink}, ${strength}`,
    ]
    return { word, text: texts[place]!.replace(/\s+/g, ' ') }
  })

const LINES: readonly ((spirit: string) => string)[] = [
  (spirit) => `/plan of:10 lemons spirit:${spirit}`,
  (spirit) => `/mix water:1 l spirit:${spirit}`,
  (spirit) => `/dilute to-strength:20% spirit:${spirit}`,
  (spirit) => `/blend parts:${spirit}`,
  (spirit) => `/syrup infusion:920 ml of:8 lemons to-strength:20% to-sweetness:100 g/L spirit:${spirit}`,
  (spirit) => `/jar start new of:10 lemons spirit:${spirit}`,
  (spirit) => `/jar add m spirit:${spirit}`,
  (spirit) => `/jar correct m entry:1 spirit:${spirit}`,
  (spirit) => `/again m spirit:${spirit}`,
]

/** Other options, with words that mean something dangerous everywhere. */
const OTHERS: readonly ((word: string) => string)[] = [
  (word) => `/plan of:500 ml ${word} spirit:1 l 40%`,
  (word) => `/plan of:10 lemons + ${word} spirit:1 l 40%`,
  (word) => `/plan of:10 lemons ${word} spirit:1 l 40%`,
  (word) => `/plan of:10 lemons spirit:1 l strength:95% ${word}`,
  (word) => `/plan of:10 lemons spirit:1 l 95% bottles:4 x 500 ml ${word}`,
  (word) => `/plan of:10 lemons spirit:1 l 95% sugar:500 g ${word}`,
  (word) => `/jar add m water:500 ml ${word}`,
  (word) => `/jar add m sugar:500 g ${word}`,
  (word) => `/mix spirit:1 l 95% water:500 ml ${word}`,
  (word) => `/jar strain m measured:900 ml ${word}`,
]

const anywhere = fc.constantFrom(...undrinkables.flatMap((each) => listOf(each.anywhere)), ...refused)

const anyLine = fc.oneof(
  {
    weight: 3,
    arbitrary: fc
      .record({ spirit: spiritText, line: fc.constantFrom(...LINES) })
      .map(({ spirit, line }) => line(spirit.text)),
  },
  {
    weight: 1,
    arbitrary: fc.record({ word: anywhere, line: fc.constantFrom(...OTHERS) }).map(({ word, line }) => line(word)),
  },
)

const isReckoned = (data: Readonly<Record<string, unknown>>): boolean => Object.hasOwn(data, 'abvPercent')

test.each(LINES.map((line) => line('1 l Allotment Pride vodka 60%')))('%s is planned', async (line) => {
  const desk = jarDesk()
  await desk.ask('/jar start m of:10 lemons spirit:1 l 95%')
  expect(isReckoned((await desk.ask(line)).data)).toBe(true)
})

test('whatever stands beside a good drink, nothing undrinkable or refused is ever planned or recorded', async () => {
  const desk = jarDesk()
  await desk.ask('/jar start m of:10 lemons spirit:1 l 95%')
  await fc.assert(
    fc.asyncProperty(anyLine, async (line) => {
      const { error, data } = await desk.anyOf(line)
      // Somebody who is on fire is answered first, with no plan.
      expect(error === undefined && isReckoned(data), line).toBe(false)
      expect(error?.code, line).not.toBe('internal')
    }),
    { seed: SEED, numRuns: runs(80, 20_000), endOnFailure: true },
  )
  expect((await desk.person()).jars.map(({ entries }) => entries.length)).toEqual([1])
})
