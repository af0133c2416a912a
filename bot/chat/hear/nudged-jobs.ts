import { jarStateOf } from '../../../core/jar/state/jar-state.ts'
import { type DutyKind, isNews } from '../../../core/jar/tasks/duty.ts'
import type { JarView } from '../../../core/jar/tasks/jar-view.ts'
import type { IsoDay } from '../../../core/quantity/time/calendar-day.ts'
import type { Jar, Person } from '../../../store/person.ts'
import { invocationOf } from '../../calls/call.ts'
import type { Path } from '../../calls/signatures.ts'
import type { JarAsker } from '../../commands/jar/known/jar-kitchen.ts'
import { taskCall } from '../../commands/jar/known/task-call.ts'
import { todayOf, viewOf } from '../../commands/jar/known/view-of.ts'
import type { CallRead } from '../../talk/frames/reading.ts'
import type { Nudged } from '../../talk/reader/nudge-done.ts'
import type { Dispatch } from '../run/call-outcome.ts'

/** Until the next morning's reminder. */
const ANSWERED_MS = 24 * 3_600_000

/** When the last reminder came; 0 where none has. */
const lastToldMs = (jars: readonly Jar[], nowMs: number): number =>
  Math.max(0, ...jars.flatMap(({ toldMs = [] }) => toldMs.filter((ms) => ms <= nowMs)))

type JobAsker = JarAsker & { readonly day: IsoDay; readonly isAsked: (kind: DutyKind) => boolean }

/** Named in a reminder as long as they are open, also where it is not due for them. */
const ASIDE: readonly DutyKind[] = ['taste', 'add', 'strain']

/** What a jar was told at an instant, and what is said with it. */
function askedThen({ told, toldMs = [] }: Jar, atMs: number): (kind: DutyKind) => boolean {
  const keys = told.filter((_, at) => toldMs[at] === atMs)
  return (kind) => ASIDE.includes(kind) || keys.some((key) => key.startsWith(`${kind}.`))
}

/** Known without a word more: whatever else is done has an amount or a mark that only its maker knows. */
function jobsOf(view: JarView<Jar>, asker: JobAsker) {
  const { name, started } = view.story
  const kinds = view.agenda.today.map(({ kind }) => kind).filter((kind) => asker.isAsked(kind) && !isNews(kind))
  return kinds.map((kind): CallRead => {
    const isGuessed = kind === 'bottle' && !started.named.areBottlesNamed
    const call = isGuessed ? null : taskCall(kind, view, asker.day, { ...asker, place: { kind: 'console' } })
    if (call === null) return { command: `jar ${kind}` as Path, options: { jar: name } }
    const { path, options } = invocationOf(call)
    return { command: path as Path, options }
  })
}

/** What the last reminder asked for and is open still: each job as the call that says it is done, all that is shaken as one. */
export function nudgedJobs({ jars, settings }: Person, dispatch: Dispatch): Nudged | null {
  const { nowMs, assumedZone } = dispatch
  const toldMs = lastToldMs(jars, nowMs)
  if (toldMs === 0 || nowMs - toldMs > ANSWERED_MS) return null
  const asker = { ...dispatch, settings, zone: settings.zone ?? assumedZone }
  const asked = jars.filter((jar) => jar.toldMs?.includes(toldMs) === true && jarStateOf(jar.entries) !== null)
  const jobs = asked.flatMap((jar) => {
    const view = viewOf(jar, asker)
    return view === null ? [] : jobsOf(view, { ...asker, day: todayOf(asker), isAsked: askedThen(jar, toldMs) })
  })
  const [shake, ...more] = jobs.filter(({ command }) => command === 'jar shake')
  const others = jobs.filter(({ command }) => command !== 'jar shake')
  const shaken: readonly CallRead[] =
    shake === undefined ? [] : more.length === 0 ? [shake] : [{ command: 'jar shake', options: { jar: 'all' } }]
  const names = asked.flatMap((jar) => jarStateOf(jar.entries)?.name ?? [])
  return { jobs: [...shaken, ...others], names, toldMs }
}
