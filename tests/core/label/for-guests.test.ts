import { expect, test } from 'vitest'
import { botanicalById, catalogue } from '../../../core/botanical/catalogue/catalogue.ts'
import { type Allergen, allergens, SULPHITES_FROM_MG_PER_L } from '../../../core/label/allergens.ts'
import { allergensNamed } from '../../../core/label/allergens-named.ts'
import { allergensOf, forGuests } from '../../../core/label/for-guests.ts'
import {
  CAFFEINE_HIGH_MG_PER_L,
  LIQUORICE_MG_PER_L,
  LIQUORICE_WARNED_G_PER_L,
} from '../../../core/label/guest-advice.ts'
import published from '../../published/for-guests.json' with { type: 'json' }

const least = (begins: string): number => published.thresholds.find(({ what }) => what.startsWith(begins))!.least

test(`the 14 groups of the EU, and every sort that a plant can bring (${published.source})`, () => {
  expect(published.groups).toHaveLength(14)
  const ours = new Set(
    Object.entries(allergens).flatMap(([id, { group }]) => (id.endsWith('_fined') ? [] : (group ?? []))),
  )
  for (const { group, plant, sorts } of published.groups) {
    expect([group, (ours as Set<string>).has(group)]).toEqual([group, plant])
    for (const sort of sorts) {
      const found = allergensNamed(sort.replace('sulphured ', '')).allergens
      expect([
        sort,
        found.length > 0 || group === 'sulphites',
        found.every((each) => allergens[each].group === group),
      ]).toEqual([sort, true, true])
    }
  }
})

test('limits of the law stand as published', () => {
  expect(SULPHITES_FROM_MG_PER_L).toBe(least('sulphites'))
  expect(LIQUORICE_MG_PER_L).toEqual({ named: least('liquorice named'), warned: least('liquorice warned') })
  expect(CAFFEINE_HIGH_MG_PER_L).toBe(least('caffeine'))
  // 300 mg in a litre, of a root with 14 % (DFG-SKLM 2004).
  expect(LIQUORICE_WARNED_G_PER_L).toBeCloseTo(2.143, 3)
})

test.each<readonly [string, readonly Allergen[]]>([
  ['celery', ['celery']],
  ['semi di sedano', ['celery']],
  ['mustard seed', ['mustard']],
  ['pistachio', ['pistachio']],
  ['toasted pistachios', ['pistachio']],
  ['peanuts', ['peanut']],
  ['noccioline', ['peanut']],
  ['black sesame seeds', ['sesame']],
  ['cashews', ['cashew']],
  ['barley malt', ['barley']],
  ['rye bread', ['rye']],
  ['spelt', ['wheat']],
  ['oats', ['oats']],
  ['lupini', ['lupin']],
  ['soya beans', ['soya']],
  ['walnuts', ['walnut']],
  ['noci', ['walnut']],
  ['noci pecan', ['pecan']],
  ['noci del Brasile', ['brazil_nut']],
  ['macadamia nuts', ['macadamia']],
  ['mixed nuts', ['nut']],
  ['Haselnüsse', ['hazelnut']],
  ['dried apricots', ['sulphites']],
  ['fichi secchi', ['sulphites']],
  ['golden sultanas', ['sulphites']],
  ['candied orange peel', ['sulphites']],
])('%s brings %j, and nothing else that is not known', (name, found) => {
  expect(forGuests([{ id: null, name }])).toEqual({ allergens: found, advice: [], unknown: [] })
})

test.each([
  'noce moscata',
  'pesche noci',
  'chestnuts',
  'pine nuts',
  'coconut',
  'sedano di monte',
  'grano saraceno',
  'apricots',
  'dragonwort',
  'constructor',
])('%s brings no allergen by its name, and is not vouched for', (name) => {
  expect(forGuests([{ id: null, name }])).toMatchObject({ allergens: [], unknown: [name] })
})

test('nuts in chocolate are nuts', () => {
  expect(forGuests([{ id: null, name: 'nuts in chocolate' }]).allergens).toContain('nut')
})

test('dark chocolate may bring nuts, milk and soya', () => {
  expect(forGuests([{ id: null, name: 'dark chocolate' }]).allergens).toEqual([
    'nut_traces',
    'milk_traces',
    'soya_traces',
  ])
})

