import type { LabelProblems } from '../../../../core/label/problems.ts'
import { countryInSentence } from './country-by-code.ts'

/** Why a label cannot be answered. */
export const labelProblems = {
  unknown_region: ({ typed }) =>
    `I have no labelling rules for “${typed}”; region: takes EU (or a country in it), US or UK.`,
  unknown_country_code: ({ typed, nearest }) =>
    nearest === null
      ? `I know no country “${typed}”; give its name or its two letters, such as Italy or IT, or none.`
      : `I know no country “${typed}”; did you mean ${countryInSentence(nearest)}?`,
} satisfies { readonly [Key in keyof LabelProblems]: (values: LabelProblems[Key]) => string }
