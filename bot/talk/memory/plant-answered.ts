import { isDescriptor, plantSaid } from '../../../core/botanical/find/plant-said.ts'
import { saidText } from '../../../core/quantity/said/said-text.ts'
import { PIECES } from '../frames/plant-slots.ts'

const AMOUNT =
  /^(?:[\d.,/½⅓⅔¼¾⅛]+\s*)+(?:(?:g|gr|grams?|grammes?|grammi|kg|kilos?|oz|ounces?|lbs?|pounds?|ml|l|cups?|tsp|tbsp)\b)?/i

const LEAD = /^(?:(?:it['’]?s|it is|they['’]?re|they are|is|the|è|e'|sono|la|il)\s+)+/i
const BEHIND = /(?:\s+(?:ones?|kind|sort|type|please|only|just|then|solo|soltanto))+[.!]*$|[.!]+$/i
/** `The Ceylon one only, the thin soft bark`: what is said of it behind its name. */
const MORE = /\s*[,;(–—].*$/

const MEASURE_OF = /^.*\s(?:of|di)\s+/i

const NONE: ReadonlySet<string> = new Set()

/** What a name may be, all of it read; empty where it is no plant's. */
function idsOf(text: string): readonly string[] {
  const { tokens } = saidText(text)
  const found = plantSaid(tokens, 0, NONE)
  return found !== null && found.next === tokens.length ? found.ids : []
}

/** `Dried`, `fresh chilli`, `cassia`: the plant that was asked about, as much of it as there was, in pieces as it was. */
function formsOf(item: string, said: string): readonly string[] {
  const own = AMOUNT.exec(said)?.[0].trim()
  const amount = own ?? AMOUNT.exec(item)?.[0].trim() ?? ''
  const name = item.replace(AMOUNT, '').trim()
  // `30 g`: so much of what a measure stood before.
  if (own !== undefined && said.replace(AMOUNT, '').replace(BEHIND, '').trim() === '')
    return [`${own} ${name.replace(MEASURE_OF, '')}`.toLowerCase()]
  const form = said.replace(AMOUNT, '').replace(LEAD, '').replace(BEHIND, '').trim()
  const isDescribed = form !== '' && form.split(/\s+/).every((word) => isDescriptor(word.toLowerCase()))
  const piece = name.split(/\s+/).at(-1) ?? ''
  const whole = `${form} ${name}`
  // A piece is only counted: `a cassia stick` without its number is no name.
  const inPieces = own === undefined && amount !== '' && PIECES.test(piece) ? [`${form} ${piece}`] : []
  const named = isOneOf(form, name) ? [...inPieces, form] : isDescribed || isOneOf(whole, name) ? [whole] : []
  return named.map((plant) => `${amount} ${plant}`.trim().toLowerCase())
}

/** Whether a name is of what was asked about: lemons answer nothing that is asked of cinnamon. */
function isOneOf(text: string, name: string): boolean {
  const [ids, asked] = [idsOf(text), idsOf(name)]
  return ids.length > 0 && (asked.length === 0 || ids.some((id) => asked.includes(id)))
}

/**
 * The plants of a call with what was asked of one of them answered, all others kept; null where the answer is of none. Which one was
 * asked about is known by its not being read alone.
 */
export function plantAnswered(of: string, said: readonly string[], isRead: (text: string) => boolean): string | null {
  const items = of.split(/\s*\+\s*/)
  const answers = [...said, ...said.map((text) => text.replace(MORE, '')).filter((text) => !said.includes(text))]
  for (const [at, item] of items.entries()) {
    const found = isRead(item) ? undefined : answers.flatMap((text) => formsOf(item, text)).find(isRead)
    if (found !== undefined) return items.with(at, found).join(' + ')
  }
  return items.length > 1 ? null : (said.find(isRead) ?? null)
}
