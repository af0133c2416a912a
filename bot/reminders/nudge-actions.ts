import { isHeldBack } from '../../core/jar/limits/judge-jar.ts'
import { contentsOf } from '../../core/jar/state/contents.ts'
import { bottlesFilled } from '../../core/jar/state/jar-bottles.ts'
import { plannedSyrup } from '../../core/jar/state/planned-syrup.ts'
import { byLastDay } from '../../core/jar/tasks/asked-today.ts'
import type { DutyKind } from '../../core/jar/tasks/duty.ts'
import type { Place } from '../../store/person.ts'
import { quoted, writeLine } from '../calls/write-line.ts'
import type { Action } from '../chat/reply.ts'
import { addLine } from '../commands/jar/known/add-line.ts'
import { afterNow } from '../commands/jar/known/jar-ref.ts'
import { sweetenOptions } from '../commands/jar/known/sweeten-options.ts'
import { dangerActions } from '../commands/jar/record/jar-dangers.ts'
import type { AskedJar } from './due-jars.ts'

/** More answers than this are /jar list's. */
const MOST_ANSWERS = 6

/** What is least put off comes first, and straining before all, so that a tasting gives way where there is no room. */
const PRESSING: readonly DutyKind[] = ['strain', 'add', 'sweeten', 'filter', 'bottle', 'ready']

type Options = readonly (readonly [name: string, value: string])[]

/** A jar in a line: by name where somebody types it, else by its id, which outlives a new name. */
const jarIn = ({ jarId, story }: AskedJar, place: Place): string =>
  place.kind === 'console' ? story.name : `#${jarId}`

const toPlaces = (value: number): string => String(Number(value.toPrecision(4)))

/** The bottles as planned, and where the plan leaves their count open, as many as it fills; null without a plan. */
function plannedBottles({ story }: AskedJar): string | null {
  const { bottles } = story.started
  if (bottles.length === 0) return null
  return bottlesFilled(bottles, contentsOf(story).outcome.volumeMl.value)
    .map(({ count, volumeMl }) => `${count} x ${toPlaces(volumeMl)} ml`)
    .join(' + ')
}

/** Whether its maker said which bottles to fill. */
const areBottlesNamed = ({ story: { started } }: AskedJar): boolean => started.named.areBottlesNamed

/** The sweetening as planned; null where that is not known or cannot be. */
function sweetenLine({ story, entries }: AskedJar, jar: string, place: Place): string | null {
  const planned = plannedSyrup(story)
  const options = planned === null ? [] : sweetenOptions(planned.syrup)
  return options.length === 0 ? null : writeLine('jar sweeten', jar, [...options, ...afterNow(entries, place)])
}

/** The line that answers a reminder; null where it needs what only the maker knows. */
function answerTo(asked: AskedJar, jar: string, place: Place): string | null {
  const line = (path: string, options: Options = []): string => writeLine(path, jar, options)
  switch (asked.duty.kind) {
    case 'sweeten':
      return sweetenLine(asked, jar, place)
    case 'bottle': {
      // A surface with buttons asks for what nobody has named.
      if (place.kind !== 'console' && !areBottlesNamed(asked)) return line('jar bottle')
      const bottles = plannedBottles(asked)
      return bottles === null ? null : line('jar bottle', [['bottles', bottles]])
    }
    case 'add':
      return addLine(asked.story, asked.duty.day, jar, afterNow(asked.entries, place))
    case 'ready':
      return line('jar open')
    default:
      return line(`jar ${asked.duty.kind}`)
  }
}

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
    return [{ label, line: writeLine('jar shake', 'all') }]
  }
  const label = { group: 'actions', key: 'nudge_done', values: { duty: 'shake', name: nameOf(only) } } as const
  return [{ label, line: writeLine('jar shake', jarIn(only, place)) }]
}

const RATINGS = [
  ['good', '4'],
  ['not_yet', '2'],
] as const

