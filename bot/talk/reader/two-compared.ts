import { wordsAlone } from '../../../core/quantity/read/tokens.ts'
import type { Sentence, TalkJar } from '../bits/bit.ts'
import { jarCalled, jarsOf } from '../bits/jars-of.ts'
import { monthOf } from '../frames/jars-meant.ts'
import type { CallRead, TalkReading } from '../frames/reading.ts'
import type { Remembered } from '../memory/remembered.ts'
import { callReading } from '../memory/rule.ts'

const PLACED = /\b(?:two|both|first|second|due|entramb[ie]|prim[oa]|second[oa])\b/iu

const COMPARED =
  /\b(?:beside|alongside|next to|against|versus|vs|compared?|comparison|differ\p{L}*|contro|rispetto|accanto|confront\p{L}*|divers[oaie]|differen\p{L}*)\b/u

const BOTH =
  /\b(?:the two|of (?:the )?two|both|i due|le due|dei due|delle due|entramb[ie])\b|\b(?:first|prim[oa])\b.*\b(?:second|other|second[oa]|altr[oa])\b|\b(?:second|second[oa])\b.*\b(?:first|prim[oa])\b/u

const SAID_OF =
  /\bwhat (?:did|have|had) (?:i|we) (?:say|said|write|written|note|noted|think|thought)\b|\bwhat were (?:my|our) notes\b|\b(?:cosa|che cosa) (?:ho|abbiamo|avevo) (?:detto|scritto|annotato|pensato)\b/u

const AT: readonly (readonly [RegExp, number])[] = [
  [/\b(?:first|prim[oa])\b/u, 0],
  [/\b(?:second|second[oa])\b/u, 1],
]

/** `Lemon`, `lemon 2`: batches of the same. */
const nameOf = ({ name }: TalkJar): string => name.toLowerCase().replace(/ \d+$/, '')

/** The jars that may be meant: of the plant that is named, else like the one spoken of last, else all. */
function batchesOf({ bits, jars }: Sentence, { call }: Remembered): readonly TalkJar[] {
  const plants = bits.filter(({ kind }) => kind === 'plant' || kind === 'jar')
  if (plants.length > 0) {
    const named = new Set(plants.flatMap((bit) => jarsOf(bit, jars)))
    const like = new Set([...named].map(nameOf))
    return jars.filter((jar) => named.has(jar) || like.has(nameOf(jar)))
  }
  const last = jarCalled(call?.options.jar, jars)
  const like = last === undefined || jars.length === 2 ? jars : jars.filter((jar) => nameOf(jar) === nameOf(last))
  return like.length > 1 ? like : jars
}

const beside = (one: TalkJar, other: TalkJar): TalkReading => {
  const call: CallRead = { command: 'notebook', options: { compare: `${one.name} + ${other.name}` } }
  return callReading(call)
}

/**
 * `June beside August`, `which of the two lemons was better?`: two batches compared, by the month that they were begun in or by their
 * order. `What did I say about the first one?` shows that. Null where it is not clear which two, and of everything else.
 */
export function twoCompared(sentence: Sentence, said: Remembered): TalkReading | null {
  const { typed, bits, has, jars } = sentence
  if (jars.length < 2) return null
  const months = [
    ...new Set(typed.tokens.map(({ text }) => monthOf(text.replace(/s$/, ''))).filter((at) => at !== null)),
  ]
  if (months.length !== 2 && !PLACED.test(typed.text)) return null
  if (bits.some(({ kind, value }) => !/^(?:plant|jar|date|bare)$/.test(kind) || (kind === 'bare' && value > 2)))
    return null
  const words = wordsAlone(typed)
  const batches = batchesOf(sentence, said).toSorted((one, other) => one.startedOn.localeCompare(other.startedOn))
  const isCompared = has('better_of') || COMPARED.test(words)
  if (isCompared && months.length === 2) {
    const [one, other] = months.map((month) => batches.filter((jar) => jar.month === month))
    return one?.length === 1 && other?.length === 1 ? beside(one[0]!, other[0]!) : null
  }
  const at = AT.find(([pattern]) => pattern.test(words))?.[1]
  const told = at === undefined || !SAID_OF.test(words) ? undefined : batches[at]
  if (told !== undefined) return callReading({ command: 'jar show', options: { jar: told.name } })
  const isBoth = BOTH.test(words) || (at !== undefined && COMPARED.test(words))
  return isCompared && isBoth && batches.length === 2 ? beside(batches[0]!, batches[1]!) : null
}
