import type { Unusual } from '../../../core/jar/follow.ts'
import { isoDay } from '../../../core/quantity/calendar.ts'
import { dayAt } from '../../../core/quantity/zone.ts'
import type { Context } from '../../chat/command.ts'
import type { Action, Reply, Row } from '../../chat/reply.ts'
import { quoted } from '../../chat/write-line.ts'
import type { Message } from '../../text/words.ts'
import { row } from '../outcome-reply.ts'
import { assumptionNotes, kitchenOf } from '../typed-in.ts'
import type { Input, Recorded } from './change-jar.ts'
import { jarData } from './jar-data.ts'
import { isFinished, type JarView, tasksNow, todayOf, viewOf } from './jar-view.ts'

/** How a line names a jar: as its maker does, or by its id where the line is kept and pressed later. */
export const jarRef = ({ jar, story }: Pick<JarView, 'jar' | 'story'>, { place }: Context): string =>
  place.kind === 'console' ? story.name : `#${jar.id}`

/** The syrup of a strained jar, worked out anew. */
export const syrupAction = (held: Pick<JarView, 'jar' | 'story'>, context: Context): Action => ({
  label: { group: 'actions', key: 'jar_syrup', values: undefined },
  line: `/syrup jar:${quoted(jarRef(held, context))}`,
})

/** The day of an entry, or null where that is today. */
export const lateDay = ({ day }: { readonly day: string }, { zone, nowMs }: Context): string | null =>
  day === isoDay(dayAt(zone, nowMs)) ? null : day

/** What is to do today, else what comes next; nothing where the jar is done. */
export function nextRows(view: JarView, context: Context): readonly Row[] {
  const tasks = tasksNow(view)
  if (isFinished(view) || tasks.length === 0) return []
  return [row('jar_next', { group: 'cells', key: 'jar_next', values: { tasks, today: todayOf(context) } })]
}

/** What is in the jar, measured and estimated said apart. */
export function nowRows({ contents }: JarView): readonly Row[] {
  if (contents.isEmpty) return []
  const { volumeMl, abvPercent, sugarGPerL } = contents.outcome
  const values = { volumeMl, abvPercent, sugarGPerL, volume: contents.volume, strength: contents.strength }
  return [row('jar_now', { group: 'cells', key: 'jar_now', values })]
}

export const unusualNotes = (unusual: readonly Unusual[], name: string): readonly Message<'notes'>[] =>
  [...new Map(unusual.map((each) => [each.key, each])).values()].map((each) =>
    each.key === 'reading_surprising'
      ? { group: 'notes', key: 'jar_reading_surprising', values: each.expected }
      : each.key === 'sweetened_again'
        ? { group: 'notes', key: 'jar_sweetened_again', values: { name } }
        : { group: 'notes', key: `jar_${each.key}`, values: undefined },
  )

interface Said {
  readonly headline: Reply['headline']
  /** Between what comes next and the cautions. */
  readonly rows?: (view: JarView) => readonly Row[]
  readonly notes?: readonly Message<'notes'>[]
  readonly actions?: readonly Action[]
}

/** The reply to a step: what was recorded, what comes next, the numbers. */
export function stepReply(context: Context, input: Input, recorded: Recorded, said: Said): Reply {
  const { jar, story, entry, unusual, isAlready, cautions } = recorded
  const view = viewOf(jar, context)!
  const { kind } = entry
  const already: Reply['headline'] = {
    group: 'headlines',
    key: 'jar_already',
    values: { names: [story.name], kind, day: lateDay(entry, context) },
  }
  return {
    headline: isAlready ? already : said.headline,
    table: [...nextRows(view, context), ...(isAlready ? [] : (said.rows?.(view) ?? []))],
    sure: [],
    notes: [...assumptionNotes(input), ...unusualNotes(unusual, story.name), ...(said.notes ?? [])],
    cautions,
    actions: isAlready ? [] : (said.actions ?? []),
    data: jarData(view),
    kitchen: kitchenOf(input),
  }
}

/** The headline of most steps. */
export const recordedHeadline = ({ story, entry }: Recorded, context: Context): Reply['headline'] => ({
  group: 'headlines',
  key: 'jar_recorded',
  values: { name: story.name, happening: entry, day: lateDay(entry, context) },
})
