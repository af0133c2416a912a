import type { AskId } from './ask-back.ts'
import type { LimitKey, PlantState } from './botanical.ts'
import type { FoodQuestion } from './food.ts'
import type { RefusalId } from './refused.ts'
import type { LiqueurPlant } from './words/liqueur-names.ts'

/** What to type in place of what was typed, and the whole line with it, where one is known. */
export interface Retype {
  /** What of the text it stands for; null where that is not known. */
  readonly from: string | null
  readonly as: string
  readonly line: string | null
}

/** A food of the list, of which the maker has to say the amount. */
export interface UnplannedFood {
  /** In the maker's words. */
  readonly name: string
  /** What has to be said of it first; null where nothing has. */
  readonly question: FoodQuestion | null
  /** Its grams, what is asked of it answered. */
  readonly retype: Retype
}

export interface NotPlanned {
  readonly typed: string
  readonly nearest: readonly string[]
  /** What it is made of, where it is the name of a drink. */
  readonly liqueur: LiqueurPlant | null
  /** Null where it is not on the list of foods. */
  readonly food: UnplannedFood | null
}

/**
 * What can be wrong with a plant, by key, with the values its sentence needs. `typed` is fit to be shown; every other
 * text is an id of the catalogue, a key or a name of a table.
 */
export interface BotanicalProblems {
  readonly refused_botanical: {
    readonly typed: string
    readonly id: RefusalId
    /** As typed, or the name of it that was found among other words, as the table has it. */
    readonly name: string
    readonly instead: string | null
  }
  /** One typo away from a refused name. */
  readonly near_refused: { readonly typed: string; readonly id: RefusalId; readonly name: string }
  /** Picked in the wild, but named and in the catalogue. */
  readonly foraged_botanical: { readonly typed: string; readonly id: string }
  readonly unclear_botanical: {
    readonly typed: string
    /** Which question is asked; null where names are merely alike. */
    readonly ask: AskId | null
    readonly choices: readonly string[]
    readonly refused: readonly RefusalId[]
    /** The whole line with one of the choices, where it was tried and runs. */
    readonly line?: string | null
  }
  readonly unknown_botanical: NotPlanned
  /** From a garden, and easily another plant. */
  readonly garden_botanical: { readonly typed: string; readonly id: string; readonly retype: Retype }
  /** More of a food than is usual of anything of its kind. */
  readonly over_food_bound: {
    readonly name: string
    readonly mostG: number
    readonly volumeMl: number
    readonly mostGPerL: number
  }
  /** In the catalogue, but not fresh (or not dried). */
  readonly unknown_form: { readonly typed: string; readonly id: string; readonly state: PlantState }
  /** A limit depends on the form, and none was said. */
  readonly unsaid_form: { readonly id: string; readonly states: readonly PlantState[] }
  readonly over_ceiling: {
    readonly hazard: LimitKey
    /** Of the whole limit; more than 1. */
    readonly share: number
    /** Each with the most of it that the limit allows, the others in proportion. */
    readonly of: readonly {
      readonly id: string
      readonly state: PlantState
      readonly massG: number
      readonly mostG: number
    }[]
    readonly per: 'spirit' | 'finished'
    /** Of that which is nearer its limit. */
    readonly volumeMl: number
    readonly spiritMl: number
  }
}

declare module '../domain-error.ts' {
  interface Problems extends BotanicalProblems {}
}
