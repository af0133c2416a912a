import type { CallRead, TalkReading } from '../frames/reading.ts'
import type { Aim, Leaning } from '../hunch/hunch.ts'
import { isSameCall } from '../memory/change-call.ts'
import { HARMFUL, lostNear, type Otherwise, otherwise, SURE, SUREST } from './second-thought.ts'

/** A reading that is less likely than this is asked about. Of 260 sentences nobody had seen it took half of the wrong ones. */
const DOUBTED = 0.03

/** What only shows something is asked about earlier, where something else is so likely. Of 400 sentences nobody had seen it took one wrong one of fifteen. */
const SHOWN = { doubted: 0.2, likelier: 0.85 } as const

/** A plan is given up for an entry earlier, where it was asked: `Should I buy a kilo of lemons or will six do?`. */
const PLANNED = { share: 0.3, likelier: 0.7 } as const

/** A likelier one is only set against it from here on. */
const LIKELIER = 0.65

/** What hardly any such sentence is after, where nearly all are after something else: even an entry gives way to that. */
const NEVER = { share: 0.006, likelier: 0.9 } as const

/** What is as good as never meant is not shown, whatever else it may be. Of 1,138 sentences nobody had seen it took two, both wrong. */
const SELDOM = 0.02

/** What is said in the same words: between these a hunch has no say. */
const ALIKE: readonly (readonly Aim[])[] = [
  ['plan', 'botanical', 'jar start', 'again'],
  ['jar show', 'jar list', 'bottles', 'jar open'],
  ['jar later', 'reminders'],
  ['jar strain', 'jar take-out', 'jar filter'],
  ['trouble', 'handbook', 'cautions', 'measure', 'blend', 'serving'],
  ['cost', 'shopping'],
  ['label', 'jar label', 'jar tag'],
  ['syrup', 'dilute', 'mix', 'blend', 'adjust', 'measure', 'jar correct'],
]

function aimOf(reading: TalkReading): Aim | null {
  if (reading.kind === 'symptom') return HARMFUL.has(reading.id) ? null : 'trouble'
  if (reading.kind === 'topic') return 'handbook'
  if (reading.kind !== 'call' && reading.kind !== 'question') return null
  // What it smells of is asked because it may be a danger.
  return reading.kind === 'question' && reading.call.command === 'trouble' ? null : reading.call.command
}

/** Told by words of their own, and in too few sentences that a hunch has seen. */
const OF_ITS_OWN: ReadonlySet<Aim> = new Set(['cost', 'settings', 'bottles'])

const alike = (aim: Aim): readonly Aim[] => [aim, ...ALIKE.filter((each) => each.includes(aim)).flat()]

/** How likely it is that one of them is meant. */
const together = (aims: readonly Aim[], leanings: readonly Leaning[]): number =>
  leanings.reduce((sum, { aim, share }) => sum + (aims.includes(aim) ? share : 0), 0)

/** That work nothing out without an amount. */
const CALCULATORS: ReadonlySet<Aim> = new Set([
  'measure',
  'blend',
  'serving',
  'cautions',
  'syrup',
  'dilute',
  'mix',
  'adjust',
])

const isWithoutOptions = (reading: TalkReading): boolean =>
  reading.kind === 'call' && Object.keys(reading.call.options).length === 0

const callOf = (reading: TalkReading): CallRead | null => {
  if (reading.kind === 'call' || reading.kind === 'question') return reading.call
  return reading.kind === 'symptom'
    ? { command: 'trouble', options: { symptom: reading.id, ...reading.options } }
    : null
}

/** What names its jar follows on nothing. */
const mayFollow = (reading: TalkReading): boolean =>
  reading.kind === 'topic' || (reading.kind === 'symptom' && reading.options.jar === undefined)

/** `I won’t bother so, leave it`: nothing is shown to whoever says so. */
const isNeverShown = (reading: TalkReading, leanings: readonly Leaning[]): boolean =>
  isWithoutOptions(reading) && leanings[0]!.share >= SUREST && shareOf(reading, leanings) < NEVER.share

const shareOf = (reading: TalkReading, leanings: readonly Leaning[]): number =>
  leanings.find(({ aim }) => aim === aimOf(reading))?.share ?? 0

/** `The lemon can wait till Friday`: what such sentences nearly always are, with an amount, a day or a plant in it. */
function commandBeside(entry: TalkReading, leanings: readonly Leaning[], of: Otherwise): TalkReading {
  const [likeliest] = leanings
  if (likeliest === undefined || likeliest.share < NEVER.likelier) return entry
  if (shareOf(entry, leanings) >= NEVER.share || alike('handbook').includes(likeliest.aim)) return entry
  const other = otherwise(likeliest, of)
  const isEmpty = other === null || Object.keys(callOf(other)?.options ?? {}).length === 0
  return isEmpty || (other.kind !== 'call' && other.kind !== 'question') ? entry : other
}

/** Hardly a plan, and mostly what an entry answers. */
const isOffPlan = ({ call }: TalkReading & { kind: 'call' }, leanings: readonly Leaning[]): boolean =>
  call.command === 'plan' &&
  leanings[0]!.aim === 'handbook' &&
  leanings[0]!.share >= PLANNED.likelier &&
  together(alike('plan'), leanings) < PLANNED.share

