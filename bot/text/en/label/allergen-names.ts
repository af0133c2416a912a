import type { Allergen } from '../../../../core/label/allergens.ts'

/** As they stand on a label. */
export const allergenNames: Readonly<Record<Allergen, string>> = {
  walnut: 'walnut (a nut)',
  almond: 'almond (a nut)',
  hazelnut: 'hazelnut (a nut)',
  sulphites: 'sulphites, unless the dried fruit is unsulphured',
  nut_traces: 'nuts in traces, if the cocoa’s pack says so',
  cashew_family: 'pink pepper (kin to cashew and pistachio)',
  daisy_family: 'plants of the daisy family',
}
