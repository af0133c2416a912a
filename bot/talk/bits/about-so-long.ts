import { type TypedText, wordAt } from '../../../core/quantity/read/tokens.ts'
import { unitAt } from '../../../core/quantity/read/unit-at.ts'
import { numberSaid } from '../../../core/quantity/said/number-said.ts'
import { type Bit, bit } from './bit.ts'

const NONE: ReadonlySet<string> = new Set()

const ONE = /^(?:a|an|one|un|una|1)$/
const OR = /^(?:or|o|to|-)$/
const FEW = /^(?:few|poch[ei]|qualche|alcun[ei]|several)$/

/** As many as `a few` are taken for in a day that is said, too. Common practice, no source. */
const A_FEW = 3

const AGO = /^(?:ago|back|fa)$/
const IN = /^(?:in|tra|fra)$/

const SEVERAL: ReadonlyMap<string, string> = new Map([
  ['hour', 'hours'],
  ['day', 'days'],
  ['week', 'weeks'],
  ['month', 'months'],
  ['year', 'years'],
  ['ora', 'ore'],
  ['giorno', 'giorni'],
  ['settimana', 'settimane'],
  ['mese', 'mesi'],
  ['anno', 'anni'],
])

interface Counted {
  readonly count: number
  readonly text: string
  /** Where the unit begins. */
  readonly unit: number
  /** Where all of it ends, with what stands behind the unit. */
  readonly next: number
}

/** `An hour or two`, `una settimana o due`: the longer of the two. */
function oneOrTwo(typed: TypedText, at: number): Counted | null {
  if (!ONE.test(wordAt(typed, at))) return null
  const from = typed.tokens[at + 1]?.kind === 'sign' ? at + 2 : at + 1
  const unit = unitAt(typed, from, ['span'])
  const number = unit === null || !/^(?:or|o)$/.test(wordAt(typed, unit.next)) ? null : smallAt(typed, unit.next + 1)
  return number === null ? null : { count: number.value, text: number.text, unit: from, next: number.next }
}

/** `Two or three weeks`, `10-12 days`: the longer of the two. */
function oneOfTwo(typed: TypedText, at: number): Counted | null {
  const least = smallAt(typed, at)
  const most = least === null || !OR.test(wordAt(typed, least.next)) ? null : smallAt(typed, least.next + 1)
  if (least === null || most === null || most.value <= least.value) return null
  return { count: most.value, text: most.text, unit: most.next, next: most.next }
}

function smallAt(typed: TypedText, at: number) {
  const number = numberSaid(typed, at, NONE)
  return number !== null && number.value > 0 && number.value < 400 ? number : null
}

function aFew(typed: TypedText, at: number): Counted | null {
  const from = ONE.test(wordAt(typed, at)) ? at + 1 : at
  return FEW.test(wordAt(typed, from)) ? { count: A_FEW, text: String(A_FEW), unit: from + 1, next: from + 1 } : null
}

/**
 * A length of time that is said as one of two, or of a few, and a day that is told by one: `2 or 3 weeks ago`; null where none begins.
 * Never throws.
 */
export function aboutSoLong(typed: TypedText, at: number): Bit | null {
  const isIn = IN.test(wordAt(typed, at))
  const from = isIn ? at + 1 : at
  const counted = oneOrTwo(typed, from) ?? oneOfTwo(typed, from) ?? aFew(typed, from)
  const found = counted === null ? null : unitAt(typed, counted.unit, ['span'])
  if (counted === null || found === null) return null
  const word = wordAt(typed, counted.unit)
  const text = `${counted.text} ${counted.count > 1 ? (SEVERAL.get(word) ?? word) : word}`
  const next = Math.max(counted.next, found.next)
  const ago = wordAt(typed, next)
  const isHours = found.unit.key === 'hours'
  if (AGO.test(ago)) return isHours ? null : bit('date', at, next + 1, 0, `${text} ${ago}`)
  if (isIn) return isHours ? null : bit('date', at, next, 0, `${wordAt(typed, at)} ${text}`)
  return bit('span', at, next, counted.count * found.unit.factor, text)
}
