import { dayFromIso, daysBetween } from '../../quantity/time/calendar-day.ts'
import type { Targets } from '../../recipe/targets.ts'
import { steepedDays } from './batch-facts.ts'
import { contentsOf } from './contents.ts'
import type { JarState, Of } from './jar-state.ts'

/** Days from the start. */
export interface DaySpan {
  readonly fromDays: number
  readonly byDays: number
}

/** Where a batch went otherwise than it was planned, and how it was liked. */
export interface LastTime {
  /** When it was to be strained; null where nobody knew. */
  readonly plannedDays: DaySpan | null
  /** When it was strained; null while it steeps. */
  readonly wentDays: number | null
  /** Strained well before or after that. */
  readonly isDaysOff: boolean
  /** What it became; null where it has become nothing yet, or is not this batch alone. */
  readonly made: Targets | null
  readonly isMadeOff: boolean
  /** Of the last tasting; null where none was given. */
  readonly rating: number | null
  readonly note: string | null
  /** Jars whose liquid was poured into it. */
  readonly pouredIn: readonly string[]
}

/** A day, or this share of the days, early or late is as planned. Judgement. */
const OFF_DAYS_SHARE = 0.15
/** Further off than a jug and a scale explain. Judgement. */
const OFF_PERCENT = 1.5
const OFF_GPERL = 15
const OFF_SUGAR_SHARE = 0.1

function plannedDaysOf({ started: { day, days } }: JarState): DaySpan | null {
  const { strainFrom, strainBy } = days
  if (strainFrom === null || strainBy === null) return null
  const daysTo = (other: string): number => daysBetween(dayFromIso(other), dayFromIso(day))
  return { fromDays: daysTo(strainFrom), byDays: daysTo(strainBy) }
}

function isOff(days: number, { fromDays, byDays }: DaySpan): boolean {
  const leeway = (bound: number): number => Math.max(1, OFF_DAYS_SHARE * bound)
  return days < fromDays - leeway(fromDays) || days > byDays + leeway(byDays)
}

/** What it became, where it was sweetened or bottled and is of one batch. */
function madeOf(story: JarState, isAlone: boolean) {
  if (!isAlone || (story.sweetened === null && story.bottled === null)) return null
  const { outcome, isEmpty } = contentsOf(story)
  return isEmpty ? null : outcome
}

/** How a jar went, beside what was planned of it. */
export function lastTime(story: JarState): LastTime {
  const { happened, started } = story
  const poured = happened.filter((entry): entry is Of<'poured_in'> => entry.kind === 'poured_in')
  const tasted = happened.findLast((entry): entry is Of<'tasted'> => entry.kind === 'tasted')
  const [plannedDays, wentDays] = [plannedDaysOf(story), steepedDays(story)]
  const made = madeOf(story, poured.length === 0)
  const isFar = (one: number, other: number, ...most: readonly number[]): boolean =>
    Math.abs(one - other) > Math.max(...most)
  const { targets } = started
  return {
    plannedDays,
    wentDays,
    isDaysOff: plannedDays !== null && wentDays !== null && isOff(wentDays, plannedDays),
    made: made && { abvPercent: made.abvPercent.value, sugarGPerL: made.sugarGPerL.value },
    isMadeOff:
      made !== null &&
      targets !== null &&
      (isFar(made.abvPercent.value, targets.abvPercent, OFF_PERCENT, made.abvPercent.plusMinus) ||
        isFar(
          made.sugarGPerL.value,
          targets.sugarGPerL,
          OFF_GPERL,
          OFF_SUGAR_SHARE * targets.sugarGPerL,
          made.sugarGPerL.plusMinus,
        )),
    rating: tasted?.rating ?? null,
    note: tasted?.note ?? null,
    pouredIn: [...new Set(poured.map(({ other }) => other))],
  }
}
