import { textFrom } from '../../../core/quantity/read/tokens.ts'
import type { Path } from '../../calls/signatures.ts'
import type { BitKind, Sentence } from '../bits/bit.ts'
import { timesSaid } from '../frames/again-slots.ts'
import { otherHalf } from '../frames/half-of-day.ts'
import { leftOutOf } from '../frames/left-out.ts'
import type { CallRead, TalkReading } from '../frames/reading.ts'
import type { FrameTried } from '../frames/score.ts'
import { type Concept, DEEDS } from '../lexicon/lexicon.ts'
import { isAhead, isAsked, isToldNow } from './is-told.ts'
import { takenSpirit } from './taken-spirit.ts'
import { twoDrinks } from './two-drinks.ts'
import { unsizedBottles } from './unsized-bottle.ts'

export const callOf = ({ frame, options }: FrameTried, more: Readonly<Record<string, string>> = {}): CallRead => ({
  command: frame.command,
  options: { ...options, ...more },
})

const planOf = (
  // What is only planned has no name yet.
  { options: { when, name: _, ...options } }: CallRead,
  leftOut: readonly string[],
  { has }: Sentence,
): TalkReading => ({
  kind: 'call',
  // `Would one started now be ready by Easter`: that day is when it is to be ready.
  call: { command: 'plan', options: when !== undefined && has('by_day') ? { ...options, 'ready-by': when } : options },
  leftOut,
  does: 'compute',
})

/** Done to a jar that stands there: of no batch that is only planned. */
const OF_A_JAR: ReadonlySet<Concept> = new Set(['shook', 'bottled', 'gave_away', 'fined', 'divided'])

/** The deeds that are said with what a frame does; another one in the sentence is named. Empty where any may be. */
function deedsSaidWith({ does, command, cues }: FrameTried['frame']): readonly string[] {
  if (does === 'record') return Object.keys(cues)
  return command === 'plan' ? [...DEEDS].filter((deed) => !OF_A_JAR.has(deed)) : []
}

