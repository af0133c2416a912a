import type { Path } from '../../calls/signatures.ts'
import type { BitKind } from '../bits/bit.ts'
import type { Concept } from '../lexicon/lexicon.ts'

/** Which bits fill an option; how each is written is in `slots`. */
export type SlotKind =
  | 'plants'
  | 'plant'
  | 'plant_list'
  | 'any_litre'
  | 'litre_of_strength'
  | 'litre_as_it_is'
  | 'added_plants'
  | 'spirits'
  | 'spirits_again'
  | 'dose_spirit'
  | 'bottles_again'
  | 'at_home'
  | 'had'
  | 'spirit_strength'
  | 'bottles'
  | 'liquid'
  | 'parts'
  | 'strength'
  | 'strength_or_jar'
  | 'wished_strength'
  | 'sweetness'
  | 'wished_sweetness'
  | 'better_strength'
  | 'better_sweetness'
  | 'sugar'
  | 'sweetener'
  | 'water'
  | 'pour'
  | 'brix'
  | 'gravity'
  | 'gravity_before'
  | 'gravity_after'
  | 'ready_by'
  | 'day_asked'
  | 'recipe_days'
  | 'month'
  | 'when'
  | 'until'
  | 'jar'
  | 'known_jar'
  | 'only_jar'
  | 'wished_or_said_strength'
  | 'jar_or_all'
  | 'two_jars'
  | 'jar_list'
  | 'prices'
  | 'rating'
  | 'note'
  | 'taste_note'
  | 'units'
  | 'freezer'
  | 'freezer_asked'
  | 'shake_off'
  | 'racked'
  | 'fining'
  | 'added_as'
  | 'on_fruit'
  | 'all_in'
  | 'pause_over'
  | 'clock'
  | 'new_name'
  | 'name_told'
  | 'zone'
  | 'country'
  | 'private_place'
  | 'here_place'
  | 'bottle_count'
  | 'first_of_two'
  | 'second_of_two'
  | 'poured_off'
  | 'other_jar_name'
  | 'plants_inside'
  | 'jar_of_part'
  | 'where'
  | 'vessel'
  | 'jar_note'

export interface Slot {
  readonly option: string
  readonly takes: SlotKind
  readonly needed?: true
  /** Needed where this is said. */
  readonly neededWith?: Concept
  /** Not filled where this one was. */
  readonly unless?: string
  /** What fills it speaks for the frame no more than what it ignores. */
  readonly isAside?: true
}

/** What a command is understood by, beside what it takes. A new command is understood by adding its frame. */
export interface Frame {
  readonly command: Path
  /**
   * `compute` answers at once; `record` is done only where a word means it and it is told; `set` changes a setting; `never` erases,
   * throws away or shows to others: a sentence answers with the line to type.
   */
  readonly does: 'compute' | 'record' | 'set' | 'never'
  /** What speaks for it, and against it. */
  readonly cues: Readonly<Partial<Record<Concept, number>>>
  /** One of these has to be said. */
  readonly wants?: readonly Concept[]
  /** None of these may be. */
  readonly bars?: readonly Concept[]
  /** Things that it is never said of, where one is named: `put aside 500 ml vodka` is no jar's. */
  readonly barsThings?: readonly BitKind[]
  readonly slots: readonly Slot[]
  /** Left over, these say nothing against it. */
  readonly ignores?: readonly BitKind[]
  /** Left over, these are in the answer anyway. */
  readonly covers?: readonly BitKind[]
  readonly base?: number
}
