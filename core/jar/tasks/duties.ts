import { dayNumber, isoOf } from '../../quantity/time/day-number.ts'
import { dayNumberAt, instantOf } from '../../quantity/time/zone.ts'
import type { JarEntry } from '../entry/entry.ts'
import { bestUntil } from '../state/best-until.ts'
import { type JarState, jarStateOf } from '../state/jar-state.ts'
import { type Duty, type DutySettings, dutyKey, isLapsed } from './duty.ts'
import { atItsHour, paused, postponed } from './hold-reminders.ts'
import { putOffOf } from './put-off.ts'
import { type ReminderDays, reminderDays } from './reminder-days.ts'
import { shakeDays } from './shake-days.ts'
import { windowsOf } from './windows.ts'

/**
 * Every reminder that a jar's stage still asks for, past ones and those to come, in the order in which they fall due. What
 * was answered is gone, and everything of a stage that has passed. Each key comes once and stays when the hour or the
 * zone is changed.
 */
export const allDuties = (entries: readonly JarEntry[], settings: DutySettings): readonly Duty[] =>
  possibleDuties(entries, settings).filter((duty) => isOwed(entries, duty))

/** As `allDuties`, with what may not be owed: who wants the first of many jars looks into few of them. */
export function possibleDuties(entries: readonly JarEntry[], settings: DutySettings): readonly Duty[] {
  const story = jarStateOf(entries)
  if (story === null) return []
  const awake = awakeMs(entries)
  return awake === null ? dutiesOf(story, settings) : broughtBack(dutiesOf(story, settings), awake, settings)
}

/** Whether a possible duty is one: what may not keep is not said to be good until some day. */
export function isOwed(entries: readonly JarEntry[], { kind }: Pick<Duty, 'kind'>): boolean {
  const story = kind === 'drink' ? jarStateOf(entries) : null
  return story === null || bestUntil(story) !== null
}

/** Entries of these kinds end what was asked for. */
const SILENCING: readonly JarEntry['kind'][] = ['emptied', 'discarded', 'put_off', 'strained', 'sweetened', 'bottled']

/** When something that had ended other reminders was last taken back; null where nothing was. */
function awakeMs(entries: readonly JarEntry[]): number | null {
  const undo = entries.findLast(
    (entry) => entry.kind === 'undone' && entries.some(({ seq, kind }) => seq === entry.of && SILENCING.includes(kind)),
  )
  return undo?.enteredMs ?? null
}

/** What had fallen due before it was brought back, and was not said, is no news: it waits for the next morning. */
function broughtBack(duties: readonly Duty[], awakeMs: number, { zone, atMinutes }: DutySettings): readonly Duty[] {
  const morningMs = instantOf(zone, dayNumberAt(zone, awakeMs) + 1, atMinutes)
  return duties
    .map((duty) => (duty.dueMs <= awakeMs ? { ...duty, dueMs: morningMs } : duty))
    .toSorted((one, other) => one.dueMs - other.dueMs)
}

/** The reminders that are due by now. */
export const duties = (entries: readonly JarEntry[], settings: DutySettings, nowMs: number): readonly Duty[] =>
  allDuties(entries, settings).filter(({ dueMs }) => dueMs <= nowMs)

function dutiesOf(story: JarState, settings: DutySettings): readonly Duty[] {
  const ordered: Duty[] = []
  for (const asked of remindersOf(story, settings)) {
    asked.days.forEach((_, index) => {
      insert(ordered, saidOf(asked, index, settings))
    })
  }
  return ordered
}

/** A reminder nearly always goes to the end, which this sees sooner than a sort. */
function insert(ordered: Duty[], duty: Duty): void {
  let at = ordered.length
  while (at > 0 && ordered[at - 1]!.dueMs > duty.dueMs) at--
  if (at === ordered.length) ordered.push(duty)
  else ordered.splice(at, 0, duty)
}

function remindersOf(story: JarState, { shake, drink, pausedUntil }: DutySettings): readonly ReminderDays[] {
  const putOff = putOffOf(story)
  const pausedUntilDay = pausedUntil === null ? Number.NEGATIVE_INFINITY : dayNumber(pausedUntil)
  const windows = windowsOf(story, shake).filter(({ kind }) => kind !== 'drink' || drink !== 'off')
  const asked = windows.map((window) => {
    const { rhythm } = window
    const shakes = rhythm.of === 'shaking' ? shakeDays(story, rhythm.next, putOff, pausedUntilDay) : []
    const days = reminderDays(window, shakes)
    if (putOff === null) return days
    return rhythm.of === 'shaking' ? atItsHour(days, putOff) : postponed(days, putOff)
  })
  return (pausedUntil === null ? asked : asked.map((each) => paused(each, pausedUntilDay))).map(inTime)
}

/** Tastings drop out once there is nothing left to taste for. */
function inTime(asked: ReminderDays): ReminderDays {
  const { kind, byDay: by, heldUntilDay, days } = asked
  return { ...asked, days: days.filter((day) => !isLapsed({ kind, by }, isoOf(Math.max(day, heldUntilDay)))) }
}

function saidOf(asked: ReminderDays, index: number, settings: DutySettings): Duty {
  const { kind, days, since, hour, byDay, heldUntilDay, heldUntilMs, again } = asked
  const { zone, atMinutes } = settings
  const dayNumber = days[index]!
  const day = isoOf(dayNumber)
  const ownMs = dayNumber === hour?.day ? hour.ms : instantOf(zone, dayNumber, atMinutes)
  const heldMs = heldUntilDay < dayNumber ? ownMs : instantOf(zone, heldUntilDay, atMinutes)
  return {
    kind,
    day,
    key: dutyKey(kind, day, dayNumber === again?.day ? again.seq : null),
    dueMs: Math.max(ownMs, heldMs, heldUntilMs, since.enteredMs),
    isLast: index === days.length - 1,
    by: byDay,
  }
}
