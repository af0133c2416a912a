import type { Measured } from '../../quantity/measured/measured.ts'
import type { GaugingMethod } from '../../recipe/solve/gauged.ts'
import type { Sweetening } from '../../recipe/sweetening.ts'

export interface Tasted {
  readonly kind: 'tasted'
  /** 1 to 5. */
  readonly rating: number | null
  readonly note: string | null
  /** What that note tells of that has to be cleared up; left out: nothing. */
  readonly trouble?: TroubleTold
}

/**
 * Something wrong with a jar, and what its maker was told to do: `throw_away`; `hold`: not to be drunk or bottled; `ask`: not
 * before a question is answered. What it is called is kept as text, so that it stands whatever is called so later.
 */
export interface TroubleTold {
  readonly symptom: string
  readonly verdict: 'throw_away' | 'hold' | 'ask'
  /** Why it goes; null where nobody knows yet. */
  readonly because: string | null
  /** What was asked last; null where nothing was. */
  readonly question: string | null
  /** What had been answered. */
  readonly yes: readonly string[]
  readonly no: readonly string[]
}

/** What a finished liqueur was found to be, as its instruments told. */
export interface Gauged {
  readonly kind: 'measured'
  readonly method: GaugingMethod
  readonly abvPercent: Measured
  readonly sugarGPerL: Measured
}

/** Part of what was in a jar is in another from here on: a share stays, 0 to 1, of the liquid and of all that the plants gave. */
export interface Parted {
  readonly kind: 'parted'
  /** 0: all of it was poured out, and the jar is done. */
  readonly kept: Measured
  /** The name that the other jar had. */
  readonly other: string
  /** True of the jar that came of it: what is told before happened to the whole. */
  readonly isNew: boolean
}

/** Words about a jar that change nothing in it; null where nothing was said. */
export interface Noted {
  readonly kind: 'noted'
  readonly note: string | null
  /** Where it stands. */
  readonly where: string | null
  /** The jar or bottle that it is in. */
  readonly vessel: string | null
  /** What went wrong with it, and has to be cleared up; left out: nothing. */
  readonly trouble?: TroubleTold
  /** What it was told of before and turned out to be nothing, by its symptoms; left out: nothing was. */
  readonly settled?: readonly string[]
}

/** Dry sugar stirred on the strained fruit, to draw out what that has soaked up: in the jar nothing changes yet. */
export interface FruitSugared {
  readonly kind: 'fruit_sugared'
  readonly sweetenings: readonly Sweetening[]
}
