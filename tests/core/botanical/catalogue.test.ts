import { expect, test } from 'vitest'
import { z } from 'zod'
import { botanicalById, catalogue } from '../../../core/botanical/catalogue/catalogue.ts'
import { pieceMass } from '../../../core/botanical/catalogue/piece-mass.ts'
import { GREEN_FADES, halfLifeDays } from '../../../core/botanical/evidence/green-fades.ts'
import { hazards } from '../../../core/botanical/evidence/hazards.ts'
import { productFiles } from '../../../core/botanical/evidence/product-files.ts'
import { sources } from '../../../core/botanical/evidence/sources.ts'
import { steepEvidence } from '../../../core/botanical/evidence/steep-evidence.ts'
import { inForm } from '../../../core/botanical/find/in-form.ts'
import { cassiaGPerDay, coumarinMgPerDay } from '../../../core/botanical/limits/coumarin.ts'

const trust = z.enum(['published', 'derived', 'common_practice', 'estimated', 'memory', 'not_found'])
const sourceKey = z.string().refine((key) => key in sources)
const names = z.array(z.string().trim().min(2)).min(1)
const range = (least: number, most: number) =>
  z.strictObject({ min: z.number().min(least), max: z.number().max(most), trust }).refine(({ min, max }) => min <= max)
const pair = (least: number, most: number) =>
  z.tuple([z.number().min(least), z.number().max(most)]).refine(([low, high]) => low <= high)
const share = z
  .strictObject({
    value: z.number().gt(0).lt(1),
    trust,
    sources: z.array(sourceKey).min(1),
    ndb: z
      .string()
      .regex(/^\d{5}$/)
      .nullable(),
    range: pair(0, 1).nullable(),
    proxyOf: z.string().nullable(),
  })
  .refine(({ value, range: within }) => within === null || (value >= within[0] && value <= within[1]))
  .refine(
    ({ ndb, trust: how, sources: from }) =>
      ndb === null || (['published', 'memory'].includes(how) && from.includes('usda_sr')),
  )
const limit = z.strictObject({
  key: z
    .string()
    .refine((key) => key in hazards || ['bitterness', 'eugenol', 'anethole', 'linalool', 'camphor'].includes(key)),
  gPerLSpirit: z.number().gt(0).max(800),
  trust,
})

const botanical = z
  .strictObject({
    id: z.string().regex(/^[a-z]+(_[a-z]+)*$/),
    kind: z.enum([
      'citrus',
      'coffee_tea_cocoa',
      'root',
      'herb',
      'spice',
      'bitter',
      'flower',
      'berry',
      'fruit',
      'vegetable',
      'nut',
      'wood',
    ]),
    names: z.strictObject({ title: z.string(), en: names, it: names, latin: names }),
    form: z.strictObject({
      state: z.enum(['fresh', 'dried', 'roasted', 'cured']),
      cut: z.enum(['whole', 'cracked', 'ground']).nullable(),
    }),
    driedPerFresh: z.strictObject({ factor: z.number().gt(0).lt(1), trust }).nullable(),
    bulky: z.boolean(),
    monthsNorth: z.array(z.int().min(1).max(12)).min(1).nullable(),
    waterFraction: share,
    sugarsFraction: share.nullable(),
    noSugars: z.enum(['below_3_percent', 'not_found', 'stays_in_kernel']).nullable(),
    waterExchange: range(0.5, 1),
    dose: z
      .strictObject({ minGPerL: z.number().gt(0), typicalGPerL: z.number(), maxGPerL: z.number().max(1200), trust })
      .refine(({ minGPerL, typicalGPerL, maxGPerL }) => minGPerL <= typicalGPerL && typicalGPerL <= maxGPerL),
    warnAbove: limit.nullable(),
    ceiling: limit.nullable(),
    timesDays: z
      .strictObject({
        tasteFrom: z.number().gt(0),
        usualMin: z.number(),
        usualMax: z.number(),
        latest: z.number().nullable(),
        restMin: z.number(),
        restMax: z.number(),
        trust,
        byAnalogy: z.boolean(),
      })
      .refine(({ tasteFrom, usualMin, usualMax }) => tasteFrom <= usualMin && usualMin <= usualMax)
      .refine(({ usualMax, latest }) => latest === null || usualMax <= latest)
      .refine(({ restMin, restMax }) => restMin >= 7 && restMin <= restMax),
    spiritPercent: range(25, 96),
    zestGPerFruit: z
      .strictObject({ strips: pair(1, 100), grated: pair(1, 100), plusMinusShare: z.literal(0.4), trust })
      .refine(({ strips, grated }) => grated[0] < strips[0] && grated[1] < strips[1])
      .nullable(),
    fruitG: pair(10, 500).nullable(),
    pieces: z.array(
      z
        .strictObject({ piece: z.string(), minG: z.number().gt(0), maxG: z.number().max(300), trust })
        .refine(({ minG, maxG }) => minG <= maxG),
    ),
    extractFraction: range(0, 0.7),
    retainedMlPerG: range(0.3, 2.5),
    hazards: z.array(z.string().refine((key) => key in hazards)),
    preparation: z.array(z.string().regex(/^[a-z_]+$/)).min(1),
  })
  .refine(({ sugarsFraction, noSugars }) => (sugarsFraction === null) !== (noSugars === null))
  .refine(({ sugarsFraction, waterFraction }) => (sugarsFraction?.value ?? 0) + waterFraction.value < 1)
  // Fibre and oil stay behind: what dissolves is less than all that is dry.
  .refine(
    ({ sugarsFraction, waterFraction, extractFraction }) =>
      (sugarsFraction?.value ?? 0) + waterFraction.value + extractFraction.max <= 1,
  )
  .refine(({ ceiling, dose }) => ceiling === null || dose.maxGPerL <= ceiling.gPerLSpirit)

