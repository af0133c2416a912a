import fc from 'fast-check'
import { expect, test } from 'vitest'
import { categories } from '../../../core/label/categories.ts'
import type { CategoryId } from '../../../core/label/category.ts'
import { type JudgedDrink, verdict, verdicts } from '../../../core/label/verdict.ts'
import { asInvertSugarGPerL } from '../../../core/liquid/invert-sugar.ts'
import { runs, SEED } from '../../runs.ts'

const drink = (own: Partial<JudgedDrink>): JudgedDrink => ({
  abvPercent: 30,
  invertGPerL: 250,
  sugarMassPercent: 20,
  plants: null,
  plantGPerL: null,
  steepDays: null,
  ...own,
})

const judged = (id: CategoryId, own: Partial<JudgedDrink>) => {
  const category = categories.find((each) => each.id === id)
  if (category === undefined) throw new Error(`no ${id}`)
  return verdict(drink(own), category)
}

const EU = 'Regulation (EU) 2019/787 category 33 and (EC) 110/2008 point 32'

test.each([
  [15, 100, []],
  [14.9, 100, ['stronger']],
  [15, 99, ['sweeter']],
  [14.9, 99, ['stronger', 'sweeter']],
  [15 - 1e-12, 100, []],
])(`%d percent with %d g/L of invert sugar as a liqueur lacks %j (check case 7; ${EU})`, (abv, invert, missing) => {
  for (const id of ['eu_liqueur', 'uk_liqueur'] as const) {
    expect(judged(id, { abvPercent: abv, invertGPerL: invert })).toMatchObject({ missing, meets: missing.length === 0 })
  }
})

// Each limit is 0.95 of its invert sugar (check case 11: 95 g of sucrose are 100 g of invert sugar, within 0.1).
test.each([
  ['eu_liqueur', null, 95, 94.9],
  ['eu_liqueur', ['gentian_root'], 76, 75.9],
  ['eu_creme_de', null, 237.5, 237.4],
  ['eu_creme_de_cassis', ['blackcurrant'], 380, 379.9],
  ['gi_sorrento', ['lemon_peel'], 190, 189.9],
] as const)('%s of %j: %d g/L of sucrose are enough and %d are not', (id, plants, enough, less) => {
  const lacks = (sucrose: number) => judged(id, { plants, invertGPerL: asInvertSugarGPerL(sucrose) }).missing
  expect(lacks(enough)).not.toContain('sweeter')
  expect(lacks(less)).toContain('sweeter')
})

test.each([
  [['gentian_root'], 80, true],
  [['gentian_root'], 79.9, false],
  [['wormwood'], 80, true],
  [['gentian_root', 'wormwood'], 80, true],
  [['gentian_root', 'orange_peel'], 80, false],
  [['lemon_peel'], 80, false],
  [['lemon_peel'], 100, true],
  [[], 80, false],
  [null, 80, false],
])(`a liqueur of %j with %d g/L: %s (check case 8; ${EU})`, (plants, invertGPerL, meets) => {
  expect(judged('eu_liqueur', { plants, invertGPerL }).meets).toBe(meets)
})

test('in Great Britain 80 g/L is for gentian, not for wormwood (added by the EU in 2019)', () => {
  expect(judged('uk_liqueur', { plants: ['gentian_root'], invertGPerL: 80 }).meets).toBe(true)
  expect(judged('uk_liqueur', { plants: ['wormwood'], invertGPerL: 80 }).meets).toBe(false)
})

test(`70 g/L is for cherries whose alcohol is all of cherry spirit, which is not known of the drink (${EU})`, () => {
  expect(judged('eu_liqueur', { plants: ['sour_cherry'], invertGPerL: 70 }).missing).toEqual(['cherry_spirit_only'])
  expect(judged('eu_liqueur', { plants: ['sour_cherry'], invertGPerL: 69.9 }).missing).toEqual(['sweeter'])
  expect(judged('eu_liqueur', { plants: ['sour_cherry'], invertGPerL: 100 }).meets).toBe(true)
})

test('a US liqueur has 2.5 % of its weight as sugar (27 CFR 5.150)', () => {
  expect(judged('us_liqueur', { sugarMassPercent: 2.5 }).meets).toBe(true)
  expect(judged('us_liqueur', { sugarMassPercent: 2.49 }).missing).toEqual(['sweeter'])
})

const SORRENTO = { plants: ['lemon_peel'], abvPercent: 30, invertGPerL: 200, plantGPerL: 250, steepDays: 2 }
const MIRTO = { plants: ['myrtle_berries'], abvPercent: 30, invertGPerL: 200, plantGPerL: 150, steepDays: 15 }
const PACHARAN = { plants: ['sloe'], abvPercent: 25, invertGPerL: 80, plantGPerL: 125, steepDays: 30 }
const GENEPI = { plants: ['genepi'], abvPercent: 30, invertGPerL: 100, plantGPerL: 7, steepDays: 30 }

