/** A bottle of the trade, which says nothing of a kitchen. */
const TRADE = /\b(?:375|750|1750) ?ml\b|\b1\.75 ?l\b/giu

/** Words of units that are typed in one kitchen only. */
const US_WORDS =
  /(?<![\p{L}-])(?:cups?|pints?|quarts?|qts?|gallons?|fifths?|handles?|fl\.? ?oz|oz|ounces?|lbs?|pounds?|proof)(?![\p{L}-])/iu
const METRIC_WORDS = /\d ?(?:ml|cl|dl|l|lit(?:re|er)s?|g|grams?|kg|kilos?)(?![\p{L}/])/iu

/** Of these no British kitchen has any; pounds, ounces and pints it has. */
const US_ONLY = /(?<![\p{L}-])(?:cups?|quarts?|qts?|fifths?|handles?|proof)(?![\p{L}-])|\$ ?\d/iu

/** Whether somebody speaks as in the United States: by words of theirs alone, else, of no metric amount, as they are `known` to. */
export const isSaidInUs = (text: string, known: boolean): boolean =>
  US_ONLY.test(text) || (known && unitsSaid(text) !== 'metric')

/** Whose units a text speaks of; null where it has none, or those of more than one. Imperial ones tell none. */
export function unitsSaid(text: string): 'us' | 'metric' | null {
  const isUs = US_WORDS.test(text) && !/\bimp(?:erial)? /i.test(text)
  const isMetric = METRIC_WORDS.test(text.replaceAll(TRADE, ''))
  return isUs === isMetric ? null : isUs ? 'us' : 'metric'
}
