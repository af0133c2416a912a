import type { SymptomId } from '../../../core/trouble/symptoms.ts'
import type { Path } from '../../calls/signatures.ts'
import type { Sentence } from '../bits/bit.ts'
import type { TalkReading } from '../frames/reading.ts'
import type { Aim, Leaning } from '../hunch/hunch.ts'
import { answered } from '../memory/answer-question.ts'
import { NOTHING_SAID, type Remembered } from '../memory/remembered.ts'
import { MAY_BURST } from './asked-of-handbook.ts'
import { isAsked } from './is-told.ts'
import { ownGlass } from './own-glasses.ts'

/** From here on a hunch is trusted: of those of unseen sentences that are as sure some 96 in 100 are right. */
export const SURE = 0.8

/** From here on a hunch is trusted against words of their own. */
export const SUREST = 0.95

/** From here on it is a trouble, though an entry was found by its words. */
const SURE_OF_TROUBLE = 0.9

/** A reading that is less likely than this is looked at again. */
const DOUBTFUL = 0.05

/** A symptom may be named where none is told, `muslin or a filter to get the bits out?`, and an entry where one is. */
const DOUBTFUL_SYMPTOM = 0.12

/** What was not understood may be a question of the handbook from here on, where an entry is near. */
const MAY_BE = 0.25

/** Something may have gone wrong from here on, where a symptom is near. */
const LIKELY = 0.5

/** What a sentence could be read as, if it is after something else than the rules took it for; null where it cannot. */
export interface Otherwise {
  /** By how sure it is that the command is meant, 0 to 1. */
  call(command: Path, sure: number): TalkReading | null
  /** By how sure it is that the handbook is asked, 0 to 1. */
  handbook(sure: number): TalkReading | null
  trouble(): TalkReading | null
  follow(): TalkReading | null
}

/** Commands that a plant or an amount alone may speak for. */
const BY_LITTLE: ReadonlySet<Path> = new Set(['plan', 'botanical', 'syrup'])

/** Commands of plants and spirits, which their cues tell apart better than a hunch. */
const OF_PLANTS: readonly Aim[] = ['plan', 'botanical', 'jar start', 'again']

/** What may harm is said, whatever the sentence looks like. */
export const HARMFUL: ReadonlySet<SymptomId> = new Set([
  ...MAY_BURST,
  'mould',
  'pink_orange_slime',
  'solvent',
  'rotten_egg',
  'wrong_spirit',
  'unknown_plant',
  'cracked_stones',
  'broken_glass',
  'lead_crystal',
  'garlic_or_vegetable',
  'insects',
  'someone_ill',
  'spilled_or_burnt',
])

/**
 * The aims of what a hunch has a say in: what was not understood, what little speaks for, and whether it is told or asked that something
 * went wrong. None of a danger, a step or a question.
 */
function aimsOf(reading: TalkReading): readonly Aim[] {
  if (reading.kind === 'symptom') return HARMFUL.has(reading.id) ? [] : ['trouble']
  if (reading.kind === 'topic') return ['handbook']
  if (reading.kind !== 'call' || reading.does !== 'compute' || !BY_LITTLE.has(reading.call.command)) return []
  const { command } = reading.call
  return OF_PLANTS.includes(command) ? OF_PLANTS : [command]
}

/** What a jar’s name alone may speak for, too. */
const BY_NAME: ReadonlySet<Path> = new Set([...BY_LITTLE, 'jar show', 'jar list'])

/** What a reading without a deed is after, against a deed that is likelier. */
function aimBesideDeed(reading: TalkReading): readonly Aim[] {
  // What is told outright to be dangerous is said, whatever deed the rest sounds like.
  if (reading.kind === 'symptom') return HARMFUL.has(reading.id) && reading.options.yes !== undefined ? [] : ['trouble']
  if (reading.kind === 'topic') return ['handbook']
  const isOpen = reading.kind === 'question' && BY_LITTLE.has(reading.call.command)
  if (!isOpen && (reading.kind !== 'call' || !BY_NAME.has(reading.call.command))) return []
  const { command } = reading.call
  return OF_PLANTS.includes(command) ? OF_PLANTS : [command]
}

