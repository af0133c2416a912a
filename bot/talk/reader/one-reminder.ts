import type { Sentence } from '../bits/bit.ts'
import { isOver } from '../bits/jars-of.ts'
import { placedNames } from '../bits/placed-name.ts'
import { jarsMeant } from '../frames/jars-meant.ts'
import type { CallRead, TalkReading } from '../frames/reading.ts'
import { reminderFills } from '../frames/reminder-slots.ts'
import type { Concept } from '../lexicon/lexicon.ts'
import type { Remembered } from '../memory/remembered.ts'
import { remindersSwitched } from './reminders-switched.ts'
import { shakingSwitched } from './shaking-switched.ts'

/** Asks to be reminded; `let me know when to strain it` asks for something else. */
const ASKS =
  /^(?:remind\p{L}*|nudge|ping|poke|prod|alert|notify|chase|ricord\p{L}*|avvis\p{L}*|svegliami|dammi|fammi|mandami)$/u

/** `To` and `di` before one of these are no beginning of a thing to do: `at ten to eight`. */
const NO_DEED =
  /^(?:\d.*|the|a|an|my|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|me|private|privately|sera|notte|mattina|pomeriggio|domani|oggi|nuovo|meno)$/

const INFINITIVE = /(?:are|ere|ire|rre|ar[lnmc]\p{L}+|er[lnmc]\p{L}+|ir[lnmc]\p{L}+)$/u

/** Asked of reminders, rather than for one. */
const ASKED = /^(?:what|when|which|why|how|did|do|does|who|cosa|quando|quali|perche|come)$/

const EVERY_DAY = /\b(?:every|each|daily|always|ogni|sempre|tutti i|tutte le)\b/i

/** What a jar asks for by itself. */
const DUTIES: readonly Concept[] = ['shake', 'strain', 'sweeten', 'bottle', 'shaking_reminders', 'deed_ahead']

const OTHERWISE: readonly Concept[] = [
  'be_quiet',
  'reminders_on',
  'reminders_when',
  'away_now',
  'not_this_week',
  'in_here',
  'privately',
]

/** The place where what there is to do begins: `to buy bottles`, `di comprare le bottiglie`; null where nothing is named. */
function deedAt({ typed: { tokens }, lexicon }: Sentence, from: number): number | null {
  const at = tokens.findIndex(({ text }, place) => {
    const next = tokens[place + 1]
    if (place < from || next?.kind !== 'word' || NO_DEED.test(next.text)) return false
    if (lexicon.id === 'it') return /^(?:di|a|per)$/.test(text) && INFINITIVE.test(next.text)
    return (text === 'to' && tokens[place - 1]?.text !== 'when') || (text === 'that' && place > from)
  })
  return at === -1 ? null : at
}

/** `Remind me about the council`: neither a jar, nor its plant, nor what a jar asks for. */
function isOfNoJar({ typed: { tokens }, bits, spans }: Sentence, from: number): boolean {
  const at = tokens.findIndex(({ text }, place) => place >= from && /^(?:about|del|della|dei|delle)$/.test(text))
  if (at === -1) return false
  const isSaid = (place: number): boolean =>
    bits.some((bit) => bit.from <= place && place < bit.to) ||
    spans.some((span) => span.from <= place && place < span.to)
  return tokens.slice(at + 1, at + 3).some(({ kind, text }, more) => {
    const isSmall = text.length < 4 || /^(?:this|that|them|these|those|everything|jar|jars|batch)$/.test(text)
    return kind === 'word' && !isSmall && !isSaid(at + 1 + more)
  })
}

/** `To add a clove to the ginger`: what no jar asks for by itself. */
function isOfPuttingIn(sentence: Sentence): boolean {
  const names = placedNames(sentence, 'into')
  return names.length > 0 && sentence.bits.some((bit) => bit.kind === 'plant' && !names.includes(bit))
}

/**
 * A reminder of one thing, or for one hour of one day, which there is none of: what there is, as lines, and nothing is changed. Null
 * for what is a reminder of a jar for a day, and for those of every day.
 */
function oneReminder(sentence: Sentence): TalkReading | null {
  const { typed, spans, has } = sentence
  const first = typed.tokens.findIndex(({ text }) => ASKS.test(text))
  if (first === -1 || !has('remind') || has(...OTHERWISE) || ASKED.test(typed.tokens[0]!.text)) return null
  if (EVERY_DAY.test(typed.text)) return null
  const from = first + 1
  const time = reminderFills.clock(sentence, 'reminders')
  const until = reminderFills.until(sentence, 'jar later')
  const isOwn = has('own_jar')
  const isDuty = isOwn || spans.some(({ concept }) => DUTIES.includes(concept))
  const isNamed = deedAt(sentence, from) !== null || isOfNoJar(sentence, from)
  const isPutIn = isOwn && isOfPuttingIn(sentence)
  const isOfOther = isNamed && !isDuty
  // Where no jar runs, a day says nothing of one, and all reminders are not held back over it.
  const isOfNothing = until !== null && !sentence.jars.some((each) => !isOver(each))
  const isOfHour = time !== null && (isOwn || until !== null)
  if (!isOfOther && !isOfHour && !isOfNothing && !isPutIn) return null
  const jar =
    isOfOther || isOfNothing || until === null ? null : jarsMeant(sentence, isPutIn ? 'jar add' : 'jar later').text
  const isDay = until?.bits.some(({ kind }) => kind === 'date' || kind === 'span') === true
  const choices: readonly CallRead[] = [
    ...(jar !== null && isDay ? [{ command: 'jar later' as const, options: { jar, until: until.text } }] : []),
    { command: 'reminders', options: time === null ? {} : { time: time.text } },
  ]
  return { kind: 'question', call: choices[0]!, about: { kind: 'one_reminder' }, choices, leftOut: [] }
}

/** What is said of reminders as such: turned on or off, or one that there is none of. */
export const ofReminders = (sentence: Sentence, said: Remembered): TalkReading | null =>
  shakingSwitched(sentence, said) ?? remindersSwitched(sentence) ?? oneReminder(sentence)