/** What a frame that holds comes to: a call, a question, or a line to type. */
export function readingOf(best: FrameTried, sentence: Sentence, isTyped = false): TalkReading {
  const { frame, lacks, open, unused } = best
  const call = callOf(best)
  // Of what fills bottles the plan says how much of each: `how many lemons and how much sugar for ten bottles`.
  const isAllAsked = frame.command === 'plan' && sentence.has('for_bottles')
  const covered = sentence.bits.filter(
    ({ kind }) => frame.covers?.includes(kind) === true || (isAllAsked && ASKED_WITH.has(kind)),
  )
  // What is known of a plant is the same for any amount of it.
  const taken = frame.command === 'botanical' ? best.used.filter(({ role }) => role !== 'of_plant') : best.used
  const used = [...taken, ...covered]
  const words = leftOutOf(sentence, used, deedsSaidWith(frame))
  const unsized = COUNT_BOTTLES.has(frame.command) ? unsizedBottles(sentence, used) : []
  // Named as a whole: `a small one`.
  const times =
    frame.command === 'again' && (call.options.spirit ?? call.options.bottles) === undefined ? timesSaid(sentence) : []
  const name = frame.command === 'jar rename' ? (call.options.to ?? '').split(/\s+/) : []
  // What is kept word for word is not left out, nor is a city that tells the zone.
  const { note = '', zone = '' } = call.options
  const noted = `${note} ${zone}`.toLowerCase().split(/[^\p{L}\p{N}'’-]+/u)
  const leftOut = [
    ...words.filter(
      (word) =>
        !name.includes(word) && !noted.includes(word.toLowerCase()) && !unsized.some((bottle) => bottle.includes(word)),
    ),
    ...unsized,
    ...times,
  ]
  if (open !== null) {
    const choices = open.choices.map((text) => callOf(best, { [open.option]: text }))
    return { kind: 'question', call, about: { kind: 'which_jar' }, choices, leftOut }
  }
  if (frame.does === 'never') return { kind: 'only_typed', call }
  if (lacks.length > 0) {
    return { kind: 'question', call, about: { kind: 'lacks', option: lacks[0]! }, choices: [], leftOut }
  }
  // A command that was typed is told by its slash.
  if (frame.does === 'record' && !isTyped && !isToldNow(sentence, frame.command)) {
    // A recipe that is asked about, or wished, is planned.
    if (frame.command === 'jar start' && call.options['second-of'] === undefined) return planOf(call, leftOut, sentence)
    // `Did I shake it?`, `l'ho già scosso?`, `will shake it tomorrow`: the jar tells.
    const { jar } = call.options
    if (
      jar !== undefined &&
      jar !== 'all' &&
      (isAsked(sentence) || sentence.has('hypothesis')) &&
      !isKeptAsked(frame.command)
    )
      return { kind: 'call', call: { command: 'jar show', options: { jar } }, leftOut, does: 'compute' }
    const later = laterOf(call, sentence)
    if (later !== null)
      return {
        kind: 'question',
        call: later,
        about: { kind: 'one_reminder', ...(!sentence.has('remind') && { isMeant: true as const }) },
        choices: [later],
        leftOut: [],
      }
    return { kind: 'question', call, about: { kind: 'told_or_asked' }, choices: [call], leftOut }
  }
  // How much spirit went in was not told, only how large its jar is.
  if (frame.command === 'jar start' && !isTyped && best.used.some(({ isJarSize }) => isJarSize))
    return { kind: 'question', call, about: { kind: 'told_or_asked' }, choices: [call], leftOut }
  const [number] = unused
  if (number !== undefined)
    return {
      kind: 'question',
      call,
      about: { kind: 'number', typed: textFrom(sentence.typed, number.from, number.to) },
      choices: [call],
      leftOut,
    }
  const later = call.command === 'reminders' ? laterTime(call, sentence) : null
  if (later !== null)
    return { kind: 'question', call, about: { kind: 'which_reading' }, choices: [call, later], leftOut }
  const drinks = call.command === 'plan' ? twoDrinks(call, sentence) : null
  if (drinks !== null) return { kind: 'question', call, about: { kind: 'two_drinks' }, choices: drinks, leftOut }
  const spiritTaken = takenSpirit(best)
  return { kind: 'call', call, leftOut, does: frame.does, ...(spiritTaken !== null && { spiritTaken }) }
}

/** `At half past six`: in the morning or in the evening. */
function laterTime(call: CallRead, sentence: Sentence): CallRead | null {
  const { time } = call.options
  const other = time === undefined ? null : otherHalf(time, sentence)
  return other === null ? null : { ...call, options: { ...call.options, time: other } }
}

/** A jar is spoken of again on the day on which something is to be done to it; null where no such day is said. */
function laterOf({ command, options: { jar } }: CallRead, sentence: Sentence): CallRead | null {
  const day = sentence.bits.find(({ kind }) => kind === 'date')
  if (!isAhead(sentence) || command === 'jar later' || jar === undefined || jar === 'all' || day === undefined)
    return null
  return { command: 'jar later', options: { jar, until: day.text } }
}

const ASKED_WITH: ReadonlySet<BitKind> = new Set(['spirit', 'sugar', 'water'])

const COUNT_BOTTLES: ReadonlySet<Path> = new Set(['jar bottle', 'bottles'])

/** Steps of no one jar that could be shown. */
const isKeptAsked = (command: Path): boolean => command === 'jar later' || command === 'again'

export const isDeedTold = ({ frame }: FrameTried, sentence: Sentence): boolean =>
  frame.does === 'record' &&
  frame.command !== 'jar start' &&
  sentence.has('own_jar') &&
  sentence.has(...DEEDS) &&
  isToldNow(sentence, frame.command)

/** A reading by which something is written down, or asked about before it is. */
export const isDeedRead = (reading: TalkReading): reading is Extract<TalkReading, { kind: 'call' | 'question' }> =>
  (reading.kind === 'call' && reading.does === 'record') ||
  (reading.kind === 'question' && reading.about.kind === 'told_or_asked')
