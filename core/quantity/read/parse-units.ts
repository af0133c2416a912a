import { DomainError } from '../../domain-error.ts'
import { shown } from './tokens.ts'

/** Measures that a person may want to read. */
export type UnitSystem = 'metric' | 'us' | 'imperial'

const WORDS: ReadonlyMap<string, UnitSystem> = new Map([
  ['metric', 'metric'],
  ['metrico', 'metric'],
  ['metriche', 'metric'],
  ['us', 'us'],
  ['usa', 'us'],
  ['american', 'us'],
  ['americane', 'us'],
  ['imperial', 'imperial'],
  ['imp', 'imperial'],
  ['british', 'imperial'],
  ['imperiali', 'imperial'],
])

/** `metric`, `US` or `imperial`, in English or Italian. Throws `unknown_units`. */
export const parseUnits = (text: string): UnitSystem => {
  const units = WORDS.get(text.trim().toLowerCase())
  if (units === undefined) throw new DomainError('bad_value', 'unknown_units', { typed: shown(text) })
  return units
}
