import { keyOf } from '../names/name-index.ts'
import type { RefusalId } from '../refused.ts'
import { phrases } from '../spirit/phrases.ts'
import { named } from './near-refused.ts'
import { withoutSpindles } from './spindle-read.ts'

/** Kinds that are spoken of in many ways that are no wish to drink them: an option that takes them refuses them. */
export const TALKED_OF: ReadonlySet<RefusalId> = new Set([
  'dairy_egg',
  'plant_milk',
  'medicines',
  'florist_flowers',
  'unnamed_plant',
  'chemicals',
  'animals',
  'cracked_stones',
  'poisonous_raw',
  'wild_carrot_family',
  'foraged',
])

export const byName: ReadonlyMap<string, (typeof named)[number]> = new Map(
  named
    .filter(({ refused }) => !TALKED_OF.has(refused.id))
    .toReversed()
    .map((each) => [keyOf(each.words), each]),
)

/** Kinds of those that are no talk where something is done with them: `crush some sleeping pills into it`. */
export const DONE_WITH: ReadonlySet<RefusalId> = new Set([
  'medicines',
  'chemicals',
  'poisonous_raw',
  'wild_carrot_family',
  'florist_flowers',
])

export const doneWith: ReadonlyMap<string, (typeof named)[number]> = new Map(
  named
    .filter(({ refused }) => DONE_WITH.has(refused.id))
    .toReversed()
    .map((each) => [keyOf(each.words), each]),
)

/** What a smell or a taste is like is not in the jar: up to the next stop, or named before it. */
const LIKENESS =
  /\b(?:like|reminds? me of|(?:smell(?:s|ed|ing)?|smelt|stinks?|stank|stinking|reek(?:s|ed|ing)?|whiff|odou?r) of|taste(?:s|d)? of|(?:sa|sapeva|odore|odora|odorava|puzza(?:no|va(?:no)?)?|gusto|sapore|profuma) (?:di|d)|come)\b[^.;!?,\n]*|\b(?:an?|the|that|this|strong|faint|slight|bad|odd|funny|weird)\s+(?:\p{L}+\s+){1,3}(?=(?:smell|odou?r|stink|whiff|reek)\b)/giu

/**
 * What only sounds like a plant: `'tis the season`, `'tis ten lemons` (Polish yew), `tasso alcolico` (yew, and a rate), `mettere a bagno` (marsh tea,
 * and soaking).
 */
