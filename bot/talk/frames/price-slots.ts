import { BARE_SIZE, sizeNamed } from '../../../core/cost/bare-size.ts'
import { DOLLARS, MONEY } from '../../../core/cost/money.ts'
import { parsePrices, writePriceTyped } from '../../../core/cost/read-price.ts'
import { DomainError } from '../../../core/domain-error.ts'
import type { TypedText } from '../../../core/quantity/read/tokens.ts'
import { numberSaid } from '../../../core/quantity/said/number-said.ts'
import { US_SPIRIT_BOTTLE_ML } from '../../../core/quantity/us-bottles.ts'
import { STRONG } from '../../../core/shopping/parse-have.ts'
import type { Bit } from '../bits/bit.ts'
import type { Fill } from './plant-slots.ts'

/** What stands before the things: `what's a bottle costing me if`, `I paid`. */
const BEFORE =
  /^[^\d:]*:\s*(?=.*\d)|^[^\d:,]*\b(?:cost|costs|come to|spend|costa|costano|spendo|viene)\b[^\d:,]*[,?]\s*(?=.*\d)|^.*?\b(?:if|with|when|se|con)\s+(?=.*\d)|^(?:so\s+|well\s+|ok\s+|and\s+)*(?:(?:i|we)\s+(?:paid|pay|bought|got)|(?:ho|abbiamo)\s+(?:pagato|comprato|preso))\s+/iu

/** `4 euro a kilo for the lemons`: the price first. */
const TURNED = new RegExp(
  String.raw`^(?<price>${MONEY}\s*(?:\/|(?:per|a|an|al|alla|each)\b)?\s*[\p{L}]*)\s+(?:for|per)\s+(?:the\s+|i\s+|le\s+|il\s+|lo\s+)?(?<of>\p{L}.*)$`,
  'u',
)

