import type { DrinkSaid } from '../../talk/memory/remembered.ts'
import type { CallOutcome } from '../run/call-outcome.ts'
import type { HelpPage } from '../run/help-page.ts'

/** What works out a drink. */
export const DRINKS = /^(?:plan|again|syrup|adjust|mix|dilute|blend)$/

/** What a drink comes to that was worked out, or for which the syrup was: a jar that was strained is as it was planned. */
export function drinkIn({ path, ...outcome }: CallOutcome | HelpPage): DrinkSaid | null {
  if (!('reply' in outcome) || path === null) return null
  const { data } = outcome.reply
  const found = DRINKS.test(path) ? data : path === 'jar strain' ? data.syrup : null
  if (typeof found !== 'object' || found === null) return null
  const { abvPercent, sugarGPerL, sugarG, jarMl, volumeMl } = found as Readonly<Record<string, unknown>>
  return typeof abvPercent === 'number' && typeof sugarGPerL === 'number'
    ? {
        abvPercent,
        sugarGPerL,
        sugarG: numberOrNull(sugarG),
        jarMl: numberOrNull(jarMl),
        volumeMl: numberOrNull(volumeMl),
      }
    : null
}

const numberOrNull = (value: unknown): number | null => (typeof value === 'number' ? value : null)
