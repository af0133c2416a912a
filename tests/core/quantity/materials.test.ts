import { describe, expect, test } from 'vitest'
import { sucroseWaterDensityKgPerM3 } from '../../../core/liquid/sucrose-water.ts'
import { isJuice, type MaterialId, materialIds, materialOf, sugarsShare } from '../../../core/quantity/materials.ts'
import { parseSugar, parseSugarOrKind, parseSugars, parseSweetener } from '../../../core/quantity/read/parse-sugar.ts'
import { writeSugarOrKind, writeSugars, writeSweetener } from '../../../core/quantity/write/write-quantity.ts'
import { compare, readTable } from '../../published/table.ts'
import { refusal, refusedValues } from './refusal.ts'

const CUP_ML = 236.588

const usda = readTable('usda-sweeteners')
const USDA_IDS: readonly MaterialId[] = ['honey', 'maple_syrup', 'glucose_syrup', 'brown_sugar', 'white_sugar']

test.each(usda.rows.map((row) => [USDA_IDS[row[0]!]!, ...row.slice(1)] as [MaterialId, number, number, number]))(
  `%s: the weight of a cup, water and sugars (${usda.source})`,
  (id, cupG, waterG, sugarsG) => {
    const { pouredGPerMl, pouredPlusMinusShare, per100G, sugarsPlusMinusG } = materialOf(id)
    expect(Math.abs(CUP_ML * pouredGPerMl - cupG)).toBeLessThanOrEqual(pouredPlusMinusShare * cupG)
    expect(Math.abs(per100G.water - waterG)).toBeLessThanOrEqual(sugarsPlusMinusG + 0.1)
    expect(Math.abs(100 * sugarsShare(id) - sugarsG)).toBeLessThanOrEqual(sugarsPlusMinusG + 0.3)
  },
)

test('1 kg of sugar is 1214 g of honey of 82.4 % solids, which brings 214 g of water (honey trade board, baking with honey)', () => {
  const honeyG = 1000 / sugarsShare('honey')
  expect(honeyG).toBeGreaterThan(1214 * 0.99)
  expect(honeyG).toBeLessThan(1214 * 1.01)
  expect((honeyG * materialOf('honey').per100G.water) / 100).toBeCloseTo(214, -1)
})

test('1 kg of liquid invert sugar of 76.55 % solids is 929 g of honey (honey trade board, baking with honey)', () => {
  const honeyG = (1000 * sugarsShare('invert_syrup')) / sugarsShare('honey')
  expect(Math.abs(honeyG - 929)).toBeLessThan(9.29)
})

const kinds = readTable('sweetener-kinds')
const KINDS_IDS: readonly MaterialId[] = [
  'honey',
  'maple_syrup',
  'agave_syrup',
  'demerara',
  'brown_sugar',
  'muscovado',
  'glucose_syrup',
  'golden_syrup',
  'date_syrup',
  'invert_syrup',
]

test.each([1, 2, 3])(`water and sugars by kind, column %i (${kinds.locator})`, (column) => {
  const { off, compared } = compare(kinds, column, ([row]) => {
    const id = KINDS_IDS[row!]!
    const { water, glucoseAndFructose } = materialOf(id).per100G
    return [water, glucoseAndFructose, 100 * sugarsShare(id)][column - 1]!
  })
  expect(off).toEqual([])
  expect(compared).toBeGreaterThan(4)
})

const tastes = readTable('sweetness-by-weight')
const TASTES_IDS: readonly MaterialId[] = [
  'honey',
  'agave_syrup',
  'maple_syrup',
  'golden_syrup',
  'invert_syrup',
  'date_syrup',
  'brown_sugar',
]

test.each(['usual', 'low', 'high'] as const)(`how sweet it tastes: %s (${tastes.source})`, (which) => {
  const column = tastes.columns.indexOf(which)
  const { off, compared } = compare(tastes, column, ([row]) => materialOf(TASTES_IDS[row!]!).sweetness[which])
  expect(off).toEqual([])
  expect(compared).toBe(7)
})

test('a syrup weighs what sugar water of as much water weighs, within 2 % (ICUMSA SPS-4)', () => {
  const syrups = materialIds.filter((id) => materialOf(id).isSyrup)
  expect(syrups.length).toBeGreaterThan(10)
  for (const id of syrups) {
    const { per100G, pouredGPerMl, pouredPlusMinusShare } = materialOf(id)
    const gPerMl = sucroseWaterDensityKgPerM3(1 - per100G.water / 100, 20) / 1000
    expect(Math.abs(pouredGPerMl / gPerMl - 1), id).toBeLessThan(0.02)
    expect(pouredPlusMinusShare, id).toBe(0.03)
  }
})

/** Of USDA SR26: a cup of brown sugar is 220 g packed; granulated 200 g. From memory: demerara pours like it. */
test('what is dry is known within a tenth as it is poured', () => {
  const dry = materialIds.filter((id) => !materialOf(id).isSyrup)
  for (const id of dry) {
    const { pouredGPerMl, pouredPlusMinusShare } = materialOf(id)
    expect(pouredPlusMinusShare, id).toBe(0.1)
    expect(CUP_ML * pouredGPerMl, id).toBeGreaterThanOrEqual(199.9)
    expect(CUP_ML * pouredGPerMl, id).toBeLessThanOrEqual(220.1)
  }
})

