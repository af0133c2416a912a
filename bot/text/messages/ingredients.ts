import type { PlantIn } from '../../../core/jar/entry/entry.ts'
import type { Measured } from '../../../core/quantity/measured/measured.ts'
import type { CalendarDay } from '../../../core/quantity/quantities.ts'

export interface SpiritSaid {
  readonly amount: Measured
  readonly by: 'volume' | 'mass'
  readonly abvPercent: Measured
  readonly sugarGPerL: Measured
}

export interface PlantSaid {
  readonly id: string
  readonly massG: Measured
  /** Fruit or pieces: counted, or as many as to buy for the zest; null where it is weighed. */
  readonly count: number | null
  /** True where the zest of whole fruit is meant. */
  readonly ofZest: boolean
}

/** A plant that is not in the catalogue, in the maker's own words. */
export interface UnknownSaid {
  readonly id: null
  readonly name: string
  readonly massG: Measured
}

export interface BottlesSaid {
  readonly count: number
  readonly volumeMl: number
}

/** A plant that goes in after the first day. */
export interface LaterSaid {
  readonly id: string
  readonly day: CalendarDay
}

/** A plant by its id, or in its maker's words where it has none. */
export type PlantName = Pick<PlantIn, 'id' | 'name'>
