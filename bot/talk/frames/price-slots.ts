import { MONEY } from '../../../core/cost/money.ts'
import { parsePrices, writePriceTyped } from '../../../core/cost/read-price.ts'
import { DomainError } from '../../../core/domain-error.ts'
import type { Bit } from '../bits/bit.ts'
import type { Fill } from './plant-slots.ts'

/** What stands before the things: `what's a bottle costing me if`, `I paid`. */
const BEFORE =
  /^.*?\b(?:if|with|when|se|con)\s+(?=.*\d)|^(?:so\s+|well\s+|ok\s+|and\s+)*(?:(?:i|we)\s+(?:paid|pay|bought|got)|(?:ho|abbiamo)\s+(?:pagato|comprato|preso))\s+/iu

/** `4 euro a kilo for the lemons`: the price first. */
const TURNED = new RegExp(
  String.raw`^(?<price>${MONEY}\s*(?:\/|(?:per|a|an|al|alla|each)\b)?\s*[\p{L}]*)\s+(?:for|per)\s+(?:the\s+|i\s+|le\s+|il\s+|lo\s+)?(?<of>\p{L}.*)$`,
  'u',
)

const SOLD = /\d.*(?:\/|\b(?:per|an?|al|alla|each|apiece|l['’]un[oa]|for)\b)|\p{Sc}\s*\d|\d\s*\p{Sc}/iu

const JOINT = /\s*[+;]\s*|,\s+(?=\p{L})|\s+(?:and|e|ed)\s+(?=(?:the\s+)?\p{L}[^,]*\d)/u

const turned = (item: string): string => {
  const found = TURNED.exec(item)?.groups
  return found === undefined ? item : `${found.of} ${found.price}`
}

/** Of a drink that is sold by the bottle, where its size is not said. As everywhere a bottle of spirit is named. */
const USUAL_BOTTLE = '700 ml'

const BY_BOTTLE = new RegExp(
  String.raw`^(?<of>\p{L}.*?\s${MONEY})\s*(?:\/|(?:per|for|a|al|alla|each|la|una)\b)\s*(?<size>\d[\d.,]*\s*(?:ml|cl|l)\s+)?(?:bottle|bottiglia)$`,
  'iu',
)
const BOTTLE_OF = /^(?:an?|one|una?)\s+(?:bottle|bottiglia)\s+(?:of|di)\s+(?<of>\p{L}.*?)\s+(?<price>\S*\d.*)$/iu

/** `vodka 15 a bottle`, `a bottle of gin 18`: so much of it; what is no spirit is left as it was. */
function byBottle(item: string): string {
  const { of, size } = BY_BOTTLE.exec(item)?.groups ?? {}
  const named = BOTTLE_OF.exec(item)?.groups
  if (of === undefined && named === undefined) return item
  const text = of === undefined ? `${named!.of} ${named!.price}` : of
  return `${text.trim()}/${size?.trim() ?? USUAL_BOTTLE}`
}

/** A price as `prices:` takes it; null where it is none. What lacks only for how much it is stays as it was said, to be asked. */
function priceIn(item: string): string | null {
  try {
    return parsePrices(item).map(writePriceTyped).join(' + ')
  } catch (error) {
    if (!(error instanceof DomainError)) throw error
    return error.problem === 'price_per_what' ? item : null
  }
}

/** What is said that things cost, each with its price; what has no number is no price. */
export const prices: Fill = ({ typed, bits, has }) => {
  if (!has('costs') && !SOLD.test(typed.text)) return null
  const items = typed.text
    .replace(BEFORE, '')
    .replace(/[.?!\s]+$/u, '')
    .split(JOINT)
    .filter((item) => /\d/.test(item))
    .map((item) => byBottle(turned(item.trim())))
  const texts = items.map(priceIn)
  if (texts.length === 0 || texts.some((text) => text === null)) return null
  return { text: texts.join(' + '), bits: bits.filter(isPriced) }
}

const isPriced = ({ kind }: Bit): boolean => kind !== 'jar' && kind !== 'date'
