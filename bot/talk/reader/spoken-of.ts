import { wordsFrom } from '../../../core/quantity/read/tokens.ts'
import type { Sentence } from '../bits/bit.ts'
import { jarCalled, jarsNamed, runningAmong } from '../bits/jars-of.ts'
import type { TalkReading } from '../frames/reading.ts'
import { withOption } from '../memory/change-call.ts'
import { NOTHING_SAID, type Remembered } from '../memory/remembered.ts'
import { WORKED_OUT } from '../memory/rule.ts'
import { isAsked, isToldNow } from './is-told.ts'
import type { KnowsNudge } from './nudge-done.ts'

/** Only looked at: another jar that is meant is asked for again. */
const LOOKS = /^(?:jar show|jar label|jar tag|syrup|cost|keeping|adjust|trouble|calendar)$/

/** `Bottled it, 5 x 500 ml`, where there is one jar: of that one, which says so itself if it is not so far. */
function ofOnlyJar(reading: TalkReading, sentence: Sentence): TalkReading {
  if (reading.kind !== 'question' || reading.about.kind !== 'lacks' || reading.about.option !== 'jar') return reading
  const { call, leftOut } = reading
  const [only, another] = runningAmong(sentence.jars)
  const isNamed = sentence.bits.some(({ kind, role }) => (kind === 'plant' && role !== 'left_out') || kind === 'jar')
  if (only === undefined || another !== undefined || isNamed || !isToldNow(sentence, call.command)) return reading
  return { kind: 'call', call: { ...call, options: { jar: only.name, ...call.options } }, leftOut, does: 'record' }
}

/** What is written down of a jar: of the one that was spoken of just before, in that stage. */
const IN_STAGE: Readonly<Record<string, RegExp>> = {
  'jar shake': /^steeping$/,
  'jar taste': /^(?!emptied|discarded)/,
  'jar strain': /^steeping$/,
  'jar sweeten': /^(?:strained|sweetened)$/,
  'jar filter': /^(?:strained|sweetened|resting|ready)$/,
  'jar bottle': /^(?:strained|sweetened)$/,
  'jar open': /^(?:resting|ready)$/,
  'jar note': /^(?!emptied|discarded)/,
  bottles: /^(?:resting|ready)$/,
}

/** Told or looked at just now, with nothing in between; one that is only begun is spoken of as well, but asks for nothing yet. */
const isSpokenNow = ({ call, answersBehind, question }: Remembered): boolean =>
  call !== null &&
  answersBehind === 0 &&
  question === null &&
  call.command !== 'jar start' &&
  call.command !== 'jar undo'

/**
 * `Will it be ready by Christmas` behind `shook the ginger`, `drank one` behind `how are the plums`: of several jars, where none is
 * named, the one that was spoken of last.
 */
function ofSpokenJar(
  reading: TalkReading,
  { bits, jars }: Sentence,
  { said = NOTHING_SAID, nudge = () => null }: KnowsNudge,
): TalkReading {
  if (reading.kind !== 'question' || reading.about.kind !== 'which_jar') return reading
  const { command } = reading.call
  const stage = LOOKS.test(command) ? undefined : IN_STAGE[command]
  if (bits.some(({ kind }) => kind === 'plant' || kind === 'jar') || jarsNamed(bits, jars).length > 0) return reading
  const last = stage === undefined ? null : nudge()
  const nudged = last?.isNewer === true ? last : null
  if (stage !== undefined && nudged === null && !isSpokenNow(said)) return reading
  const [job, another] = nudged?.jobs.filter((each) => each.command === command) ?? []
  if (another !== undefined) return reading
  if (job?.options.jar === 'all')
    return { ...reading, kind: 'call', call: withOption(reading.call, 'jar', 'all'), does: 'record' }
  const [only, ...others] = nudged?.names ?? []
  const spoken =
    nudged === null ? said.call?.options.jar : (job?.options.jar ?? (others.length === 0 ? only : undefined))
  const own = jarCalled(spoken, jars)
  const choice = reading.choices.find(({ options }) => own !== undefined && options.jar === own.name)
  if (choice === undefined || own === undefined) return reading
  // Of one that is to go that is said, however far it is.
  const isHeld = own.stands !== undefined && !own.stands.isOpen
  if (!isHeld && stage?.test(own.stage) === false) return reading
  return { kind: 'call', call: choice, leftOut: reading.leftOut, does: stage === undefined ? 'compute' : 'record' }
}

const REFERS =
  /\b(?:it|its|this|that|these|them|they|mine|my|the (?:jar|batch|liqueur|bottle|lot)|lo|la|li|mio|mia|questo|questa)\b/u

/** Somebody else's, or of another time. */
const OF_ANOTHER =
  /\b(?:last (?:year|time|one|batch)|years?|friend\p{L}*|neighbou?r\p{L}*|sisters?|brothers?|mums?|moms?|dads?|grans?|grannys?|aunt\p{L}*|uncles?|shop|bought|other|previous|old|usually|always|sometimes|people|amic[oa]|vicin[oa]|nonn[oa]|zi[oa]|comprat[oa]|altr[oa]|vecchi[oa])\b/u

/** `It’s cloudy`, with one jar, or one that was spoken of: that one, by its own numbers. */
function ofSickJar(reading: TalkReading, sentence: Sentence, { call }: Remembered): TalkReading {
  if (reading.kind !== 'symptom') return reading
  const { options } = reading
  const { bits, jars, typed } = sentence
  const words = wordsFrom(typed)
  const isTold = options.jar !== undefined || options.strength !== undefined || options.sweetness !== undefined
  const isOther = bits.some(({ kind, value }) => kind === 'plant' || kind === 'spirit' || kind === 'jar' || value > 0)
  if (isTold || isOther || OF_ANOTHER.test(words) || (isAsked(sentence) && !REFERS.test(words))) return reading
  const running = runningAmong(jars)
  const spoken = jarCalled(call?.options.jar, running)
  const [jar, another] = spoken === undefined ? running : [spoken]
  // What was only worked out is in no jar.
  const isPlan = call !== null && WORKED_OUT.test(call.command) && call.options.jar === undefined
  return jar === undefined || another !== undefined || isPlan
    ? reading
    : { ...reading, options: { ...options, jar: jar.name } }
}

/** With the jar that can only be meant, where none is named. */
export const ofMeantJar = (reading: TalkReading, sentence: Sentence, knows: KnowsNudge): TalkReading =>
  ofOnlyJar(ofSpokenJar(ofSickJar(reading, sentence, knows.said ?? NOTHING_SAID), sentence, knows), sentence)