test('the catalogue has 150 plants and more, each of its own id', () => {
  expect(catalogue.length).toBeGreaterThanOrEqual(150)
  expect(new Set(catalogue.map(({ id }) => id)).size).toBe(catalogue.length)
})

test.each(catalogue)('$id is in range and of one piece', (entry) => {
  expect(botanical.parse(entry)).toEqual(entry)
})

test('what points at plants points into the catalogue', () => {
  for (const { botanicals } of [...productFiles, ...steepEvidence]) for (const id of botanicals) botanicalById(id)
  expect(() => botanicalById('oleander')).toThrow()
})

// Check case 16 (BfR 26/2012, EFSA 2008;793): 60 kg, 6 mg a day, 2 g of cassia at 3 mg/g; a child of 15 kg 0.5 g.
test('coumarin: 60 kg may have 6 mg a day, which is 2 g of cassia; 15 kg 0.5 g', () => {
  expect(coumarinMgPerDay(60)).toBeCloseTo(6, 12)
  expect(cassiaGPerDay(60)).toBeCloseTo(2, 12)
  expect(cassiaGPerDay(15)).toBeCloseTo(0.5, 12)
})

// Check case 22 (Shen et al. 2010): k up to 13.575 per day near 40 % ethanol; half gone in 1.2 h, at the slowest in 53 d.
test('green fades fastest near 40 % ethanol: half in 1.2 hours', () => {
  expect(GREEN_FADES.fastestPerDay).toBe(13.575)
  expect(GREEN_FADES.fastestNearPercent).toBe(40)
  expect(24 * halfLifeDays(GREEN_FADES.fastestPerDay)).toBeCloseTo(1.2, 1)
  expect(halfLifeDays(GREEN_FADES.slowestPerDay)).toBeCloseTo(53, 0)
})

// Check cases 12 and 13: the Sorrento and Mirto specifications.
test('product specifications are per litre of finished drink', () => {
  const byId = new Map(productFiles.map((file) => [file.id, file]))
  expect(byId.get('sorrento')).toMatchObject({
    drinkPercent: { min: 30 },
    sugarGPerL: { min: 200, max: 350 },
    steepDays: { min: 2 },
  })
  expect(byId.get('sorrento')?.finishedGPerL).toEqual({ min: 250, max: null, of: 'whole_fruit' })
  expect(byId.get('mirto')).toMatchObject({
    drinkPercent: { min: 28, max: 36 },
    steepDays: { min: 15, max: 240 },
    sugarGPerL: { max: 270 },
  })
  expect(byId.get('mirto')?.finishedGPerL?.min).toBe(150)
})

test('a dried plant has its dose and ceiling in grams of the dried', () => {
  const sage = botanicalById('sage')
  const dried = inForm(sage, 'dried')
  expect(dried?.ceiling?.gPerLSpirit).toBe(2.5)
  expect(dried?.dose.typicalGPerL).toBe(2)
  expect(inForm(sage, 'fresh')).toBe(sage)
  expect(inForm(botanicalById('strawberry'), 'dried')).toBeNull()
  expect(inForm(botanicalById('wormwood'), 'fresh')).toBeNull()
})

test('a count is of zests, of pieces, or of nothing known', () => {
  expect(pieceMass(botanicalById('lemon_peel'), null)).toMatchObject({ piece: null, minG: 8, maxG: 13 })
  expect(pieceMass(botanicalById('cinnamon_ceylon'), 'stick')).toMatchObject({ minG: 3, maxG: 5 })
  expect(pieceMass(botanicalById('clove'), null)).toMatchObject({ piece: 'clove', minG: 0.08 })
  expect(pieceMass(botanicalById('vanilla'), 'bean')).toMatchObject({ piece: 'pod', minG: 2, maxG: 4 })
  expect(pieceMass(botanicalById('chilli_fresh'), null)).toMatchObject({ piece: 'each', minG: 3, maxG: 20 })
  expect(pieceMass(botanicalById('elderflower'), 'head')).toMatchObject({ minG: 4, maxG: 6 })
  expect(pieceMass(botanicalById('saffron'), 'pinch')).toMatchObject({ minG: 0.03, maxG: 0.1 })
  expect(pieceMass(botanicalById('ginger'), 'pinch')).toBeNull()
  expect(pieceMass(botanicalById('lemon_peel'), 'leaf')).toBeNull()
  expect(pieceMass(botanicalById('fennel_seed'), null)).toBeNull()
})