test('agave: the 68.0 g of sugars that USDA SR 19912 has beside 76.4 g of carbohydrate are within the ±', () => {
  expect(100 * sugarsShare('agave_syrup') - materialOf('agave_syrup').sugarsPlusMinusG).toBeLessThanOrEqual(68.03)
})

test('no material has more in it than it weighs, and every ± leaves it possible', () => {
  for (const id of materialIds) {
    const { per100G, sugarsPlusMinusG, sweetness } = materialOf(id)
    const sugarsG = 100 * sugarsShare(id)
    expect(sugarsG + per100G.water, id).toBeLessThanOrEqual(100 + 1e-9)
    expect(sugarsG + sugarsPlusMinusG, id).toBeLessThanOrEqual(100)
    expect(sweetness.low, id).toBeLessThanOrEqual(sweetness.usual)
    expect(sweetness.usual, id).toBeLessThanOrEqual(sweetness.high)
  }
})

/** A bar syrup by the cup: a US cup of sugar is 200 g (USDA 19335), a cup of water at 20 °C 236.2 g. */
test.each<[MaterialId, number, number]>([
  ['syrup_1_1_weight', 1, 1],
  ['syrup_1_1_cup', 200, 236.2],
  ['syrup_2_1_weight', 2, 1],
  ['syrup_2_1_cup', 400, 236.2],
])('%s has %f of sugar to %f of water', (id, sugar, water) => {
  expect(sugarsShare(id)).toBeCloseTo(sugar / (sugar + water), 3)
})

describe('what sweetens', () => {
  test.each<[string, MaterialId]>([
    ['200 g honey', 'honey'],
    ['200 g of runny honey', 'honey'],
    ['200 g di miele di acacia', 'honey'],
    ['200 g caster sugar', 'white_sugar'],
    ['200 g maple syrup', 'maple_syrup'],
    ["200 g sciroppo d'acero", 'maple_syrup'],
    ['200 g agave nectar', 'agave_syrup'],
    ['200 g demerara', 'demerara'],
    ['200 g zucchero di canna', 'demerara'],
    ['200 g soft dark brown sugar', 'brown_sugar'],
    ['200 g light muscovado sugar', 'muscovado'],
    ['200 g liquid glucose', 'glucose_syrup'],
    ['200 g golden syrup', 'golden_syrup'],
    ['200 g golden caster sugar', 'demerara'],
    ['200 g date syrup', 'date_syrup'],
    ['200 g invert sugar syrup', 'invert_syrup'],
    ['200 g 1:1 syrup by weight', 'syrup_1_1_weight'],
    ['200 g simple syrup by the cup', 'syrup_1_1_cup'],
    ['200 g rich syrup by weight', 'syrup_2_1_weight'],
    ['200 g 2 to 1 sugar syrup by volume', 'syrup_2_1_cup'],
  ])('%s is read', (text, material) => {
    expect(parseSugar(text)).toMatchObject({ massG: 200, material })
  })

  test('is weighed as it is poured', () => {
    expect(parseSugar('100 ml honey')).toMatchObject({ massG: 142.2, byVolume: true, assumed: ['syrup_by_volume'] })
    expect(parseSugar('1 cup packed brown sugar').massG).toBeCloseTo(220, 9)
    expect(parseSugar('1 cup brown sugar').assumed).toContain('brown_by_volume')
  })

  test('a syrup whose parts were not said is asked back, each answer readable', () => {
    const asked: readonly [string, readonly MaterialId[]][] = [
      ['200 ml 1:1 syrup', ['syrup_1_1_weight', 'syrup_1_1_cup']],
      ['200 ml rich syrup', ['syrup_2_1_weight', 'syrup_2_1_cup']],
      ['200 ml syrup by weight', ['syrup_1_1_weight', 'syrup_2_1_weight']],
      ['200 ml sugar syrup', ['syrup_1_1_weight', 'syrup_1_1_cup', 'syrup_2_1_weight', 'syrup_2_1_cup']],
    ]
    for (const [text, ids] of asked) {
      expect(
        refusal(() => parseSugar(text)),
        text,
      ).toBe('ambiguous which_syrup')
      const { choices } = refusedValues(() => parseSugar(text)) as { choices: readonly string[] }
      expect(choices.map((choice) => parseSugar(choice).material)).toEqual(ids)
    }
  })

  test('several are joined with +', () => {
    const both = parseSugars('200 g honey + 1 cup maple syrup')
    expect(both.map(({ material }) => material)).toEqual(['honey', 'maple_syrup'])
    expect(parseSugars(writeSugars(both))).toEqual(both)
    expect(refusal(() => parseSugars('200 g honey +'))).toBe('bad_value dangling_plus')
  })

  test('every material is read as it is written', () => {
    for (const id of materialIds.filter((each) => !isJuice(each))) {
      expect(parseSweetener(writeSweetener(id)), id).toBe(id)
      const wish = { ...parseSugarOrKind(`50 g + ${writeSweetener(id)}`) }
      expect(wish.sweetener, id).toBe(id)
      expect(parseSugarOrKind(writeSugarOrKind(wish))).toEqual(wish)
    }
  })

  test('an amount of what is worked out is told what to say', () => {
    expect(refusal(() => parseSweetener('200 g honey'))).toBe('bad_value amount_worked_out')
    expect(refusedValues(() => parseSweetener('200 g honey'))).toMatchObject({ fix: 'honey' })
    expect(refusal(() => parseSweetener('xylitol'))).toBe('bad_value other_sweetener')
    expect(refusal(() => parseSugarOrKind('honey + maple syrup'))).toBe('bad_value one_sweetener')
  })
})