test('of a plant with a stranger beside it both are told', () => {
  expect(forGuests([{ id: null, name: 'pistachio and dragonwort' }])).toMatchObject({
    allergens: ['pistachio'],
    unknown: ['pistachio and dragonwort'],
  })
})

test.each([
  ['liquorice', 'liquorice'],
  ['grapefruit_interaction', 'medicines'],
  ['cranberry_warfarin', 'warfarin'],
  ['thujone', 'thujone'],
  ['turmeric_liver', 'liver'],
  ['bile', 'gallstones'],
  ['caffeine', 'caffeine'],
] as const)('every plant with the hazard %s has the advice %s, and no other has', (hazard, advice) => {
  const given = catalogue.filter(({ id }) => forGuests([{ id, name: id }]).advice.includes(advice))
  expect(given.length).toBeGreaterThan(0)
  expect(given).toEqual(catalogue.filter(({ hazards }) => hazards.includes(hazard)))
})

test('every plant with the hazard of an allergen has one, and only nuts are nuts', () => {
  const HAZARDS = ['allergen_nuts', 'allergen_nuts_trace', 'sulphites', 'anacardiaceae_allergy', 'asteraceae_allergy']
  for (const { id, names, hazards } of catalogue) {
    const brought = forGuests([{ id, name: names.title }]).allergens
    if (hazards.some((hazard) => HAZARDS.includes(hazard))) expect([id, brought.length > 0]).toEqual([id, true])
    const isNut = brought.some((each) => allergens[each].group === 'nuts' && allergens[each].is === 'certain')
    expect([id, isNut]).toEqual([id, hazards.includes('allergen_nuts')])
  }
})

test.each([
  ['green_walnut', ['walnut']],
  ['almond_sweet', ['almond']],
  ['hazelnut', ['hazelnut']],
  ['pink_pepper', ['cashew_family']],
  ['raisin', ['sulphites']],
  ['cocoa_nibs', ['nut_traces']],
  ['chamomile', ['daisy_family']],
  ['peach', []],
  ['black_pepper', []],
  ['nutmeg', []],
])('%s of the catalogue brings %j', (id, found) => {
  expect(forGuests([{ id, name: id }]).allergens).toEqual(found)
})

test('a plant whose names tell nothing brings what its hazards and its form tell', () => {
  const plain = botanicalById('peach')
  expect(allergensOf(plain)).toEqual([])
  expect(allergensOf({ ...plain, hazards: ['allergen_nuts'] })).toEqual(['nut'])
  expect(allergensOf({ ...plain, hazards: ['allergen_nuts_trace'] })).toEqual(['nut_traces'])
  expect(allergensOf({ ...plain, form: { state: 'dried', cut: null } })).toEqual(['sulphites'])
  const cashew = { ...plain, names: { ...plain.names, en: ['cashew nuts'] } }
  expect(allergensOf({ ...cashew, hazards: ['allergen_nuts', 'anacardiaceae_allergy'] })).toEqual(['cashew'])
  expect(allergensOf({ ...plain, hazards: ['anacardiaceae_allergy'] })).toEqual(['cashew_family'])
  expect(allergensOf({ ...plain, kind: 'herb', form: { state: 'dried', cut: null } })).toEqual([])
})

test.each(['unsulphured dried mango', 'sulphite-free dried figs', 'albicocche secche non solforate'])(
  '%s bring no sulphites, and nothing else that is not known',
  (name) => {
    expect(forGuests([{ id: null, name }])).toEqual({ allergens: [], advice: [], unknown: [] })
  },
)

test('raisins said to be unsulphured bring no sulphites', () => {
  expect(forGuests([{ id: 'raisin', name: 'unsulphured raisins' }]).allergens).toEqual([])
})

test.each([
  ['guarana', ['caffeine']],
  ['yerba mate', ['caffeine']],
  ['Seville orange peel', ['medicines']],
  ['licorice', ['liquorice']],
  ['quinine', ['quinine']],
  ['tonic water', ['quinine']],
  ['absinthe', ['thujone']],
  ['herbal tea', []],
])('%s, which is not in the catalogue, has the advice %j', (name, advice) => {
  expect(forGuests([{ id: null, name }]).advice).toEqual(advice)
})
