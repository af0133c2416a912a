/** Lines of a first screen at most, blank ones free, in a terminal of 80 and of 44 columns. Chosen for a phone; no source. */
export interface Budget {
  readonly 80: number
  readonly 44: number
}

/** Of each reply; `more` for every further plant, jar or item. In Discord on a phone what 44 columns may have. */
export const budgets = {
  plan: { 80: 14, 44: 24, more: { 80: 1, 44: 2 } },
  /** One further plant. */
  plan_of_two: { 80: 15, 44: 26 },
  /** What *more* says of a plan, with what is offered under it. */
  plan_more: { 80: 36, 44: 48 },
  syrup: { 80: 7, 44: 11 },
  syrup_styles: { 80: 8, 44: 12 },
  mixture: { 80: 6, 44: 10 },
  botanical: { 80: 9, 44: 15 },
  measure: { 80: 8, 44: 12 },
  jar_start: { 80: 6, 44: 10 },
  /** With where and by which clock to be reminded. */
  first_jar: { 80: 8, 44: 11 },
  jar_strain: { 80: 8, 44: 12 },
  jar_step: { 80: 4, 44: 6 },
  jar_list: { 80: 16, 44: 28 },
  /** A story goes on with what happened, a line or two each. */
  jar_show: { 80: 8, 44: 14, more: { 80: 1, 44: 2 } },
  nudge: { 80: 4, 44: 7, more: { 80: 1, 44: 2 } },
  refusal: { 80: 3, 44: 5 },
  compare: { 80: 13, 44: 20 },
  notebook: { 80: 14, 44: 26 },
  settings: { 80: 8, 44: 12 },
  reminders: { 80: 9, 44: 14 },
  share: { 80: 6, 44: 9 },
  help: { 80: 16, 44: 22 },
  /** Of a topic, a command or a word. */
  help_of: { 80: 18, 44: 24 },
  /** What can hurt; each further plant tells its own. */
  cautions: { 80: 14, 44: 22, more: { 80: 3, 44: 5 } },
  /** Files, and what was done to what is kept. */
  keeping_data: { 80: 6, 44: 9 },
  /** Its words stand on a bottle, so they are not cut. */
  label: { 80: 9, 44: 14 },
} as const satisfies Record<string, Budget & { readonly more?: Budget }>
