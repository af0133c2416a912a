const GLUG =
  "(?:(?:good|big|small|little|wee|tiny|generous|large|fair|decent|quick|nice|bel|bella|buon|buona|piccolo) )*(?:glugs?|splash(?:es)?|dash(?:es)?|drizzles?|dollops?|drops?|slugs?|squeezes?|squirts?|sloshe?s?|trickles?|swigs?|lugs?|bit|little|goccio|goccia|filo|spruzzo|schizzo|po[’']?)"
const MAYBE =
  "(?:(?:maybe|perhaps|about|around|roughly|say|call it|so|probably|i think|i guess|i d say|i[’']d say|approximately|circa|forse|diciamo|sarà|saranno|un|some) )*"
const AMOUNT =
  '(?<amount>(?:\\d+(?:[.,/]\\d+)?|half an?|an?) ?(?:ml|cl|dl|l|g|grams?|oz|fl ?oz|tablespoons?|tbsps?|teaspoons?|tsps?|spoons?|cucchiai(?:o|ni|no)?|cups?|shots?)(?: or so)?)'
const WHAT = '(?<what>(?:(?!and|then|maybe|about|with|on|into|to|in)\\p{L}+ ){0,2}\\p{L}+)'

/** `A glug of maple syrup, maybe 50 ml`. */
const BEHIND = new RegExp(
  `(?<![\\p{L}\\d])(?:an?|one|some|another|un|una) ${GLUG} (?:of|di|d[’'])\\s?${WHAT}\\s*[,;(–—-]\\s*${MAYBE}${AMOUNT}\\)?(?![\\p{L}\\d])`,
  'giu',
)
/** `A glug, maybe 50 ml, of maple syrup`, `a glug (50 ml) of honey`. */
const BETWEEN = new RegExp(
  `(?<![\\p{L}\\d])(?:an?|one|some|another|un|una) ${GLUG}\\s*[,;(–—-]\\s*${MAYBE}${AMOUNT}\\s*[,;)–—-]*\\s*(?:of|di|d[’'])\\s?${WHAT}(?![\\p{L}\\d])`,
  'giu',
)

const SWEET =
  "(?<what>(?:maple|golden|agave|date|corn|sugar|runny|set|clear|wild ?flower|acacia) (?:syrup|nectar|honey)|honey|syrup|treacle|molasses|sciroppo(?: d[’'] ?(?:acero|agave))?|miele)"

/** `Added 50 ml, maple syrup`, `I added maybe 50 ml, it was golden syrup`. */
const NAMED_LATER = new RegExp(
  `(?<![\\p{L}\\d])${MAYBE}${AMOUNT}\\s*[,;(–—-]\\s*(?:(?:it|that) (?:was|s|is) |of |it[’']s |era )?(?:some |the )?${SWEET}\\)?(?=[\\s.!]*$)`,
  'giu',
)

/** A text in which a glug that is told in ml, too, stands by its amount: `50 ml of maple syrup`. */
export const glugsMeasured = (text: string): string =>
  [BEHIND, BETWEEN, NAMED_LATER].reduce((all, each) => all.replace(each, '$<amount> of $<what>'), text)
