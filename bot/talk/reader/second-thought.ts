import type { Path } from '../../calls/signatures.ts'
import type { CallRead, TalkReading } from '../frames/reading.ts'
import type { Aim, Leaning } from '../hunch/hunch.ts'

/** From here on a hunch is trusted: of those of unseen sentences that are as sure some 96 in 100 are right. */
const SURE = 0.8

/** A reading that is less likely than this is looked at again. */
const DOUBTFUL = 0.05

/** What a sentence could be read as, if it is after something else than the rules took it for; null where it cannot. */
export interface Otherwise {
  call(command: Path): TalkReading | null
  topic(): TalkReading | null
  trouble(): TalkReading | null
  follow(): TalkReading | null
}

/** Commands that a plant or an amount alone may speak for. */
const BY_LITTLE: ReadonlySet<Path> = new Set(['plan', 'botanical', 'syrup'])

/** Whether a hunch has a say in it: in what was not understood, and in what little speaks for; no entry, symptom, step or question. */
const mayGiveWay = (reading: TalkReading): boolean =>
  reading.kind === 'lost' ||
  (reading.kind === 'call' && reading.does === 'compute' && BY_LITTLE.has(reading.call.command))

/** What a reading is after; null where a hunch has no say. */
function aimOf(reading: TalkReading): Aim | null {
  switch (reading.kind) {
    case 'call':
    case 'question':
      return reading.call.command
    case 'symptom':
      return 'trouble'
    case 'topic':
      return 'handbook'
    case 'lost':
      return 'none'
    default:
      return null
  }
}

/** Commands that are near each other, so that their cues tell them apart better than a hunch. */
const NEAR: readonly (readonly Aim[])[] = [
  ['plan', 'botanical', 'jar start', 'again'],
  ['bottles', 'jar open', 'jar show', 'jar list'],
  ['jar later', 'reminders', 'calendar', 'settings'],
]

const family = (aim: Aim): readonly Aim[] => NEAR.find((each) => each.includes(aim)) ?? [aim]

function otherwise(aim: Aim, of: Otherwise): TalkReading | null {
  switch (aim) {
    case 'none':
    case 'talk':
      return null
    case 'handbook':
      return of.topic()
    case 'trouble':
      return of.trouble()
    case 'follow':
      return of.follow()
    default:
      return of.call(aim)
  }
}

/** A call with all it needs gives way to no question. */
const isLess = (other: TalkReading, reading: TalkReading): boolean =>
  reading.kind === 'call' && (other.kind === 'question' || other.kind === 'only_typed')

/** The command that a sentence is surely after, where it was not understood: what its reply begins with. */
const nearestOf = (aim: Aim): readonly CallRead[] =>
  aim === 'handbook' || aim === 'talk' || aim === 'follow' || aim === 'none' ? [] : [{ command: aim, options: {} }]

/**
 * A reading that hardly ever is what such sentences are after gives way to what they mostly are, where the sentence can be read so.
 * What was understood by what was said before stays.
 */
export function secondThought(
  reading: TalkReading,
  leanings: readonly Leaning[],
  isAfter: boolean,
  of: Otherwise,
): TalkReading {
  const aim = aimOf(reading)
  const [likeliest] = leanings
  if (!mayGiveWay(reading) || aim === null || likeliest === undefined || likeliest.share < SURE) return reading
  if (likeliest.aim === 'follow' && (reading.kind === 'call' || reading.kind === 'question') && isAfter) return reading
  const near = family(aim)
  const share = leanings.filter((each) => near.includes(each.aim)).reduce((sum, each) => sum + each.share, 0)
  if (share >= DOUBTFUL) return reading
  const other = otherwise(likeliest.aim, of)
  if (other === null) return reading.kind === 'lost' ? { kind: 'lost', nearest: nearestOf(likeliest.aim) } : reading
  return isLess(other, reading) ? reading : other
}
