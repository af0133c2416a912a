import { NUMBER, numberOf, WHOLE_BEFORE, writtenLike } from './typed-number.ts'

/** A number of an amount, not of a strength, a sweetness or the size of a bottle. */
const AMOUNT = new RegExp(
  String.raw`(?<![xX×]\s?)${WHOLE_BEFORE}(?<number>${NUMBER})(?!\s*(?:%|°|proof|g\/[lL]|vol|[\d.,/⁄]))`,
  'g',
)

/** Pieces are whole, or halves of a few. */
const pieces = (value: number): string =>
  String(value >= 3 ? Math.round(value) : Math.max(0.5, Math.round(value * 2) / 2))

const UNITS = String.raw`(?:g|kg|mg|ml|cl|dl|l|lbs?|oz|fl\.? ?oz|st|cups?|pints?|pts?|quarts?|qts?|gallons?|gals?|fifths?|handles?|litres?|liters?|litr[oi]|kilos?|chil[oi]|grams?|gramm[oi]|ounces?|pounds?|tbsp|tsp|tablespoons?|teaspoons?)(?!\p{L})`

const UNIT = new RegExp(String.raw`^${NUMBER}\s*${UNITS}`, 'iu')

const UNIT_BEHIND = new RegExp(String.raw`^\s*(${UNITS})`, 'iu')

const unitAt = (behind: string): string => UNIT_BEHIND.exec(behind)?.[1] ?? ''

/** Between a measure and the smaller one that goes on from it: `1 lb 4 oz`, `2 cups and 1 tbsp`. */
const GOES_ON = new RegExp(String.raw`^\s*${UNITS}\.?(?:\s*,|\s+and|\s+e)?\s*$`, 'iu')
const SMALLER =
  /^\s*(?:oz|ounces?|g|grams?|gramm[oi]|ml|tbsp|tsp|tablespoons?|teaspoons?|cups?|pints?|fl\.? ?oz)(?!\p{L})/iu

/** The amounts of an option's text, so many times as large; how strong and of which size stays. */
export function scaledText(option: string, text: string, factor: number): string {
  return text
    .split('+')
    .map((item) => {
      let end: number | null = null
      return item.replace(AMOUNT, (typed: string, ...rest: readonly unknown[]) => {
        const at = rest.find((each) => typeof each === 'number') ?? 0
        // Of `3 x 500 ml` the first is how many.
        const goesOn = end !== null && GOES_ON.test(item.slice(end, at)) && SMALLER.test(item.slice(at + typed.length))
        if (end !== null && !goesOn) return typed
        end = at + typed.length
        const value = (numberOf(typed) ?? 0) * factor
        if (option === 'of' && !UNIT.test(item.slice(at))) return pieces(value)
        return option === 'bottles'
          ? String(Math.max(1, Math.round(value)))
          : writtenLike(value, typed, unitAt(item.slice(at + typed.length)))
      })
    })
    .join('+')
}

const LEADING = new RegExp(
  String.raw`^(?:${NUMBER}|an?(?=\s))\s*(?:${UNITS}\.?(?:(?:\s*,|\s+and|\s+e)?\s*${NUMBER}\s*${UNITS}\.?)*)?`,
  'iu',
)

/** `1 lb 4 oz` of `1 lb 4 oz sloes`, `10` of `10 lemons`; undefined where no amount is typed. */
export const amountBefore = (item: string): string | undefined => LEADING.exec(item)?.[0].trim()

/** `sloes` of `1 lb 4 oz of sloes`. */
export const nameBehind = (item: string): string =>
  item
    .replace(LEADING, '')
    .replace(/^\s*of\s/i, '')
    .trim()
