import type { Sentence } from '../bits/bit.ts'
import { withoutMarks } from '../lexicon/plain-text.ts'

/** `How do I measure the strength at home`, and how a hand in a hurry writes it. */
const HOW =
  /\b(?:how (?:do|can|could|would|should|to|does)|what (?:do|can) (?:i|we|you) (?:use|need)|is there (?:a|any) way|any way|come (?:faccio|posso|si fa|fare|misur\p{L}*)|con cosa)\b/u
const FOUND_OUT =
  /\b(?:mea?su?r\p{L}*|mesure|test|check|find out|work out|know|tell|figure out|misur\p{L}*|saper\p{L}*|capi\p{L}*|scopr\p{L}*)\b/u
const HOW_STRONG =
  /\b(?:how (?:strong|alcoholic|boozy)|stren(?:gth|ght|gh|th|ht|ghth)|abv|proof|alcohol(?:ic)? (?:content|level|percentage)|alcohol (?:at home|by volume)|(?:the )?(?:alcohol|percentage)(?: in (?:it|this|mine))?|quanto (?:e forte|alcol)|gradazione|gradi|grado alcolico)\b/u

/** `Do I have to sweeten it`, `devo per forza zuccherarlo`. */
const MUST =
  /\b(?:do|must|should|does|need|have|gotta|got|obliged|necessary|required|devo|dobbiamo|bisogna|serve|occorre|obbligatorio|necessario)\b/u
const SWEETENING =
  /\b(?:sweet[ea]n(?: (?:it|them|this|that|mine))?|(?:add|put|use|need|have) (?:\p{L}+ )?(?:any )?sugar(?: in(?: it)?)?(?: at all)?|zuccherar\p{L}*|addolcir\p{L}*|(?:mettere|mettercelo|aggiungere) (?:per forza )?(?:lo )?zucchero)(?: (?:at all|it|per forza))* ?$/u
const WHETHER =
  /^ ?(?:so |and |but |ok |e |ma )?(?:do (?:i|we|you)|must (?:i|we|you|it)|does it|have (?:i|we) (?:got )?to|is it (?:necessary|required|obligatory)|need (?:i|we)|devo|dobbiamo|bisogna|serve|occorre|e (?:obbligatorio|necessario)|si deve)\b/u

const SPENT =
  '(?:left ?overs?|strained|spent|boozy|drained|drunken|soaked|avanzat[aeio]|scolat[aeio]|ubriac[ah]e?|ubriache)'

/** `Can I make jam from the fruit`: what is made of what was strained off. */
const DISH = '(?:jam|jelly|marmalade|chutney|compote|marmellata|confettura|composta)'
const OF_FRUIT = new RegExp(
  `\\b${DISH}\\b.{0,30}\\b(?:from|with|out of|of|using|con|dalla|dalle|della|delle) (?:(?:the|that|those|this|my|all|la|le|quella|quelle) )+(?:frui?ts?|peels?|leftovers?|frutta|bucce|scorze)\\b` +
    `|\\b${DISH}\\b.{0,30}\\b${SPENT}\\b|\\b${SPENT}\\b.{0,40}\\b${DISH}\\b`,
  'u',
)

/** Whether jam is asked about of fruit that stood in spirit; of other fruit nothing is told here. */
export const isOfSpentFruit = (text: string): boolean =>
  OF_FRUIT.test(withoutMarks(text).replace(/[^\p{L}\d-]+/gu, ' '))

/** The entry of what is asked about at the stove: how strong it is, whether sugar has to go in; null of another matter. */
export function kitchenAsked(text: string, { has }: Sentence): string | null {
  if (WHETHER.test(text) && MUST.test(text) && SWEETENING.test(text) && !has('sweetened')) return 'sweeteners'
  if (HOW.test(text) && FOUND_OUT.test(text) && HOW_STRONG.test(text) && !has('own_jar', 'opened'))
    return 'no_hydrometer'
  return null
}
