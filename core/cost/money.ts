/** A currency as it was typed: `€` before, `euro` after, or nothing. */
export interface Currency {
  readonly text: string
  readonly isBefore: boolean
  readonly isSpaced: boolean
  /** A decimal comma was typed. */
  readonly isComma: boolean
}

/** An amount as typed, exactly: `units` of 10^−`decimals`. */
export interface TypedMoney {
  readonly units: number
  readonly decimals: number
  readonly currency: Currency
}

/** Whole hundredths of the currency, or whole units of one that has none. */
export interface Money {
  readonly minor: number
  readonly currency: Currency
}

/** Money of the United States, or of others who call theirs so. */
export const DOLLARS = /\$|\b(?:usd|dollars?|bucks?)\b/iu

/** Names of one currency; what stands alone is itself. */
const SAME: readonly (readonly string[])[] = [
  ['€', 'eur', 'euro', 'euros'],
  ['£', 'gbp', 'pound', 'pounds', 'quid'],
  ['$', 'dollar', 'dollars', 'buck', 'bucks'],
  ['¥', 'jpy', 'yen'],
  ['zł', 'zl', 'pln'],
]

const plain = (text: string): string => text.trim().replace(/\.$/, '').toLowerCase()

/** What tells a currency from another; empty where none was said. */
export const currencyKey = ({ text }: Currency): string =>
  SAME.find((names) => names.includes(plain(text)))?.[0] ?? plain(text)

const NO_HUNDREDTHS: ReadonlySet<string> = new Set(['¥', '₩', '₫'])

/** Decimals of a currency by ISO 4217, as `Intl` knows them; 2 where it is written by its sign or not at all. */
export function minorDigits(currency: Currency): number {
  const key = currencyKey(currency)
  if (NO_HUNDREDTHS.has(key)) return 0
  if (!/^[a-z]{3}$/.test(key)) return 2
  const { maximumFractionDigits = 2 } = new Intl.NumberFormat('en', {
    style: 'currency',
    currency: key.toUpperCase(),
  }).resolvedOptions()
  return maximumFractionDigits
}

/** Hundredths by their own names: `30 cents`, `80p`. */
const HUNDREDTHS: ReadonlyMap<string, string> = new Map([
  ['p', '£'],
  ['pence', '£'],
  ['c', ''],
  ['ct', ''],
  ['cent', ''],
  ['cents', ''],
  ['centesimi', ''],
  ['centesimo', ''],
])

const SIGN = String.raw`\p{Sc}|[A-Z]{3}(?!\p{L})|(?:[Ee]uros?|[Pp]ounds?|[Qq]uid|[Dd]ollars?|[Bb]ucks?|[Yy]en|[Cc]ents?|[Pp]ence|[Cc]entesim[io]|[Kk]r\.?|zł|[Zz]l|Kč|Fr\.?|ct|p|c)(?!\p{L})`

/** A number with at most two decimals, and a currency before or behind it; the pattern of it, for what reads more around it. */
export const MONEY = String.raw`(?:(?:${SIGN})\s*)?\d{1,9}(?:[.,]\d{1,2})?(?![\d.,]*\d)(?:\s*(?:${SIGN}))?`

const READ = new RegExp(
  String.raw`^(?<before>${SIGN})?(?<gapBefore>\s*)(?<whole>\d{1,9})(?:(?<point>[.,])(?<part>\d{1,2}))?(?<gapAfter>\s*)(?<after>${SIGN})?$`,
  'u',
)

/** `€4.50`, `4,50 €`, `4 euro`, `30 cents`, `4`; null where it is none, or has two currencies. */
export function readMoney(text: string): TypedMoney | null {
  const found = READ.exec(text.trim())?.groups
  if (found === undefined) return null
  const { before, whole = '', point, part = '', gapBefore, gapAfter, after } = found
  if (before !== undefined && after !== undefined) return null
  const named = before ?? after ?? ''
  const hundredths = HUNDREDTHS.get(plain(named))
  const currency = {
    text: hundredths ?? named,
    isBefore: before !== undefined || hundredths === '£',
    isSpaced: hundredths === undefined && (before === undefined ? gapAfter : gapBefore) !== '',
    isComma: point === ',',
  }
  const units = Number(whole + part)
  return { units, decimals: part.length + (hundredths === undefined ? 0 : 2), currency }
}

/** Thousandths of a gram, a millilitre or a piece: finer than anything is weighed. */
const inThousandths = (amount: number): bigint => BigInt(Math.round(amount * 1000))

const tenTo = (digits: number): bigint => 10n ** BigInt(digits)

/** Of a fraction the nearest whole number, halves up; neither is negative. */
const nearest = (over: bigint, under: bigint): number => Number((2n * over + under) / (2n * under))

/**
 * What an amount costs at a price for another amount of the same unit, rounded once, to the currency's smallest part.
 *
 * @param amount - 0 to 1e12, in the unit of `per`
 */
export function costOf(price: TypedMoney, amount: number, per: number): Money {
  const { units, decimals, currency } = price
  const digits = minorDigits(currency)
  const minor = nearest(BigInt(units) * tenTo(digits) * inThousandths(amount), tenTo(decimals) * inThousandths(per))
  return { minor, currency }
}

/** A share of a sum, rounded likewise. */
export const shareOf = ({ minor, currency }: Money, part: number, whole: number): Money => ({
  minor: nearest(BigInt(minor) * inThousandths(part), inThousandths(whole)),
  currency,
})

/** Each currency by itself; what has none said counts to the one that there is, where there is one only. */
export function sumsOf(all: readonly Money[]): readonly Money[] {
  const named = [...new Set(all.map(({ currency }) => currencyKey(currency)).filter((key) => key !== ''))]
  const [only] = named.length === 1 ? named : []
  const keyOf = ({ currency }: Money): string => currencyKey(currency) || (only ?? '')
  return [...new Set(all.map(keyOf))].map((key) => {
    const same = all.filter((each) => keyOf(each) === key)
    const { currency } = same.find((each) => currencyKey(each.currency) === key) ?? same[0]!
    const digits = minorDigits(currency)
    const minor = same.reduce(
      (sum, each) => sum + each.minor * 10 ** Math.max(0, digits - minorDigits(each.currency)),
      0,
    )
    return { minor, currency }
  })
}

/** As its maker writes it: `€18.00`, `18,00 €`, `18.00`. */
export function moneyText({ minor, currency }: Money): string {
  const { text, isBefore, isSpaced, isComma } = currency
  const digits = minorDigits(currency)
  const padded = String(minor).padStart(digits + 1, '0')
  const [whole, part] = [padded.slice(0, padded.length - digits), padded.slice(padded.length - digits)]
  const number = digits === 0 ? whole : `${whole}${isComma ? ',' : '.'}${part}`
  const gap = isSpaced ? '\u00a0' : ''
  if (text === '') return number
  return isBefore ? `${text}${gap}${number}` : `${number}${gap}${text}`
}
