import fc from 'fast-check'
import { expect, test, vi } from 'vitest'
import { catalogue } from '../../../core/botanical/catalogue/catalogue.ts'
import { runs, SEED } from '../../runs.ts'
import { askAny, faults, textOf } from './desk.ts'

vi.setConfig({ testTimeout: runs(60_000, 600_000) })

const UNSEEMLY = /undefined|NaN|Infinity|∞|\[object|null|[-−]\d+(\.\d+)? ?(g|kg|ml|l|cups?|oz|lb)\b/

const names = catalogue.flatMap(({ names: { en, it } }) => [...en.slice(0, 2), ...it.slice(0, 1)])
const size = (low: number, high: number) =>
  fc.double({ min: Math.log10(low), max: Math.log10(high), noNaN: true }).map((power) => (10 ** power).toFixed(2))

const name = fc.constantFrom(...names)
const item = fc.oneof(
  { arbitrary: name, weight: 6 },
  fc.tuple(size(0.01, 1e5), name).map(([grams, noun]) => `${grams} g ${noun}`),
  fc.tuple(fc.integer({ min: 1, max: 10_000 }), name).map(([count, noun]) => `${count} ${noun}`),
  fc.constantFrom(
    '20 g ginger',
    '8 lemons',
    '1 bunch basil',
    '2 tsp green tea',
    '',
    '+',
    '8',
    '1,000 g lemon',
    '½ lemon',
    '3 heads elderflower',
    '25 g jaboticaba',
    '2 kg woodruff',
  ),
)
const percent = fc.oneof({ arbitrary: size(40, 96), weight: 3 }, size(5, 100))
const spirit = fc.tuple(size(1, 1e5), percent).map(([ml, each]) => `${ml} ml ${each}%`)
const strength = fc.oneof({ arbitrary: size(15, 45), weight: 3 }, size(1, 100)).map((each) => `${each}%`)
const optional = (text: fc.Arbitrary<string>) => fc.option(text, { nil: null, freq: 1 })

const line = fc
  .record({
    of: fc.array(item, { minLength: 1, maxLength: 3 }).map((items) => items.join(' + ')),
    from: fc.oneof(
      spirit.map((each) => ({ spirit: each })),
      fc
        .tuple(percent, fc.integer({ min: 1, max: 40 }))
        .map(([each, count]) => ({ strength: `${each}%`, bottles: `${count}` })),
    ),
    size: optional(fc.constantFrom('4', '4 x 500 ml', '750 ml', '2 x 1 l + 350 ml', '10000 x 1000 l', '1 x 0.1 ml')),
    'to-strength': optional(strength),
    'to-sweetness': optional(size(0.1, 1200).map((sweetness) => `${sweetness} g/L`)),
    'ready-by': optional(fc.constantFrom('tomorrow', '1 August', '24 December', '1 May 2027', '2199-12-31')),
    'steep-at': fc.option(strength, { nil: null, freq: 1 }),
    sugar: optional(size(0.1, 1e5).map((grams) => `${grams} g`)),
    'unknown-ok': fc.option(fc.constantFrom('yes', 'yes', 'no'), { nil: null, freq: 3 }),
    days: fc.option(fc.constantFrom('10', '3 weeks', '20 years'), { nil: null, freq: 1 }),
  })
  .map(({ from, size, ...options }) =>
    Object.entries<string | null>({ ...options, ...('spirit' in from ? { bottles: size } : {}), ...from })
      .filter(([, value]) => value !== null)
      .reduce((text, [option, value]) => `${text} ${option}:${value}`, '/plan'),
  )

const finite = (value: unknown): boolean => {
  if (typeof value === 'number') return Number.isFinite(value)
  return typeof value !== 'object' || value === null || Object.values(value).every(finite)
}

test('any plan is answered or refused in a sentence, and no amount is negative', async () => {
  let answered = 0
  await fc.assert(
    fc.asyncProperty(line, async (typed) => {
      const json = await askAny(typed)
      expect(faults()).toEqual([])
      if (json.error !== undefined) {
        expect(json.error.code).not.toBe('internal')
        expect(json.error.message.replace(/“[^”]*”/g, '“”')).not.toMatch(UNSEEMLY)
        return
      }
      answered++
      expect((await textOf(typed)).replace(/“[^”]*”/g, '“”')).not.toMatch(UNSEEMLY)
      expect(finite(json.data)).toBe(true)
      for (const [key, value] of Object.entries(json.data)) {
        if (typeof value === 'number' && key !== 'freezesAtC') expect(value, key).toBeGreaterThanOrEqual(0)
      }
    }),
    { seed: SEED, numRuns: runs(60, 3000) },
  )
  expect(answered).toBeGreaterThan(20)
})
