/** How far a composition is to be trusted: read in the source, computed from what was read, or recalled. */
export type MaterialTrust = 'published' | 'derived' | 'memory'

export interface Material {
  /** Names by which it is known, without `of` and `di`; the first is written. */
  readonly names: readonly string[]
  /** Words beside a name that change nothing. */
  readonly kinds: string
  /** Already dissolved. */
  readonly isSyrup: boolean
  /** Stands for the water, not for the sugar. */
  readonly isJuice?: true
  /** As it is poured at 20 °C, g/ml, and its ± as a share of that, the cup's included. */
  readonly pouredGPerMl: number
  readonly pouredPlusMinusShare: number
  /** Grams in 100 g, at most 100 together; what is missing is extract: acids, minerals, gums. */
  readonly per100G: {
    readonly water: number
    readonly sucrose: number
    readonly glucoseAndFructose: number
    /** Maltose and longer sugars. */
    readonly longer: number
  }
  /** Of the longer sugars, sucrose that lowers the freezing point as far, as a share of their mass. */
  readonly longerAsSucrose?: number
  /** Of that extract, acid, as citric. */
  readonly acidPer100G?: number
  /** Half of the 95 % interval of all sugars in 100 g; what they lack is water. */
  readonly sugarsPlusMinusG: number
  /** How sweet a gram of it tastes beside a gram of white sugar: what most say, and how far they disagree. */
  readonly sweetness: { readonly usual: number; readonly low: number; readonly high: number }
  readonly trust: MaterialTrust
  readonly source: string
}
