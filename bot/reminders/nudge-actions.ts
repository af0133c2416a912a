import { isHeldBack } from '../../core/jar/limits/judge-jar.ts'
import { byLastDay } from '../../core/jar/tasks/asked-today.ts'
import type { DutyKind } from '../../core/jar/tasks/duty.ts'
import { parseBottles } from '../../core/recipe/plan/parse-bottles.ts'
import type { Place } from '../../store/person.ts'
import { call } from '../calls/call.ts'
import { aheadIn } from '../calls/jar-options.ts'
import type { Path } from '../calls/signatures.ts'
import type { Action } from '../chat/reply.ts'
import { dangerActions } from '../commands/jar/known/jar-dangers.ts'
import type { JarAsker } from '../commands/jar/known/jar-kitchen.ts'
import { jarRef } from '../commands/jar/known/jar-ref.ts'
import { type AskingJar, taskCall } from '../commands/jar/known/task-call.ts'
import type { AskedJar } from './due-jars.ts'

/** More than these are /jar list's where they are typed. */
const MOST_TYPED = 2

/** More answers than this are /jar list's. */
const MOST_ANSWERS = 6

/** What is least put off comes first, and straining before all, so that a tasting gives way where there is no room. */
const PRESSING: readonly DutyKind[] = ['strain', 'add', 'sweeten', 'filter', 'bottle', 'ready', 'drink']

const askingJar = ({ jarId, story, entries }: AskedJar): AskingJar => ({ jar: { id: jarId, entries }, story })

/** A jar in a call: by name where somebody types it, else by its id, which outlives a new name. */
const jarIn = (asked: AskedJar, place: Place): string => jarRef(askingJar(asked), { place })

/** A duty, `later`: to be put off, or `mend`: to be put right where it is dangerous. */
export type AskedFor = DutyKind | 'later' | 'mend'

/** Whether it is still asked of a jar. */
export type IsOpen = (jarId: string, what: AskedFor) => boolean

/** What a button calls a jar; null where the nudge is of no other. */
type NameOf = (asked: AskedJar) => string | null

function shaken(asked: readonly AskedJar[], place: Place, nameOf: NameOf): readonly Action[] {
  const [only, another] = asked
  if (only === undefined) return []
  if (another !== undefined) {
    const label = { group: 'actions', key: 'nudge_all_shaken', values: undefined } as const
    return [{ label, call: call('jar shake', { jar: 'all' }) }]
  }
  const label = { group: 'actions', key: 'nudge_done', values: { duty: 'shake', name: nameOf(only) } } as const
  return [{ label, call: call('jar shake', { jar: jarIn(only, place) }) }]
}

/** As it is noted: a press tells how it tastes, and gives no mark. */
const VERDICTS = [
  ['good', 'good'],
  ['not_yet', 'not right yet'],
] as const

/** A taste is worth a word: two of them are a press away, both or neither. */
function tasted(asked: readonly AskedJar[], place: Place, nameOf: NameOf, room: number): readonly Action[] {
  const named = byLastDay(asked).slice(0, Math.max(0, Math.floor(room / VERDICTS.length)))
  return named.flatMap((each) =>
    VERDICTS.map(([verdict, note]) => {
      const values = { verdict, name: nameOf(each) }
      const taste = call('jar taste', { jar: jarIn(each, place), note })
      return { label: { group: 'actions', key: 'nudge_tasted', values } as const, call: taste }
    }),
  )
}

function doneWith(asked: readonly AskedJar[], told: JarAsker, nameOf: NameOf): readonly Action[] {
  const pressing = byLastDay(asked).toSorted(
    (one, other) => PRESSING.indexOf(one.duty.kind) - PRESSING.indexOf(other.duty.kind),
  )
  return pressing.flatMap((each): readonly Action[] => {
    const { kind, day } = each.duty
    const { place } = told
    if (kind === 'drink') return bottleActions(each, place, nameOf)
    const answer = taskCall(kind, askingJar(each), day, told)
    const name = nameOf(each)
    const done = { group: 'actions', key: 'nudge_done', values: { duty: kind, name } } as const
    if (answer !== null) return [{ label: done, call: answer }]
    if (kind !== 'sweeten') return []
    return [
      {
        label: { group: 'actions', key: 'nudge_syrup', values: { name } },
        call: call('syrup', { jar: jarIn(each, place) }),
      },
    ]
  })
}

/** What became of one of its bottles. */
const bottleActions = (asked: AskedJar, place: Place, nameOf: NameOf): readonly Action[] =>
  (['opened', 'given'] as const).map((use) => ({
    label: { group: 'actions', key: 'nudge_bottle', values: { use, name: nameOf(asked) } },
    call: call('bottles', { jar: jarIn(asked, place), [use]: parseBottles('1') }),
  }))

