import type { LabelProblems } from '../../../../core/label/problems.ts'

/** Why a label cannot be answered. */
export const labelProblems = {
  unknown_region: ({ typed }) =>
    `I have no labelling rules for “${typed}”; region: takes EU (or a country in it), US or UK.`,
} satisfies { readonly [Key in keyof LabelProblems]: (values: LabelProblems[Key]) => string }