/** No deeds, though they are of a jar; how it was started is told by plants, as a plan is. */
const NO_DEEDS: ReadonlySet<Aim> = new Set(['jar show', 'jar list', 'jar tag', 'jar label', 'jar start', 'jar later'])

const isDeed = (aim: Aim): boolean => aim === 'again' || (aim.startsWith('jar ') && !NO_DEEDS.has(aim))

const isCommand = (aim: Aim): aim is Path => aim !== 'handbook' && aim !== 'talk' && aim !== 'follow' && aim !== 'none'

export function otherwise({ aim, share }: Leaning, of: Otherwise): TalkReading | null {
  if (aim === 'trouble') return of.trouble()
  if (aim === 'handbook') return of.handbook(share)
  if (isCommand(aim)) return of.call(aim, share)
  return aim === 'none' || aim === 'talk' ? null : of[aim]()
}

/** A symptom and an entry give way to each other alone. */
const GIVES_WAY_TO: Readonly<Partial<Record<TalkReading['kind'], Aim>>> = { symptom: 'handbook', topic: 'trouble' }

/** The command that a sentence is surely after, where it was not understood: what its reply begins with. */
export const lostNear = (aim: Aim): TalkReading => ({
  kind: 'lost',
  nearest: isCommand(aim) ? [{ command: aim, options: {} }] : [],
})

/** `How much syrup for 28 %?`, asked for by its own word, a glass of one's own, and what answers the question that is open: a hunch has no say. */
export const isSettled = (reading: TalkReading, sentence: Sentence, said: Remembered = NOTHING_SAID): boolean =>
  answered(sentence, said.question) !== null ||
  ownGlass(sentence, said) !== null ||
  (reading.kind === 'call' && reading.call.command === 'syrup' && sentence.has('syrup') && isAsked(sentence))

/** What was not understood is what such sentences are surely after, or a question that an entry comes very near to. */
function ofLost(lost: TalkReading, leanings: readonly Leaning[], of: Otherwise): TalkReading {
  const likeliest = leanings[0]!
  const read = likeliest.share >= SURE ? otherwise(likeliest, of) : null
  if (read !== null) return read
  const asked = leanings.find(({ aim, share }) => aim === 'handbook' && share >= MAY_BE)
  const entry = asked === undefined ? null : otherwise(asked, of)
  if (entry !== null) return entry
  const trouble = likeliest.aim === 'trouble' && likeliest.share >= LIKELY ? of.trouble() : null
  if (trouble !== null) return trouble
  return likeliest.share >= SURE ? lostNear(likeliest.aim) : lost
}

/**
 * A reading that hardly ever is what such sentences are after gives way to what they mostly are, where the sentence can be read so.
 * What was understood by what was said before stays, and a call with all it needs gives way to no question but whether a deed is told.
 */
export function secondThought(reading: TalkReading, leanings: readonly Leaning[], of: Otherwise): TalkReading {
  const [likeliest] = leanings
  if (likeliest === undefined) return reading
  if (reading.kind === 'lost') return ofLost(reading, leanings, of)
  if (likeliest.share < SURE) return reading
  const isTold = isDeed(likeliest.aim)
  const only = isTold ? undefined : GIVES_WAY_TO[reading.kind]
  if (only !== undefined && only !== likeliest.aim) return reading
  // An entry gives way to a deed that is told beyond doubt, and to a trouble only where that is likelier than most.
  if (reading.kind === 'topic' && likeliest.share < (isTold ? SUREST : SURE_OF_TROUBLE)) return reading
  const aims = isTold ? aimBesideDeed(reading) : aimsOf(reading)
  const share = leanings.filter(({ aim }) => aims.includes(aim)).reduce((sum, each) => sum + each.share, 0)
  if (aims.length === 0 || share >= (only === undefined ? DOUBTFUL : DOUBTFUL_SYMPTOM)) return reading
  if (likeliest.aim === 'follow') return reading
  const other = otherwise(likeliest, of)
  if (other === null || other.kind === 'only_typed') return reading
  return other.kind === 'question' && !isTold ? reading : other
}
