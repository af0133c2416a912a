import { once } from '../../once.ts'
import { addDays, dayFromIso, type IsoDay, isoDay } from '../../quantity/time/calendar-day.ts'
import type { HappeningEntry, HappeningKind, JarEntry } from '../entry/entry.ts'
import { nameIn } from '../entry/name-in.ts'
import { effective } from '../entry/standing-entries.ts'
import { isUnsweetened } from './left-unsweetened.ts'

/** The entry of one kind. */
export type Of<Kind extends HappeningKind> = Extract<HappeningEntry, { readonly kind: Kind }>

/** A jar as it is kept: entries are never changed, only added. */
export interface KeptJar {
  readonly id: string
  readonly entries: readonly JarEntry[]
}

/** A jar as its entries tell it. */
export interface JarState {
  readonly name: string
  readonly started: Of<'started'>
  /** What happened, in order, the start first. */
  readonly happened: readonly HappeningEntry[]
  readonly strained: Of<'strained'> | null
  /** The last time. */
  readonly sweetened: Of<'sweetened'> | null
  /** The last sugar on the strained fruit, while it lies there. */
  readonly onFruit: Of<'fruit_sugared'> | null
  readonly filtered: Of<'filtered'> | null
  readonly bottled: Of<'bottled'> | null
  /** Of what was parted: all of it was poured into another jar. */
  readonly ended: Of<'emptied'> | Of<'discarded'> | Of<'parted'> | null
  /** The first day it is worth drinking: rested since the last syrup, or since straining where none was planned. */
  readonly readyOn: IsoDay | null
}

export type Stage = 'steeping' | 'strained' | 'sweetened' | 'resting' | 'ready' | 'emptied' | 'discarded'

/** A rest where the plan tells none. Common practice, no source. */
const USUAL_REST_DAYS = 30

const last = <Kind extends HappeningKind>(happened: readonly HappeningEntry[], kind: Kind): Of<Kind> | null =>
  (happened.findLast((entry) => entry.kind === kind) as Of<Kind> | undefined) ?? null

/** The last sugar on the strained fruit of which nothing was poured back since; null where none lies there. */
export const sugarOnFruit = (happened: readonly HappeningEntry[]): Of<'fruit_sugared'> | null =>
  last(
    happened.slice(1 + happened.findLastIndex((entry) => entry.kind === 'sweetened' && entry.ofFruit !== undefined)),
    'fruit_sugared',
  )

const pouredAway = (happened: readonly HappeningEntry[]): Of<'parted'> | null =>
  (happened.find((entry) => entry.kind === 'parted' && entry.kept.value === 0) as Of<'parted'> | undefined) ?? null

/** As it was begun; of one that is to have no sugar, with none. */
const asWished = (started: Of<'started'>, happened: readonly HappeningEntry[]): Of<'started'> =>
  started.targets === null || !isUnsweetened(happened)
    ? started
    : { ...started, targets: { ...started.targets, sugarGPerL: 0 } }

/** Null where the start was undone: then there is no jar. Entries are never changed, so they are read once. */
export const jarStateOf = once((entries: readonly JarEntry[]): JarState | null => {
  const happened = effective(entries)
  const started = last(happened, 'started')
  if (started === null) return null
  const [strained, sweetened, bottled] = [
    last(happened, 'strained'),
    last(happened, 'sweetened'),
    last(happened, 'bottled'),
  ]
  const restsFrom = sweetened ?? (bottled === null ? null : strained)
  return {
    name: nameIn(happened) ?? started.name,
    started: asWished(started, happened),
    happened,
    strained,
    sweetened,
    onFruit: sugarOnFruit(happened),
    filtered: last(happened, 'filtered'),
    bottled,
    ended: last(happened, 'discarded') ?? last(happened, 'emptied') ?? pouredAway(happened),
    readyOn:
      restsFrom === null ? null : isoDay(addDays(dayFromIso(restsFrom.day), started.days.restDays ?? USUAL_REST_DAYS)),
  }
})

/** A jar that was poured into another is as good as drunk up. */
export const endedAs = ({ kind }: NonNullable<JarState['ended']>): 'emptied' | 'discarded' =>
  kind === 'discarded' ? 'discarded' : 'emptied'

/** Where a jar stands on a day of its maker's. */
export function stageOf({ strained, sweetened, bottled, ended, readyOn, happened }: JarState, today: IsoDay): Stage {
  if (ended !== null) return endedAs(ended)
  if (strained === null) return 'steeping'
  if (readyOn !== null && today >= readyOn) return 'ready'
  // Whoever drinks of it waits no longer.
  if (happened.some(({ kind }) => kind === 'opened')) return 'ready'
  if (bottled !== null) return 'resting'
  return sweetened === null ? 'strained' : 'sweetened'
}
