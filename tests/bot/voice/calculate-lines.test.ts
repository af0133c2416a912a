import { expect, it } from 'vitest'
import { budgets } from './budgets.ts'
import { tooLong } from './first-screens.ts'

const STRENGTHS = [40, 60, 82, 96]
const WISHES = [
  'to-strength:30% to-sweetness:250 g/L',
  'to-strength:30% to-sweetness:0',
  'to-strength:25% ratio:1:1',
  'to-strength:18% to-sweetness:100 g/L',
  'to-strength:32% to-sweetness:190 g/L at-most:700 ml',
]

const syrups = STRENGTHS.flatMap((strength) =>
  WISHES.map((wish) => `/syrup infusion:920 ml strength:${strength}% ${wish}`),
)

const styles = [
  ...STRENGTHS.map((strength) => `/syrup infusion:920 ml strength:${strength}%`),
  '/syrup infusion:920 ml strength:82% to-sweetness:300 g/L',
  '/syrup infusion:4 cups strength:160 proof',
  '/syrup infusion:920 ml strength:82% at-most:700 ml',
]

const mixtures = [
  '/mix spirit:1 l strength:95% water:750 ml sugar:500 g',
  '/mix spirit:1 l 95% + 70 cl 40% water:2 l',
  '/mix water:1 l sugar:500 g',
  '/mix spirit:3 cups 151 proof water:2 cups sugar:9 oz',
  '/dilute spirit:1 l 95% to-strength:40%',
  '/dilute spirit:1 l 95% + 70 cl 60% to-strength:45%',
  '/dilute spirit:1 l 40% to-strength:40%',
  '/blend parts:500 ml 30% 250 g/L + 1 l 40%',
  '/blend parts:500 ml 30% 250 g/L + 1 l 40% + 200 ml water',
  '/blend parts:1 l 12% 100 g/L + 1 l 14% 100 g/L',
  '/adjust liqueur:1.2 l strength:25% to-strength:30% spirit-strength:40%',
  '/adjust liqueur:2 l strength:30% sweetness:190 g/L to-sweetness:250 g/L',
  '/adjust liqueur:2 l strength:30% sweetness:190 g/L to-strength:25%',
  '/adjust liqueur:2 l strength:30% sweetness:190 g/L to-strength:30% to-sweetness:190 g/L',
  '/adjust liqueur:2 l strength:30% sweetness:190 g/L to-strength:35% to-sweetness:250 g/L spirit-strength:95%',
]

it('a syrup, three ways and a mixture are a few lines', async () => {
  const long = [
    ...(await tooLong(syrups, (columns) => budgets.syrup[columns])),
    ...(await tooLong(styles, (columns) => budgets.syrup_styles[columns])),
    ...(await tooLong(mixtures, (columns) => budgets.mixture[columns])),
  ]
  expect(long.join('\n\n')).toBe('')
})
