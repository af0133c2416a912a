import type { Trust } from '../../../core/botanical/evidence/trust.ts'
import type { Measured } from '../../../core/quantity/measured/measured.ts'
import type { Ask, Why } from '../../../core/trouble/finding.ts'
import type { KeepId, RemedyKind, StopId } from '../../../core/trouble/row.ts'
import type { PerCause } from '../../../core/trouble/rows.ts'
import type { TroubleSource } from '../../../core/trouble/sources.ts'
import type { Stake } from '../../../core/trouble/stake.ts'
import type { SymptomId } from '../../../core/trouble/symptoms.ts'
import type { WhomToCall } from './emergency.ts'
import type { Plain } from './plain.ts'

/** What a language says of a cause. */
export interface CauseText {
  /** What it is, in a sentence with others: `oil of the peel`. */
  readonly cause: string
  /** How it is told from others: sentences. */
  readonly tell: string
  /** What to do about it: sentences. */
  readonly todo: string
  /** What else there is to know; null where there is nothing. */
  readonly more: string | null
}

/** Of every cause of every symptom. */
export type TroubleCauses = PerCause<CauseText>

/** A cause by its symptom and its own id. */
export interface CauseSaid {
  readonly symptom: SymptomId
  readonly cause: string
}

export interface TroubleMessages {
  headlines: {
    /** Of a jar by its name, or of none. */
    trouble_what: { readonly name: string | null }
    /** `isTaste`: there is something to do all the same. */
    /** `isTaste`: told by the tongue alone; `isMended`: what mends it is offered. */
    trouble_cannot_tell: { readonly isTaste: boolean; readonly isMended: boolean }
    /** `isRefused`: something was asked that would keep it. */
    trouble_throw_away: { readonly because: StopId; readonly isRefused: boolean }
    /** `air`: it fizzes, and nothing that it may be is a danger. */
    trouble_hold: { readonly because: 'over_ceiling' | 'fizz' | 'air' | 'recurs' | 'weak' }
    /** For good: nothing makes it fit to drink. */
    trouble_hold_for: CauseSaid & { readonly whys: readonly Why[]; readonly isForGood: boolean }
    trouble_ask: { readonly question: Ask; readonly stake: Stake | null }
    /** What would keep it all the same; what is asked of it still, if anything. */
    trouble_no_yet: { readonly why: 'gas' | 'skimmed' | 'used'; readonly question: Ask | null }
    /** The likeliest cause, and what has to be answered all the same. */
    trouble_likely: CauseSaid & { readonly question: Ask; readonly stake: Stake | null }
    trouble_keep: { readonly because: KeepId | null }
    /** Beside another trouble that stands of its jar. */
    trouble_alone_harmless: undefined
  }
  notes: Plain<
    | 'trouble_how_to_throw_away'
    | 'trouble_more_known'
    | 'trouble_skimmed'
    | 'trouble_no_use'
    | 'trouble_other_bottles'
    | 'trouble_same_bottles'
    | 'trouble_full_bottles'
  > & {
    /** What was typed, where more was said than the name of the symptom. */
    trouble_read_as: { readonly typed: string; readonly symptoms: readonly SymptomId[] }
    trouble_question: { readonly question: Ask }
    /** What it was told is kept with the jar. */
    trouble_kept: { readonly name: string; readonly verdict: 'throw_away' | 'hold' | 'ask' }
    trouble_settled: { readonly name: string }
    trouble_stays: { readonly name: string }
    /** Of how many that may be it. */
    trouble_which_jar: { readonly count: number }
    /** The likeliest, as it stands or once the open question is answered well. */
    trouble_cause: CauseSaid & { readonly whys: readonly Why[]; readonly after: 'nothing' | 'yes' | 'no' }
    /** Another, with how it is told and what to do. */
    trouble_other: CauseSaid & { readonly whys: readonly Why[] }
    /** A danger that no question settles, before what is harmless. */
    trouble_rule_out: CauseSaid & { readonly whys: readonly Why[] }
    /** What speaks for it, where the danger takes its room. */
    trouble_whys: { readonly whys: readonly Why[] }
    trouble_tell: CauseSaid
    trouble_todo: CauseSaid
    /** What else there is to know of it, and how that is known. */
    trouble_known: CauseSaid & { readonly trust: readonly Trust[]; readonly sources: readonly TroubleSource[] }
    trouble_takes: {
      readonly spiritMl: Measured
      readonly spiritPercent: number | null
      /** What its maker called it. */
      readonly drink: string | null
      readonly waterMl: Measured
      readonly sugarG: Measured
      readonly abvPercent: Measured
      readonly sugarGPerL: Measured
      /** Of a litre, where nobody knows how much there is. */
      readonly isPerLitre: boolean
    }
  }
  cautions: {
    trouble_unless: { readonly unless: readonly StopId[] }
    /** What to do if somebody drank of it already. */
    trouble_if_drunk: WhomToCall
    /** Somebody has some of it: null where whoever drank of it is told to call beside this. */
    trouble_given: { readonly who: string | null; readonly call: WhomToCall | null }
  }
  actions: Plain<
    | 'trouble_yes'
    | 'trouble_no'
    | 'trouble_strength'
    | 'trouble_plants'
    | 'trouble_strain'
    | 'trouble_filter'
    | 'trouble_correct'
    | 'trouble_measure'
  > & {
    trouble_of_jar: { readonly name: string }
    trouble_remedy: { readonly kind: RemedyKind }
    trouble_usual: { readonly symptom: SymptomId }
    /** It was told with another that comes first. */
    trouble_also: { readonly symptom: SymptomId }
    trouble_see: { readonly symptom: SymptomId }
    /** What was noted of a taste; null where it was only rated low. */
    trouble_offer: { readonly symptom: SymptomId | null }
  }
}

declare module '../language.ts' {
  interface MessagesByFeature {
    readonly trouble: TroubleMessages
  }
}
