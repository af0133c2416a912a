import { expect, test } from 'vitest'
import { flat } from '../flat.ts'
import { ask, textOf, typed } from './desk.ts'

const US = /(cups?|tbsp|tsp|fl oz|quarts?|gallons?) \([\d. ]+ (ml|l)\)/

test.each([
  '/syrup 4 cups strength:90% to-strength:30% to-sweetness:250',
  '/syrup 1 quart strength:150 proof to-strength:30% to-sweetness:250',
  '/mix spirit:25 fl oz strength:190 proof water:3 cups sugar:1 lb',
  '/dilute 2 cups 190 proof to-strength:60%',
])('%s is answered in US measures with the metric beside them', async (line) => {
  const text = await textOf(line)
  expect(text.split('\n\n')[0]).toMatch(/[\d⅛¼½¾] (cups?|tbsp)/)
  expect(text).toMatch(US)
  expect(text).toMatch(/°F \(−?\d+ °C\)/)
})

test('sugar in pounds and ounces, grams beside', async () => {
  expect(await textOf('/syrup 4 cups strength:90% to-strength:30% to-sweetness:250')).toMatch(
    /Sugar +\d+ lb( \d+ oz)? \(\d+ g\)/,
  )
})

test.each([
  '/syrup 920 ml strength:90% to-strength:30% to-sweetness:250',
  '/dilute 1 l 190 proof to-strength:60%',
  '/syrup 770 g strength:90%',
])('%s keeps to metric', async (line) => {
  // The note on US proof names its 60 °F.
  expect((await textOf(line)).replace('at 60 °F', '')).not.toMatch(/\b(cups?|tbsp|oz|lb)\b|°F/)
})

// US cup 236.588 ml and quarts and gallons of 4 and 16 of them (NIST Handbook 44, Appendix C).
test('a gallon is 16 cups is 3785.41 ml', async () => {
  const json = async (amount: string) => (await ask(`/mix spirit:${amount} strength:40%`)).data.volumeMl
  expect(await json('1 gallon')).toBeCloseTo(3785.41, 2)
  expect(await json('16 cups')).toBeCloseTo((await json('1 gallon'))!, 9)
  expect(await json('4 quarts')).toBeCloseTo((await json('128 fl oz'))!, 9)
})

test('what is shown rounds what is computed, within its ±', async () => {
  const line = '/syrup 920 ml strength:90% to-strength:30% to-sweetness:250 g/L'
  const { sugarG, waterMl, syrupG, volumeMl } = (await ask(line)).data
  const text = flat(await textOf(line))
  const [, sugar, water, volume] = /Dissolve ([\d.]+) g sugar in ([\d.]+) l water, .* Makes ([\d.]+) l/.exec(text)!
  const [, syrup] = /Syrup ([\d.]+) kg = /.exec(text)!
  expect(Math.abs(Number(sugar) - sugarG!)).toBeLessThanOrEqual(5)
  expect(Math.abs(Number(water) * 1000 - waterMl!)).toBeLessThanOrEqual(5)
  expect(Math.abs(Number(syrup) * 1000 - syrupG!)).toBeLessThanOrEqual(5)
  expect(Math.abs(Number(volume) * 1000 - volumeMl!)).toBeLessThanOrEqual(5)
  expect(typed(sugarG!)).toMatch(/^\d+\.\d{6,}$/)
})

test('a spoonful too small for a quarter of a tablespoon is not called one', async () => {
  expect(await textOf('/dilute ½ cup 96% to-strength:95.9%')).not.toMatch(/¼ tbsp \(0\./)
})
