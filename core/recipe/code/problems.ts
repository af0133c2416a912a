import type { PlantState } from '../../botanical/botanical.ts'

/** What can be wrong with a batch's code, or with making one. `typed` is fit to be shown; ids are of the catalogue. */
export interface CodeProblems {
  /** Too short for a code, or words. */
  readonly not_a_code: { readonly typed: string }
  readonly code_damaged: { readonly typed: string }
  /** Words behind a whole code; `fix` is the code alone, `line` the line with it, where a chat knows it. */
  readonly code_extra: { readonly extra: string; readonly fix: string; readonly line?: string | null }
  /** Written by a later version, or with plants of a later catalogue. */
  readonly code_newer: Record<string, never>
  /** A recipe of so many plants and spirits that no code holds it. */
  readonly recipe_too_long: { readonly most: number }
  /** A plant outside the catalogue, by its maker's name for it. */
  readonly plant_unshared: { readonly name: string }
  /** A jar without plants or spirit. */
  readonly nothing_to_share: Record<string, never>
  /** A plant at hand that is none of the recipe's. */
  readonly not_in_recipe: {
    readonly typed: string
    readonly plants: readonly { readonly id: string; readonly state: PlantState }[]
  }
  /** An amount at hand without its plant, of a recipe of several. */
  readonly amount_of_which: CodeProblems['not_in_recipe'] & { readonly line?: string | null }
  /** A plant at hand of which nobody said how much. */
  readonly plant_without_amount: { readonly typed: string }
  /** The recipe's strength and sweetness, and what this spirit makes instead. */
  readonly spirit_too_weak: {
    readonly spiritAbvPercent: number
    readonly toAbvPercent: number
    readonly toSugarGPerL: number
    /** The strongest with that sweetness, in halves of a per cent; null where none is made. */
    readonly strongestAbvPercent: number | null
    /** The sweetest at that strength, in whole g/L; null where none is made. */
    readonly sweetestGPerL: number | null
    /** A whole line that runs; left out where none was tried. */
    readonly line?: string | null
  }
}

declare module '../../domain-error.ts' {
  interface Problems extends CodeProblems {}
}