const SOLD = /\d.*(?:\/|\b(?:per|an?|al|alla|each|apiece|l['’]un[oa]|for)\b)|\p{Sc}\s*\d|\d\s*\p{Sc}/iu

const JOINT = new RegExp(
  String.raw`\s*[+;]\s*|,\s+(?=\p{L}|\p{Sc}|${MONEY}\s*(?:\/|(?:a|an|per|al|alla|for)\b))|\s+(?:and|e|ed)\s+(?=(?:the\s+)?\p{L}[^,]*\d)`,
  'u',
)

/** Notes and coins by the names that they are known by. */
const COINS: ReadonlyMap<string, string> = new Map([
  ['fiver', '£5'],
  ['tenner', '£10'],
])

const CURRENCY = /^(?:quid|euros?|dollars?|bucks?|pence|p|cents?|centesim[io])$/

/** `A fiver a bottle`, `two euros a kilo`, `gin’s fifteen quid`: what is paid, in figures, and what it is said with. */
function inFigures({ text, tokens, wanted }: TypedText): string {
  let [said, from] = ['', 0]
  tokens.forEach((token, at) => {
    if (token.from < from) return
    const isArticle = /^(?:a|an|un|una|uno)$/.test(token.text)
    const coin = COINS.get(tokens[isArticle ? at + 1 : at]?.text ?? '')
    const number = isArticle ? { text: '1', next: at + 1 } : numberSaid({ text, tokens, wanted }, at, NONE)
    const isPaid = number !== null && CURRENCY.test(tokens[number.next]?.text ?? '')
    const [figures, next] =
      coin !== undefined ? [coin, isArticle ? at + 2 : at + 1] : [number?.text ?? '', number?.next]
    if ((coin === undefined && !isPaid) || next === undefined || /\d/.test(token.text)) return
    said += `${text.slice(from, token.from)}${figures}`
    from = tokens[next - 1]!.to
  })
  return `${said}${text.slice(from)}`
    .replace(/(?<=\p{L})['’]s\s+(?=\p{Sc}?\d)/gu, ' is ')
    .replace(/\b(?:went|(?:has |have )?gone|is|are) (?:up|down) to\b|\b(?:is|are|costs?) now\b/giu, 'is')
}

const NONE: ReadonlySet<string> = new Set()

/** `A litre of 95 at 20 euros`: so much for one of it. */
const ONE_OF = new RegExp(
  String.raw`^(?:an?|one|1|un|una|per|a)\s+(?<unit>litre|liter|litro|l|kilo|kg|chilo|bottle|bottiglia|pint)\s+(?:of|di)\s+(?:the\s+)?(?<of>[\p{L}\d][^,]*?)\s+(?:at|for|a|is|costs?)\s+(?<price>${MONEY})$`,
  'iu',
)

/** `10 lemons at 30p`: so much for each. */
const COUNTED_AT = new RegExp(String.raw`^\d{1,3}\s+(?<of>\p{L}[^,]*?)\s+(?:at|a)\s+(?<price>${MONEY})$`, 'iu')

/** `151 proof $30 a handle`, `the 95% is 20 a litre`: spirit, by how strong it is. */
const BY_STRENGTH =
  /^(?:the\s+|il\s+|lo\s+|l['’])?(?<strong>\d+(?:[.,]\d+)?)\s*(?:(?<unit>%|proof\b|gradi\b|°)(?=\s*(?:is\s|was\s|at\s|for\s|costs?\s|costa\s|costava\s)?\s*\p{Sc}?\s*\d)|(?=(?:is|was|at|for|costs?|costa|costava)\s+\p{Sc}?\d))/iu

const AND = /^(?:and|plus|with|also|e|ed|con|anche)\s+(?:with\s+|con\s+)?(?:the\s+)?/iu

/** No spirit is stronger, % vol: a greater number is US proof. */
const MOST_PERCENT = 100

function spiritPercent({ strong = '', unit }: Readonly<Record<string, string | undefined>>): string {
  const isProof = Number(strong.replace(',', '.')) > MOST_PERCENT
  return `${strong}${unit === undefined ? (isProof ? ' proof ' : '% ') : unit === '%' ? '%' : ` ${unit}`}`
}

function oneOf(item: string): string {
  const strong = BY_STRENGTH.exec(item)
  if (strong !== null) return `spirit ${spiritPercent(strong.groups!)}${item.slice(strong[0].length)}`
  const counted = COUNTED_AT.exec(item)?.groups
  if (counted !== undefined) return `${counted.of} ${counted.price} each`
  const found = ONE_OF.exec(item)?.groups
  if (found === undefined) return item
  const of = /^\d+(?:[.,]\d+)?%?$/.test(found.of!) ? `spirit ${found.of!.replace('%', '')}%` : found.of
  return `${of} ${found.price}/${found.unit}`
}

const turned = (item: string): string => {
  const found = TURNED.exec(item)?.groups
  return found === undefined ? item : `${found.of} ${found.price}`
}

const BY_BOTTLE = new RegExp(
  String.raw`^(?<of>\p{L}.*?\s${MONEY})\s*(?:\/|(?:per|for|a|al|alla|each|la|una)\b)\s*(?<size>\d[\d.,]*\s*(?:ml|cl|l)\s+)?(?:bottle|bottiglia)$`,
  'iu',
)
const BOTTLE_OF = /^(?:an?|one|una?)\s+(?:bottle|bottiglia)\s+(?:of|di)\s+(?<of>\p{L}.*?)\s+(?<price>\S*\d.*)$/iu

/** `vodka 15 a bottle`, `a bottle of gin 18`: so much of it; what is no spirit is left as it was. */
function byBottle(item: string, bottleMl: number): string {
  const { of, size } = BY_BOTTLE.exec(item)?.groups ?? {}
  const named = BOTTLE_OF.exec(item)?.groups
  if (of === undefined && named === undefined) return item
  const text = of === undefined ? `${named!.of} ${named!.price}` : of
  return `${text.trim()}/${size?.trim() ?? `${DOLLARS.test(item) ? US_SPIRIT_BOTTLE_ML : bottleMl} ml`}`
}

/** `$32 a 750`, `$20 a 1.75`: a bottle of spirit by its size alone, of ml or of litres. */
const BY_SIZE = new RegExp(
  String.raw`(?<price>${MONEY})\s*(?:\/|\b(?:per|for\s+an?|an?|each)\b)\s*(?<size>${BARE_SIZE.source})$`,
  'iu',
)

const bySize = (item: string): string =>
  STRONG.test(item) ? item.replace(BY_SIZE, (_, price: string, size: string) => `${price}/${sizeNamed(size)}`) : item

/** A price as `prices:` takes it; null where it is none. What lacks only for how much it is stays as it was said, to be asked. */
function priceIn(item: string): string | null {
  try {
    return parsePrices(item).map(writePriceTyped).join(' + ')
  } catch (error) {
    if (!(error instanceof DomainError)) throw error
    return error.problem === 'price_per_what' ? item : null
  }
}

/** `Damsons were free`, `lemons from my garden`, among what was paid for. */
const FREE_BEHIND =
  /(?<=\p{L})\s+(?:(?:were|was|is|are|came|cost|costs|erano|era|sono)\s+)?(?:all\s+)?(?:(?:for )?free|nothing|gratis|(?:from|out of) (?:my|our|the) (?:own )?(?:garden|allotment|orchard|trees?|hedge))$/iu

/** What is said that things cost, each with its price; what has no number is no price. */
export const prices: Fill = ({ typed, bits, has, spiritBottleMl }) => {
  if (!has('costs') && !SOLD.test(inFigures(typed))) return null
  const items = inFigures(typed)
    .replace(BEFORE, '')
    .replace(/[.?!\s]+$/u, '')
    .split(JOINT)
    .map((item) => item.replace(FREE_BEHIND, ' 0/kg'))
    .filter((item) => /\d/.test(item))
    .map((item) => bySize(byBottle(oneOf(turned(item.trim().replace(AND, ''))), spiritBottleMl)))
  const texts = items.map(priceIn)
  if (texts.length === 0 || texts.some((text) => text === null)) return null
  const text = texts.join(' + ')
  const said = text.toLowerCase()
  return {
    text,
    bits: bits.filter((bit) => isPriced(bit) && (bit.kind !== 'plant' || said.includes(bit.text.toLowerCase()))),
  }
}

const isPriced = ({ kind }: Bit): boolean => kind !== 'jar' && kind !== 'date'
