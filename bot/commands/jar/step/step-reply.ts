import type { Unusual } from '../../../../core/jar/record/check-sequence.ts'
import type { JarState } from '../../../../core/jar/state/jar-state.ts'
import { madeStronger } from '../../../../core/jar/state/made-stronger.ts'
import { isFinished, type JarView, tasksNow } from '../../../../core/jar/tasks/jar-view.ts'
import { isoDay } from '../../../../core/quantity/time/calendar-day.ts'
import { dayAt } from '../../../../core/quantity/time/zone.ts'
import { call } from '../../../calls/call.ts'
import type { Context } from '../../../chat/command.ts'
import type { Action, Reply, Row } from '../../../chat/reply.ts'
import type { Message } from '../../../text/words.ts'
import { assumptionNotes, kitchenOf } from '../../options/input-units.ts'
import { row } from '../../reply/outcome-reply.ts'
import { dangerActions, dangerCautions } from '../known/jar-dangers.ts'
import { jarData } from '../known/jar-data.ts'
import { jarRef } from '../known/jar-ref.ts'
import { undoActions } from '../known/undo-actions.ts'
import { todayOf, viewOf } from '../known/view-of.ts'
import type { Input, Recorded } from './record-step.ts'

/** The syrup of a strained jar, worked out anew. */
export const syrupAction = (held: Pick<JarView, 'jar' | 'story'>, context: Context): Action => ({
  label: { group: 'actions', key: 'jar_syrup', values: undefined },
  call: call('syrup', { jar: jarRef(held, context) }),
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

/** What is unusual about a step, each kind once. */
export const unusualNotes = (unusual: readonly Unusual[], story: JarState): readonly Message<'notes'>[] =>
  [...new Map(unusual.map((each) => [each.key, each])).values()].map((each): Message<'notes'> => {
    switch (each.key) {
      case 'reading_surprising':
        return { group: 'notes', key: 'jar_reading_surprising', values: each.expected }
      case 'sweetened_again':
      case 'bottled_unsweetened':
        return { group: 'notes', key: `jar_${each.key}`, values: { name: story.name } }
      case 'added_spirit_after_straining':
        return { group: 'notes', key: `jar_${each.key}`, values: { isStronger: madeStronger(story, each.seq) } }
      default:
        return { group: 'notes', key: `jar_${each.key}`, values: undefined }
    }
  })

interface Said {
  readonly headline: Reply['headline']
  /** Between what comes next and the cautions. */
  readonly rows?: (view: JarView) => readonly Row[]
  readonly notes?: Reply['notes']
  readonly actions?: readonly Action[]
  /** Where nothing was recorded because the jar has moved on, or the same was entered before. */
  readonly actionsHeld?: readonly Action[]
}

/** Why nothing changed. */
function unchangedHeadline({ story: { name }, entry, held }: Recorded, context: Context): Reply['headline'] {
  const day = lateDay(entry, context)
  if (held === 'moved_on') return { group: 'headlines', key: 'jar_moved_on', values: { name } }
  if (held === undefined && entry.kind === 'opened') {
    return { group: 'headlines', key: 'jar_open_since', values: { name, day } }
  }
  if (held === 'same_again' && entry.kind === 'started') {
    return { group: 'headlines', key: 'jar_begun_again', values: { name, day } }
  }
  if (held === 'same_again')
    return { group: 'headlines', key: 'jar_same_again', values: { name, happening: entry, day } }
  return { group: 'headlines', key: 'jar_already', values: { names: [name], kind: entry.kind, day } }
}

/** The reply to a step: what was recorded, what comes next, the numbers. */
export function stepReply(context: Context, input: Input, recorded: Recorded, said: Said): Reply {
  const { jar, story, unusual, isAlready, held, cautions } = recorded
  const view = viewOf(jar, context)!
  const rest = {
    sure: [],
    cautions: [...dangerCautions([view.story]), ...cautions],
    data: jarData(view),
    kitchen: kitchenOf(input),
  }
  const mending = dangerActions(view, context)
  const notes = [...assumptionNotes(input), ...unusualNotes(unusual, story), ...(said.notes ?? [])]
  const next = nextRows(view, context)
  if (isAlready) {
    const headline = unchangedHeadline(recorded, context)
    if (held === undefined) return { ...rest, headline, table: next, notes, actions: mending }
    const actions = [...mending, ...(said.actionsHeld ?? [])]
    return { ...rest, headline, table: [...next, ...nowRows(view)], notes: [], actions }
  }
  return {
    ...rest,
    headline: said.headline,
    table: [...next, ...(said.rows?.(view) ?? [])],
    notes,
    actions: [...mending, ...(said.actions ?? []), ...undoActions([jar])],
  }
}

/** The headline of most steps. */
export const recordedHeadline = ({ story, entry }: Recorded, context: Context): Reply['headline'] => ({
  group: 'headlines',
  key: 'jar_recorded',
  values: { name: story.name, happening: entry, day: lateDay(entry, context) },
})
