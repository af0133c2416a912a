import { styleSweetnessGPerL } from '../../../core/quantity/read/sweetness-at.ts'
import type { Bit, Sentence } from '../bits/bit.ts'

interface Better {
  readonly text: string
  readonly bits: readonly Bit[]
}

const LADDER = [styleSweetnessGPerL.dry, styleSweetnessGPerL.everyday, styleSweetnessGPerL.rich] as const

/** A step on the ladder of sweetness that is told from where it stands: a tenth at least. */
const APART = 0.1

/** The next sweetness below or above, g/L. */
export function nextSweetness(gPerL: number, isSweeter: boolean): number {
  const next = isSweeter
    ? LADDER.find((step) => step >= gPerL * (1 + APART))
    : LADDER.findLast((step) => step <= gPerL * (1 - APART))
  if (next !== undefined) return next
  const step = Math.round((gPerL * (isSweeter ? 1.25 : 0.7)) / 10) * 10
  // Below the last step that can be told there is none at all.
  return !isSweeter && step >= gPerL ? 0 : step
}

/** Usual strength of a liqueur, % vol, and how far one step goes. */
const USUAL = 30
const STEP = 5

export const nextStrength = (abvPercent: number, isStronger: boolean): number => {
  const isPast = isStronger ? abvPercent < USUAL - 1 : abvPercent > USUAL + 1
  const step = abvPercent + (isStronger ? STEP : -STEP)
  return isPast && Math.abs(USUAL - abvPercent) <= STEP ? USUAL : Math.max(1, Math.round(step))
}

const have = ({ bits }: Sentence, kind: Bit['kind']): Bit | undefined =>
  bits.find((bit) => bit.kind === kind && bit.role === 'have')

/** The strength that a liqueur is to be brought to: the one said, or a step from where it is. */
export function betterStrength(sentence: Sentence): Better | null {
  const wished = sentence.bits.find(({ kind, role }) => kind === 'strength' && role === 'want')
  if (wished !== undefined) return { text: wished.text, bits: [wished] }
  const now = have(sentence, 'strength')
  const isStronger = sentence.has('too_weak', 'stronger')
  if (now === undefined || !(isStronger || sentence.has('too_strong', 'weaker'))) return null
  return { text: `${nextStrength(now.value, isStronger)}%`, bits: [] }
}

/** The same of its sweetness. */
export function betterSweetness(sentence: Sentence): Better | null {
  const now = have(sentence, 'sweetness')
  const isSweeter = sentence.has('too_dry', 'sweeter')
  // Water makes it weaker and less sweet at once.
  if (!isSweeter && sentence.has('too_strong', 'weaker')) return null
  if (now === undefined || !(isSweeter || sentence.has('too_sweet', 'drier'))) return null
  return { text: `${nextSweetness(now.value, isSweeter)} g/L`, bits: [] }
}
