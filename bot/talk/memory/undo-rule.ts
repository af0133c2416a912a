import type { Sentence } from '../bits/bit.ts'
import { isOver, jarsOf } from '../bits/jars-of.ts'
import type { CallRead, TalkReading } from '../frames/reading.ts'
import type { Remembered } from './remembered.ts'
import { callReading } from './rule.ts'

/** Said of what was written down and of nothing else. */
const UNDOES = /\b(?:undo|revert|roll back|take (?:that|it) back|annull\p{L}*)\b/iu

const MOST_WORDS = 6

const MOST_JARS = 3

/**
 * `Undo`: what was written down last in this talk is taken back. Where other answers came after it, it is named and asked about; where
 * nothing was written down, or a jar is named, that jar's line is for typing, as it may be its start that goes.
 */
export function undone(sentence: Sentence, { step, answersSince }: Remembered): TalkReading | null {
  const { has, bits, typed, jars } = sentence
  // `Put it back in the cellar` is where it stands.
  if (!has('take_back') || has('housed')) return null
  // `My mistake, 84`: what is put right is not undone.
  if (!UNDOES.test(typed.text) && bits.some(({ kind, value }) => kind !== 'date' && value > 0)) return null
  const running = jars.filter((each) => !isOver(each))
  const isNamed = bits.some(({ kind }) => kind === 'plant' || kind === 'jar')
  const named = bits.flatMap((bit) => jarsOf(bit, running))
  const jar = step?.options.jar
  const last = jar === undefined ? undefined : jars.find(({ id }) => `#${id}` === jar)
  if (step !== null && jar !== undefined && (!isNamed || (last !== undefined && named.includes(last)))) {
    if (answersSince === 0 && !isNamed) return callReading(undoOf(jar), 'record')
    return undoAsked(step, last?.name ?? jar)
  }
  const words = typed.tokens.filter(({ kind }) => kind === 'word')
  if (words.length > MOST_WORDS || !UNDOES.test(typed.text)) return null
  const choices = (isNamed ? [...new Set(named)] : running).slice(0, MOST_JARS).map(({ name }) => undoOf(name))
  const [call] = choices
  return call === undefined ? null : { kind: 'question', call, about: { kind: 'undo_jar' }, choices, leftOut: [] }
}

export const undoOf = (jar: string): CallRead => ({ command: 'jar undo', options: { jar } })

/** Whether a step, of a jar by its name, is to be taken back. */
export function undoAsked({ command: step }: CallRead, jar: string): TalkReading {
  const call = undoOf(jar)
  return { kind: 'question', call, about: { kind: 'undo_step', step }, choices: [call], leftOut: [] }
}
