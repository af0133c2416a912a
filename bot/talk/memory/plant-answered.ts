import { isDescriptor, plantSaid } from '../../../core/botanical/find/plant-said.ts'
import { saidText } from '../../../core/quantity/said/said-text.ts'
import { PIECES } from '../frames/plant-slots.ts'

export const AMOUNT =
  /^(?:[\d.,/½⅓⅔¼¾⅛]+\s*)+(?:(?:g|gr|grams?|grammes?|grammi|kg|kilos?|oz|ounces?|lbs?|pounds?|ml|l|cups?|tsp|tbsp)\b)?/i

export const LEAD = /^(?:(?:it['’]?s|it is|they['’]?re|they are|is|the|è|e'|sono|la|il)\s+)+/i
export const BEHIND = /(?:\s+(?:ones?|kind|sort|type|please|only|just|then|solo|soltanto))+[.!]*$|[.!]+$/i
/** `The Ceylon one only, the thin soft bark`: what is said of it behind its name. */
const MORE = /\s*[,;(–—].*$/

const MEASURE_OF = /^.*\s(?:of|di)\s+/i

const NONE: ReadonlySet<string> = new Set()

/** What a name may be, all of it read; empty where it is no plant's. */
export function idsOf(text: string): readonly string[] {
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

/** Fewer words are the name itself. */
const LEAST_WORDS = 3
const MOST_WORDS = 14

/** Said of what it is not, or of two. */
const DENIED = /\b(?:not(?! sure)|isnt|isn['’]t|arent|aren['’]t|no|or|nor|neither|o|never|without|non|mica|nemmeno)\b/i

/** `Not cassia, the other`. */
const IS_NOT =
  /^\s*(?:no,? )?(?:it['’]?s |it is |they['’]?re |they are )?(?:not (?!sure)|neither )|^[^,;]*\b(?:isn['’]?t|aren['’]t|non [eè])\b|\b\p{L}+ or \p{L}+,/iu

/** What he who asks wants to know, rather than tells. */
const ASKED = /\?|^\s*(?:what|which|why|how|does|do|is|are|can|should|cosa|quale|perch[eé]|come)\b/i

/**
 * `The thin rolled one, ceylon I believe`: the plants of a call with the one name in it that answers what was asked of one of them; null
 * where none does, or names of two plants, or where it is asked or denied.
 */
export function plantNamedWithin(of: string, said: string, isRead: (text: string) => boolean): string | null {
  const words = said.match(/[\p{L}\d'’-]+/gu) ?? []
  if (words.length < LEAST_WORDS || words.length > MOST_WORDS || DENIED.test(said) || ASKED.test(said)) return null
  const items = of.split(/\s*\+\s*/)
  const open = items.findIndex((item) => !isRead(item))
  if (open === -1) return null
  const item = items[open]!
  const name = item.replace(AMOUNT, '').trim()
  // The shortest first: no small word beside it belongs to a name.
  const names = [1, 2, 3].flatMap((length) => words.map((_, at) => words.slice(at, at + length).join(' ')))
  const idsFor = (text: string): readonly string[] =>
    [text, `${text} ${name}`].filter((each) => isOneOf(each, name)).flatMap(idsOf)
  const found = names.filter((text) => idsFor(text).length > 0)
  const ids = new Set(found.flatMap(idsFor))
  const form = ids.size === 1 ? found.flatMap((text) => formsOf(item, text)).find(isRead) : undefined
  return form === undefined ? null : items.with(open, form).join(' + ')
}

/**
 * The plants of a call with what was asked of one of them answered, all others kept; null where the answer is of none. Which one was
 * asked about is known by its not being read alone.
 */
export function plantAnswered(of: string, said: readonly string[], isRead: (text: string) => boolean): string | null {
  const items = of.split(/\s*\+\s*/)
  if (said.some((text) => IS_NOT.test(text))) return null
  const answers = [...said, ...said.map((text) => text.replace(MORE, '')).filter((text) => !said.includes(text))]
  for (const [at, item] of items.entries()) {
    const found = isRead(item) ? undefined : answers.flatMap((text) => formsOf(item, text)).find(isRead)
    if (found !== undefined) return items.with(at, found).join(' + ')
  }
  return items.length > 1 ? null : (said.find(isRead) ?? null)
}
