import { DomainError } from '../domain-error.ts'
import { amountAt, isAtStrength } from './amount-at.ts'
import { headAt } from './measure-at.ts'
import type { LiqueurPart, Strength, Sweetness } from './quantities.ts'
import { splitList } from './split-list.ts'
import { barePercent, strengthOf } from './strength-at.ts'
import { styleAt, sweetnessOf } from './sweetness-at.ts'
import { expectEnd, shown, type TypedText } from './typed-text.ts'

type Said =
  | { readonly strength: Strength; readonly next: number }
  | { readonly sweetness: Sweetness; readonly next: number }

const saidAt = (typed: TypedText, at: number): Said => {
  const style = styleAt(typed, at)
  if (style !== null) return style
  if (typed.tokens[at]?.kind === 'word') expectEnd(typed, at)
  const head = headAt(typed, at, ['strength', 'sweetness'], barePercent)
  return head.unit.kind === 'strength' ? strengthOf(typed, head) : sweetnessOf(typed, head)
}

const WATER_WORDS = new Set(['of', 'di', 'water', 'acqua'])

const partOf = (typed: TypedText): LiqueurPart => {
  const { amount, next } = amountAt(typed, 0)
  const refuseTwice = (kind: 'strength' | 'sweetness') => {
    throw new DomainError('bad_value', 'said_twice', { typed: shown(typed.text), kind })
  }
  let strength: Strength | null = null
  let sweetness: Sweetness | null = null
  let at = next
  while (at < typed.tokens.length) {
    // Water is what a part without strength and sweetness is anyway.
    if (WATER_WORDS.has(typed.tokens[at]?.text ?? '') || isAtStrength(typed, at)) {
      at++
      continue
    }
    const said = saidAt(typed, at)
    if ('strength' in said) {
      if (strength !== null) refuseTwice('strength')
      strength = said.strength
    } else {
      if (sweetness !== null) refuseTwice('sweetness')
      sweetness = said.sweetness
    }
    at = said.next
  }
  return { amount, strength, sweetness }
}

/** Liqueurs joined with `+`: `600 ml 47% 250 g/L + 300 ml 33% dry`; a strength or sweetness left out is null. */
export const parseParts = (text: string): readonly LiqueurPart[] => splitList(text).map(partOf)
