import type { Sentence } from '../bits/bit.ts'
import { waitingForSyrup } from '../bits/jars-of.ts'
import type { CallRead, TalkReading } from '../frames/reading.ts'
import type { Concept } from '../lexicon/lexicon.ts'
import { strengthened, sweetened } from './change-call.ts'
import { callReading, whichJar } from './rule.ts'

const TASTES = ['drier', 'sweeter', 'stronger', 'weaker'] as const satisfies readonly Concept[]
const SIZES = ['twice', 'thrice', 'halve'] as const satisfies readonly Concept[]
const OF_WISH: ReadonlySet<Concept> = new Set([...TASTES, ...SIZES, 'slightly', 'greeting'])

/** Said around a wish, and of nothing else. */
const SAID_WITH =
  /^(?:a|it|that|this|the|them|one|make|made|please|pls|just|bit|little|much|id|like|want|i|we|and|but|now|then|so|ok|lo|la|il|l|un|po|vorrei|fallo|falla|ma|e|ancora)$/u

const MOST_WORDS = 6
const MOST_JARS = 3

/** Whether a sentence says nothing but that it is to be otherwise. */
export function isOnlyWish({ typed, spans, bits, has }: Sentence): boolean {
  const words = typed.tokens.filter(({ kind }) => kind !== 'sign')
  if (!has(...TASTES, ...SIZES)) return false
  if (bits.length > 0 || words.length > MOST_WORDS || has('again', 'why', 'how_much', 'asking', 'denial')) return false
  if (typed.tokens.some(({ text }) => text === '?')) return false
  return typed.tokens.every(
    ({ kind, text }, at) =>
      kind === 'sign' ||
      SAID_WITH.test(text) ||
      spans.some(({ concept, from, to }) => OF_WISH.has(concept) && from <= at && at < to),
  )
}

function changedSyrup(jar: string, { has }: Sentence): CallRead {
  const call: CallRead = { command: 'syrup', options: { jar } }
  return has('drier', 'sweeter')
    ? sweetened(call, has('sweeter'), has('slightly'))
    : strengthened(call, has('stronger'), has('slightly'))
}

/** What a wish is of where nobody has said it. */
const EXAMPLE: CallRead = { command: 'plan', options: { of: '10 lemons', spirit: '1 l 95%' } }

/** `Drier`, with no recipe said before: of the one jar whose syrup is still to come; else it is asked what it is of. */
export function wishOfNothing(sentence: Sentence): TalkReading | null {
  const { has, jars } = sentence
  const isTaste = has(...TASTES)
  if (!isOnlyWish(sentence)) return null
  const waiting = waitingForSyrup(jars)
  const choices = isTaste ? waiting.slice(0, MOST_JARS).map(({ name }) => changedSyrup(name, sentence)) : []
  const [call, another] = choices
  if (call === undefined)
    return { kind: 'question', call: EXAMPLE, about: { kind: 'wish_of_what' }, choices: [EXAMPLE], leftOut: [] }
  if (another === undefined) return callReading(call)
  return whichJar({ ...call, options: {} }, choices)
}