/** Straining first, but the one press for all that is shaken never gives way. */
function answers(asked: readonly AskedJar[], told: JarAsker, nameOf: NameOf): readonly Action[] {
  const { place } = told
  const of = (kind: DutyKind) => asked.filter(({ duty }) => duty.kind === kind)
  const shakes = shaken(of('shake'), place, nameOf)
  const others = doneWith(
    asked.filter(({ duty: { kind } }) => kind !== 'shake' && kind !== 'taste'),
    told,
    nameOf,
  )
  const room = MOST_ANSWERS - shakes.length
  const strains = Math.min(of('strain').length, room)
  const done = [...others.slice(0, strains), ...shakes, ...others.slice(strains, room)]
  return [...done, ...tasted(of('taste'), place, nameOf, MOST_ANSWERS - done.length)]
}

/** As few lines as answer it are shown where each takes room: a jar that is to be strained is not shaken, and a bad taste can wait. */
function typed(done: readonly Action[], later: readonly Action[], isOneJar: boolean): readonly Action[] {
  const isOf = (command: Path) => (each: Action) => each.call.command === command
  const isMoot = (each: Action) => isOneJar && done.some(isOf('jar strain')) && isOf('jar shake')(each)
  const isBad = ({ label }: Action) => label.key === 'nudge_tasted' && label.values.verdict === 'not_yet'
  const left = done.filter((each) => !isMoot(each) && !isBad(each))
  const shakes = left.filter(isOf('jar shake'))
  const others = left.filter((each) => !shakes.includes(each)).slice(0, MOST_TYPED - shakes.length)
  const named = new Set([...others, ...shakes])
  const all = [...done, ...later]
  const isShown = (each: Action) => named.has(each) || (later.includes(each) && left.length < MOST_TYPED)
  const show = { group: 'actions', key: 'nudge_show', values: { isOneJar: false } } as const
  return [
    ...all.map((each) => (isShown(each) ? each : { ...each, isButtonOnly: true as const })),
    ...(isOneJar || left.length <= MOST_TYPED + 1 ? [] : [{ label: show, call: call('jar list') }]),
  ]
}

/**
 * What a nudge can be answered with, filled in: done, one line a kind or a jar, or not before tomorrow; where lines are
 * pressed and not typed, also later today, and to look at it. With nothing left to be done, and of bottles to be drunk up,
 * there is nothing to put off.
 */
export function nudgeActions(
  asked: readonly AskedJar[],
  told: JarAsker,
  isOpen: IsOpen = () => true,
): readonly Action[] {
  const { place } = told
  const [only] = asked
  if (only === undefined) return []
  const isOneJar = asked.every(({ jarId }) => jarId === only.jarId)
  const jars = [...new Map(asked.map((each) => [each.jarId, each])).values()]
  const mending = jars
    .filter(({ jarId, story }) => isHeldBack(story) && isOpen(jarId, 'mend'))
    .flatMap(({ jarId: id, story, entries }) => dangerActions({ jar: { id, entries }, story }, told))
  const left = asked.filter(({ jarId, story, duty }) => isOpen(jarId, isHeldBack(story) ? 'mend' : duty.kind))
  const free = left.filter(({ story }) => !isHeldBack(story))
  const done = [...mending, ...answers(free, told, ({ story }) => (isOneJar ? null : story.name))]
  const which = isOneJar ? jarIn(only, place) : 'all'
  const later = { group: 'actions', key: 'nudge_later', values: undefined } as const
  const tomorrow: Action = { label: later, call: call('jar later', { jar: which, until: aheadIn('tomorrow') }) }
  const isPutOff = !left.some(({ jarId, duty: { kind } }) => kind !== 'drink' && isOpen(jarId, 'later'))
  if (place.kind === 'console') return typed(done, isPutOff ? [] : [tomorrow], isOneJar)
  const today = { group: 'actions', key: 'nudge_later_today', values: undefined } as const
  const show = { group: 'actions', key: 'nudge_show', values: { isOneJar } } as const
  return [
    ...done,
    ...(isPutOff
      ? []
      : [{ label: today, call: call('jar later', { jar: which, until: aheadIn('later today') }) }, tomorrow]),
    { label: show, call: isOneJar ? call('jar show', { jar: which }) : call('jar list') },
    { label: { group: 'actions', key: 'nudge_reminders', values: undefined }, call: call('reminders') },
  ]
}
