import type { SymptomRow } from './row.ts'
import { cloudRows } from './rows-of-clouds.ts'
import { colourRows } from './rows-of-colour.ts'
import { growthRows } from './rows-of-growth.ts'
import { mishapRows } from './rows-of-mishaps.ts'
import { smellRows } from './rows-of-smell.ts'
import { tasteRows } from './rows-of-taste.ts'
import type { SymptomId } from './symptoms.ts'

const table = {
  ...cloudRows,
  ...growthRows,
  ...colourRows,
  ...tasteRows,
  ...smellRows,
  ...mishapRows,
} satisfies Readonly<Record<SymptomId, SymptomRow>>

/** What is known of each symptom: when it is thrown away, and its causes with what speaks for them. */
export const troubleRows: Readonly<Record<SymptomId, SymptomRow>> = table

/** What is told by the tongue alone. */
export const isOfTaste = (symptom: SymptomId): boolean => Object.hasOwn(tasteRows, symptom)

/** A taste that no danger is known to have. */
export function isPlainTaste(symptom: SymptomId): boolean {
  const { stops = {}, asks = [], causes } = troubleRows[symptom]
  const isDangerous = Object.values(causes).some((cause) => cause.isDangerous)
  return isOfTaste(symptom) && !isDangerous && Object.keys(stops).length + asks.length === 0
}

/** Something for every cause of every symptom. */
export type PerCause<Each> = {
  readonly [Symptom in SymptomId]: { readonly [Id in keyof (typeof table)[Symptom]['causes']]: Each }
}
