import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { type DomainError, unlessRefused } from '../../../core/domain-error.ts'
import { extractG, massG, sugarG, waterG } from '../../../core/liquid/liquid.ts'
import { isJuice, type MaterialId, materialIds, materialOf } from '../../../core/quantity/materials.ts'
import { exactly } from '../../../core/quantity/measured/measured.ts'
import { sweetenerIn } from '../../../core/quantity/read/material-named.ts'
import { parseSugars } from '../../../core/quantity/read/parse-sugar.ts'
import { parseFiller, parseWaters } from '../../../core/quantity/read/parse-water.ts'
import { writeSweetener, writeWaters } from '../../../core/quantity/write/write-quantity.ts'
import { mix } from '../../../core/recipe/solve/mix.ts'
import { syrup } from '../../../core/recipe/solve/syrup.ts'
import type { SyrupWish } from '../../../core/recipe/solve/syrup-for.ts'
import { gramOf } from '../../../core/recipe/sweetening.ts'
import { runs, SEED } from '../../runs.ts'
import { refusal } from '../quantity/refusal.ts'
import { expectClose, portion } from './kitchens.ts'

const fillers = materialIds.filter((id) => isJuice(id) && materialOf(id).isSyrup)
const sweeteners = materialIds.filter((id) => !isJuice(id))
const number = (min: number, max: number) => fc.double({ min, max, noNaN: true })

test('water, sugars and acid of a juice are its own, and weigh what it weighs', () => {
  for (const id of materialIds.filter(isJuice)) {
    const gram = gramOf(id)
    const { per100G, acidPer100G = 0 } = materialOf(id)
    expect(100 * waterG(gram), id).toBeCloseTo(per100G.water, 9)
    expect(100 * sugarG(gram), id).toBeCloseTo(per100G.sucrose + per100G.glucoseAndFructose, 9)
    expect(100 * extractG(gram) + 1e-9, id).toBeGreaterThanOrEqual(acidPer100G)
    expect(massG(gram), id).toBeCloseTo(1, 12)
  }
})

/** From memory, as in the tables of USDA SR: orange 8.4 g of sugars, apple 9.6, grape 14.2, lemon 2.5, brewed coffee none. */
test.each<[MaterialId, number]>([
  ['orange_juice', 8.4],
  ['apple_juice', 9.6],
  ['grape_juice', 14.2],
  ['pineapple_juice', 10],
  ['pomegranate_juice', 12.65],
  ['lemon_juice', 2.5],
  ['lime_juice', 1.7],
  ['raspberry_puree', 4.4],
  ['strawberry_puree', 4.9],
  ['peach_puree', 8.4],
  ['coffee', 0],
  ['tea', 0],
])('%s has %f g of sugars in 100 g, about', (id, sugarsG) => {
  expect(Math.abs(100 * sugarG(gramOf(id)) - sugarsG)).toBeLessThan(0.1)
})

test('with juice for the water the amounts make what was wished for, whatever sweetens', () => {
  const wish: fc.Arbitrary<SyrupWish> = fc.oneof(
    fc.record({
      by: fc.constant('strength_and_sweetness' as const),
      abvPercent: number(18, 45),
      sugarGPerL: number(100, 380),
    }),
    fc.record({
      by: fc.constant('strength_and_ratio' as const),
      abvPercent: number(18, 45),
      sugarPerWater: number(0.2, 2),
    }),
    fc.record({
      by: fc.constant('sweetness_and_ratio' as const),
      sugarGPerL: number(120, 300),
      sugarPerWater: number(0.8, 4),
    }),
  )
  let solved = 0
  fc.assert(
    fc.property(
      number(200, 3000),
      number(50, 96),
      wish,
      fc.constantFrom(...sweeteners),
      fc.constantFrom(...fillers),
      (ml, percent, wished, sweetener, filler) => {
        const infusion = portion(ml, percent)
        const found = unlessRefused(() => syrup(infusion, wished, null, { sweetener, filler }))
        if (found === null) return
        solved += 1
        const made = mix({
          portions: [infusion],
          sweetenings: [
            { material: sweetener, massG: exactly(found.sugarG.value) },
            { material: filler, massG: exactly(found.waterG.value) },
          ],
        }).outcome
        if ('abvPercent' in wished) expectClose(made.abvPercent.value, wished.abvPercent)
        if ('sugarGPerL' in wished) expectClose(made.sugarGPerL.value, wished.sugarGPerL)
        if ('sugarPerWater' in wished) expectClose(found.sugarG.value / found.waterG.value, wished.sugarPerWater)
        expectClose(found.waterMl.value * materialOf(filler).pouredGPerMl, found.waterG.value)
      },
    ),
    { seed: SEED, numRuns: runs(200, 4000) },
  )
  expect(solved).toBeGreaterThan(80)
})

test('juice that is too sweet by itself is told with how sweet it makes it, and that can be had', () => {
  const to = (sugarGPerL: number) =>
    syrup(portion(920, 82), { by: 'strength_and_sweetness', abvPercent: 30, sugarGPerL }, null, {
      filler: 'grape_juice',
    })
  try {
    to(40)
    throw new Error('was solved')
  } catch (error) {
    const { problem, values } = error as DomainError<'filler_too_sweet'>
    expect(problem).toBe('filler_too_sweet')
    const { sugarG: added } = to(values.leastGPerL * (1 + 1e-9))
    expect(added.value).toBeLessThan(1e-3)
  }
})

describe('water, and what stands for it', () => {
  test('is read, several joined with +', () => {
    const read = parseWaters('700 ml water + 300 ml fresh orange juice + 5 g citric acid')
    expect(read.waters).toMatchObject([{ kind: 'volume', volumeMl: 700 }])
    expect(read.juices).toMatchObject([
      { material: 'orange_juice', massG: 313.5, byVolume: true },
      { material: 'citric_acid', massG: 5 },
    ])
    expect(parseWaters(writeWaters(read))).toEqual(read)
  })

  test('every one is read as it is written', () => {
    for (const id of fillers) expect(parseFiller(writeSweetener(id)), id).toBe(id)
  })

  test('coffee and tea for the water are brewed', () => {
    expect(parseFiller('coffee')).toBe('coffee')
    expect(parseFiller('strong black tea')).toBe('tea')
    expect(parseWaters('300 ml brewed coffee').juices).toMatchObject([{ material: 'coffee', massG: 300 }])
    expect(parseWaters('300 ml coffee').juices).toMatchObject([{ material: 'coffee', massG: 300 }])
    // In a list of plants, or of what sweetens, they are plants.
    expect(sweetenerIn('coffee')).toBeNull()
    expect(sweetenerIn('apple juice')).toBeNull()
    expect(refusal(() => parseSugars('80 g coffee'))).toBe('bad_value other_sweetener')
  })

  test.each([
    ['500 ml cream', 'bad_value other_water'],
    ['500 ml honey', 'bad_value other_water'],
    ['500 ml 40%', 'bad_value unexpected_text'],
    ['8 oz apple juice', 'ambiguous ounces'],
  ])('%s is refused', (text, problem) => {
    expect(refusal(() => parseWaters(text))).toBe(problem)
  })

  test.each([
    ['water', 'bad_value other_water'],
    ['honey', 'bad_value other_water'],
    ['citric acid', 'bad_value other_water'],
    ['500 ml apple juice', 'bad_value amount_worked_out'],
  ])('%s stands for no water that is worked out', (text, problem) => {
    expect(refusal(() => parseFiller(text))).toBe(problem)
  })
})
