import type { Happening, HappeningEntry, Moment } from '../../../../core/jar/entry/entry.ts'
import type { Unusual } from '../../../../core/jar/record/check-sequence.ts'
import { momentOf } from '../../../../core/jar/record/entry-time.ts'
import { hasMovedOn } from '../../../../core/jar/record/is-stale.ts'
import { type Entered, record } from '../../../../core/jar/record/record.ts'
import { findJar } from '../../../../core/jar/state/find-jar.ts'
import { type JarState, jarStateOf } from '../../../../core/jar/state/jar-state.ts'
import type { IsoDay } from '../../../../core/quantity/time/calendar-day.ts'
import { dayAt } from '../../../../core/quantity/time/zone.ts'
import type { Jar, Person } from '../../../../store/person.ts'
import { dayGiven } from '../../../calls/jar-options.ts'
import type { Given } from '../../../calls/option.ts'
import type { DateTyped } from '../../../calls/plan-options.ts'
import type { Context } from '../../../chat/command.ts'
import type { Message } from '../../../text/words.ts'
import { cautioned } from '../known/jar-cautions.ts'

/** What a command was given: the text of every option beside what it means. */
export type Input = { readonly [option: string]: Given<unknown> | undefined }

/** Which jar, and whether to record it at all. */
const NOT_KEPT = ['jar', 'after', 'again', 'already']

/** What a hydrometer showed after boiling is no number of an entry. */
const isReading = ({ is }: Given<unknown>): boolean => typeof is === 'object'

/** What was given of what happened. */
export const happenedIn = (input: Input): Readonly<Record<string, Given<unknown>>> =>
  Object.fromEntries(
    Object.entries(input).flatMap(([option, given]) =>
      given === undefined || (NOT_KEPT.includes(option) && !isReading(given)) ? [] : [[option, given] as const],
    ),
  )

/** The same as texts, as the entry keeps it. */
export const typedIn = (input: Input): readonly (readonly [string, string])[] =>
  Object.entries(happenedIn(input)).map(([option, { typed }]) => [option, typed] as const)

/** What an entry keeps of how it was made, beside when it happened. */
export const enteredBy = (input: Input, { nowMs, attempt }: Pick<Context, 'nowMs' | 'attempt'>): Entered => ({
  enteredMs: nowMs,
  typed: typedIn(input),
  ...(attempt !== undefined && { attempt }),
})

/** One change of a person's file and what it came to; `make` is pure and may be called again. */
export async function change<Made>(
  { store, userId }: Context,
  make: (person: Person) => { readonly person: Person | null; readonly made: Made },
): Promise<Made> {
  let made: Made | null = null
  await store.update(userId, (person) => {
    const changed = make(person)
    made = changed.made
    return changed.person
  })
  return made as Made
}

export const withJar = (person: Person, jar: Jar): Person => ({
  ...person,
  jars: person.jars.map((each) => (each.id === jar.id ? jar : each)),
})

/** What became of a step. */
export interface Recorded {
  readonly jar: Jar
  readonly story: JarState
  readonly entry: HappeningEntry
  readonly unusual: readonly Unusual[]
  /** Nothing changed: the same was recorded before. */
  readonly isAlready: boolean
  readonly cautions: readonly Message<'cautions'>[]
  /** Why nothing changed though it could have: the line was made for a jar as it no longer is, or `entry` says the same. */
  readonly held?: 'moved_on' | 'same_again'
}

export interface Step {
  readonly happening: (story: JarState) => Happening
  /** What has to be said of the jar as it is then. */
  readonly cautions?: (story: JarState) => readonly Message<'cautions'>[]
  /** Throws where it is asked about first. */
  readonly expect?: (before: JarState, story: JarState) => void
  /** The entry that says the same of that day, where it is hardly meant twice. */
  readonly sameOn?: (story: JarState, day: IsoDay) => HappeningEntry | undefined
}

export type Dated = Input & {
  readonly when?: Given<DateTyped> | undefined
  /** The last entry there was when the line was offered. */
  readonly after?: Given<unknown> | undefined
}

/** When it happened, later than all else of its day in a jar; throws what `momentOf` throws. */
export const momentGiven = (
  when: Dated['when'],
  entries: Jar['entries'],
  { nowMs, zone, settings }: Pick<Context, 'nowMs' | 'zone' | 'settings'>,
): Moment =>
  momentOf(dayGiven('when', when, { today: dayAt(zone, nowMs), country: settings.country }), { nowMs, zone, entries })

/** A step put into a jar's story; throws where it cannot follow. */
export function recordIn(jar: Jar, input: Dated, step: Step, context: Context): Recorded {
  const before = jarStateOf(jar.entries)!
  const moment = momentGiven(input.when, jar.entries, context)
  const unchanged = { jar, story: before, unusual: [], isAlready: true, cautions: [] }
  if (typeof input.after?.is === 'number' && hasMovedOn(jar.entries, input.after.is)) {
    return { ...unchanged, entry: before.happened.at(-1)!, held: 'moved_on' }
  }
  const same = step.sameOn?.(before, moment.day)
  if (same !== undefined) return { ...unchanged, entry: same, held: 'same_again' }
  const made = record(jar.entries, step.happening(before), moment, enteredBy(input, context))
  const { entries, entry, unusual, isAlready } = made
  const story = jarStateOf(entries)!
  if (!isAlready) step.expect?.(before, story)
  const said = cautioned({ ...jar, entries }, isAlready ? [] : (step.cautions?.(story) ?? []))
  return { ...said, story, entry, unusual, isAlready }
}

/** Throws where no jar is called so, be it that something else is lacking too. */
export async function expectJar({ store, userId }: Context, jar: Given<string>): Promise<void> {
  findJar(jar.is, (await store.read(userId)).jars)
}

/** Finds the jar that was named and records a step in it. */
export const recordStep = (
  context: Context,
  input: Dated & { readonly jar: Given<string> },
  step: Step,
  find: typeof findJar = findJar,
): Promise<Recorded> =>
  change(context, (person) => {
    const made = recordIn(find(input.jar.is, person.jars), input, step, context)
    return { person: made.isAlready ? null : withJar(person, made.jar), made }
  })
