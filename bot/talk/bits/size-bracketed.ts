const COUNT = '\\d{1,2}|an?|one|two|three|four|un[ao]?|due|tre'
const SIZE = '(?<size>\\d[\\d.,]* ?(?:ml|cl|dl|l|lt|litres?|liters?|litr[oi]|fl\\.? ?oz\\.?|oz))'
const EACH = '(?: (?:each|apiece|ciascuna|cadauna))?'
const BOTTLES = '(?<bottles>bottles?|bottigli[ae]|cans?|tins?|cartons?)'

/** `1 bottle (750 ml)`. */
const BEHIND = new RegExp(`(?<![\\p{L}\\d.,])(?<count>${COUNT}) ${BOTTLES} ?\\( ?${SIZE}${EACH} ?\\)`, 'giu')
/** `1 (750 ml) bottle`. */
const BEFORE = new RegExp(`(?<![\\p{L}\\d.,])(?<count>${COUNT}) ?\\( ?${SIZE}${EACH} ?\\) ?${BOTTLES}(?!\\p{L})`, 'giu')

/** A sentence (the lines of a recipe are read one by one) in which the size that stands in brackets beside a bottle stands before it: `1 750 ml bottle of vodka`, of which no bottle is wished. */
export const sizesBefore = (text: string): string =>
  text.includes('(') && !text.includes('\n')
    ? text.replace(BEHIND, '$<count> $<size> $<bottles>').replace(BEFORE, '$<count> $<size> $<bottles>')
    : text
