import type { SymptomId } from './symptoms.ts'

/** What must be cleared up before a jar is bottled or drunk; the worst first. */
export const HELD_FOR: readonly SymptomId[] = [
  'wrong_spirit',
  'unknown_plant',
  'broken_glass',
  'mould',
  'pink_orange_slime',
  'pressure',
  'fermenting',
  'solvent',
  'rotten_egg',
]
