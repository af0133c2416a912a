import type { DutyKind } from '../../../core/jar/tasks/duty.ts'
import { dayFromIso, daysBetween, type IsoDay, isoTime } from '../../../core/quantity/time/calendar-day.ts'
import type { Format } from '../format.ts'
import type { AskedTask, ComingTasks, TaskMoment, TaskSaid } from '../messages/jar-tasks.ts'
import { hasHave, isAre } from './jar-verbs.ts'
import { capital, daysWords, dayWords, firstNames, listed, onDay, shortDayWords } from './phrases.ts'

/** What to do, and that it was done; without a jar. */
export const dutyVerbs: Readonly<Record<DutyKind, { readonly todo: string; readonly done: string }>> = {
  shake: { todo: 'shake', done: 'shaken' },
  taste: { todo: 'taste', done: 'tasted' },
  add: { todo: 'add plants', done: 'added' },
  strain: { todo: 'strain', done: 'strained' },
  sweeten: { todo: 'sweeten', done: 'sweetened' },
  filter: { todo: 'filter', done: 'filtered' },
  bottle: { todo: 'bottle', done: 'bottled' },
  ready: { todo: 'drink', done: 'opened' },
  drink: { todo: 'drink up', done: 'opened' },
}

/** From so many on the rest is counted: the table names them all. */
const MOST_NAMES = 4

/** `shake lemon and walnut`, `walnut is ready`. */
export function askedText(
  { duty, names, isTooStrong = false, also = [] }: AskedTask & { readonly also?: readonly DutyKind[] },
  most = MOST_NAMES,
): string {
  const jars = firstNames(names, most)
  if (duty === 'ready' && isTooStrong) return `${jars} ${hasHave(names)} rested`
  if (duty === 'ready') return `${jars} ${isAre(names)} ready to drink`
  if (duty === 'drink') return `drink ${jars}, while ${isAre(names) === 'is' ? 'it’s at its' : 'they’re at their'} best`
  if (duty === 'add') return `add the rest to ${jars}`
  return `${listed([duty, ...also].map((kind) => dutyVerbs[kind].todo))} ${jars}`
}

/** What the same jars ask for together: `strain and shake lemon`. */
function ofSameJars(asked: readonly AskedTask[]): readonly (AskedTask & { readonly also: readonly DutyKind[] })[] {
  const keyOf = ({ duty, names, isTooStrong = false }: AskedTask): string =>
    JSON.stringify(duty === 'ready' || duty === 'add' ? [duty, isTooStrong] : ['', ...names])
  return [...new Set(asked.map(keyOf))].map((key) => {
    const [first, ...more] = asked.filter((each) => keyOf(each) === key)
    return { ...first!, also: more.map(({ duty }) => duty) }
  })
}

/** `tomorrow`, `on 3 December`, `today at 18:00`. */
function momentText({ day, atMinutes }: TaskMoment, today: IsoDay, format: Format, words = dayWords): string {
  const on = onDay(day, today, format, words)
  return atMinutes === null ? on : format.moment(dayFromIso(day), atMinutes, `${on} at ${isoTime(atMinutes)}`)
}

/** Where several jobs stand in one sentence. */
const FEW_NAMES = 2

/** Of more kinds the rest is left to the table. */
const MOST_KINDS = 3

/** `shake lemon and plum, strain walnut and more`. */
export function jobsText(asked: readonly AskedTask[]): string {
  const texts = asked.map((each) => askedText(each, FEW_NAMES))
  return texts.length <= MOST_KINDS ? texts.join(', ') : `${texts.slice(0, MOST_KINDS).join(', ')} and more`
}

/** `strain ginger and taste basil on 3 December`. */
export function comingText({ asked, ...moment }: ComingTasks, today: IsoDay, format: Format): string {
  const texts = ofSameJars(asked).map((each) => askedText(each, FEW_NAMES).replace(/ to drink$/, ''))
  const named = texts.length <= MOST_KINDS ? texts : [...texts.slice(0, MOST_KINDS), 'more']
  return `${listed(named)} ${momentText(moment, today, format)}`
}

interface TaskContext {
  /** All that the jar asks for. */
  readonly tasks: readonly TaskSaid[]
  readonly today: IsoDay
  readonly format: Format
}

/** `strain by 9 Dec`, `taste daily until then`, `shake today`, `strain, 7 days late`. */
function taskText({ kind, sinceDay, byDay, state, isTooStrong }: TaskSaid, said: TaskContext): string {
  const { tasks, today, format } = said
  if (kind === 'ready') return isTooStrong === true ? 'rested, but not to drink neat' : 'ready to drink'
  if (state === 'overdue') {
    const late = daysBetween(dayFromIso(today), dayFromIso(byDay ?? sinceDay))
    return late > 0 ? `${dutyVerbs[kind].todo}, ${daysWords(late)} late` : `${dutyVerbs[kind].todo} now`
  }
  if (byDay === null || byDay === today) return `${dutyVerbs[kind].todo} today`
  const last = shortDayWords(byDay, today, format)
  if (kind !== 'taste') return `${dutyVerbs[kind].todo} by ${last}`
  return `taste daily until ${tasks.some((task) => task.kind === 'strain' && task.byDay === byDay) ? 'then' : last}`
}