/** Shown, and hardly ever what such a sentence is after; a plan is looked at again (`notMeant`). */
function isSeldom(reading: TalkReading, leanings: readonly Leaning[]): boolean {
  const aim = aimOf(reading)
  const isShown = reading.kind === 'topic' || (reading.kind === 'call' && reading.does === 'compute')
  const isKnown = aim !== 'plan' && leanings.some((each) => each.aim === aim)
  return isShown && aim !== null && isKnown && together(alike(aim), leanings) < SELDOM
}

/** A deed is told, and a plan asked, by words of its own. */
function leastOf(reading: TalkReading, { share }: Leaning): number {
  const call = callOf(reading)
  const isShown = call !== null && call.command !== 'plan' && !(reading.kind === 'call' && reading.does !== 'compute')
  return isShown && share >= SHOWN.likelier ? SHOWN.doubted : DOUBTED
}

interface Said {
  /** Whether it was said outright. */
  readonly isPlain: () => boolean
  readonly isAsked: boolean
  /** Whether there is no jar of one’s own that anything could be done to. */
  readonly isNowhere: boolean
}

/**
 * A reading that no such sentence was ever after is asked about, beside the one that it is likelier after, or it is said that it was not
 * understood: a wrong answer is worse. What is said plainly, as `isPlain` tells, or was understood by what was said before stays, and so does every danger.
 */
export function doubted(
  reading: TalkReading,
  leanings: readonly Leaning[],
  of: Otherwise,
  { isPlain, isAsked, isNowhere }: Said,
): TalkReading {
  const [likeliest] = leanings
  if (likeliest === undefined) return reading
  if (reading.kind === 'only_typed' && isAsked && likeliest.aim === 'handbook' && likeliest.share >= SUREST)
    return of.handbook(likeliest.share) ?? reading
  const aim = aimOf(reading)
  if (aim === null) return reading
  if (likeliest.aim === 'talk') return isNeverShown(reading, leanings) ? lostNear('talk') : reading
  const isOfItsOwn = OF_ITS_OWN.has(aim)
  // `What should I drink first?` is told by nothing but those words.
  const isOnlyWords = isOfItsOwn && isWithoutOptions(reading)
  // `Can I use old gin bottles again?`: asked, and surely of the handbook.
  const isOfHandbook =
    isAsked && !isOnlyWords && likeliest.aim === 'handbook' && likeliest.share >= (isOfItsOwn ? SUREST : SURE)
  if (isOfItsOwn && !isOfHandbook) return reading
  if (reading.kind === 'call' && isAsked && isOffPlan(reading, leanings) && !isPlain()) {
    const entry = of.handbook(likeliest.share)
    if (entry !== null) return entry
  }
  if (likeliest.share < LIKELIER) return isSeldom(reading, leanings) && !isPlain() ? lostNear(likeliest.aim) : reading
  // An entry may warn: it gives way only to what follows on what was said, and to a command that it is never beside.
  if (reading.kind === 'topic' && likeliest.aim !== 'follow')
    return isPlain() ? reading : commandBeside(reading, leanings, of)
  const own = CALCULATORS.has(aim) && isWithoutOptions(reading) ? [aim] : alike(aim)
  // Of what no sentence was after that it has seen a hunch knows nothing.
  const isOpen = reading.kind === 'question' && likeliest.aim === 'handbook' && likeliest.share >= SUREST
  if ((own.includes(likeliest.aim) && !isOpen) || !leanings.some((each) => each.aim === aim)) return reading
  const share = together(isOpen ? [aim] : own, leanings)
  if (share >= leastOf(reading, likeliest)) return reading
  if (likeliest.aim === 'follow' && !mayFollow(reading)) return reading
  if (isPlain()) return reading
  const other = otherwise(likeliest, of)
  const call = callOf(reading)
  const otherCall = other === null ? null : callOf(other)
  // A deed that was told is not lost for a doubt.
  const isKept = reading.kind === 'question' || (reading.kind === 'call' && reading.does !== 'compute')
  const isRecord = reading.kind === 'call' && reading.does === 'record' && !isNowhere
  // `How do I keep the children out of my jars?`: nothing was found in it but that there are jars.
  const isBare = !isKept && isWithoutOptions(reading)
  if (other !== null && otherCall === null) {
    const givesWay = !isRecord && (isOfHandbook || isOpen || !isKept)
    return givesWay && other.kind === 'topic' && likeliest.share >= (isBare ? LIKELIER : SURE) ? other : reading
  }
  // What was found in the sentence is better than nothing.
  const isBest = share >= DOUBTED && !isBare
  if (otherCall === null) return isKept || isBest ? reading : lostNear(likeliest.aim)
  if (call === null) return other?.kind === 'call' ? other : reading
  if (isSameCall(call, otherCall)) return reading
  const choices = [otherCall, call]
  return { kind: 'question', call: otherCall, about: { kind: 'which_reading' }, choices, leftOut: [] }
}
