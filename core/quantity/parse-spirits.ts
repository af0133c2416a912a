import { amountAt } from './amount-at.ts'
import type { SpiritPart } from './quantities.ts'
import { splitList } from './split-list.ts'
import { strengthAt } from './strength-at.ts'
import { type TypedText, textFrom } from './typed-text.ts'
import { anyUnitAt } from './unit-at.ts'

/** Where the strength begins: at once, or after words (`1 l vodka 40%`); -1 where there is none. */
const strengthStart = (typed: TypedText, from: number): number => {
  const { tokens } = typed
  if (tokens[from]?.kind === 'number') return from
  return tokens.findIndex(({ kind }, at) => {
    const after = tokens[at + 1]?.text === '±' ? at + 3 : at + 1
    return at >= from && kind === 'number' && anyUnitAt(typed, after)?.unit.kind === 'strength'
  })
}

const isOf = (word: string | undefined): boolean => word === 'of' || word === 'di'

const spiritOf = (typed: TypedText): SpiritPart => {
  const { amount, next } = amountAt(typed, 0)
  const from = isOf(typed.tokens[next]?.text) ? next + 1 : next
  const start = strengthStart(typed, from)
  if (start === -1) return { amount, strength: null, words: textFrom(typed, from) }
  const { strength, next: end } = strengthAt(typed, start)
  const after = isOf(typed.tokens[end]?.text) ? end + 1 : end
  const words = [textFrom(typed, from, start), textFrom(typed, after)].filter((part) => part !== '')
  return { amount, strength, words: words.join(' ') }
}

/** Spirits joined with `+`: `750 ml 75.5% + 375 ml 40% vodka`; what is said after the amount and the strength is `words`. */
export const parseSpirits = (text: string): readonly SpiritPart[] => splitList(text).map(spiritOf)
