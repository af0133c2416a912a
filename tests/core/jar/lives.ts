import fc from 'fast-check'
import type { Happening, HappeningKind, JarEntry } from '../../../core/jar/entry/entry.ts'
import { jarStateOf } from '../../../core/jar/state/jar-state.ts'
import type { DutySettings, ShakeRhythm } from '../../../core/jar/tasks/duty.ts'
import { addDays, isoDay } from '../../../core/quantity/time/calendar-day.ts'
import { dayAt } from '../../../core/quantity/time/zone.ts'
import { BOTTLED, FILTERED, peel, SHAKEN, settings, TASTED } from './diary.ts'
import { plant, started, strained, sweetened } from './jars.ts'

export const HOUR_MS = 3_600_000
export const DAY_MS = 24 * HOUR_MS
export const BORN_MS = Date.UTC(2026, 2, 20, 9)

const ZONES = ['Europe/Rome', 'America/St_Johns', 'Pacific/Chatham', 'Pacific/Honolulu', 'UTC']

/** What a maker does next, some hours later: with the jar, or to the settings. */
type Step =
  | { readonly do: HappeningKind; readonly days: number; readonly isLate: boolean }
  | { readonly do: 'undo'; readonly back: number }
  | { readonly do: 'set'; readonly set: Partial<DutySettings> }
  | { readonly do: 'pause'; readonly days: number }
  | { readonly do: 'rhythm'; readonly shake: ShakeRhythm }

const steps: fc.Arbitrary<{ readonly hours: number; readonly step: Step }> = fc.record({
  hours: fc.oneof(fc.integer({ min: 1, max: 30 }), fc.integer({ min: 1, max: 600 })),
  step: fc.oneof(
    {
      weight: 8,
      arbitrary: fc.record({
        do: fc.constantFrom<HappeningKind>(
          'shaken',
          'shaken',
          'shaken',
          'tasted',
          'strained',
          'sweetened',
          'filtered',
          'bottled',
          'opened',
          'emptied',
          'discarded',
          'put_off',
        ),
        days: fc.integer({ min: 0, max: 25 }),
        isLate: fc.boolean(),
      }),
    },
    { weight: 2, arbitrary: fc.record({ do: fc.constant('undo' as const), back: fc.integer({ min: 0, max: 3 }) }) },
    {
      weight: 2,
      arbitrary: fc.record({
        do: fc.constant('set' as const),
        set: fc.oneof(
          fc.record({ zone: fc.constantFrom(...ZONES) }),
          fc.record({ atMinutes: fc.integer({ min: 0, max: 1439 }) }),
        ),
      }),
    },
    { weight: 1, arbitrary: fc.record({ do: fc.constant('pause' as const), days: fc.integer({ min: 0, max: 40 }) }) },
    {
      weight: 1,
      arbitrary: fc.record({
        do: fc.constant('rhythm' as const),
        shake: fc.constantFrom<ShakeRhythm>('daily', 'every_other_day', 'off'),
      }),
    },
  ),
})

/** A jar's entries and its maker's settings from a moment on. */
export interface Moment {
  readonly fromMs: number
  readonly entries: readonly JarEntry[]
  readonly wanted: DutySettings
  readonly did: Step['do'] | 'started'
}

const plans = fc.record({
  tasteDays: fc.integer({ min: 1, max: 20 }),
  opensDays: fc.integer({ min: 0, max: 30 }),
  openDays: fc.integer({ min: 0, max: 20 }),
  hours: fc.option(fc.integer({ min: 1, max: 23 }), { freq: 6 }),
  addDays: fc.option(fc.integer({ min: 1, max: 25 })),
  isKnown: fc.boolean(),
})

/** The lives of a jar that may follow one another's events, entered at once or late, in several zones. */
export const lives: fc.Arbitrary<readonly Moment[]> = fc
  .record({ plan: plans, lateDays: fc.constantFrom(0, 0, 0, 3, 20, 61), steps: fc.array(steps, { maxLength: 25 }) })
  .map(({ plan, lateDays, steps }) => {
    const first = entryOf(1, BORN_MS, lateDays, settings().zone, birth(plan, BORN_MS - lateDays * DAY_MS))
    const moments: Moment[] = [{ fromMs: BORN_MS, entries: [first], wanted: settings(), did: 'started' }]
    for (const { hours, step } of steps) moments.push(after(moments.at(-1)!, hours, step))
    return moments
  })

