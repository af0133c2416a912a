import { type TypedText, textFrom, wordAt } from '../../../core/quantity/read/tokens.ts'
import type { ConceptSpan } from '../lexicon/concepts.ts'

const CALLED = /^(?:called|named|chiamat[oa])$/
/** `Call it Nonna`, `naming this one Rosa`: the verb, and what it is said of. */
const CALLS = /^(?:call|calling|name|naming|chiama|chiamiamo)$/
const IT = /^(?:it|this|that|them|the)$/
const ONE = /^(?:one|jar|batch|lot)$/
/** With what it is said of in one word: `chiamalo`. */
const CALLS_IT = /^(?:chiamal[oa]|chiamarl[oa]|chiamiamol[oa]|nominal[oa])$/
const BEGUN: ReadonlySet<string> = new Set(['started', 'log_start', 'added', 'put_in'])
/** A name ends before one of these, or before a number. */
const ENDS = /^(?:[,.;:!?()+&-]|with|of|from|in|on|for|to|and|con|di|da|in|su|per|e|today|yesterday|oggi|ieri|please)$/
const MOST_WORDS = 4
/** `In Anna’s jar`: whose it is. */
const VESSEL = /^(?:jar|jars|bottle|demijohn|crock|vaso|barattolo)$/

export interface NameTold {
  readonly text: string
  /** From the word that says that it is a name. */
  readonly from: number
  readonly to: number
  /** It is given now: `call it Nonna`. */
  readonly isGiven?: true
}

/** What says that it is a name, and where that begins; null where nothing does. */
function calledAt(typed: TypedText): { readonly at: number; readonly from: number } | null {
  const at = typed.tokens.findIndex(
    ({ text }, place) =>
      CALLED.test(text) || CALLS_IT.test(text) || (CALLS.test(text) && IT.test(wordAt(typed, place + 1))),
  )
  if (at === -1) return null
  if (!CALLS.test(wordAt(typed, at))) return { at, from: at + 1 }
  const behind = ONE.test(wordAt(typed, at + 2)) ? at + 3 : at + 2
  // `Naming it after my aunt Rosa`.
  return { at, from: wordAt(typed, behind) === 'after' ? behind + 1 : behind }
}

/** `In Anna’s jar`, `nel vaso di Anna`: the name of whom it belongs to, with a capital as names have it. */
function ownerOf(typed: TypedText): NameTold | null {
  const { tokens, text } = typed
  const isName = (at: number): boolean => tokens[at]?.kind === 'word' && /^\p{Lu}/u.test(text.slice(tokens[at].from))
  const at = tokens.findIndex(({ text: word }) => VESSEL.test(word))
  if (at === -1) return null
  if (wordAt(typed, at + 1) === 'di' && isName(at + 2))
    return { text: textFrom(typed, at + 2, at + 3), from: at + 2, to: at + 3 }
  const owner = at - 1
  if (!/^(?:in|into)$/.test(wordAt(typed, at - 2)) || !isName(owner)) return null
  const whose = /^(.+)['’]s$/u.exec(textFrom(typed, owner, at))?.[1]
  return whose === undefined ? null : { text: whose, from: owner, to: at }
}

/** What a jar that is begun is called, as it was typed: `started a jar called Rosehip Row: 500 g sloes …`; null where nothing is. */
export function nameTold(typed: TypedText, spans: readonly ConceptSpan[]): NameTold | null {
  if (!spans.some(({ concept }) => BEGUN.has(concept))) return null
  const called = calledAt(typed)
  if (called === null) return ownerOf(typed)
  const { at, from } = called
  let to = from
  while (
    to < typed.tokens.length &&
    to < from + MOST_WORDS &&
    typed.tokens[to]!.kind === 'word' &&
    !ENDS.test(wordAt(typed, to))
  )
    to++
  return to === from
    ? null
    : { text: textFrom(typed, from, to), from: at, to, ...(CALLED.test(wordAt(typed, at)) ? {} : { isGiven: true }) }
}

/** `Put sloes in gin, call it Hedge`: what is given a name is begun, and goes into no other jar. */
export const begunByName = (name: NameTold | null, spans: readonly ConceptSpan[]): readonly ConceptSpan[] =>
  name?.isGiven === true && spans.some(({ concept }) => concept === 'added')
    ? [{ concept: 'log_start', from: name.from, to: name.to }]
    : []
