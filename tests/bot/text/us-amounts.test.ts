import { expect, test } from 'vitest'
import { en } from '../../../bot/text/en/index.ts'
import { scoopedText } from '../../../bot/text/en/sweeteners.ts'
import { materialOf } from '../../../core/quantity/materials.ts'

const us = en.format('us')
const plain = (text: string): string => text.replaceAll('\u00a0', ' ')

/** Millilitres or grams of what a US kitchen reads, before the bracket. */
const inMetric = (text: string): number => {
  const [said = ''] = text.split(' (')
  const units = { cup: 236.588, tbsp: 14.7868, tsp: 4.92892, lb: 453.592, oz: 28.3495 }
  const shares: Readonly<Record<string, number>> = { '⅓': 1 / 3, '⅔': 2 / 3 }
  const partOf = (part = '') => shares[part] ?? ' ⅛¼⅜½⅝¾⅞'.indexOf(part || ' ') / 8
  return [...said.matchAll(/(\d*) ?([⅛¼⅓⅜½⅝⅔¾⅞]?) (cup|tbsp|tsp|lb|oz)/g)]
    .map(([, whole, part, unit]) => (Number(whole) + partOf(part)) * units[unit as 'cup'])
    .reduce((sum, each) => sum + each, 0)
}
/** And of the bracket behind it. */
const bracketed = (text: string): number => {
  const [, number, unit = ''] = /\(([\d.]+) (ml|l|g|kg)\)/.exec(text) ?? []
  return Number(number) * (['l', 'kg'].includes(unit) ? 1000 : 1)
}

/** What measures of this size may be off: half a teaspoon beside a tablespoon, half a tablespoon beside a quarter of a cup. */
const mayBeOff = (text: string, value: number): number => {
  if (text.includes('oz')) return value < 60 ? 0.25 : value < 120 ? 0.062 : 0.035
  return value < 57 ? 0.085 : value < 236 ? 0.062 : 0.035
}

test('a US figure and the metric one behind it agree as nearly as such measures are made', () => {
  for (let value = 15; value < 20_000; value *= 1.017) {
    for (const share of [0.001, 0.02, 0.05, 0.1, 0.4]) {
      for (const text of [us.volume, us.mass].map((show) => plain(show({ value, plusMinus: share * value })))) {
        const shown = bracketed(text)
        expect(Math.abs(inMetric(text) / shown - 1), text).toBeLessThan(mayBeOff(text, shown))
      }
    }
  }
})

// Sets of cups hold a whole, a half, a third and a quarter, sets of spoons a tablespoon, its half, a teaspoon and quarters
// of it (common practice, no source).
test('a US figure names cups and spoons that there are', () => {
  for (let value = 0.7; value < 20_000; value *= 1.011) {
    for (const share of [0.001, 0.02, 0.2]) {
      const [text = ''] = plain(us.volume({ value, plusMinus: share * value })).split(' (')
      const parts = [...text.matchAll(/(?:(\d+) ?)?([⅛¼⅓⅜½⅝⅔¾⅞]?) (cup|tbsp|tsp)/g)]
      expect(parts.length, text).toBeGreaterThan(0)
      for (const [, whole = '0', part = '', unit] of parts) {
        if (unit === 'tsp') expect(Number(whole), text).toBeLessThan(3)
        if (unit === 'tsp' && Number(whole) > 0) expect(['', '¼', '½', '¾'], text).toContain(part)
        if (unit === 'tbsp') expect(Number(whole), text).toBeLessThan(4)
        if (unit === 'tbsp') expect(['', '½'], text).toContain(part)
        if (unit === 'cup') expect(['', '¼', '⅓', '½', '⅔', '¾'], text).toContain(part)
      }
      if (value > 116) expect(text).not.toMatch(/tsp|½ tbsp/)
    }
  }
})

test('a US scale is read in quarters of an ounce from one on', () => {
  for (let value = 29; value < 440; value *= 1.011)
    expect(plain(us.mass({ value, plusMinus: 1 })).split(' (')[0]).toMatch(/^\d+( [¼½¾])? oz$|^1 lb$/)
})

// Judgement, about the styles that have a name: dry 120, everyday 190 and rich 270 g/L.
test.each([
  [24, 'hardly any sugar'],
  [25, 'barely sweet'],
  [80, 'fairly dry'],
  [120, 'fairly dry'],
  [155, 'medium sweet'],
  [190, 'medium sweet'],
  [230, 'very sweet'],
  [270, 'very sweet'],
  [330, 'syrupy'],
])('%d g/L is called %s', (sugarGPerL, word) => {
  expect(us.round.sweet(sugarGPerL)).toBe(word)
  expect(en.format({ volume: 'us', mass: 'us', sweetness: 'metric' }).round.sweet(sugarGPerL)).toMatch(/g\/L$/)
})

// An ounce in a quart is 29.9566 g/L (NIST Handbook 44, Appendix C).
test.each([
  [10, '¼ oz/quart'],
  [37, '1 ¼ oz/quart'],
  [190, '6 ½ oz/quart'],
  [250, '8 ½ oz/quart'],
])('%d g/L is %s', (sugarGPerL, text) => {
  expect(plain(us.round.sweetness(sugarGPerL))).toBe(text)
})

// Granulated sugar 200 g in a US cup (USDA SR 19335), packed brown sugar 220 g (19334), honey 339 g (19296).
test.each([
  ['white_sugar', 200, '1 cup (7 oz)'],
  ['white_sugar', 340, '1 ¾ cups (12 oz)'],
  ['white_sugar', 400, '2 cups (14 oz)'],
  ['white_sugar', 225, '1 cup + 2 tbsp (8 oz)'],
  ['white_sugar', 65, '⅓ cup (2 ¼ oz)'],
  ['white_sugar', 25, '2 tbsp (⅞ oz)'],
  ['brown_sugar', 450, '2 cups (1 lb)'],
  ['honey', 339, '1 cup (12 oz)'],
] as const)('of %s %d g is %s', (material, massG, text) => {
  expect(plain(scoopedText(massG, material, us))).toBe(text)
  expect(scoopedText(massG, material, en.format('metric'))).toBe(en.format('metric').round.mass(massG))
  expect(scoopedText(massG, material, en.format({ volume: 'us', mass: 'metric' }))).not.toMatch(/cup/)
})

// A cup of what is dry is filled to 10 %, one of what is a syrup to 3 % (common practice, no source).
test.each(['white_sugar', 'brown_sugar', 'honey'] as const)(
  'cups of %s say no more than a cup carries, and no less',
  (id) => {
    const { pouredGPerMl, pouredPlusMinusShare } = materialOf(id)
    for (let massG = 65; massG < 4000; massG *= 1.013) {
      const text = plain(scoopedText(massG, id, us))
      const off = Math.abs((inMetric(text) * pouredGPerMl) / massG - 1)
      expect(off, text).toBeLessThan(massG < 160 ? 0.12 : Math.max(0.07, pouredPlusMinusShare))
      if (massG > 700) expect(text, text).not.toMatch(/1 tbsp|3 tbsp|½ tbsp/)
    }
  },
)
