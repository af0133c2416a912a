import type { TalkReading } from '../frames/reading.ts'

const MONEY = '(?:euros?|eur|quid|pounds?|dollars?|bucks|pence|cents?|centesimi|p|€|£|\\$)'
/** What is paid, and for how much: `at 3 euros each`, `for 14`, `a 2 euro al chilo`. */
const PAID = new RegExp(
  `[\\s,:(–—-]+(?:(?:at|for|cost(?:s|ing)?|is|are|a|da|per|@) )?(?:only |about |just )?(?:[€£$]\\s?\\d+(?:[.,]\\d+)?|(?<=(?:at|for|costs?|costing|is|are|a|da|per|@) (?:only |about |just )?)\\d+(?:[.,]\\d+)?|\\d+(?:[.,]\\d+)?(?=\\s?${MONEY}))(?:\\s?${MONEY}(?!\\p{L}))?(?: ?(?:each|apiece|all together|in all|altogether|the lot|in tutto|l['’]un[oa]|ciascun[oa]))*(?:(?: (?:per|an?|al|alla|each) |\\s?/\\s?)(?:kg|kilo|chilo|lit(?:re|er)|litro|l|bottle|bottiglia|lb|pound))?(?=$|[\\s,.;)])\\)?`,
  'giu',
)
const AMOUNT = /\d/

/**
 * Amounts of a batch with what they cost, `10 lemons at 3 euros, a litre of 95% for 14`, where only the prices were read: the batch by
 * itself, and what it costs with them. Null where no whole plan is read of the rest.
 */
export function pricedBatch(
  text: string,
  whole: TalkReading,
  read: (text: string) => TalkReading,
): readonly [batch: string, cost: string] | null {
  if (whole.kind !== 'call' || whole.call.command !== 'cost' || text.includes('?')) return null
  const { prices, ...others } = whole.call.options
  if (prices === undefined || Object.keys(others).length > 0) return null
  const batch = text.replace(PAID, '')
  const reading = batch === text ? null : read(batch)
  if (reading?.kind !== 'call' || reading.call.command !== 'plan' || reading.leftOut.length > 0) return null
  const { of = '', spirit = '' } = reading.call.options
  return AMOUNT.test(of) && AMOUNT.test(spirit) ? [batch, `what does it cost with ${prices}`] : null
}
