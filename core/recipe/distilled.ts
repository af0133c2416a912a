import { DomainError } from '../domain-error.ts'
import type { Strength } from '../quantity/quantities.ts'
import { shown } from '../quantity/read/tokens.ts'
import { strengthAt20 } from './portion.ts'

/**
 * The azeotrope of ethanol and water at 1 atm: 95.6 % by mass, 97.2 % vol at 20 °C. What is stronger has been dried.
 * Source: from memory.
 */
const MOST_DISTILLED_PERCENT = 97.2

/** The last bit of a proof that was brought to 20 °C. */
const ROUNDING = 1e-6

/** Throws `spirit_too_strong` for a strength at 20 °C, % vol, that no distilling makes. */
export const expectDistilledPercent = (
  abvPercent: number,
  typed = `${abvPercent}%`,
  fix: string | null = null,
): void => {
  if (abvPercent <= MOST_DISTILLED_PERCENT + ROUNDING) return
  const values = { typed: shown(typed), abvPercent, mostAbvPercent: MOST_DISTILLED_PERCENT, fix }
  throw new DomainError('refused', 'spirit_too_strong', values)
}

/**
 * The same for a strength as it was typed, brought to 20 °C first.
 * @param fix - the option's whole text, with a strength of 95 % in its place
 */
export const expectDistilled = ({ abvPercent, atC, unit }: Strength, typed: string, fix: string): void =>
  expectDistilledPercent(strengthAt20({ abvPercent, abvAtC: atC, readsProof: unit === 'proof' }), typed, fix)