// The name itself belongs to makers in the area: inside the figures, that alone is missing.
test.each<[CategoryId, Partial<JudgedDrink>, readonly string[]]>([
  ['gi_sorrento', SORRENTO, []],
  ['gi_sorrento', { ...SORRENTO, invertGPerL: 350, plantGPerL: 400, steepDays: 30 }, []],
  ['gi_sorrento', { ...SORRENTO, abvPercent: 29 }, ['stronger']],
  ['gi_sorrento', { ...SORRENTO, invertGPerL: 199.9 }, ['sweeter']],
  ['gi_sorrento', { ...SORRENTO, invertGPerL: 350.1 }, ['drier']],
  ['gi_sorrento', { ...SORRENTO, plantGPerL: 249 }, ['plant_amount']],
  ['gi_sorrento', { ...SORRENTO, steepDays: 1.9 }, ['steep_time']],
  ['gi_sorrento', { ...SORRENTO, plantGPerL: null, steepDays: null }, ['plant_amount', 'steep_time']],
  ['gi_mirto', MIRTO, []],
  ['gi_mirto', { ...MIRTO, abvPercent: 28, invertGPerL: 270, steepDays: 240 }, []],
  ['gi_mirto', { ...MIRTO, abvPercent: 36 }, []],
  ['gi_mirto', { ...MIRTO, abvPercent: 27.9 }, ['stronger']],
  ['gi_mirto', { ...MIRTO, abvPercent: 36.1 }, ['weaker']],
  ['gi_mirto', { ...MIRTO, invertGPerL: 271 }, ['drier']],
  ['gi_mirto', { ...MIRTO, plantGPerL: 149 }, ['plant_amount']],
  ['gi_mirto', { ...MIRTO, steepDays: 14 }, ['steep_time']],
  ['gi_mirto', { ...MIRTO, steepDays: 241 }, ['steep_time']],
  ['gi_pacharan', PACHARAN, []],
  ['gi_pacharan', { ...PACHARAN, abvPercent: 30.1, plantGPerL: 251 }, ['weaker', 'plant_amount']],
  ['gi_genepi', GENEPI, []],
  ['gi_genepi', { ...GENEPI, steepDays: 61, plantGPerL: 6.9 }, ['plant_amount', 'steep_time']],
])('%s of %j lacks %j (check cases 12 and 13; the product files)', (id, own, missing) => {
  expect(judged(id, own).missing).toEqual([...missing, 'made_in_area'])
})

// Regulation (EU) 2019/787, Annex I, categories 32 and 38 (from memory).
test('a nocino is of whole walnuts, a sloe-aromatised spirit of aniseed and 125 g of sloes a litre', () => {
  const walnut = { plants: ['green_walnut'], abvPercent: 35, invertGPerL: 200 }
  expect(judged('eu_nocino', walnut)).toMatchObject({ meets: false, missing: ['whole_walnuts'] })
  const sloe = { plants: ['sloe'], abvPercent: 27, invertGPerL: 150 }
  expect(judged('eu_sloe', sloe).missing).toEqual(['plant_amount', 'aniseed_flavour'])
  expect(judged('eu_sloe', { ...sloe, plantGPerL: 125 }).missing).toEqual(['aniseed_flavour'])
  expect(judged('eu_liqueur', walnut).meets).toBe(true)
})

test('names of other plants are left out, and those of other regions', () => {
  const ids = (own: Partial<JudgedDrink>, ...regions: ('eu' | 'us' | 'uk')[]) =>
    verdicts(drink(own), regions).map(({ category }) => category.id)
  expect(ids({}, 'eu')).toEqual(['eu_spirit_drink', 'eu_liqueur', 'eu_creme_de'])
  expect(ids({ plants: ['green_walnut'] }, 'eu')).toContain('eu_nocino')
  expect(ids({ plants: ['green_walnut', 'lemon_peel'] }, 'eu')).not.toContain('eu_nocino')
  expect(ids({ plants: ['blackcurrant'] }, 'us', 'uk')).toEqual(['us_liqueur', 'uk_liqueur'])
})

test('more sugar never loses a name that sets no upper limit, more strength neither', () => {
  const free = categories.filter(({ abvPercent, invertGPerL }) => abvPercent.most === null && invertGPerL.most === null)
  const amount = fc.double({ min: 0, max: 1000, noNaN: true })
  fc.assert(
    fc.property(amount, amount, fc.constantFrom(...free), (invertGPerL, more, category) => {
      const own = { abvPercent: invertGPerL / 10, invertGPerL, plants: category.onlyOf }
      const less = verdict(drink(own), category)
      const sweeter = verdict(drink({ ...own, invertGPerL: invertGPerL + more }), category)
      const stronger = verdict(drink({ ...own, abvPercent: own.abvPercent + more }), category)
      expect(sweeter.missing.length).toBeLessThanOrEqual(less.missing.length)
      expect(stronger.missing.length).toBeLessThanOrEqual(less.missing.length)
    }),
    { seed: SEED, numRuns: runs(200, 5000) },
  )
})
