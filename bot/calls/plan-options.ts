import { DomainError } from '../../core/domain-error.ts'
import type { CalendarDay, DateSide, TypedDate } from '../../core/quantity/quantities.ts'
import { type DateSetting, parseDate } from '../../core/quantity/time/parse-date.ts'
import { writeAmount, writeSpan } from '../../core/quantity/write/write-quantity.ts'
import { LONGEST_CODE } from '../../core/recipe/code/batch-code.ts'
import { findPlants, type PlantsRead, readPlants } from '../../core/recipe/plan/find-plants.ts'
import { parseDays, parseYesNo } from '../../core/recipe/plan/parse-answers.ts'
import { type Bottles, parseBottles } from '../../core/recipe/plan/parse-bottles.ts'
import { option } from './option.ts'
import { joined, PLANTS } from './quantity-options.ts'
import { parseSharedCode, sharedCode } from './share-ref.ts'

/** Any day will do to see whether a text is a date at all; which date it is, only the clock decides. */
const ANY_DAY: CalendarDay = { year: 2026, month: 1, day: 1 }

/** Words for a day, such as `tomorrow`; where day and month are in doubt, the person's country decides later. */
export interface DateTyped {
  readonly text: string
  read(setting: DateSetting): TypedDate
}

/** The text is checked at once, as far as that goes without knowing who asks. */
export const dateIn = (text: string, side: DateSide): DateTyped => {
  try {
    parseDate(text, { today: ANY_DAY, country: null }, side)
  } catch (error) {
    if (!(error instanceof DomainError && error.code === 'ambiguous')) throw error
  }
  return { text, read: (setting) => parseDate(text, setting, side) }
}

export const asWritten = ({ text }: { readonly text: string }): string => text

const writeBottles = ({ count, size }: Bottles): string => {
  if (size === null) return String(count)
  return count === null ? writeAmount(size) : `${count} x ${writeAmount(size)}`
}

/** Plants in the order in which they were typed. */
function writePlants({ plants, unknown, nameless }: PlantsRead): string {
  if (nameless !== undefined) return nameless.typed
  const known = [...plants]
  const all = Array.from({ length: plants.length + unknown.length }, (_, at) => {
    const other = unknown.find((plant) => plant.at === at)
    return (other ?? known.shift()!).typed
  })
  return joined(all)
}

/** What only planning takes. */
export const planOptions = {
  plants: option({ read: findPlants, write: (plants) => joined(plants.map(({ typed }) => typed)), ...PLANTS }),
  /** Also those that are not in the catalogue; `checkUnknown` has to judge them. */
  anyPlants: option({ read: readPlants, write: writePlants, ...PLANTS }),
  /** A batch's code: twice its longest, for hyphens and spaces. */
  code: option({ read: parseSharedCode, write: sharedCode, most: 2 * LONGEST_CODE }),
  bottles: option({
    read: parseBottles,
    write: (bottles) => bottles.map(writeBottles).join(' + '),
    suggested: 'bottles',
  }),
  yesNo: option({ read: parseYesNo, write: (isYes) => (isYes ? 'yes' : 'no'), choices: ['yes', 'no'] }),
  days: option({ read: parseDays, write: (days) => writeSpan(days, parseDays) }),
  /** A beginning, which may be today. */
  start: option({ read: (text) => dateIn(text, 'from_today'), write: asWritten }),
  readyBy: option({ read: (text) => dateIn(text, 'after_today'), write: asWritten }),
}
