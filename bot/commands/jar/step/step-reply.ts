import { isHolding } from '../../../../core/jar/limits/judge-jar.ts'
import type { Unusual } from '../../../../core/jar/record/check-sequence.ts'
import { contentsOf } from '../../../../core/jar/state/contents.ts'
import type { JarState } from '../../../../core/jar/state/jar-state.ts'
import { madeStronger } from '../../../../core/jar/state/made-stronger.ts'
import { syrupToAdd } from '../../../../core/jar/state/planned-syrup.ts'
import type { JarView } from '../../../../core/jar/tasks/jar-view.ts'
import { isoDay } from '../../../../core/quantity/time/calendar-day.ts'
import { dayAt } from '../../../../core/quantity/time/zone.ts'
import { call } from '../../../calls/call.ts'
import type { Context } from '../../../chat/command.ts'
import { atDepth, type Deep, depthOf, inMore } from '../../../chat/depth.ts'
import type { Action, Reply, Row } from '../../../chat/reply.ts'
import type { Message } from '../../../text/words.ts'
import { assumptionNotes } from '../../options/input-units.ts'
import { row } from '../../reply/outcome-reply.ts'
import { atTheirDepth } from '../known/jar-cautions.ts'
import { dangerActions, dangersAfter } from '../known/jar-dangers.ts'
import { jarData } from '../known/jar-data.ts'
import { kitchenOfJar } from '../known/jar-kitchen.ts'
import { jarRef } from '../known/jar-ref.ts'
import { notedCautions } from '../known/noted-cautions.ts'
import { heldFirst } from '../known/told-trouble.ts'
import { undoActions } from '../known/undo-actions.ts'
import { viewOf } from '../known/view-of.ts'
import { nextActions, nextRows, nextSaid } from './next-said.ts'
import type { Input, Recorded } from './record-step.ts'

/** The syrup of a strained jar, worked out anew. */
export const syrupAction = (held: Pick<JarView, 'jar' | 'story'>, context: Context): Action => ({
  label: { group: 'actions', key: 'jar_syrup', values: undefined },
  call: call('syrup', { jar: jarRef(held, context) }),
})

/** The day of an entry, or null where that is today. */
export const lateDay = ({ day }: { readonly day: string }, { zone, nowMs }: Context): string | null =>
  day === isoDay(dayAt(zone, nowMs)) ? null : day

/** What is in the jar, measured and estimated said apart. */
export function nowRows({ contents }: JarView): readonly Row[] {
  if (contents.isEmpty) return []
  const { volumeMl, abvPercent, sugarGPerL } = contents.outcome
  const values = { volumeMl, abvPercent, sugarGPerL, volume: contents.volume, strength: contents.strength }
  return [row('jar_now', { group: 'cells', key: 'jar_now', values })]
}

/** What is unusual about a step, each kind once. */
export const unusualNotes = (unusual: readonly Unusual[], story: JarState): readonly Message<'notes'>[] =>
  [...new Map(unusual.map((each) => [each.key, each])).values()].flatMap((each): readonly Message<'notes'>[] => {
    switch (each.key) {
      case 'reading_surprising':
        return [{ group: 'notes', key: 'jar_reading_surprising', values: each.expected }]
      case 'bottled_unsweetened':
        return [{ group: 'notes', key: `jar_${each.key}`, values: { name: story.name } }]
      case 'added_spirit_after_straining':
        // What is still to be stirred in brings it to what was planned.
        if (story.sweetened === null && syrupToAdd(story) !== null) return []
        return [{ group: 'notes', key: `jar_${each.key}`, values: { isStronger: madeStronger(story, each.seq) } }]
      default:
        return [{ group: 'notes', key: `jar_${each.key}`, values: undefined }]
    }
  })

interface Said {
  readonly headline: Reply['headline']
  /** Right under it, before what comes next. */
  readonly under?: readonly Message<'headlines'>[]
  /** One question deeper. */
  readonly rows?: (view: JarView) => readonly Row[]
  readonly notes?: Reply['notes']
  readonly actions?: readonly Action[]
  /** Where nothing was recorded because the jar has moved on, or the same was entered before. */
  readonly actionsHeld?: readonly Action[]
  /** What comes next is said by all this already. */
  readonly isNextSaid?: boolean
}

/** The first of some notes; the others one question deeper. */
const firstOf = <Said extends object>(notes: readonly Said[]): readonly (Said & Deep)[] => [
  ...notes.slice(0, 1),
  ...inMore(notes.slice(1)),
]

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

/** The reply to a step: what was recorded, what comes next and the call for it; the numbers one question deeper. */
export const stepReply = (context: Context, input: Input, recorded: Recorded, said: Said): Reply =>
  heldFirst(ofStep(context, input, recorded, said), [recorded.story])

