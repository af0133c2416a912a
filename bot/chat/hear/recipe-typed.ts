import { LEXICONS } from '../../talk/lexicon/lexicons.ts'
import { mayBeginRecipe, recipeLines } from '../../talk/reader/recipe-lines.ts'

/** No jar is named in a recipe, and no day is asked about. */
const ANY = { lexicons: LEXICONS, jars: [], today: { year: 2000, month: 1, day: 1 } }

/** How lines that were pasted at once are told to be one recipe. */
export const recipesTyped = {
  countOf: (lines: readonly string[]): number => recipeLines(lines, ANY),
  mayBegin: (line: string): boolean => mayBeginRecipe(line, ANY),
}
