import { dayNumber } from '../../quantity/time/day-number.ts'
import type { JarState } from './jar-state.ts'

/** Plants whose whole window lies this near to the start are quick, are tasted every day of it, and soon give too much. Common practice, no source. */
export const QUICK_DAYS = 10

const RIGHT =
  /\b(?:just (?:right|perfect)|perfect|spot on|(?:strong|hot|spicy|bitter) enough|(?:right|ready|good|done) now|couldn.?t be better|giust[oa]|perfett[oa]|al punto giusto|abbastanza (?:forte|piccante|amar[oa]))\b/iu

const NOT_YET =
  /\b(?:not|isn.?t|yet|almost|nearly|nowhere|soon|could be|would be|if|non|quasi|ancora|presto|manca)\b|\?/iu

/** From so many points of 5 on it pleased. */
const PLEASED_RATING = 4

/** Whether a taste says that it is as it is to be: by its words, else by its mark. */
const isRight = (note: string | null, rating: number | null): boolean =>
  note === null || !RIGHT.test(note.replace(/couldn.?t be better/iu, 'perfect'))
    ? rating !== null && rating >= PLEASED_RATING && (note === null || !NOT_YET.test(note))
    : !NOT_YET.test(note)

/** Whether what still steeps, and is quickly too much, was just found as it is to be: it comes out now. */
export function isToComeOut(
  { started, strained }: JarState,
  { note, rating }: { readonly note: string | null; readonly rating: number | null },
): boolean {
  const { strainBy } = started.days
  if (strained !== null || strainBy === null || !isRight(note, rating)) return false
  return dayNumber(strainBy) - dayNumber(started.day) <= QUICK_DAYS
}
