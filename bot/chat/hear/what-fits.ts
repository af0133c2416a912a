import { jarStateOf } from '../../../core/jar/state/jar-state.ts'
import { NOBODY } from '../../../store/person.ts'
import { StorageError } from '../../../store/storage-error.ts'
import { invocationOf } from '../../calls/call.ts'
import { lineOf } from '../../calls/write-line.ts'
import { taskCall } from '../../commands/jar/known/task-call.ts'
import { todayOf, viewOf } from '../../commands/jar/known/view-of.ts'
import { whoAt } from '../../talk/memory/remembered.ts'
import type { Dispatch } from '../run/call-outcome.ts'

/** So many, so that there is room for something of another kind. */
const MOST_JOBS = 1

/** A longer line is no example. */
const MOST_CHARACTERS = 60

/** The plan that was made last and is not begun. */
function planLines({ talk, userId, nowMs }: Dispatch, place: string): readonly string[] {
  const { worked, step } = talk?.of(whoAt(userId, place), nowMs) ?? { worked: null, step: null }
  const start = worked?.offered.find(({ command }) => command === 'jar start')
  return start === undefined || step?.command === 'jar start'
    ? []
    : [lineOf({ path: start.command, options: start.options })]
}

/** What a jar asks for today, or, where none asks for anything, the one that was begun last. */
async function jarLines(dispatch: Dispatch): Promise<readonly string[]> {
  const { store, userId, place, assumedZone } = dispatch
  // What is of somebody's own jars is not said where others read along.
  if (place.kind === 'channel') return []
  const { jars, settings } = await store.read(userId).catch((error) => {
    if (error instanceof StorageError) return NOBODY
    throw error
  })
  const asker = { ...dispatch, settings, zone: settings.zone ?? assumedZone }
  const running = jars.filter(({ entries }) => jarStateOf(entries)?.ended === null)
  const jobs = running.flatMap((jar) => {
    const view = viewOf(jar, asker)
    const call = view?.agenda.today
      .map(({ kind }) => taskCall(kind, view, todayOf(asker), asker))
      .find((each) => each !== null)
    return call == null ? [] : [lineOf(invocationOf(call))]
  })
  if (jobs.length > 0) return jobs.slice(0, MOST_JOBS)
  const last = running.at(-1)
  return last === undefined ? [] : [lineOf({ path: 'jar show', options: { jar: jarStateOf(last.entries)!.name } })]
}

/** Lines that fit where somebody stands: the plan that lies open, and what a jar asks for. */
export async function whatFits(dispatch: Dispatch, place: string): Promise<readonly string[]> {
  const lines = [...planLines(dispatch, place), ...(await jarLines(dispatch))]
  return lines.filter((line) => line.length <= MOST_CHARACTERS)
}
