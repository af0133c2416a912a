import { expectDrinkable } from '../../core/botanical/refuse-spirit.ts'
import { DomainError } from '../../core/domain-error.ts'
import { parseDate } from '../../core/quantity/parse-date.ts'
import { parseSpirits } from '../../core/quantity/parse-spirits.ts'
import type { CalendarDay } from '../../core/quantity/quantities.ts'
import { shown } from '../../core/quantity/typed-text.ts'
import { findPlants, readPlants } from '../../core/recipe/plan/find-plants.ts'
import { parseDays, parseYesNo } from '../../core/recipe/plan/parse-answers.ts'
import { parseBottles } from '../../core/recipe/plan/parse-bottles.ts'
import { field } from './fields.ts'

/** Any day will do to see whether a text is a date at all; which date it is, only the clock decides. */
const ANY_DAY: CalendarDay = { year: 2026, month: 1, day: 1 }

/** What only `/plan` takes. */
export const planFields = {
  plants: field(findPlants),
  /** Also those that are not in the catalogue; `checkUnknown` has to judge them. */
  anyPlants: field(readPlants),
  /** Spirits with words after the amount (`1 l vodka 40%`); what must not be drunk is refused. */
  drinkable: field((text) => {
    expectDrinkable(text)
    return parseSpirits(text).map((part) => {
      // A name is words; anything else may be an option run into it.
      const strange = part.words.split(' ').find((word) => /[^\p{L}\p{M}'’.,-]/u.test(word))
      if (strange === undefined) return { ...part, words: '' }
      const values = { typed: shown(text), extra: shown(strange), wanted: 'part' } as const
      throw new DomainError('bad_value', 'unexpected_text', values)
    })
  }),
  bottles: field(parseBottles),
  yesNo: field(parseYesNo),
  days: field(parseDays),
  date: field((text) => {
    parseDate(text, { today: ANY_DAY, country: null })
    return { read: (today: CalendarDay): CalendarDay => parseDate(text, { today, country: null }) }
  }),
}
