/** Lines of a first screen at most, blank ones free, in a terminal of 80 and of 44 columns. Chosen for a phone; no source. */
export interface Budget {
  readonly 80: number
  readonly 44: number
}

/** Of each reply; `more` for every further plant, jar or item. */
export const budgets = {
  plan: { 80: 14, 44: 24, more: { 80: 1, 44: 2 } },
  /** A plan, and what went otherwise last time: at most three sentences, a line for each of them. */
  again: { 80: 22, 44: 38 },
  syrup: { 80: 7, 44: 11 },
  syrup_styles: { 80: 8, 44: 12 },
  mixture: { 80: 6, 44: 10 },
  botanical: { 80: 9, 44: 15 },
  measure: { 80: 8, 44: 12 },
  jar_start: { 80: 6, 44: 10 },
  jar_strain: { 80: 8, 44: 12 },
  jar_step: { 80: 4, 44: 6 },
  jar_list: { 80: 16, 44: 28 },
  nudge: { 80: 4, 44: 7, more: { 80: 1, 44: 2 } },
  /** Its words stand on a bottle, so they are not cut. */
  label: { 80: 9, 44: 14 },
} as const satisfies Record<string, Budget & { readonly more?: Budget }>
