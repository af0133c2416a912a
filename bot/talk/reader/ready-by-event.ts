import { wordsFrom } from '../../../core/quantity/read/tokens.ts'
import type { Sentence } from '../bits/bit.ts'
import { jarsNamed, runningAmong } from '../bits/jars-of.ts'
import { isOfReady, isReadyAsked } from '../bits/ready-asked.ts'
import type { CallRead, TalkReading } from '../frames/reading.ts'
import { DEEDS } from '../lexicon/lexicon.ts'
import type { Remembered } from '../memory/remembered.ts'
import { whichJar } from '../memory/rule.ts'

/** A day that everybody has at another time. */
const EVENT =
  /\b(?:for|by|before|in time for|at|per|prima d\p{L}+|alla|al) (?:\p{L}+ )?(?:\p{L}+ )?(?:fair|party|wedding|birthday|bday|anniversary|market|fete|festival|raffle|dinner|reunion|festa|matrimonio|compleanno|anniversario|mercatin[oi]|fiera|cena)\b/u

const ALL =
  /^(?:(?:so|and|e) )?(?:which|what|whats|quali|quale)\b|\b(?:they|they all|both|all of (?:them|it)|everything|the jars|the lot|tutt[ie]|i vasi|saranno)\b/u

/** `In time for the fair`: which day that is is asked; `which will be ready by Christmas` is told by the list of all. */
export function readyByEvent(sentence: Sentence, { call }: Remembered): TalkReading | null {
  const { bits, jars, typed, has } = sentence
  const running = runningAmong(jars)
  const words = wordsFrom(typed)
  const named = jarsNamed(bits, running)
  const [first, another] = named.length > 0 ? named.map(({ jar }) => jar) : running
  if (first === undefined) return null
  if (named.length === 0 && another !== undefined && ALL.test(words) && isReadyAsked(sentence))
    return { kind: 'call', call: { command: 'jar list', options: {} }, leftOut: [], does: 'compute' }
  const isOwn = bits.every((bit) => named.some((each) => each.bit === bit))
  const isAsked = has('asking', 'hypothesis', 'would_it', 'may_i') || typed.tokens.some(({ text }) => text === '?')
  if (!isOwn || !isAsked || !isOfReady(words) || !EVENT.test(words) || has(...DEEDS, 'remind', 'put_off')) return null
  const about = { kind: 'lacks', option: 'ready-by', sample: '24 December' } as const
  // What is planned is asked about, where it is what was spoken of.
  if (named.length === 0 && call?.command === 'plan') return { kind: 'question', call, about, choices: [], leftOut: [] }
  const of = named.length > 0 ? named.map(({ jar }) => jar) : running
  const choices = of.map(({ name }): CallRead => ({ command: 'jar show', options: { jar: name } }))
  if (choices.length > 1) return whichJar({ command: 'jar show', options: {} }, choices)
  return { kind: 'question', call: choices[0]!, about, choices: [], leftOut: [] }
}
