import type { Allergen } from '../../../../core/label/allergens.ts'

/** As they stand on a label. */
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
  sesame: 'sesame',
  mustard: 'mustard',
  celery: 'celery',
  sulphites: 'sulphites, unless the dried fruit is unsulphured',
  milk_soya: 'milk and soya, if the chocolate’s pack says so',
  nut_traces: 'nuts in traces, if the cocoa’s pack says so',
  cashew_family: 'pink pepper (kin to cashew and pistachio)',
  daisy_family: 'plants of the daisy family',
}
