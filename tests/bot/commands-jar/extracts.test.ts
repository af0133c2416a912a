import { expect, test } from 'vitest'
import { testDesk } from '../test-desk.ts'
import { jarDesk, numberIn } from './desk.ts'

const COFFEE = 'of:200 g cracked coffee spirit:1 l 60%'
const TO = 'to-strength:28% to-sweetness:200 g/L'

const strained = async (of: string, read: string) => {
  const desk = jarDesk('2026-11-01')
  await desk.ask(`/jar start herb ${of} ${TO}`)
  desk.at('2026-11-09')
  return { desk, json: await desk.ask(`/jar strain herb ${read}`) }
}

const keys = (json: { readonly notes: readonly { readonly key: string }[] }) => json.notes.map(({ key }) => key)

// The audit's jar: 60 % spirit over coffee reads 54, because some 34 g/L of coffee are dissolved in it (27 CFR 30.32, derived).
test('what coffee gives off explains a low reading, and the strength is taken from what went in', async () => {
  const { json } = await strained(COFFEE, 'measured:740 ml strength:54%')
  expect(Math.abs(numberIn(json, 'abvPercent') - 59.6)).toBeLessThan(1.5)
  // Not the hydrometer's 0.5, nor the 3 % vol that 20 g/L more or less would hide.
  expect(numberIn(json, 'abvPercentPlusMinus')).toBeGreaterThan(0.5)
  expect(numberIn(json, 'abvPercentPlusMinus')).toBeLessThan(1.5)
  expect(keys(json)).toContain('jar_reading_hidden')
  const { text } = json.notes.find(({ key }) => key === 'jar_reading_hidden')!
  expect(text.replaceAll('\u00a0', ' ')).toMatch(/coffee.*hides strength.*I expect 5\d\.\d %.* your 54 %.* fits/)
})

test.each([
  [80, 8],
  [44, 12],
])('that is said on the first screen, in %d columns and %d lines', async (width, most) => {
  const desk = jarDesk('2026-11-01')
  await desk.ask(`/jar start herb ${COFFEE} ${TO}`)
  const first = testDesk({ width, asker: desk.asker, nowMs: Date.UTC(2026, 10, 9, 12) })
  const text = await first.firstOf('/jar strain herb measured:740 ml strength:54%')
  expect(text.replaceAll(/\s+/g, ' ')).toContain('hides strength: I expect')
  expect(text.split('\n').filter((line) => line.trim() !== '').length).toBeLessThanOrEqual(most)
})

test('a reading that nothing dissolved explains is taken, and said to be another than was expected', async () => {
  const { json } = await strained(COFFEE, 'measured:740 ml strength:40%')
  expect(numberIn(json, 'abvPercent')).toBeGreaterThan(42)
  expect(numberIn(json, 'abvPercent')).toBeLessThan(50)
  expect(keys(json)).toContain('jar_reading_surprising')
  expect(keys(json)).not.toContain('jar_reading_hidden')
})

test('where the recipe knows less than the hydrometer, the reading is taken', async () => {
  const { json } = await strained('of:10 lemons spirit:1 l 95%', 'measured:930 ml strength:87%')
  expect(Math.abs(numberIn(json, 'abvPercent') - 87.5)).toBeLessThan(0.6)
  expect(keys(json)).not.toContain('jar_reading_hidden')
})

test('fruit is read through its sugar, and sugar that was put in is named', async () => {
  const fruit = await strained('of:700 g raspberries spirit:1 l 60%', 'measured:1.2 l strength:38%')
  expect(numberIn(fruit.json, 'abvPercent')).toBeGreaterThan(41)
  expect(numberIn(fruit.json, 'abvPercentPlusMinus')).toBeGreaterThan(1)
  const sweet = await strained('of:110 g lemon zest spirit:1 l 60% sugar:150 g', 'measured:1.05 l strength:20%')
  const { text } = sweet.json.notes.find(({ key }) => key === 'jar_reading_hidden')!
  expect(text).toContain('the sugar')
})

test.each([
  [COFFEE, '740 ml', '54%'],
  [COFFEE, '740 ml', '40%'],
  ['of:30 g juniper berries spirit:1 l 45%', '960 ml', '43%'],
  ['of:700 g raspberries spirit:1 l 60%', '1.2 l', '38%'],
  ['of:110 g lemon zest spirit:1 l 95%', '930 ml', '87%'],
])('/syrup and /jar strain agree on %s read as %s at %s', async (of, measured, read) => {
  const { desk, json } = await strained(of, `measured:${measured} strength:${read}`)
  const jar = json.data.syrup as Readonly<Record<string, number>>
  const syrup = await desk.ask(`/syrup infusion:${measured} strength:${read} ${of} ${TO}`)
  for (const name of ['waterMl', 'sugarG', 'volumeMl', 'abvPercent', 'abvPercentPlusMinus', 'sugarGPerLPlusMinus']) {
    expect(numberIn(syrup, name), name).toBeCloseTo(jar[name]!, 6)
  }
  const said = ['jar_reading_hidden', 'jar_reading']
  expect(keys(syrup).filter((key) => said.includes(key))).toEqual(keys(json).filter((key) => said.includes(key)))
  expect(keys(syrup).includes('strength_surprising')).toBe(keys(json).includes('jar_reading_surprising'))
})

test('without a jar and without what went in, /syrup says what its ± takes for granted', async () => {
  const desk = jarDesk('2026-11-01')
  for (const strength of ['60%', '60% at 24 C', '96%']) {
    const json = await desk.ask(`/syrup infusion:740 ml strength:${strength} ${TO}`)
    expect(keys(json), strength).toContain('nothing_dissolved')
  }
  expect(keys(await desk.ask(`/syrup infusion:740 ml strength:54% ${COFFEE} ${TO}`))).not.toContain('nothing_dissolved')
})

test('a liqueur of coffee is measured through what coffee gave off', async () => {
  const { desk } = await strained(COFFEE, 'measured:740 ml strength:54%')
  await desk.ask('/jar sweeten herb water:630 ml sugar:309 g')
  const before = await desk.ask('/jar show herb')
  // Some 15 g/L of coffee beside 200 of sugar: as much extract as sugar would hide 5 % vol more.
  const [clear, coffee] = [
    await desk.ask('/measure hydrometer:1.050 sweetness:200 g/L'),
    await desk.ask('/measure herb hydrometer:1.050'),
  ]
  expect(numberIn(coffee, 'abvPercent')).toBeGreaterThan(numberIn(clear, 'abvPercent') + 3)
  expect(numberIn(coffee, 'sugarGPerL')).toBeCloseTo(numberIn(before, 'sugarGPerL'), 6)
  expect(numberIn(coffee, 'abvPercentPlusMinus')).toBeGreaterThan(numberIn(clear, 'abvPercentPlusMinus'))
})
