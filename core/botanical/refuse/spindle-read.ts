/** What stands behind the name of the shrub, and in front of what of it is taken. */
const OF_SHRUB = String.raw`(?![\s-]*(?:berr|trees?\b|fruits?\b|lea[fv]|twig|wood|bark|seed|root|branch|bush|hedge|flower|liqueur|gin\b|vodka|rum\b|brandy|\d+ ?(?:g|kg|grams?|oz|ounces?|lbs?|pounds?|handfuls?|sprigs?)\b))`
const TAKEN = String.raw`(?<!\b(?:g|kg|grams?|oz|ounces?|lbs?|pounds?|handfuls?|sprigs?|bunch(?:es)?|branch(?:es)?|some|wild|dried|fresh|red|pink|with|and|of|plus|add|adding|added|use|using|make|made|con|di) (?:of (?:the )?)?)`
const SPINDLE = String.raw`${TAKEN}\bspindles?\b${OF_SHRUB}`

const FIGURE = String.raw`(?:\d|(?:twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety)\b)`
const READS = `(?:says?|said|reads?|reading|shows?|showed|showing|gives?|gave|tells|told|measures?|measured|floats?|floating|sinks?|stands?|stood|sits?|sat|is at|was at|dice|segna|indica|legge)`
const OWN = '(?:the|my|our|a|an|his|her|this|that|il|lo|la|mio)'

/** It reads so much, so much is read on it, or something is measured with it. */
const READ = new RegExp(
  [
    String.raw`${SPINDLE}(?=[\s,:]+(?:now |only |still )?${READS}\b[^.;!?]{0,24}?${FIGURE})`,
    String.raw`${SPINDLE}(?=[\s:]+${FIGURE}[\d.,]* ?(?:%|percent|per cent|degrees|proof|°|gradi|abv|vol))`,
    String.raw`${SPINDLE}(?=,? \d\d(?:[.,]\d)?(?: ?[,.;!?]|$))`,
    String.raw`(?<=\b(?:alcohol|spirit|beer|wine|sugar|must|brewing|brewers?|hydrometer|proof|measuring|floating) )${SPINDLE}`,
    String.raw`(?<=\d ?(?:%|percent|degrees|proof)? (?:on|by|with|from|per) ${OWN} )${SPINDLE}`,
    String.raw`(?<=\b(?:measur|check|test|misurat|read)\p{L}* (?:\p{L}+ ){0,3}(?:with|on|by|using|con|off) ${OWN} )${SPINDLE}`,
  ].join('|'),
  'giu',
)

/** Words of a shrub, its fruit, and of doing something with it. */
const OF_HEDGE =
  /\b(?:spindle[\s-]*(?:berr|tree|fruit|lea|twig|wood)|hedges?|hedgerows?|berr(?:y|ies)|bush(?:es)?|shrubs?|trees?|garden|forag\p{L}*|pick(?:ed|ing)?|gather\p{L}*|grows?|growing|wild|poison\p{L}*|toxic|edible|eat|steep\p{L}*|infus\p{L}*|recipe|liqueur (?:of|with)|plant)\b/iu
/** A thing that somebody has, buys, breaks or puts into a liquid to read it. */
const TOOL = new RegExp(
  [
    String.raw`(?<=\b(?:a|my|your|our|which|what|another|new|cheap|good|broken) )${SPINDLE}(?=[^.;!]*\b(?:buy|bought|need|broke|broken|accurate|calibrat\p{L}*|trust|temperature|wash|clean|rinse|cost|reading|shop)\b)`,
    String.raw`(?<=\b(?:buy|need|broke|own|trust|read|use|calibrate|rinse|wash|dropped|lost|find|get|got|is|s) (?:a|my|your|our|the|another|one|new|that) )${SPINDLE}(?![^.;!?]*\b(?:in|into|with|on) (?:the |some |my |a )?(?:\p{L}+ of )?(?:vodka|gin|rum|brandy|whisk|grappa|alcohol|spirit))`,
    String.raw`${SPINDLE}(?=(?: \p{L}+){1,6},? (?:and|,)? ?it ${READS} ${FIGURE})`,
  ].join('|'),
  'giu',
)

const blank = (found: string): string => ' '.repeat(found.length)

/** A sentence without the spindle that floats in a liquid and is read, as brewers call a hydrometer; the shrub stays in it. */
export function withoutSpindles(text: string): string {
  if (!/spindle/i.test(text)) return text
  const read = text.replace(READ, blank)
  return OF_HEDGE.test(text) ? read : read.replace(TOOL, blank)
}
