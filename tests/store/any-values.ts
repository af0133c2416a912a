import fc from 'fast-check'
import type { Started } from '../../core/jar/entry/entry.ts'
import { materialIds } from '../../core/quantity/materials.ts'
import type { Measured } from '../../core/quantity/measured/measured.ts'
import type { IsoDay } from '../../core/quantity/time/calendar-day.ts'
import type { Portion } from '../../core/recipe/portion.ts'

export const someOf = <Value>(arbitrary: fc.Arbitrary<Value>): fc.Arbitrary<Value[]> =>
  fc.array(arbitrary, { maxLength: 3 })
export const orNull = <Value>(arbitrary: fc.Arbitrary<Value>): fc.Arbitrary<Value | null> => fc.option(arbitrary)

/** Any script, and what a terminal or a file would stumble over. */
export const text = fc.oneof(
  fc.string({ unit: 'binary', maxLength: 40 }),
  fc.constantFrom('', '"\\\n', '__proto__', '\u2028', '🫙'),
)
export const amount = fc.double({ min: 0, max: 1e6, noNaN: true }).map((value) => value + 0)
export const count = fc.nat(10_000)
export const measured: fc.Arbitrary<Measured> = fc.record({ value: amount, plusMinus: amount })
export const upTo = (most: number) => fc.double({ min: 0, max: most, noNaN: true }).map((value) => value + 0)
export const measuredUpTo = (most: number): fc.Arbitrary<Measured> =>
  fc.record({ value: upTo(most), plusMinus: amount })
export const [percent, measuredPercent] = [upTo(100), measuredUpTo(100)]
export const atMs = fc.integer({ min: 0, max: 4e12 })
export const day: fc.Arbitrary<IsoDay> = atMs.map((ms) => new Date(ms).toISOString().slice(0, 10))
export const zone = fc.constantFrom('UTC', 'Europe/Rome', 'Pacific/Apia', 'Australia/Lord_Howe')
export const readAmount = fc.record({
  amount: measured,
  by: fc.constantFrom('volume' as const, 'mass' as const),
  atC: fc.double({ min: -30, max: 100, noNaN: true }).map((value) => value + 0),
})
export const portion: fc.Arbitrary<Portion> = fc
  .tuple(
    readAmount,
    fc.record({
      abvPercent: measuredPercent,
      abvAtC: orNull(percent),
      sugarGPerL: measuredUpTo(1200),
    }),
    fc.constantFrom({}, { readsProof: true }, { readsProof: false }),
  )
  .map(([read, strength, proof]) => ({ ...read, ...strength, ...proof }))
export const plant = fc.record({
  id: orNull(text),
  name: text,
  isDried: fc.boolean(),
  massG: measured,
  count: orNull(amount),
  isUsual: fc.boolean(),
  words: orNull(fc.record({ noun: text, isFormSaid: fc.boolean(), unit: orNull(text) })),
  addOn: orNull(day),
})
export const sweetenings = someOf(fc.record({ material: fc.constantFrom(...materialIds), massG: measured }))
export const days: fc.Arbitrary<Started['days']> = fc.record({
  tasteFrom: orNull(day),
  strainFrom: orNull(day),
  strainBy: orNull(day),
  restDays: orNull(count),
  isHours: fc.boolean(),
  steepHours: orNull(fc.record({ min: amount, max: amount })),
})
export const named: fc.Arbitrary<Started['named']> = fc.record({
  isStrengthNamed: fc.boolean(),
  isSweetnessNamed: fc.boolean(),
  areBottlesNamed: fc.boolean(),
  isSpiritNamed: fc.boolean(),
  steepAtPercent: orNull(amount),
  readyBy: orNull(day),
  steepFor: orNull(fc.record({ days: orNull(amount), months: orNull(amount), nominalDays: amount })),
})
export const ingredients = { plants: someOf(plant), spirits: someOf(portion), waterG: measured, sweetenings }
export const planned = {
  targets: orNull(fc.record({ abvPercent: percent, sugarGPerL: upTo(1200) })),
  days,
  bottles: someOf(fc.record({ count: orNull(count), volumeMl: amount })),
  named,
  origin: orNull(fc.record({ code: text, shareId: orNull(text) })),
}
export const strength = fc.record({
  abvPercent: measuredPercent,
  abvAtC: orNull(fc.constant(28)),
  readsProof: fc.boolean(),
})
export const is = <const Kind extends string>(kind: Kind) => ({ kind: fc.constant(kind) })

const troubleName = fc.stringMatching(/^[a-z_]{1,40}$/)
const trouble = fc.record({
  symptom: troubleName,
  verdict: fc.constantFrom('throw_away', 'hold', 'ask'),
  because: orNull(troubleName),
  question: orNull(troubleName),
  yes: someOf(troubleName),
  no: someOf(troubleName),
})

export const tasted = fc.record(
  { ...is('tasted'), rating: orNull(fc.integer({ min: 1, max: 5 })), note: orNull(text), trouble },
  { requiredKeys: ['kind', 'rating', 'note'] },
)

export const noted = fc.record(
  {
    ...is('noted'),
    note: orNull(text),
    where: orNull(text),
    vessel: orNull(text),
    trouble,
    settled: someOf(troubleName),
  },
  { requiredKeys: ['kind', 'note', 'where', 'vessel'] },
)
