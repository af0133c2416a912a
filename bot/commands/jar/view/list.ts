import { isHeld, isHolding } from '../../../../core/jar/limits/judge-jar.ts'
import { firstTask, isFinished, type JarView, type ShownTask, tasksNow } from '../../../../core/jar/tasks/jar-view.ts'
import type { IsoDay } from '../../../../core/quantity/time/calendar-day.ts'
import type { Person, SetAside } from '../../../../store/person.ts'
import { StorageError } from '../../../../store/storage-error.ts'
import { unsentOf, withoutNews } from '../../../../store/unsent.ts'
import { signature } from '../../../calls/signatures.ts'
import { type Context, defineCommand } from '../../../chat/command.ts'
import { inMore } from '../../../chat/depth.ts'
import type { Action, Reply, ReplyFile, Row } from '../../../chat/reply.ts'
import { shelf } from '../../../picture/shelf/shelf.ts'
import { shelfData } from '../../../picture/shelf/shelf-data.ts'
import type { Message } from '../../../text/words.ts'
import { kitchenOf } from '../../options/input-units.ts'
import { pictureFile } from '../../reply/picture-file.ts'
import { dangerActions, dangerCautions } from '../known/jar-dangers.ts'
import { jarBrief } from '../known/jar-data.ts'
import { planActions } from '../known/plan-one.ts'
import { todayOf, viewOf } from '../known/view-of.ts'
import { firstScreen, jobsOf } from './jobs.ts'
import { laterNotes } from './ready-later.ts'

type Coming = Extract<Message<'notes'>, { key: 'jars_coming' }>['values']['next']

const rank = ({ agenda: { today }, dangers }: JarView): number =>
  isHeld(dangers) ? -1 : today.length === 0 ? 2 : today.some(({ state }) => state === 'overdue') ? 0 : 1

const dueMs = (view: JarView): number => firstTask(view)?.dueMs ?? Number.POSITIVE_INFINITY

const byUrgency = (one: JarView, other: JarView): number => {
  const [mine, theirs] = [dueMs(one), dueMs(other)]
  return rank(one) - rank(other) || (mine === theirs ? 0 : mine < theirs ? -1 : 1)
}

interface Named {
  readonly name: string
  readonly task: ShownTask
}

/** The jars that ask for the same together. */
function askedOf(asked: readonly Named[]): Coming[number]['asked'] {
  const keyOf = ({ task: { kind, isTooStrong = false } }: Named): string => `${kind} ${isTooStrong}`
  return [...new Set(asked.map(keyOf))].map((key) => {
    const same = asked.filter((each) => keyOf(each) === key)
    const { kind, isTooStrong = false } = same[0]!.task
    return { duty: kind, isTooStrong, names: same.map(({ name }) => name) }
  })
}

/** All that comes on the soonest day, what comes at one moment together. */
function soonest(tasks: readonly Named[]): Coming {
  const day = tasks.map(({ task }) => task.sinceDay).sort()[0]
  const ofDay = tasks
    .filter(({ task }) => task.sinceDay === day)
    .toSorted((one, other) => one.task.dueMs - other.task.dueMs || orderOf(one) - orderOf(other))
  return [...new Set(ofDay.map(({ task }) => task.atMinutes))].map((atMinutes) => {
    const same = ofDay.filter(({ task }) => task.atMinutes === atMinutes)
    return { day: day!, atMinutes, asked: askedOf(same) }
  })
}

/** What has to be shaken comes last of what comes together. */
const orderOf = ({ task: { kind } }: Named): number => Number(kind === 'shake')

/** What comes next. That a jar will be shaken again is no news, so that what comes after it is named too. */
function askedNext(views: readonly JarView[]): Coming {
  const coming = views.flatMap(({ story: { name }, agenda }) => agenda.coming.map((task) => ({ name, task })))
  const next = soonest(coming)
  const isNews = next.some(({ asked }) => asked.some(({ duty }) => duty !== 'shake'))
  return isNews ? next : [...next, ...soonest(coming.filter(({ task }) => task.kind !== 'shake'))]
}

const rowOf = (view: JarView, today: string): Row => {
  const { story, stage, agenda } = view
  const { day, ofDays } = agenda
  const tasks = tasksNow(view)
  return {
    label: { group: 'rows', key: 'jar', values: { name: story.name } },
    cell: {
      group: 'cells',
      key: 'jar_progress',
      values: { stage, day, ofDays, tasks, today, danger: view.dangers[0]?.kind ?? null },
    },
  }
}

/** What puts right what must not be drunk as it is. */
const mendActions = (views: readonly JarView[], context: Context): readonly Action[] =>
  views
    .filter(({ dangers: [worst] }) => worst !== undefined && (isHolding(worst) || worst.kind === 'in_question'))
    .flatMap((view) => dangerActions(view, context))