const isOfToday = ({ kind, state, byDay }: TaskSaid, today: IsoDay): boolean =>
  state === 'due' && kind !== 'ready' && (byDay === null || byDay === today)

/** `taste on 3 Dec`, `strain and shake today at 18:00`: what comes at one moment together. */
function comingTasksText(coming: readonly TaskSaid[], today: IsoDay, format: Format): readonly string[] {
  const momentOf = ({ sinceDay: day, atMinutes }: TaskSaid): string =>
    momentText({ day, atMinutes }, today, format, shortDayWords)
  return [...new Set(coming.map(momentOf))].map((moment) => {
    const verbs = coming.filter((task) => momentOf(task) === moment)
    const readyText = (isTooStrong = false): string => (isTooStrong ? 'rested' : 'ready')
    const texts = verbs.map(({ kind, isTooStrong }) =>
      kind === 'ready' ? readyText(isTooStrong) : dutyVerbs[kind].todo,
    )
    return `${listed(texts)} ${moment}`
  })
}

/** What a jar asks for in one line, the most pressing first: `strain by 9 Dec, taste, shake`. */
export function tasksText(all: readonly TaskSaid[], today: IsoDay, format: Format): string {
  const coming = all.filter(({ state }) => state === 'coming')
  if (coming.length > 0) return comingTasksText(coming, today, format).join(', ')
  return openTasksText(all, today, format)
}

function openTasksText(tasks: readonly TaskSaid[], today: IsoDay, format: Format): string {
  const verbs = tasks.filter((task) => isOfToday(task, today)).map(({ kind }) => dutyVerbs[kind].todo)
  const pressing = tasks
    .filter((task) => !isOfToday(task, today))
    .map((task) => taskText(task, { tasks, today, format }))
  if (verbs.length === 0) return pressing.join(', ')
  return pressing.length === 0 ? `${listed(verbs)} today` : [...pressing, verbs.join(', ')].join(', ')
}

/** When a task wants to be done, after what it is: `today`, `now`, `by 1 October`, `on 8 September`. */
function whenText({ state, byDay, sinceDay, atMinutes }: TaskSaid, today: IsoDay, format: Format): string {
  if (state === 'coming') return momentText({ day: sinceDay, atMinutes }, today, format)
  if (state === 'overdue') return 'now'
  return byDay === null || byDay === today ? 'today' : `by ${dayWords(byDay, today, format)}`
}

interface NextContext {
  readonly today: IsoDay
  readonly format: Format
  /** Null where it is known already which jar is meant. */
  readonly name: string | null
}

/** Too cold, it tastes of little. Common practice, no source. */
export const OUT_OF_FREEZER = 'Take it out of the freezer 5 minutes before.'

function readyText(
  { state, sinceDay, isTooStrong, isFrozen = false }: TaskSaid,
  { today, format, name }: NextContext,
): string {
  if (state === 'coming') {
    const ready = `ready to drink from ${dayWords(sinceDay, today, format)}.`
    return name === null ? capital(ready) : `${name} ${isAre(name)} ${ready}`
  }
  if (isTooStrong === true) {
    return `${name === null ? 'It has' : `${name} ${hasHave(name)}`} rested. Dilute it before you drink it.`
  }
  return `${name === null ? 'It’s' : `${name} ${isAre(name)}`} ready to drink.${isFrozen ? ` ${OUT_OF_FREEZER}` : ''}`
}

/**
 * `Next: taste and shake it today, strain it by 1 October.`, `Ready to drink from 20 October.`; with the jar’s name
 * `Next for lemon: …`, `lemon is ready to drink.`
 */
export function nextText(all: readonly TaskSaid[], today: IsoDay, format: Format, name: string | null = null): string {
  const ready = all.find(({ kind }) => kind === 'ready')
  const tasks = all.filter(({ kind }) => kind !== 'ready')
  const moments = [...new Set(tasks.map((task) => whenText(task, today, format)))]
  const parts = moments.map((moment) => {
    const kinds = tasks.filter((task) => whenText(task, today, format) === moment).map(({ kind }) => kind)
    return `${listed(kinds.map((kind) => (kind === 'add' ? 'add the rest' : dutyVerbs[kind].todo)))} ${kinds.every((kind) => kind === 'add') ? '' : 'it '}${moment}`
  })
  const next = parts.length === 0 ? [] : [`Next${name === null ? '' : ` for ${name}`}: ${parts.join(', ')}.`]
  const named = parts.length === 0 ? name : null
  return [...next, ...(ready === undefined ? [] : [readyText(ready, { today, format, name: named })])].join(' ')
}
