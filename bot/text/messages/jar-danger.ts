import type { OverCeiling } from '../../../core/botanical/limits/ceilings.ts'
import type { SpiritToAdd } from '../../../core/jar/limits/spirit-to-add.ts'
import type { StandingTrouble } from '../../../core/jar/state/standing-troubles.ts'
import type { Keeping, StrengthAndSugar as Weak } from '../../../core/liquid/keeping.ts'
import type { CalendarDay } from '../../../core/quantity/quantities.ts'
import type { SymptomId } from '../../../core/trouble/symptoms.ts'
import type { Kitchen } from './kitchen.ts'
import type { Plain } from './plain.ts'

/** `kitchen` is that of the jar among others; left out: that of the reply. */
export type WeakJar = Weak & { readonly name: string; readonly add: SpiritToAdd | null; readonly kitchen?: Kitchen }

/** A plant by its id, or where the catalogue has none by its name. */
export interface PlantTold {
  readonly id: string | null
  readonly name: string
}

/** What a jar was told of, and nobody has taken back. */
export interface ToldOfJar {
  readonly name: string
  readonly trouble: StandingTrouble
}

export interface DangerMessages {
  headlines: {
    /** Before all else that is said of the jar. */
    jar_told_of: ToldOfJar
  }
  rows: Plain<'jar_keeping'>
  cells: {
    jar_keeping: Weak & { readonly keeping: Keeping }
  }
  cautions: {
    jar_refused: { readonly name: string; readonly typed: string }
    jar_unknown_plant: { readonly name: string; readonly typed: string }
    jar_over_ceiling: {
      readonly name: string
      readonly over: readonly OverCeiling[]
      readonly add: SpiritToAdd | null
      readonly kitchen?: Kitchen
    }
    jar_ferments: WeakJar
    jar_undecided: WeakJar
    jar_weak_low_acid: {
      readonly name: string
      readonly plants: readonly PlantTold[]
      readonly abvPercent: number
      readonly add: SpiritToAdd | null
      readonly kitchen?: Kitchen
    }
    /** Of what is planned or worked out with vegetables in it. */
    low_acid_weak: { readonly plants: readonly PlantTold[]; readonly abvPercent: number }
    /** How that is known. */
    low_acid_source: undefined
    /** The same, where it was said before. */
    jar_still_weak: { readonly name: string }
    /** Written down, and not cleared up since. */
    jar_noted_trouble: {
      readonly name: string
      readonly note: string
      readonly symptom: SymptomId
      readonly day: CalendarDay
    }
    jar_to_throw_away: ToldOfJar
    jar_not_yet: ToldOfJar
    jar_in_question: ToldOfJar
    can_ferment: Weak
    keeps_undecided: Weak
    plan_jar_undecided: Weak
  }
  notes: {
    jar_targets_ferment: Record<'abvPercent' | 'sugarGPerL' | 'keepsFromPercent', number>
  }
  actions: Plain<'jar_add_spirit' | 'jar_dilute' | 'jar_throw_away'> & {
    /** It was told of a trouble, and was harmless. */
    jar_was_nothing: { readonly trouble: StandingTrouble }
  }
}

declare module '../language.ts' {
  interface MessagesByFeature {
    readonly danger: DangerMessages
  }
}
