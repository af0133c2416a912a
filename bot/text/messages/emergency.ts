import type { AidId } from '../../talk/emergency/aid-words.ts'
import type { PoisonCentre } from '../../talk/emergency/contacts.ts'
import type { StepKey } from '../../talk/emergency/first-aid.ts'
import type { HarmId } from '../../talk/emergency/harm.ts'
import type { Plain } from './plain.ts'

/** Whom to ask where there is no poison centre for the public. */
export type InsteadOfCentre = 'gp_nl' | 'doctor' | 'nhs_111'

/** Who is called where something was swallowed, by the country; none where that is not known. */
export interface WhomToCall {
  readonly numbers: readonly string[]
  readonly poisonCentre: string | null
  /** Of the time zone, nobody having named a country. */
  readonly isAssumed: boolean
}

/** The number of the country that a time zone is of, where nobody named one. */
export interface NumberOfZone {
  /** Two letters. */
  readonly country: string
  readonly number: string
}

export interface EmergencyMessages {
  headlines: {
    emergency: {
      readonly harm: HarmId
      /** What is asked of somebody of whom it is known whom to call; mostly nothing. */
      readonly asked: readonly AidId[]
      readonly numbers: readonly string[]
      readonly isCountryKnown: boolean
      readonly zones: NumberOfZone | null
      /** Whether a poison centre of that country takes this call. */
      readonly hasCentre: boolean
      /** A poison centre that takes animals. */
      readonly animals: string | null
    }
  }
  rows: Plain<
    | 'emergency_poison_centre'
    | 'emergency_otherwise'
    | 'emergency_if_swallowed'
    | 'emergency_person'
    | 'emergency_country'
    | 'emergency_numbers'
  > & {
    emergency_step: { readonly number: number }
  }
  cells: {
    emergency_poison_centre: Omit<PoisonCentre, 'takesAnimals'> & { readonly harm: HarmId; readonly otherwise: string }
    emergency_no_centre: { readonly instead: InsteadOfCentre | null }
    emergency_person: {
      readonly numbers: readonly string[]
      readonly isCountryKnown: boolean
      readonly zones: NumberOfZone | null
    }
    emergency_country: { readonly example: string }
    emergency_step: { readonly step: StepKey }
    emergency_numbers: {
      readonly numbers: readonly string[]
      readonly centre: Pick<PoisonCentre, 'number' | 'hours'> | null
    }
  }
  notes: Plain<'emergency_nothing_done'>
}

declare module '../language.ts' {
  interface MessagesByFeature {
    readonly emergency: EmergencyMessages
  }
}
