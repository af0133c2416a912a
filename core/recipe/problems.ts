/** What a recipe cannot do. */
export interface RecipeProblems {
  sugar_crystallises: { readonly sugarGPerL: number; readonly abvPercent: number; readonly largestGPerL: number }
  water_only_lowers: { readonly abvPercent: number; readonly toAbvPercent: number }
  infusion_too_weak: {
    readonly infusionAbvPercent: number
    readonly toAbvPercent: number
    readonly toSugarGPerL: number
    /** False where only the strength was, and the sweetness is the infusion's own. */
    readonly isSweetnessNamed: boolean
    /** Null where that much sugar does not stay dissolved at the strength it leaves. */
    readonly strongestAbvPercent: number | null
    /** Null where even without sugar the infusion is too weak. */
    readonly sweetestGPerL: number | null
    /** A whole line that runs; left out where none was tried. */
    readonly line?: string | null
  }
  already_sweeter: { readonly sugarGPerL: number; readonly toSugarGPerL: number; readonly toAbvPercent: number }
  syrup_not_sweet_enough: {
    readonly toSugarGPerL: number
    readonly sugarPerWater: number
    readonly syrupGPerL: number
    readonly line?: string | null
  }
  /** What sweetens is less sweet by itself than what is wished for. */
  sweetener_too_thin: { readonly toSugarGPerL: number; readonly sweetenerGPerL: number }
  /** What stands for the water brings more sugar than is wished for; `leastGPerL` with nothing else. */
  filler_too_sweet: { readonly toSugarGPerL: number; readonly leastGPerL: number; readonly line?: string | null }
  targets_clash: {
    readonly toAbvPercent: number
    readonly toSugarGPerL: number
    readonly sugarPerWater: number
    /** The ratio that strength and sweetness ask for; null where sugar alone is wanted, no water. */
    readonly neededSugarPerWater: number | null
  }
  adjust_needs_spirit: AdjustProblem & {
    /** Sweetness that water alone and sugar alone leave at that strength; null above the liqueur's own. */
    readonly leastSugarGPerL: number | null
    readonly mostSugarGPerL: number | null
    readonly line?: string | null
  }
  adjust_spirit_too_weak: AdjustProblem & {
    readonly spiritAbvPercent: number
    /** What any amount of that spirit stays under at the sweetness wished for. */
    readonly strongestAbvPercent: number
  }
  adjust_keeps_sugar: { readonly abvPercent: number; readonly sugarGPerL: number }
}

interface AdjustProblem {
  readonly abvPercent: number
  readonly sugarGPerL: number
  readonly toAbvPercent: number
  readonly toSugarGPerL: number
}

declare module '../domain-error.ts' {
  interface Problems extends RecipeProblems {}
}