/** A taste is worth a word: two of them are a press away, both or neither. */
function tasted(asked: readonly AskedJar[], place: Place, nameOf: NameOf, room: number): readonly Action[] {
  const named = byLastDay(asked).slice(0, Math.max(0, Math.floor(room / RATINGS.length)))
  return named.flatMap((each) =>
    RATINGS.map(([verdict, rating]) => {
      const values = { verdict, name: nameOf(each) }
      const line = writeLine('jar taste', jarIn(each, place), [['rating', rating]])
      return { label: { group: 'actions', key: 'nudge_tasted', values } as const, line }
    }),
  )
}

function doneWith(asked: readonly AskedJar[], place: Place, nameOf: NameOf): readonly Action[] {
  const pressing = byLastDay(asked).toSorted(
    (one, other) => PRESSING.indexOf(one.duty.kind) - PRESSING.indexOf(other.duty.kind),
  )
  return pressing.flatMap((each): readonly Action[] => {
    const { kind } = each.duty
    const jar = jarIn(each, place)
    const line = answerTo(each, jar, place)
    const name = nameOf(each)
    if (line !== null) return [{ label: { group: 'actions', key: 'nudge_done', values: { duty: kind, name } }, line }]
    if (kind !== 'sweeten') return []
    return [{ label: { group: 'actions', key: 'nudge_syrup', values: { name } }, line: `/syrup jar:${quoted(jar)}` }]
  })
}

/** Straining first, but the one press for all that is shaken never gives way. */
function answers(asked: readonly AskedJar[], place: Place, nameOf: NameOf): readonly Action[] {
  const of = (kind: DutyKind) => asked.filter(({ duty }) => duty.kind === kind)
  const shakes = shaken(of('shake'), place, nameOf)
  const others = doneWith(
    asked.filter(({ duty: { kind } }) => kind !== 'shake' && kind !== 'taste'),
    place,
    nameOf,
  )
  const room = MOST_ANSWERS - shakes.length
  const strains = Math.min(of('strain').length, room)
  const done = [...others.slice(0, strains), ...shakes, ...others.slice(strains, room)]
  return [...done, ...tasted(of('taste'), place, nameOf, MOST_ANSWERS - done.length)]
}

/**
 * What a nudge can be answered with, filled in: done, one line a kind or a jar, or not before tomorrow; where lines are
 * pressed and not typed, also later today, and to look at it. With nothing left to be done there is nothing to put off.
 */
export function nudgeActions(asked: readonly AskedJar[], place: Place, isOpen: IsOpen = () => true): readonly Action[] {
  const [only] = asked
  if (only === undefined) return []
  const isOneJar = asked.every(({ jarId }) => jarId === only.jarId)
  const jars = [...new Map(asked.map((each) => [each.jarId, each])).values()]
  const mending = jars
    .filter(({ jarId, story }) => isHeldBack(story) && isOpen(jarId, 'mend'))
    .flatMap(({ jarId: id, story, entries }) => dangerActions({ jar: { id, entries }, story }, { place }))
  const left = asked.filter(({ jarId, story, duty }) => isOpen(jarId, isHeldBack(story) ? 'mend' : duty.kind))
  const free = left.filter(({ story }) => !isHeldBack(story))
  const done = [...mending, ...answers(free, place, ({ story }) => (isOneJar ? null : story.name))]
  const which = isOneJar ? jarIn(only, place) : 'all'
  const later = { group: 'actions', key: 'nudge_later', values: undefined } as const
  const tomorrow: Action = { label: later, line: writeLine('jar later', which, [['until', 'tomorrow']]) }
  if (place.kind === 'console') return [...done, tomorrow]
  const isPutOff = !left.some(({ jarId }) => isOpen(jarId, 'later'))
  const today = { group: 'actions', key: 'nudge_later_today', values: undefined } as const
  const show = { group: 'actions', key: 'nudge_show', values: { isOneJar } } as const
  return [
    ...done,
    ...(isPutOff ? [] : [{ label: today, line: writeLine('jar later', which, [['until', 'later today']]) }, tomorrow]),
    { label: show, line: isOneJar ? writeLine('jar show', which) : '/jar list' },
    { label: { group: 'actions', key: 'nudge_reminders', values: undefined }, line: '/reminders' },
  ]
}
