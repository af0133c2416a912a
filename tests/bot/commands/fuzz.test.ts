import fc from 'fast-check'
import { expect, test, vi } from 'vitest'
import { runs, SEED } from '../../runs.ts'
import { testDesk } from '../test-desk.ts'
import { type Json, UNSEEMLY } from './desk.ts'
import { anyText, brokenLine, fittingLine, swappedLine } from './random-lines.ts'

// Of its own: what a random line sets or starts must not meet the other tests.
const { faults, jsonTextOf, textOf } = testDesk()

vi.setConfig({ testTimeout: runs(20_000, 600_000) })

/** What people typed may stand in an answer, in quotation marks or in a line to type; it is not ours. */
const ownWords = (text: string) => text.replace(/“[^”]*”/g, '“”')

/** The first thing of ours that nobody should read; null where there is none. */
const unseemlyIn = (text: string, typed: string): string | null => {
  const found = UNSEEMLY.exec(ownWords(text))?.[0] ?? null
  return found === null || typed.includes(found) ? null : found
}

/** What may be unknown, or was not named, and is null then. */
const MAY_BE_UNKNOWN =
  /^(drinks|drinksPlusMinus|drinkGPerServing|count|id|tasteFrom|strainFrom|strainBy|ready|latin|cut|latest|sugarsFraction|ceilingGPerL|drink)$/
/** Of what is kept of a person, anything may not be known yet. */
const KEEPS = /^(jar|notebook|again|forget|reminders|settings)\b/
/** An amount that nobody named, all of it where nothing was read; a trouble or a country of which nothing is known. */
const KNOWS_NO_AMOUNT = /^(?:measure|trouble|keeping|emergency)$/

/** Every number in the data, and every null that stands for one that should be known. */
const numbersOf = (data: object, mayBeUnknown: RegExp): [string, unknown][] =>
  Object.entries(data).flatMap(([name, value]): [string, unknown][] => {
    if (typeof value === 'string' || typeof value === 'boolean') return []
    if (value === null) return mayBeUnknown.test(name) ? [] : [[name, value]]
    return typeof value === 'object' ? numbersOf(value, mayBeUnknown) : [[name, value]]
  })

const mayBeNull = (command: string): RegExp =>
  KEEPS.test(command) || KNOWS_NO_AMOUNT.test(command) ? /./ : MAY_BE_UNKNOWN

const check = async (line: string) => {
  const startMs = performance.now()
  const text = await textOf(line)
  const jsonText = await jsonTextOf(line)
  const tookMs = performance.now() - startMs
  // No hang; how fast it is, the bench measures.
  expect(tookMs).toBeLessThan(5000)
  expect(faults()).toEqual([])
  const json = JSON.parse(jsonText) as Json
  expect(jsonText).not.toContain('\n')
  expect(json.error?.code).not.toBe('internal')
  expect(ownWords(text).trim()).not.toBe('')
  expect(unseemlyIn(text, line), text).toBeNull()
  if (json.error !== undefined) {
    expect(unseemlyIn(json.error.message, line), text).toBeNull()
    return false
  }
  for (const [name, value] of numbersOf(json.data, mayBeNull(json.command ?? ''))) {
    expect(Number.isFinite(value), `${name} ${value}`).toBe(true)
    if (name !== 'freezesAtC') expect(value, name).toBeGreaterThanOrEqual(0)
  }
  for (const { text: said } of [...json.notes, ...json.cautions]) expect(unseemlyIn(said, line), said).toBeNull()
  return true
}

const parameters = { seed: SEED, numRuns: runs(20, 2500) }
const law = async (arbitrary: fc.Arbitrary<string>, count = parameters.numRuns) => {
  let answered = 0
  const property = fc.asyncProperty(arbitrary, async (line) => {
    if (await check(line)) answered++
  })
  await fc.assert(property, { ...parameters, numRuns: count })
  return answered / count
}

test('any text at all', async () => {
  await law(anyText)
})

test('examples broken anywhere', async () => {
  await law(brokenLine)
})

test('options with any values, swapped, doubled, made up', async () => {
  await law(swappedLine)
})

test('values over the whole range that is accepted', async () => {
  const answered = await law(fittingLine, runs(70, 3000))
  expect(answered).toBeGreaterThan(0.3)
})

test.each([
  '/mix spirit:0.1 ml strength:100% water:1000 l sugar:1000 kg',
  '/mix spirit:1000 l strength:0.1% water:0.1 ml sugar:0.01 g',
  '/mix spirit:0.1 ml strength:0.1%',
  '/mix spirit:1 l strength:99.9±50% water:1 l',
  '/mix spirit:1±0.999 l strength:40% water:1 l',
  '/syrup infusion:1000 l strength:100% to-strength:0.1% to-sweetness:800 g/L',
  '/syrup infusion:0.1 ml strength:0.1% to-strength:0.1% to-sweetness:1200 g/L',
  '/syrup infusion:0.1 ml strength:100% ratio:20 to-sweetness:1200',
  '/syrup infusion:1000 l strength:100% ratio:0.01 to-strength:0.1%',
  '/syrup infusion:1000 l strength:100% ratio:20:1 to-strength:99.9%',
  '/syrup infusion:1 l strength:0.1%',
  '/syrup infusion:1 l strength:0.6% to-sweetness:1200 g/L',
  '/syrup infusion:1 l strength:96% to-strength:30% to-sweetness:250 at-most:0.1 ml',
  '/syrup infusion:1 l strength:96% to-sweetness:0.001 ratio:20',
  '/dilute spirit:1000 l strength:100% to-strength:0.1%',
  '/dilute spirit:0.1 ml strength:0.2% to-strength:0.1%',
  '/dilute spirit:1 l strength:40% to-strength:39.999999999999%',
  '/blend parts:0.1 ml 100% + 1000 l 0.1%',
  '/blend parts:1 l 0.1% 1200 g/L + 1000 l',
  '/adjust liqueur:1000 l strength:0.1% sweetness:1200 to-strength:100% spirit-strength:100%',
  '/adjust liqueur:0.1 ml strength:100% to-strength:0.1% to-sweetness:800 spirit-strength:0.1%',
  '/adjust liqueur:1 l strength:50% sweetness:100 to-strength:50% to-sweetness:100 spirit-strength:50%',
])('the ends of what is accepted: %s', async (line) => {
  await check(line)
})
