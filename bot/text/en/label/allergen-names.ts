import type { Allergen } from '../../../../core/label/allergens.ts'

/** As they stand on a label, after `Contains` or `May contain`. */
export const allergenNames: Readonly<Record<Allergen, string>> = {
  peanut: 'peanut',
  walnut: 'walnut (a nut)',
  almond: 'almond (a nut)',
  hazelnut: 'hazelnut (a nut)',
  cashew: 'cashew (a nut)',
  pecan: 'pecan (a nut)',
  brazil_nut: 'Brazil nut (a nut)',
  pistachio: 'pistachio (a nut)',
  macadamia: 'macadamia (a nut)',
  nut: 'nuts',
  sesame: 'sesame',
  mustard: 'mustard',
  celery: 'celery',
  lupin: 'lupin',
  soya: 'soya',
  wheat: 'wheat (gluten)',
  rye: 'rye (gluten)',
  barley: 'barley (gluten)',
  oats: 'oats (gluten)',
  gluten: 'cereals with gluten',
  sulphites: 'sulphites (from dried fruit)',
  nut_traces: 'traces of nuts (from cocoa)',
  cashew_family: 'pink pepper (kin to cashew and pistachio)',
  daisy_family: 'plants of the daisy family',
}
