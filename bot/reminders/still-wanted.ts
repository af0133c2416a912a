import { allDuties } from '../../core/jar/tasks/duties.ts'
import { type DutyKind, isLapsed } from '../../core/jar/tasks/duty.ts'
import { isoDay } from '../../core/quantity/time/calendar-day.ts'
import { dayAt } from '../../core/quantity/time/zone.ts'
import { dutySettings } from '../../store/due.ts'
import type { Nudge, Person } from '../../store/person.ts'
import { believed } from '../../store/told-ahead.ts'

type Said = Nudge['duties'][number]

export interface Sorted {
  readonly wanted: readonly Said[]
  /** Done meanwhile, or nobody asks for it any more. */
  readonly over: readonly Said[]
  /** Not said in time, and of no use any more. */
  readonly lapsed: readonly Said[]
}

/** What falls due so soon is said with what was missed of its kind, and not a second time. */
export const SOON_MS = 3 * 60 * 60_000

/** Those that come so often that a missed one may meet the next. */
const OFTEN: readonly DutyKind[] = ['shake', 'taste']

/**
 * Sorts reminders that were on their way, or are about to be, by whether they are still wanted now. One whose time is to
 * come again (put off, paused) is in no part: it is made anew when it has come, unless that is soon and one of its kind
 * is said of its jar now.
 */
export function sortDuties(said: readonly Said[], person: Person, assumedZone: string, nowMs: number): Sorted {
  const settings = dutySettings(person.settings, assumedZone)
  const today = isoDay(dayAt(settings.zone, nowMs))
  const [wanted, over, lapsed]: [Said[], Said[], Said[]] = [[], [], []]
  for (const jarId of new Set(said.map((each) => each.jarId))) {
    const entries = person.jars.find(({ id }) => id === jarId)?.entries ?? []
    const asked = new Map(allDuties(believed(entries, nowMs), settings).map((duty) => [duty.key, duty]))
    const mine = said.filter((each) => each.jarId === jarId)
    const missed = new Set(
      mine.filter(({ key }) => (asked.get(key)?.dueMs ?? Infinity) <= nowMs).map(({ kind }) => kind),
    )
    for (const each of mine) {
      const duty = asked.get(each.key)
      const isSaidAhead = OFTEN.includes(each.kind) && missed.has(each.kind)
      if (duty === undefined) over.push(each)
      else if (isLapsed(duty, today)) lapsed.push(each)
      else if (duty.dueMs <= nowMs + (isSaidAhead ? SOON_MS : 0)) wanted.push(each)
    }
  }
  return { wanted, over, lapsed }
}
