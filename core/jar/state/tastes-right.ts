import { dayNumber } from '../../quantity/time/day-number.ts'
import type { JarState } from './jar-state.ts'

/** Plants whose whole window lies this near to the start are quick, are tasted every day of it, and soon give too much. Common practice, no source. */
export const QUICK_DAYS = 10

const RIGHT =
  /\b(?:just (?:right|perfect)|perfect|spot on|(?:strong|hot|spicy|bitter) enough|(?:right|ready|good|done) now|couldn.?t be better|giust[oa]|perfett[oa]|al punto giusto|abbastanza (?:forte|piccante|amar[oa]))\b/iu

const NOT_YET =
  /\b(?:not|isn.?t|yet|almost|nearly|nowhere|soon|could be|would be|if|non|quasi|ancora|presto|manca)\b|\?/iu

/** A mark says how good it is, not that it is strong enough. */
const isRight = (note: string | null): boolean =>
  note !== null && RIGHT.test(note) && !NOT_YET.test(note.replace(/couldn.?t be better/iu, ''))

/** Whether what still steeps, and is quickly too much, was just found as it is to be: it comes out now. */
export function isToComeOut({ started, strained }: JarState, note: string | null): boolean {
  const { strainBy } = started.days
  if (strained !== null || strainBy === null || !isRight(note)) return false
  return dayNumber(strainBy) - dayNumber(started.day) <= QUICK_DAYS
}
