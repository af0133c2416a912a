/** A number of an amount, not of a strength, a sweetness or the size of a bottle. */
const AMOUNT = /(?<![\d.,xX×]\s?)(?<![\d.,])(\d+(?:[.,]\d+)?)(?!\s*(?:%|°|proof|g\/[lL]|vol|[\d.,]))/g

/** No more digits than a kitchen has; three behind a point would be thousands. */
const rounded = (value: number): string => String(Number(value >= 100 ? value.toPrecision(4) : value.toPrecision(3)))

/** Pieces are whole, or halves of a few. */
const pieces = (value: number): string =>
  String(value >= 3 ? Math.round(value) : Math.max(0.5, Math.round(value * 2) / 2))

const UNIT =
  /^[\d.,\s]+(?:g|kg|mg|ml|cl|dl|l|lb|lbs|oz|st|cups?|pints?|litres?|liters?|litr[oi]|kilos?|chil[oi]|grams?|gramm[oi]|ounces?|pounds?|tbsp|tsp)\b/i

/** The amounts of an option's text, so many times as large; how strong and of which size stays. */
export function scaledText(option: string, text: string, factor: number): string {
  return text
    .split('+')
    .map((item) => {
      let isFirst = true
      return item.replace(AMOUNT, (number) => {
        // Of `3 x 500 ml` the first is how many.
        if (!isFirst) return number
        isFirst = false
        const value = Number(number.replace(',', '.')) * factor
        if (option === 'of' && !UNIT.test(item.trim())) return pieces(value)
        return option === 'bottles' ? String(Math.max(1, Math.round(value))) : rounded(value)
      })
    })
    .join('+')
}
