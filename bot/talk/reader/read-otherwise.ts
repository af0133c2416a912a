import type { Sentence } from '../bits/bit.ts'
import { leftOutOf } from '../frames/left-out.ts'
import type { TalkReading } from '../frames/reading.ts'
import { symptomDenied, symptomIn } from '../frames/symptoms.ts'
import type { Remembered } from '../memory/remembered.ts'
import { changedOf } from '../memory/rule.ts'
import { type EntryFound, entryOfClause } from './entry-of-clause.ts'
import { callOf, readingOf } from './frame-reading.ts'
import { hiddenDanger } from './hidden-danger.ts'
import type { FindsInText } from './kept-finds.ts'
import { likelyEntry } from './likely-entry.ts'
import { HARMFUL, type Otherwise } from './second-thought.ts'
import { symptomReading } from './symptom-reading.ts'
import { tried } from './tried-frames.ts'

interface Knows extends FindsInText {
  readonly said?: Remembered
}

export const topic = ({ id, others }: Omit<EntryFound, 'share' | 'likelihood'>): TalkReading => ({
  kind: 'topic',
  entry: id,
  more: others,
})

const toldOrAsked = ({ call, leftOut }: Extract<TalkReading, { kind: 'call' }>): TalkReading => ({
  kind: 'question',
  call,
  about: { kind: 'told_or_asked' },
  choices: [call],
  leftOut,
})

/** From here on a deed is asked about, though the jar’s name and what it is told of are all that was understood. */
const SURE_OF_DEED = 0.9

/** Options that are added to a call by a word after it. */
const WISHED: ReadonlySet<string> = new Set(['to-strength', 'to-sweetness', 'bottles', 'ready-by', 'pour'])

/** What it would be, if it were after that. */
export const otherwiseOf = (sentence: Sentence, text: string, knows: Knows): Otherwise => ({
  call(command, sure) {
    const [best] = tried(sentence, command)
    if (best === undefined || best.used.length === 0) return null
    const reading = readingOf(best, sentence)
    // `Limone scosso prima di lezione`: surely told, though a word in it asks; how the jar stands is no answer.
    const isShown = best.frame.does === 'record' && reading.kind === 'call' && reading.call.command === 'jar show'
    if (isShown && sure >= SURE_OF_DEED) return hiddenDanger(toldOrAsked({ ...reading, call: callOf(best) }), sentence)
    // No hunch writes anything down: it asks.
    const isDeed = reading.kind === 'call' && reading.does !== 'compute'
    return hiddenDanger(isDeed ? toldOrAsked(reading) : reading, sentence)
  },
  handbook(sure) {
    const found = entryOfClause(text, knows) ?? knows.findRespelt(text)
    const likely = found ?? likelyEntry(knows.rankEntries(text), sure)
    return likely === null ? null : topic(likely)
  },
  trouble() {
    if (symptomDenied(sentence) !== null) return null
    const symptom = symptomIn(sentence) ?? knows.findSymptom(text)
    if (symptom !== null) return symptomReading(sentence, symptom.id)
    // What is said not to be so is like nothing.
    const likely = sentence.has('denial') ? null : knows.findLikelySymptom(text)
    const reading = likely === null ? null : symptomReading(sentence, likely.id)
    // What harms is written down with its jar: not for a likeness.
    return reading?.kind === 'symptom' && HARMFUL.has(reading.id) && reading.options.jar !== undefined ? null : reading
  },
  follow() {
    const { call = null } = knows.said ?? {}
    if (call === null) return null
    const base = changedOf(call, sentence.jars)
    const [best] = tried(sentence, base.command)
    if (best === undefined || best.frame.does !== 'compute' || best.unused.length > 0) return null
    const isChange = Object.keys(best.options).every((option) => option in base.options || WISHED.has(option))
    if (best.used.length === 0 || !isChange) return null
    const options = { ...base.options, ...best.options }
    return { kind: 'call', call: { ...base, options }, leftOut: leftOutOf(sentence, best.used), does: 'compute' }
  },
})
