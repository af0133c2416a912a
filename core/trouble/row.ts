import type { Trust } from '../botanical/evidence/trust.ts'
import type { FactCondition } from './finding.ts'
import type { Sign } from './signs.ts'
import type { TroubleSource } from './sources.ts'
import type { SymptomId } from './symptoms.ts'

/** What a bot can work out or record against a cause; what only hands can do stands in words. */
export type RemedyKind =
  /** Down to a strength that does not burn. */
  | 'weaker'
  /** Up to what was planned, or to where nothing lives in it. */
  | 'stronger'
  | 'less_sweet'
  | 'sweeter'
  | 'strain'
  | 'filter'
  /** What was entered wrong. */
  | 'correct'
  | 'measure'

/** One thing that can have caused a symptom. */
export interface Cause {
  /** 1 is the likeliest; of a danger its likelihood, not its weight. */
  readonly rank: number
  readonly isDangerous: boolean
  readonly fits: FactCondition
  readonly trust: readonly Trust[]
  readonly sources: readonly TroubleSource[]
  readonly remedies: readonly RemedyKind[]
  /** The symptom whose lines hold as well, and which tells more. */
  readonly leadsTo: SymptomId | null
}

/** Why something is thrown away. */
export type StopId =
  | 'not_for_drinking'
  | 'plant_unsure'
  | 'contents_unknown'
  | 'fuel'
  | 'varnish'
  | 'growth'
  | 'burst'
  | 'glass'
  | 'kernels'
  | 'dairy'
  | 'weak_low_acid'
  | 'gas_low_acid'
  | 'metal'
  | 'plastic'
  | 'burnt'
  | 'perfume'
  | 'cleaner'
  | 'soap'
  | 'spoiled_fruit'
  | 'insects'
  | 'vinegar'
  | 'rotten'
  | 'fizzed_weak'
  | 'fizzed'
  | 'too_weak'
  | 'over_ceiling'

/** Why a symptom is nothing to throw away for. */
export type KeepId =
  | 'cloud'
  | 'oil_ring'
  | 'pectin'
  | 'colour'
  | 'spent'
  | 'dark_leaves'
  | 'sugar'
  | 'ice'
  | 'sediment'
  | 'blue_garlic'
  | 'age'
  | 'taste'

/** Conditions on which it is thrown away, by why. */
export type Stops = { readonly [Id in StopId]?: FactCondition }

/** All that is known of a symptom. */
export interface SymptomRow {
  readonly stops?: Stops
  /** Stop lines of every jar that this symptom makes worth asking about. */
  readonly asks?: readonly StopId[]
  /** What the symptom itself says. */
  readonly assumes?: { readonly [Name in Sign]?: boolean }
  /** What a jar's own record does not settle any more, because the maker doubts it. */
  readonly doubts?: readonly Sign[]
  /** What its maker may want whatever the cause: it is a matter of taste. */
  readonly anyway?: readonly RemedyKind[]
  readonly keeps?: { readonly id: KeepId; readonly when: FactCondition }
  /** What differs where its figures let nothing live in it, and until which sign is told it is not to be drunk. */
  readonly strong?: Pick<SymptomRow, 'assumes' | 'asks' | 'stops'> & { readonly waitsFor: Sign }
  readonly causes: Readonly<Record<string, Cause>>
}

const TRUST: Readonly<Record<string, Trust>> = {
  p: 'published',
  d: 'derived',
  c: 'common_practice',
  m: 'memory',
}

interface More {
  readonly remedies?: readonly RemedyKind[]
  readonly leadsTo?: SymptomId
}

const trustOf = (letters: string): readonly Trust[] => [...letters].map((letter) => TRUST[letter]!)

const of = (
  isDangerous: boolean,
  rank: number,
  fits: FactCondition,
  trust: string,
  sources: readonly TroubleSource[],
  { remedies = [], leadsTo }: More,
): Cause => ({ rank, isDangerous, fits, trust: trustOf(trust), sources, remedies, leadsTo: leadsTo ?? null })

/** A harmless cause; trust as letters: published, derived, common practice, memory. */
export const cause = (
  rank: number,
  fits: FactCondition,
  trust: string,
  sources: readonly TroubleSource[],
  more: More = {},
): Cause => of(false, rank, fits, trust, sources, more)

/** One that can hurt. */
export const danger = (
  rank: number,
  fits: FactCondition,
  trust: string,
  sources: readonly TroubleSource[],
  more: More = {},
): Cause => of(true, rank, fits, trust, sources, more)