const dayFrom = (zone: string, ms: number, days: number) => isoDay(addDays(dayAt(zone, ms), days))

function birth(plan: typeof plans extends fc.Arbitrary<infer Plan> ? Plan : never, bornMs: number): Happening {
  const day = (days: number) => dayFrom(settings().zone, bornMs, days)
  const usual = peel()
  return started({
    plants: [plant('lemon_peel', 100), plant('basil', 10, { addOn: plan.addDays === null ? null : day(plan.addDays) })],
    plan: {
      ...usual.days,
      targets: plan.isKnown ? usual.targets : null,
      tasteFrom: day(Math.min(plan.tasteDays, plan.opensDays)),
      strainFrom: plan.isKnown ? day(plan.opensDays) : null,
      strainBy: day(plan.opensDays + plan.openDays),
      isHours: plan.hours !== null,
      steepHours: plan.hours === null ? null : { min: plan.hours / 2, max: plan.hours },
    },
  })
}

const entryOf = (seq: number, nowMs: number, agoDays: number, zone: string, what: Happening): JarEntry => ({
  seq,
  enteredMs: nowMs,
  typed: [],
  atMs: nowMs - agoDays * DAY_MS,
  day: isoDay(dayAt(zone, nowMs - agoDays * DAY_MS)),
  zone,
  ...what,
})

function after(before: Moment, hours: number, step: Step): Moment {
  const { entries, wanted } = before
  const fromMs = before.fromMs + hours * HOUR_MS
  const same = { fromMs, entries, wanted, did: step.do }
  if (step.do === 'set') return { ...same, wanted: { ...wanted, ...step.set } }
  const pausedTo = (days: number) => ({ ...wanted, pausedUntil: dayFrom(wanted.zone, fromMs, days) })
  // Lifting a pause is pausing until today; so is changing the rhythm, that nothing of the past comes up.
  if (step.do === 'pause') return { ...same, wanted: pausedTo(step.days) }
  if (step.do === 'rhythm') return { ...same, wanted: { ...pausedTo(0), shake: step.shake } }
  const seq = entries.length + 1
  if (step.do === 'undo') {
    const of = entries.filter(({ kind }) => kind !== 'undone').at(-1 - step.back)?.seq ?? 1
    if (of === 1) return same
    const undone = { ...entryOf(seq, fromMs, 0, wanted.zone, SHAKEN), kind: 'undone', of } as JarEntry
    return { ...same, entries: [...entries, undone] }
  }
  const untilDay = dayFrom(wanted.zone, fromMs, step.days)
  const hourMs = fromMs + step.days * HOUR_MS
  const what = happening(step.do, step.isLate ? dayFrom(wanted.zone, hourMs, 0) : untilDay, step.isLate ? hourMs : null)
  const lastMs = jarStateOf(entries)!.happened.at(-1)!.atMs
  const agoDays =
    step.isLate && step.do !== 'put_off' ? Math.max(0, Math.floor(Math.min(step.days, (fromMs - lastMs) / DAY_MS))) : 0
  return canFollow(entries, step.do)
    ? { ...same, entries: [...entries, entryOf(seq, fromMs, agoDays, wanted.zone, what)] }
    : same
}

/** What was put off late is put off to an hour. */
function happening(kind: HappeningKind, untilDay: string, untilMs: number | null): Happening {
  const those: readonly Happening[] = [
    SHAKEN,
    TASTED,
    strained(),
    sweetened(800, 400),
    FILTERED,
    BOTTLED,
    { kind: 'opened' },
    { kind: 'emptied' },
    { kind: 'discarded' },
    { kind: 'put_off', untilDay, untilMs },
  ]
  return those.find((each) => each.kind === kind)!
}

/** Roughly what the bot takes: nothing after an end, shaking before straining, the rest after it. */
function canFollow(entries: readonly JarEntry[], kind: HappeningKind): boolean {
  const { strained, ended } = jarStateOf(entries)!
  if (ended !== null) return false
  if (kind === 'tasted' || kind === 'put_off' || kind === 'discarded') return true
  return (kind === 'shaken' || kind === 'strained') === (strained === null)
}