const moreJobsNotes = (count: number): readonly Message<'notes'>[] =>
  count === 0 ? [] : [{ group: 'notes', key: 'jobs_more', values: { count } }]

function comingNotes(running: readonly JarView[], today: IsoDay): readonly Message<'notes'>[] {
  const next = askedNext(running)
  return next.length === 0 ? [] : [{ group: 'notes', key: 'jars_coming', values: { next, today } }]
}

/** What has rested: what may be drunk as it is, and what must not. */
function readyNotes(running: readonly JarView[]): readonly Message<'notes'>[] {
  return (['jars_ready', 'jars_strong'] as const).flatMap((key): readonly Message<'notes'>[] => {
    const names = running.filter(({ agenda }) =>
      agenda.today.some(({ kind, isTooStrong = false }) => kind === 'ready' && isTooStrong === (key === 'jars_strong')),
    )
    return names.length === 0 ? [] : [{ group: 'notes', key, values: { names: names.map(({ story }) => story.name) } }]
  })
}

/** The name of a file is nothing to whoever is not where the files are. */
const asideSaid = ({ file, day }: SetAside, { place }: Context) => ({
  file: place.kind === 'console' ? file : null,
  day,
})

function notesOf(person: Person, finished: number, context: Context): Reply['notes'] {
  const today = todayOf(context)
  const asked = unsentOf(person)
  const until = person.settings.pausedUntil
  const notes: readonly Message<'notes'>[] = [
    ...(person.setAside === null
      ? []
      : [{ group: 'notes', key: 'jars_set_aside', values: asideSaid(person.setAside, context) } as const]),
    ...(asked.length === 0 ? [] : [{ group: 'notes', key: 'jars_unsent', values: { asked, today } } as const]),
    ...(until === null || until <= today
      ? []
      : [{ group: 'notes', key: 'jars_paused', values: { until, today } } as const]),
  ]
  return [
    ...notes,
    ...(finished === 0 ? [] : inMore([{ group: 'notes', key: 'jars_finished', values: { count: finished } } as const])),
  ]
}

/** What is said here is said once; again where the folder is held by another process, which keeps nobody from looking. */
async function saidOnce(person: Person, { store, userId }: Context): Promise<void> {
  if (withoutNews(person) === null) return
  try {
    await store.update(userId, withoutNews)
  } catch (error) {
    if (!(error instanceof StorageError)) throw error
  }
}

function shelfFile(running: readonly JarView[], today: IsoDay): ReplyFile {
  const data = shelfData(running, today)
  return pictureFile('larderbell-shelf.png', { group: 'files', key: 'shelf', values: data }, (pen) => shelf(data, pen))
}

export const jarListCommand = defineCommand({
  ...signature('jar list'),
  topic: 'jars',
  async run({ picture }, context) {
    const person = await context.store.read(context.userId)
    const views = person.jars.map((jar) => viewOf(jar, context)).filter((view) => view !== null)
    const running = views.filter((view) => !isFinished(view)).toSorted(byUrgency)
    const isToday = todayOf(context)
    const held = running.filter(({ dangers }) => isHeld(dangers)).map(({ story }) => story.name)
    const jobs = jobsOf(running, context)
    const shown = firstScreen(jobs)
    // Where files are kept, one a day would soon be many.
    const isDrawn = running.length > 0 && (picture?.is ?? context.place.kind !== 'console')
    await saidOnce(person, context)
    return {
      headline:
        running.length === 0
          ? { group: 'headlines', key: 'jars_none', values: undefined }
          : { group: 'headlines', key: 'jars_today', values: { held, jobs: jobs.length } },
      table: [
        ...jobs.slice(0, shown).map(({ row }) => row),
        ...inMore([...jobs.slice(shown).map(({ row }) => row), ...running.map((view) => rowOf(view, isToday))]),
      ],
      sure: [],
      notes: [
        ...moreJobsNotes(jobs.length - shown),
        ...comingNotes(running, isToday),
        ...readyNotes(running),
        ...laterNotes(running, isToday, shown),
        ...notesOf(person, views.length - running.length, context),
      ],
      cautions: dangerCautions(
        running.map(({ story }) => story),
        context.settings,
      ),
      actions: [
        ...mendActions(running, context),
        ...(running.length === 0 ? planActions : []),
        ...jobs.flatMap(({ action }) => action ?? []),
      ],
      data: { jars: running.map(jarBrief) },
      kitchen: kitchenOf({}),
      ...(isDrawn && { files: [shelfFile(running, isToday)] }),
    }
  },
})
