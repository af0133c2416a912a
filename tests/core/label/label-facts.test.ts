import { expect, test } from 'vitest'
import { catalogue } from '../../../core/botanical/catalogue/catalogue.ts'
import { categories } from '../../../core/label/categories.ts'
import { countries } from '../../../core/label/countries.ts'
import { allergensOf } from '../../../core/label/for-guests.ts'
import { parseLabelPlants } from '../../../core/label/parse-label-plants.ts'
import { parseRegion } from '../../../core/label/parse-region.ts'
import { strengthTolerance } from '../../../core/label/strength-tolerance.ts'
import { refusal } from '../quantity/refusal.ts'

test('the US allows 0.3 % vol to either side (check case 9; 27 CFR 19.356(c), T.D. TTB-158)', () => {
  expect(strengthTolerance.us).toMatchObject({ percent: 0.3, withPlantsPercent: null })
})

test('the EU allows 0.3 % vol, and 1.5 with macerated fruit or plants (Regulation (EU) 1169/2011, Annex XII)', () => {
  expect(strengthTolerance.eu).toMatchObject({ percent: 0.3, withPlantsPercent: 1.5 })
})

test('every allergen that a plant of the catalogue is warned of is named on a label', () => {
  const warned = (hazard: string) => /^allergen_(?!generic)|^sulphites$|^(?:anacardi|aster)aceae_allergy$/.test(hazard)
  const silent = catalogue.filter((plant) => plant.hazards.some(warned) && allergensOf(plant).length === 0)
  expect(silent.map(({ id }) => id)).toEqual([])
  const byId = (id: string) => allergensOf(catalogue.find((plant) => plant.id === id)!)
  expect(byId('dark_chocolate')).toEqual(expect.arrayContaining(['milk_traces', 'soya_traces', 'nut_traces']))
  expect(byId('celery_seed')).toContain('celery')
  expect(new Set(byId('brazil_nut'))).toEqual(new Set(['brazil_nut']))
})

test('every plant that a name depends on is in the catalogue', () => {
  const ids = catalogue.map(({ id }) => id)
  const asked = categories.flatMap(({ onlyOf, exceptions }) => [
    ...(onlyOf ?? []),
    ...exceptions.flatMap((exception) => exception.onlyOf),
  ])
  for (const id of asked) expect(ids).toContain(id)
})

test('no two countries share a name, and every figure carries a source', () => {
  const names = countries.flatMap((country) => country.names)
  expect(new Set(names).size).toBe(names.length)
  const figures = [...categories, ...countries.flatMap(({ drink, guidance }) => [drink, guidance])]
  for (const figure of figures) if (figure !== null) expect(figure.sources.length).toBeGreaterThan(0)
})

test.each([
  ['EU', 'eu'],
  ['Italia', 'eu'],
  ['the European Union', 'eu'],
  ['portugal', 'eu'],
  ['U.S.', 'us'],
  ['Regno Unito', 'uk'],
])('region %s is %s', (typed, region) => {
  expect(parseRegion(typed)).toBe(region)
})

test.each(['Japan', '', 'constructor', 'x'.repeat(5000)])('region %s is refused', (typed) => {
  expect(refusal(() => parseRegion(typed))).toBe('bad_value unknown_region')
})

test.each([
  ['lemon', [['lemon_peel']]],
  ['8 lemons + 30 g of ginger', [['lemon_peel'], ['ginger']]],
  ['gentian', [['gentian_root']]],
  ['20 noci verdi', [['green_walnut']]],
  ['5 cloves', [['clove']]],
  ['coffee', [['coffee_whole', 'coffee_cracked', 'coffee_ground']]],
  ['dragonwort + lemon', [[], ['lemon_peel']]],
])('%s is of %j', (typed, ids) => {
  expect(parseLabelPlants(typed).map((plant) => plant.ids)).toEqual(ids)
})

test.each([
  ['belladonna', 'refused refused_botanical'],
  ['lemon + hemlock + ginger', 'refused refused_botanical'],
  ['Japanese star anise', 'refused refused_botanical'],
  ['artemisia', 'ambiguous unclear_botanical'],
  ['lemon +', 'bad_value dangling_plus'],
])('%s is not labelled: %s', (typed, why) => {
  expect(refusal(() => parseLabelPlants(typed))).toBe(why)
})

test('a label in Great Britain may be off by 0.3 % vol, with macerated plants by 1.5 (SI 1989/768, Schedule 5A)', () => {
  expect(strengthTolerance.uk).toMatchObject({ percent: 0.3, withPlantsPercent: 1.5, trust: 'published' })
})
