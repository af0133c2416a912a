import { DomainError } from '../../../core/domain-error.ts'
import type { CalendarDay, DateSide, TypedDate } from '../../../core/quantity/quantities.ts'
import { type DateSetting, parseDate } from '../../../core/quantity/time/parse-date.ts'
import { LONGEST_CODE } from '../../../core/recipe/code/batch-code.ts'
import { findPlants, readPlants } from '../../../core/recipe/plan/find-plants.ts'
import { parseDays, parseYesNo } from '../../../core/recipe/plan/parse-answers.ts'
import { parseBottles } from '../../../core/recipe/plan/parse-bottles.ts'
import { field, PLANTS } from '../options/fields.ts'
import { parseSharedCode } from '../share/share-ref.ts'

/** Any day will do to see whether a text is a date at all; which date it is, only the clock decides. */
const ANY_DAY: CalendarDay = { year: 2026, month: 1, day: 1 }

/** A text that is a date; where day and month are in doubt, the person's country decides later. */
export interface DateTyped {
  read(setting: DateSetting): TypedDate
}

/** The text is checked at once, as far as that goes without knowing who asks. */
export const dateIn = (text: string, side: DateSide): DateTyped => {
  try {
    parseDate(text, { today: ANY_DAY, country: null }, side)
  } catch (error) {
    if (!(error instanceof DomainError && error.code === 'ambiguous')) throw error
  }
  return { read: (setting) => parseDate(text, setting, side) }
}

/** What only planning takes. */
export const planFields = {
  plants: field(findPlants, PLANTS),
  /** Also those that are not in the catalogue; `checkUnknown` has to judge them. */
  anyPlants: field(readPlants, PLANTS),
  /** A batch's code: twice its longest, for hyphens and spaces. */
  code: field(parseSharedCode, { most: 2 * LONGEST_CODE }),
  bottles: field(parseBottles, { suggested: 'bottles' }),
  yesNo: field(parseYesNo, { choices: ['yes', 'no'] }),
  days: field(parseDays),
  /** A beginning, which may be today. */
  start: field((text) => dateIn(text, 'from_today')),
  readyBy: field((text) => dateIn(text, 'after_today')),
}
