import type { BotanicalKind, NoSugars } from '../botanical.ts'
import type { CatalogueEntry, ShareEntry } from './entry.ts'

/** What a plant holds, as shares by mass; sugars that are not said are below 3 %. */
export interface Holds {
  readonly water: ShareEntry
  readonly sugars?: ShareEntry | NoSugars
}

/** All that a row says but its id. Months: the first and the last of its season. */
export interface Figures extends Omit<CatalogueEntry, 'id' | 'kind' | 'monthsNorth' | 'water' | 'sugars'> {
  readonly months?: readonly [first: number, last: number]
  readonly holds: Holds
}

/** A row has to say what its group has not said, and may say the rest otherwise. */
type Row<Common> = Omit<Figures, keyof Common> & Partial<Figures>

/** Rows of one kind with what they have in common, by id. */
export interface Group {
  readonly kind: BotanicalKind
  readonly common: Partial<Figures>
  readonly rows: Readonly<Record<string, Partial<Figures>>>
}

type NoOther<Common> = { readonly [Key in Exclude<keyof Common, keyof Figures>]: never }

export const group = <const Common extends Partial<Figures> & NoOther<Common>>(
  kind: BotanicalKind,
  common: Common,
  rows: Readonly<Record<string, Row<Common>>>,
): Group => ({ kind, common, rows: rows as Group['rows'] })

const MONTHS = 12

const monthsFrom = ([first, last]: readonly [number, number]): readonly number[] =>
  Array.from({ length: ((last - first + MONTHS) % MONTHS) + 1 }, (_, more) => ((first - 1 + more) % MONTHS) + 1)

export const entriesOf = ({ kind, common, rows }: Group): readonly CatalogueEntry[] =>
  Object.entries(rows).map(([id, row]) => {
    // The types of `group` see to it that the two say everything.
    const { months, holds, ...rest } = { ...common, ...row } as Figures
    return { ...rest, ...holds, id, kind, ...(months === undefined ? {} : { monthsNorth: monthsFrom(months) }) }
  })

type Sugars = number | ShareEntry | NoSugars

/** Sugars that are a mere number are known as the water is. */
const holding = (water: ShareEntry, sugars: Sugars | undefined): Holds =>
  sugars === undefined
    ? { water }
    : { water, sugars: typeof sugars === 'number' ? { ...water, value: sugars } : sugars }

/** Read in USDA's table, in the row with this number. */
export const usda = (ndb: string, water: number, sugars?: Sugars): Holds =>
  holding({ value: water, trust: 'published', sources: ['usda_sr'], ndb }, sugars)

/** From memory, to be checked in that row of USDA's table. */
export const noted = (ndb: string, water: number, sugars?: Sugars): Holds =>
  holding({ value: water, trust: 'memory', sources: ['usda_sr'], ndb }, sugars)

/** Read in a paper. */
export const paper = (
  sources: ShareEntry['sources'],
  water: number,
  sugars?: Sugars,
  range?: ShareEntry['range'],
): Holds => holding({ value: water, trust: 'published', sources, ...(range && { range }) }, sugars)

/** Estimated after a relative in USDA's table. */
export const like = (proxyOf: string, water: number, sugars?: ShareEntry): Holds =>
  holding({ value: water, trust: 'estimated', sources: ['usda_sr'], proxyOf }, sugars)

/** Estimated, without a source. */
export const guess = (water: number, sugars?: Sugars, range?: ShareEntry['range']): Holds =>
  holding({ value: water, trust: 'estimated', sources: ['unverified'], ...(range && { range }) }, sugars)

/** From memory, to be checked. */
export const memory = (water: number, sugars?: Sugars, range?: ShareEntry['range']): Holds =>
  holding({ value: water, trust: 'memory', sources: ['unverified'], ...(range && { range }) }, sugars)

/** Sugars estimated after what USDA's table gives for relatives. */
export const near = (value: number): ShareEntry => ({ value, trust: 'estimated', sources: ['usda_sr'] })
