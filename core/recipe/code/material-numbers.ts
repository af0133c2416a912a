import type { MaterialId } from '../../quantity/materials.ts'

/** Materials by the number that codes know them by: only ever added to, at the end. */
export const materialNumbers: readonly MaterialId[] = [
  'white_sugar',
  'invert_syrup',
  'honey',
  'maple_syrup',
  'agave_syrup',
  'demerara',
  'brown_sugar',
  'muscovado',
  'glucose_syrup',
  'golden_syrup',
  'date_syrup',
  'syrup_1_1_weight',
  'syrup_1_1_cup',
  'syrup_2_1_weight',
  'syrup_2_1_cup',
]
