import { symptomsIn } from './find-symptom.ts'
import { HELD_FOR } from './held-for.ts'

const words = (...alternatives: readonly string[]): string => `(?:${alternatives.join('|')})`

/** What is in a jar and hurts nobody, where it was taken for something else. */
const HARMLESS = words(
  'pith|pectin|peels?|zest|skins?|pulp|flesh|fruit|seeds?|oils?|fat|wax|starch|sugar|crystals?|sediment|deposit|dregs',
  'bubbles?|air|light|glare|reflections?|condensation|haze|cloud|spices?|cinnamon|vanilla|label|lid|towel|cloth',
  'albedo|parte bianca|pectina|bucc[ei]a?|scorz[ae]|polpa|frutta|semi|oli[oi]|cera|zucchero|cristalli|sedimento|deposito',
  'aria|boll[ae]|bollicin[ae]|luce|riflesso|condensa|spezi[ae]|cannella|etichetta|coperchio',
)

const ONLY = words('only', 'just', 'merely', 'nothing but', 'solo', 'soltanto', 'semplice(?:mente)?')
/** What stands before its name. */
const SOME = `(?:(?:the|a|an|some|bits? of|a bit of|pieces? of|white|of|la|il|l['’]|un['’]?|una|del(?:la|l['’])?|dei|un po['’]? di|parte bianca|pezz\\p{L}+ di)\\s*)*`

/** Nothing went wrong, in as many words. */
const FALSE_ALARM = new RegExp(
  `(?<!\\p{L})${words(
    'false alarm',
    'falso allarme',
    'panic over',
    "(?:was|were|is|it[’']s|that[’']s|turned out(?: to be)?) (?:nothing|harmless)(?=\\s*(?:$|[,.;:!)]|after all|at all|in the end|bad|serious))",
    '(?:era|è|e|non era|non è) (?:niente|nulla)(?=\\s*(?:$|[,.;:!)]|di (?:che|grave)))',
  )}(?!\\p{L})`,
  'iu',
)

/** What it is instead, or that it is not what it was taken for. */
const TAKEN_FOR_IT = new RegExp(
  `(?<!\\p{L})${words(
    `${ONLY}\\s+${SOME}${HARMLESS}`,
    "(?:isn|wasn|weren)[’']?t(?: really)? (?:any )?(?:mou?ld|fur|glass|growth|ferment\\p{L}*|gas)",
    "(?:is|was|were|it[’']?s|that[’']?s) not(?: really)? (?:mou?ld|fur|glass|growth|ferment\\p{L}*|gas)",
    'non (?:è|era|erano|sono)(?: davvero)? (?:muffa|muffe|vetro|fermentazione|gas)',
  )}(?!\\p{L})`,
  'iu',
)

/** It is gone, or there again: what was there all the same. */
const GONE_OR_BACK =
  /(?<!\p{L})(?:still|again|any ?more|anymore|no longer|now|today|ancora|di nuovo|più|ormai|adesso|oggi|but|ma|però|however)(?!\p{L})/iu

/** What is said not to be it. */
const DENIED = /(?<!\p{L})(?:not|(?:is|was|were)n['’]?t|non (?:è|era|erano|sono))\s+(?:really |any |davvero )?\p{L}+/giu

const NAMED_HARMLESS = new RegExp(`(?<!\\p{L})${SOME}${HARMLESS}(?!\\p{L})`, 'iu')

/** Whether a text names what is in a jar and hurts nobody. */
export const namesHarmless = (text: string): boolean => NAMED_HARMLESS.test(text)

/**
 * Whether a text says that what a jar was told of was nothing: that it was a false alarm, or what harmless thing it was. That
 * it is gone says nothing of the kind.
 */
export function wasNothing(text: string): boolean {
  if (GONE_OR_BACK.test(text)) return false
  if (FALSE_ALARM.test(text)) return true
  return TAKEN_FOR_IT.test(text) && !symptomsIn(text.replace(DENIED, ' ')).some((each) => HELD_FOR.includes(each))
}
