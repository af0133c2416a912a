import { plantSaid } from '../../../core/botanical/find/plant-said.ts'
import { saidText } from '../../../core/quantity/said/said-text.ts'
import type { TalkReading } from '../frames/reading.ts'
import type { Remembered } from '../memory/remembered.ts'

const AMOUNT = /^[\d.,/½⅓⅔¼¾⅛]+\s*(?:(?:g|gr|grams?|grammi|kg|kilos?|oz|ounces?|lbs?|pounds?)\s+(?:of |di )?)?/i

const NONE: ReadonlySet<string> = new Set()

const nameOf = (item: string): string => item.trim().replace(AMOUNT, '')

/** What a name may be, all of it read; empty where it is no plant's. */
function idsOf(name: string): readonly string[] {
  const { tokens } = saidText(name)
  const found = plantSaid(tokens, 0, NONE)
  return found !== null && found.next === tokens.length ? found.ids : []
}

/** `24 walnuts` behind a plan of green ones: of two plants of that name the one that is in the plan, with its own amount. */
function itemInPlan(item: string, plan: readonly string[]): string {
  const ids = idsOf(nameOf(item))
  if (ids.length < 2) return item
  const own = plan.map(nameOf).filter((name) => {
    const [id, another] = idsOf(name)
    return id !== undefined && another === undefined && ids.includes(id)
  })
  return own.length === 1 ? `${AMOUNT.exec(item.trim())?.[0] ?? ''}${own[0]!}` : item
}

/** A plant whose name may mean two is the one of the plan that was worked out last, where that has one of them. */
export function asInPlan(reading: TalkReading, said: Remembered | undefined): TalkReading {
  const plan = said?.call?.command === 'plan' ? said.call.options.of : undefined
  if (plan === undefined || (reading.kind !== 'call' && reading.kind !== 'question')) return reading
  const { of } = reading.call.options
  if (of === undefined || of === plan) return reading
  const items = plan.split(' + ')
  const meant = of
    .split(' + ')
    .map((item) => itemInPlan(item, items))
    .join(' + ')
  return meant === of
    ? reading
    : { ...reading, call: { ...reading.call, options: { ...reading.call.options, of: meant } } }
}