const IT_IS =
  /\btis(?=\s+(?:the|an?|my|our|your|his|her|their|not|no|nearly|almost|only|just|but|now|still|so|very|too|truly|quite|time|true|done|better|best|i|we|said|here|that|this)\b)|(?<=^|[^\p{L}])['’]tis(?=\s+(?!berr|lea[fv]|needle|twig|bark)\p{L})|(?<=^\s*)tis(?=\s+\d)|\btasso(?=\s+(?:alcol\w*|zuccherino|di\s+(?:zuccher\w+|alcol\w*))\b)|\b(?:a\s+)?bagno(?=\s+(?:maria|le|la|il|i|gli|in|nel|nell|per)\b|maria|[.,?!]|$)/giu

const GIVEN_NAMES = 'rue|ivy|holly|daphne|tansy|lily|yew|laurel|hyacinth|edera|dafne|narciso|giacinto|ginestra|oleandra'
const PARTS = 'berr|lea[fv]|flower|root|twig|seed|bush|stem|bark|petal|hedge|in(?!\\w)|bacc|fogli|fior|radic'

/** Somebody who is called as a plant is: `for aunt Ivy`, `Holly asked for raspberries`. */
const NAMESAKES = new RegExp(
  `\\b(?:for|dear|aunt|auntie|uncle|cousin|friend|sister|mrs|ms|miss|mr|zia|zio|nonna|nonno|amica|amico|cugina|signora|per)\\s+(?:(?:my|aunt|la|il)\\s+)?(?:${GIVEN_NAMES})\\b(?!\\s+(?:${PARTS}))(?:\\s+and\\s+(?:${GIVEN_NAMES})\\b(?!\\s+(?:${PARTS})))?|` +
    `\\b(?:${GIVEN_NAMES})(?=\\s+(?:wants?|asked|asks|said|says|loves?|likes?|gave|brought|will have|is coming|vuole|vorrebbe|ha chiesto|dice)\\b|['’]s\\s+(?:recipe|jar|birthday|bottle|party)\\b)`,
  'giu',
)

/** Somebody who was warned, or it, says so: `not denatured`, `no methanol`. */
const DENIED = new Set(['no', 'not', 'non', 'never', 'without', 'senza', 'isnt', 'instead'])

export const DOING =
  /\b(?:dry ice|ghiaccio secco|lye water|in (?:the )?lye|put|puts|add|adding|added|and drink|e bere|sweetened|dolcificat[oa]|crush|drop|drops|mix|into|steep|infuse|capful|spoon|spoonful|teaspoon|pinch|sprayed|popped|threw|chucked|tossed|ripen|schiarirlo|cucchiaio|cucchiaino|metto|mettere|messo|aggiungo|aggiunt[oaie]|versat[oaie]|nel (?:vaso|barattolo)|goccia|gocce|in (?:the |some |my )?(?:vodka|gin|rum|brandy|whisk(?:y|ey)|grappa|tequila|alcohol|alcool|alcol|spirit|jar|it|liqueur|drink)|in (?:his|her|their|someones|somebodys|your) (?:drink|glass|cup|punch)|nel(?: \w+)? bicchiere|per schiarir\w*|in grappa|instead of|al posto d\w+)\b/

/** Kinds of those that are plants. */
export const OF_PLANTS: ReadonlySet<RefusalId> = new Set(['wild_carrot_family', 'florist_flowers'])

/** The same of plants alone: so much of one, or where it was picked. */
export const PICKING =
  /\b(?:\d+ ?(?:g|kg|ml|cl|l|grams?|grammi|litres?|litr[oi])|(?:picked|foraged|gathered|dug|raccolt[aeio]|colt[aeio]) |river ?banks?|riverside|lungo il fiume|hedgerows?)\b/

/** Rules of phrases whose words mean hardly anything else. */
export const RULES: ReadonlySet<RefusalId> = new Set([
  'elder_raw',
  'kernels',
  'stone_fruit_leaves',
  'elderberry',
  'wild_garlic',
  'mushrooms',
  'drugs',
  'garden_poisons',
])

/** Oils are made of plants that are named beside them; of oil alone a jar may have a ring. */
export const PLANT_OIL =
  /\b(?:essential oils?|oli[oi]? essenzial[ei]|\d+ drops? of \w+ oil|\w+ essential|\w+ oil (?:\w+ )?(?:drops?|ml)|\w+ oil \d+ (?:\w+ )?(?:drops?|ml)|drops? of (?:\w+ ){1,3}oil|gocc(?:e|ia) di olio|(?:chill?i|capsaicin|pepper|caffeine|cinnamon|nicotine|wormwood|nutmeg) (?:extracts?|oleoresins?|resins?|concentrates?)|estratto di (?:peperoncino|capsaicina|cannella|assenzio))\b/

/** Alcohol is named beside it: then words of shops and of use tell which. */
export const ALCOHOL = /^(?:alcohol|alcool|alcol|alcole|spirits?|spirito|ethanol|etanolo|stuff|booze)$/

/** Words of shops and use that mark alcohol as not for drinking; others of the table (`hot`, `dad`) may be said of much else. */
export const MARKS = phrases(
  'pink, blue, purple, hardware, hardware shop, hardware store, cleaning, cleaner, cleaners, pulizie, pulizia, lab, laboratory, ' +
    'pharmacy, medical, medicinal, chemist, chemists, farmacia, ferramenta, camping, stove, fireplace, camino, burner, lamp, industrial, industriale, technical, tecnico, ' +
    'hospital, hand gel, gel, perfume, perfumers, cosmetic, profumeria, profumi, per profumi, profumieri, paint, diy, garage, moonshine, neighbours still, home distilled, still, ' +
    'bathtub, unlabelled, no label, senza etichetta, homemade vodka, fuel, car, wash, windscreen, boiling, bollente',
)

/** What grows in a jar, and is of some colour: `pink slimy stuff round the lid`. */
export const COLOURED_GROWTH =
  /\b(?:pink|blue|purple) (?:\w+ ){0,2}?(?:slim(?:e|y|ey)|goo|gooey|gunk|scum|mou?ld\w*|fuzz\w*|furr?y|fluff\w*|film|stuff (?:is )?(?:growing|grew|floating|round the lid|around the lid|on the lid|under the lid))\b/

/** A spirit that no shop sold, and what comes off a still first and last. */
export const OF_NO_SHOP =
  /\b(?:vodka|grappa|everclear|whisk(?:y|ey)|rum|gin|brandy|acquavite|overproof|spirit)(?: (?!jars?|bottles?|vaso|barattolo|has|is|liqueur|liquore|with|and|con|e)\w+){0,4} (?:no label|without a label|unlabelled|senza etichetta|knock ?off|fatt[ao] in casa|casaling[ao]|di contrabbando|del contadino|(?:dal|del) vicino|(?:from )?(?:a|the) market stall)\b|\b(?:homemade|home made|knock ?off|fake|bootleg|unlabelled|contraband|counterfeit) (?:vodka|grappa|whisk(?:y|ey)|everclear|overproof)\b|\b(?:from|of|with|out of|dal|dalla|con la) (?:(?:the|an|a|that|some|old) )*(?:unlabelled|unlabeled|unmarked) (?:\w+ )?(?:bottle|jar|can|jug|demijohn)\b|\b(?:dalla|da una|con una|con la) bottiglia senza etichetta\b|\b(?:heads|tails|foreshots|teste?|code) (?:from|of|off|della|dalla) (?:(?:the|my|our) )?(?:still|run|distil\w+)\b/

/** What nobody drinks, and got into a jar: `some paint dripped in`. */
export const GOT_IN =
  /\b(?:paint|varnish|glue|engine oil|motor oil|lubricant|solder|vernice|pittura|colla|lubrificante) (?:has |have |had |just )?(?:dripped|fell|fallen|got|gotten|leaked|spilled|splashed|ran|run|went|dropped|ended up|gocciolat\w+|cadut\w+|finit\w+|colat\w+) (?:\w+ ){0,3}?(?:in|into|inside|dentro|nel|nella)\b|\b(?:gocciolat|cadut|finit|colat|versat)\w* (?:\w+ ){0,3}(?:vernice|pittura|colla|lubrificante) (?:dentro|nel|nella)\b/

/** Where alcohol is put, or stands, and no mark of it: `evaporate the alcohol on the stove`. */
export const WHERE_IT_STANDS =
  /\b(?:on|off|over|near|beside|by|at|from|next to) (?:(?:the|a|my|our|to|gas|hot|camping) )*(?:stove|burner|fireplace|lamp)$|\b(?:sul|sulla|vicino al|al) (?:\w+ )?(?:camino|fornello)$/

/** In a kitchen without being drunk: only beside alcohol they tell what it is. */
export const ABOUT_THE_HOUSE =
  /^(?:radiator|deters|detergent|bleach|candegg|varech|lejia|varnish|motor|coolant|wipes|gel$|ammonia|peroxide|hand$)/

/** What stands behind the name of a place. */
export const PLACE_WORDS =
  'cottage|house|lane|road|street|farm|hall|inn|arms|drive|avenue|close|court|lodge|school|terrace|villa|manor'

/** `A jar called Foxglove Cottage`, `lemons from Hemlock Farm`: a place, unless something that grows is named after it. */
const PLACES = new RegExp(
  `(?<!\\d\\s*)\\b(?:[\\p{L}’']+\\s+)(?=(?:${PLACE_WORDS})\\b(?!\\s+(?:garden|hedge|lea|flower|berr|root|plant|seed|gin|vodka|liqueur)))`,
  'giu',
)

/** What somebody smokes beside it goes into no jar. */
const SMOKED =
  /\b(?:smok(?:ed|ing)|had|having|lit|with)\s+(?:a|my)\s+(?:cigarette|cigar|fag|pipe)\b(?!\s+(?:butts?|ends?|ash|stubs?|tobacco|in(?:to)?\b))/giu

const blank = (found: string): string => ' '.repeat(found.length)

/** A sentence without what only sounds like, tastes of or is called as what is refused. */
export const withoutLikeness = (text: string): string =>
  [LIKENESS, IT_IS, SMOKED, NAMESAKES, PLACES].reduce(
    (told, likeness) => told.replace(likeness, blank),
    withoutSpindles(text),
  )

/** Whether the word is denied by one of the two before it. */
export const isDeniedAt = (words: readonly string[], at: number): boolean =>
  words.slice(Math.max(0, at - 2), at).some((word) => DENIED.has(word))

/** From so many letters on a name is looked for that was typed with a gap, or with a slip, among words of ordinary speech. */
export const TELLING_LETTERS = 7