function ofStep(context: Context, input: Input, recorded: Recorded, said: Said): Reply {
  const { jar, story, unusual, isAlready, held } = recorded
  const view = viewOf(jar, context)!
  const dangers = dangersAfter([view])
  const noted = notedCautions(view.story)
  const cautions = [...dangers, ...noted, ...atTheirDepth(recorded.cautions)]
  const rest = { sure: [], cautions, data: jarData(view), kitchen: kitchenOfJar(input, view.story) }
  const mending = dangerActions(view, context)
  // What is dangerous gets no better by resting.
  const odd = unusualNotes(unusual, story).filter(({ key }) => dangers.length === 0 || key !== 'jar_opened_early')
  const isSurprising = ({ key }: Message<'notes'>) => key === 'jar_reading_surprising'
  const own = atDepth(said.notes ?? [], 'first')
  const notes = [
    // What does not fit what went in is said before all else: a syrup by a slip of the pen comes out far off.
    ...odd.filter(isSurprising),
    ...own,
    ...(own.length > 0 || odd.some(isSurprising) ? inMore(odd.filter((each) => !isSurprising(each))) : firstOf(odd)),
    ...atDepth(said.notes ?? [], 'more'),
    ...inMore<Message<'notes'>>(assumptionNotes(input)),
  ]
  const next = nextSaid(view, context)
  if (isAlready) {
    const headline = unchangedHeadline(recorded, context)
    if (held === undefined) return { ...rest, headline, under: next, table: [], notes, actions: mending }
    const actions = [...mending, ...(said.actionsHeld ?? [])]
    return {
      ...rest,
      headline,
      under: held === 'same_again' ? [] : next,
      table: inMore(nowRows(view)),
      notes: [],
      actions,
    }
  }
  // Where something has to be said of the step itself, what comes next stands deeper.
  const isCrowded = [...notes, ...cautions].some((each: object) => depthOf(each) === 'first')
  const isNextDeeper = said.isNextSaid === true || isCrowded
  const offered = said.actions ?? []
  // Nothing goes on before what was seen is cleared up.
  const usual = offered.length > 0 || noted.length > 0 ? offered : nextActions(view, context)
  // What holds nothing back is said, and what comes next with it.
  const goesOn = view.dangers[0] !== undefined && !isHolding(view.dangers[0])
  const isTold = atDepth(dangers, 'first').length === 0
  const both = isTold ? [...usual, ...inMore(mending)] : [...mending, ...usual]
  const meant = goesOn ? both : mending.length > 0 ? mending : usual
  const actions =
    odd.length === 0 || atDepth(mending.length > 0 && !isTold ? mending : [], 'first').length > 0
      ? meant
      : [...meant, ...typedUndo(recorded, context)]
  return {
    ...rest,
    headline: said.headline,
    under: [...(said.under ?? []), ...(isNextDeeper ? [] : next)],
    table: inMore([...(isNextDeeper ? nextRows(view, context) : []), ...(said.rows?.(view) ?? [])]),
    notes,
    actions: [...actions, ...undoActions([jar])],
  }
}

/** What takes a slip back, where nothing can be pressed. */
export const typedUndo = (held: Recorded, context: Context): readonly Action[] =>
  context.place.kind === 'console'
    ? [
        {
          label: { group: 'actions', key: 'jar_undo', values: undefined },
          call: call('jar undo', { jar: jarRef(held, context) }),
        },
      ]
    : []

/** The headline of most steps. */
export const recordedHeadline = ({ story, entry }: Recorded, context: Context): Reply['headline'] => ({
  group: 'headlines',
  key: 'jar_recorded',
  values: { name: story.name, happening: entry, day: lateDay(entry, context) },
})

/** What is in the jar now; null where it is empty. */
function becameIn(story: JarState) {
  const { outcome, isEmpty } = contentsOf(story)
  const { volumeMl, abvPercent, sugarGPerL } = outcome
  return isEmpty ? null : { volumeMl, abvPercent, sugarGPerL }
}

/** The headline of a step that makes something else of it. */
export function becameHeadline({ story, entry }: Recorded, context: Context): Reply['headline'] {
  const values = { name: story.name, happening: entry, day: lateDay(entry, context), became: becameIn(story) }
  return { group: 'headlines', key: 'jar_recorded', values }
}

/** The same under a headline of its own. */
export function becameSaid(story: JarState): readonly Message<'headlines'>[] {
  const values = becameIn(story)
  return values === null ? [] : [{ group: 'headlines', key: 'jar_became', values }]
}
