import { isHeld } from '../../../../core/jar/limits/judge-jar.ts'
import type { DutyKind } from '../../../../core/jar/tasks/duty.ts'
import { firstTask, isFinished, type JarView, type ShownTask, tasksNow } from '../../../../core/jar/tasks/jar-view.ts'
import type { IsoDay } from '../../../../core/quantity/time/calendar-day.ts'
import type { Person, SetAside } from '../../../../store/person.ts'
import { StorageError } from '../../../../store/storage-error.ts'
import { unsentOf, withoutNews } from '../../../../store/unsent.ts'
import { call } from '../../../calls/call.ts'
import { signature } from '../../../calls/signatures.ts'
import { type Context, defineCommand } from '../../../chat/command.ts'
import type { Action, Reply, ReplyFile, Row } from '../../../chat/reply.ts'
import { shelf } from '../../../picture/shelf/shelf.ts'
import { shelfData } from '../../../picture/shelf/shelf-data.ts'
import type { Message } from '../../../text/words.ts'
import { kitchenOf } from '../../options/input-units.ts'
import { pictureFile } from '../../reply/picture-file.ts'
import { addActions } from '../known/add-line.ts'
import { dangerActions, dangerCautions } from '../known/jar-dangers.ts'
import { jarBrief } from '../known/jar-data.ts'
import { jarRef } from '../known/jar-ref.ts'
import { todayOf, viewOf } from '../known/view-of.ts'

type Headline = Extract<Message<'headlines'>, { key: 'jars_today' }>['values']

/** More than these are for /jar show. */
const MOST_ACTIONS = 5

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
function askedOf(asked: readonly Named[]): Headline['today'] {
  const keyOf = ({ task: { kind, isTooStrong = false } }: Named): string => `${kind} ${isTooStrong}`
  return [...new Set(asked.map(keyOf))].map((key) => {
    const same = asked.filter((each) => keyOf(each) === key)
    const { kind, isTooStrong = false } = same[0]!.task
    return { duty: kind, isTooStrong, names: same.map(({ name }) => name) }
  })
}

const askedToday = (views: readonly JarView[]): Headline['today'] =>
  askedOf(views.flatMap(({ story: { name }, agenda }) => agenda.today.map((task) => ({ name, task }))))

/** All that comes on the soonest day, what comes at one moment together. */
function soonest(tasks: readonly Named[]): Headline['next'] {
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
function askedNext(views: readonly JarView[]): Headline['next'] {
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

const asksFor = (kind: DutyKind) => (view: JarView) => view.agenda.today.some((task) => task.kind === kind)

function shakenAction(views: readonly JarView[], context: Context): readonly Action[] {
  const shaken = views.filter(asksFor('shake'))
  const [first] = shaken
  if (first === undefined) return []
  const which = shaken.length === 1 ? jarRef(first, context) : 'all'
  const label = { group: 'actions', key: 'jars_shaken', values: { count: shaken.length } } as const
  return [{ label, call: call('jar shake', { jar: which }) }]
}

/** What says that the plants of a later day are in. */
const addedActions = (views: readonly JarView[], context: Context): readonly Action[] =>
  views.filter(asksFor('add')).flatMap((view) => addActions(view, context))

/** What puts right what must not be drunk as it is. */
const mendActions = (views: readonly JarView[], context: Context): readonly Action[] =>
  views.filter(({ dangers }) => isHeld(dangers)).flatMap((view) => dangerActions(view, context))

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
    ...(finished === 0 ? [] : [{ group: 'notes', key: 'jars_finished', values: { count: finished } } as const]),
  ]
  return notes
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
  async run({ picture }, context) {
    const person = await context.store.read(context.userId)
    const views = person.jars.map((jar) => viewOf(jar, context)).filter((view) => view !== null)
    const running = views.filter((view) => !isFinished(view)).toSorted(byUrgency)
    const isToday = todayOf(context)
    const held = running.filter(({ dangers }) => isHeld(dangers)).map(({ story }) => story.name)
    const values = { held, today: askedToday(running), next: askedNext(running), isToday }
    // Where files are kept, one a day would soon be many.
    const isDrawn = running.length > 0 && (picture?.is ?? context.place.kind !== 'console')
    await saidOnce(person, context)
    return {
      headline:
        running.length === 0
          ? { group: 'headlines', key: 'jars_none', values: undefined }
          : { group: 'headlines', key: 'jars_today', values },
      table: running.map((view) => rowOf(view, isToday)),
      sure: [],
      notes: notesOf(person, views.length - running.length, context),
      cautions: dangerCautions(running.map(({ story }) => story)),
      actions: [
        ...mendActions(running, context),
        ...shakenAction(running, context),
        ...addedActions(running, context),
      ].slice(0, MOST_ACTIONS),
      data: { jars: running.map(jarBrief) },
      kitchen: kitchenOf({}),
      ...(isDrawn && { files: [shelfFile(running, isToday)] }),
    }
  },
})
