import { sameName } from '../../../../core/jar/entry/jar-name.ts'
import { notesOf, ratingsOf, steepedDays } from '../../../../core/jar/state/batch-facts.ts'
import { isFinished, type JarView } from '../../../../core/jar/tasks/jar-view.ts'
import { call } from '../../../calls/call.ts'
import type { Context } from '../../../chat/command.ts'
import { inMore } from '../../../chat/depth.ts'
import type { Action, Reply, Row } from '../../../chat/reply.ts'
import { kitchenOf } from '../../options/input-units.ts'
import { batchData } from '../known/batch-data.ts'
import { ingredientsSaid } from '../known/ingredients-said.ts'
import { dangerCautions } from '../known/jar-dangers.ts'
import { kitchenAmong } from '../known/jar-kitchen.ts'
import { jarRef } from '../known/jar-ref.ts'
import { planActions } from '../known/plan-one.ts'

/** More than so many are a line or two each. */
const MOST_WHOLE = 3

/** Of more than so many the rest stands one question deeper. */
const MOST_FIRST = 10

function rowOf(view: JarView, isShort: boolean, { settings }: Context): Row {
  const { story, stage, contents } = view
  const batch = {
    startedOn: story.started.day,
    stage,
    steepedDays: steepedDays(story),
    made: contents.isEmpty ? null : contents.outcome,
    rating: ratingsOf(story).at(-1) ?? null,
    danger: view.dangers[0]?.kind ?? null,
    kitchen: kitchenAmong(story, settings),
  }
  return {
    label: { group: 'rows', key: 'batch', values: { name: story.name } },
    cell: isShort
      ? { group: 'cells', key: 'batch_short', values: batch }
      : {
          group: 'cells',
          key: 'batch',
          values: { ...batch, inJar: ingredientsSaid(story, settings), notes: notesOf(story) },
        },
  }
}

const headlineOf = (views: readonly JarView[]): Reply['headline'] => {
  const finished = views.filter(isFinished).length
  return views.length === 0
    ? { group: 'headlines', key: 'notebook_empty', values: undefined }
    : { group: 'headlines', key: 'notebook', values: { running: views.length - finished, finished } }
}

/** The last two that were not thrown away, by their ids where their names do not tell them apart. */
function compareAction(newest: readonly JarView[], context: Context): readonly Action[] {
  const [one, other] = newest.filter(({ stage }) => stage !== 'discarded')
  if (one === undefined || other === undefined) return []
  const isOnly = ({ story: { name } }: JarView) => newest.filter(({ story }) => sameName(story.name, name)).length === 1
  const which = [one, other].map((view) => (isOnly(view) ? jarRef(view, context) : `#${view.jar.id}`))
  const label = { group: 'actions', key: 'notebook_compare', values: undefined } as const
  return [{ label, call: call('notebook', { compare: which.join(' + ') }) }]
}

/** Every batch, the newest first. */
export function notebookReply(views: readonly JarView[], context: Context): Reply {
  const newest = views.toSorted((one, other) => other.story.started.atMs - one.story.started.atMs)
  const isShort = newest.length > MOST_WHOLE
  return {
    headline: headlineOf(newest),
    table: [
      ...newest.slice(0, MOST_FIRST).map((view) => rowOf(view, isShort, context)),
      ...inMore(newest.slice(MOST_FIRST).map((view) => rowOf(view, isShort, context))),
    ],
    sure: [],
    notes: isShort ? [{ group: 'notes', key: 'notebook_short', values: { name: newest[0]!.story.name } }] : [],
    cautions: dangerCautions(
      newest.map(({ story }) => story),
      context.settings,
    ),
    actions: newest.length === 0 ? planActions : compareAction(newest, context),
    data: { batches: newest.map(batchData) },
    kitchen: kitchenOf({}),
  }
}
