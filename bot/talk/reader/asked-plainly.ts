import type { Sentence } from '../bits/bit.ts'
import { withoutMarks } from '../lexicon/plain-text.ts'
import { isAsked } from './is-told.ts'
import { kitchenAsked } from './kitchen-asked.ts'
import { isOldFruit, isWithoutSugar } from './sugar-or-fruit-asked.ts'

/** Put or kept in the cold; `sloes from the freezer` are an ingredient. */
const INTO_COLD =
  /\b(?:(?:in|into|inside) (?:the |my |a )?freezer|freeze|freezing|nel (?:congelatore|freezer)|in (?:congelatore|freezer)|congel\p{L}*|surgel\p{L}*)\b/u

const DRINK =
  /\b(?:gin|vodka|rum|brandy|whisky|liqueurs?|limoncello|arancello|nocino|ratafia|cordial|liquor[ei]|grappa|finished|bottled)\b/

/** Fruit and peel that the spirit has been through, or that it is to go through once more. */
const PIECES =
  /\b(?:peels?|zests?|skins?|rinds?|fruits?|berries|sloes|damsons|plums|cherries|raspberries|stones|pods?|beans|leftovers?|left ?over|plants|bucc[eia]\p{L}*|scorz\p{L}*|frutt[aoi]|prugn[eoa]\p{L}*|ciliegie|prugnole)\b/u

const ONCE_MORE =
  /\b(?:second|another|2nd|third) (?:time|steep\p{L}*|go|round|run|infusion|batch|bath|jar|lot of spirit|soak)|\b(?:second[ao]|altra|terza) (?:volta|infusione|macerazione|giro)\b|\b(?:re-?use|re-?steep|use|steep|infuse|macerate|soak|riusar\p{L}*|riutilizzar\p{L}*|rimetter\p{L}*)\b.{0,40}\b(?:again|twice|once more|di nuovo|due volte|ancora)\b|\bre-?(?:use|steep)\b|\b(?:riusar|riutilizzar|rifar)\p{L}*\b/u

const ON_SPENT =
  /\b(?:sugar|zucchero|zuccherarp{L}*)\b.{0,20}\b(?:on|over|sui|sulle|sugli|sopra|le|i)\b.{0,25}\b(?:leftover|left over|spent|strained|drained|used|boozy|avanzat[eia]|rimast[eia]|usat[eia]|scolat[eia])\b|\b(?:cover|coat|toss|roll|sprinkle|dust|pack|layer)\b.{0,25}\b(?:leftover|left over|spent|strained|drained|used|boozy)\b.{0,25}\bsugar\b/

/** A liquid that freezes by itself; `can I freeze it` is put there, `froze` has happened. */
const FREEZES =
  /\b(?:will|wont|would|wouldnt|does|doesnt|could|might|going to)\b.{0,40}(?<!\b(?:i|you|we|to|me) )\bfreezes?\b|\b(?:(?:si |mi )?(?:congela|congelera|congelerebbe|ghiaccia|ghiaccera|gela|gelera))\b/

/** The white under a peel, and what is to be done with it. */
const WHITE =
  /\b(?:pith|albedo|(?:white|bitter) (?:\p{L}+ )?(?:part|stuff|bits?|layer|skin|side|inside)|(?:il|la parte) bianc[oa])\b/u
const OF_PEEL =
  /\b(?:zest\p{L}*|peel\p{L}*|rinds?|skins?|grat(?:e|ing)|par(?:e|ing)|lemons?|oranges?|limes?|grapefruits?|mandarins?|citrus|pel[aoi]\p{L}*|sbucci\p{L}*|scorz\p{L}*|bucc\p{L}*|limon[ei]|aranc[eia])\b/u
const TAKEN_OFF =
  /\b(?:without|avoid\p{L}*|off|rid|remov\p{L}*|leav\p{L}*|keep\p{L}*|scrap\p{L}*|cut\p{L}*|separat\p{L}*|out|no|senza|togli\p{L}*|levar\p{L}*|via|evit\p{L}*)\b/u

/** What is cooked or mixed with a drink that is there, and is no drink to steep. */
const DISH =
  /\b(?:cookies?|cakes?|cupcakes?|cheesecake|(?:a|an|the|liqueur|limoncello|gin|lemon|orange|almond|cherry) tarts?|tartlets?|pies?|brownies|muffins?|biscuits|biscotti|puddings?|trifle|ice ?cream|sorbet|gelato|semifreddo|frosting|icing|sauce|pancakes|bread|scones|truffles|tort[ae]|crostata|tiramisu|cheesecake|bab[aà]|panettone|pasticcini)\b/u
const MIXED =
  /\b(?:spritz\p{L}*|cocktails?|martinis?|margaritas?|mojitos?|mimosas?|highballs?|negronis?|collins|mule|aperitivo|long drinks?)\b/u
const MADE =
  /\b(?:make|making|bake|baking|use|using|mix|add|recipe|recipes|put|do|ricett[ae]|far\p{L}*|faccio|uso|usare|preparar\p{L}*)\b/u

/** The glass, the plants, or how strong it has to be. */
const OF_OTHER =
  /\b(?:glass|jars?|bottles?|crack\p{L}*|burst\p{L}*|if|when|once|why|how|what|harm\p{L}*|before|bottigli[ae]|vetro|se|quando|perche|come|quanto|quale|che)\b/u

/** By what anybody sees that it has steeped enough, and how strong what stands there is. */
const HOW_TELL =
  /\b(?:how (?:do|can|could|will|would|should|does|am i to|to)|come (?:faccio|si fa|posso|capisco)) ?(?:i|we|you|one|anyone|a )* ?(?:a )?(?:know|tell|see|sapere|capire|so|capisco)\b/u
const STEEPED =
  /\b(?:(?:is|are|s|its|theyre|has|have|been) ?(?:\p{L}+ )?(?:done|had (?:enough|their time|its time|long enough)|steeped (?:enough|long enough))|when (?:its|theyre|the \p{L}+ (?:is|are)|they are|it is) (?:done|ready to (?:strain|come out))|sono pront[ei]|e pront[oa])\b/u
const FIND_OUT =
  /\b(?:how (?:do|can|could|would|should|to)|is there (?:a|any) way to|come (?:faccio|posso|si fa))\b.{0,30}\b(?:find out|measure|test|check|work out|tell|know|misurar\p{L}*|saper\p{L}*|scoprir\p{L}*)\b.{0,30}\b(?:how strong|strength|proof|alcohol content|abv|quanto e forte|gradazione|gradi)\b/u
const SWEETENED =
  /\b(?:finished|bottle|bottled|bottles|sweetened|liqueur|done|finit[oa]|bottigli\p{L}*|zuccherat\p{L}*)\b/u

/** Whether it is of no animal; a vegan cream liqueur is another matter. */
const VEGAN = /\bvegan[sioae]?\b/
const CREAMY = /\b(?:cream|creme|milk|irish|latte|panna|cremos[oa]|version\p{L}*)\b/u

const AMOUNTS: ReadonlySet<string> = new Set(['volume', 'mass', 'bottles', 'strength', 'sweetness'])

/** Whether it is asked if a liqueur freezes: what is told of its strength is worked out instead, and a temperature is no amount. */
export function isFreezingAsked(sentence: Sentence): boolean {
  const { typed, bits } = sentence
  const text = plain(typed.text)
  const isOfAmounts = bits.some(({ kind }) => AMOUNTS.has(kind))
  const isShort = typed.tokens.length <= MOST_WORDS
  const isQuestion = isAsked(sentence) || /^ ?(?:will|wont|would|does|doesnt|could|might)\b/.test(text)
  return isQuestion && isShort && !isOfAmounts && FREEZES.test(text) && !OF_OTHER.test(text) && !PIECES.test(text)
}

const plain = (text: string): string => withoutMarks(text).replace(/[^\p{L}\d-]+/gu, ' ')

/** Plants that stand out of what they steep in. */
const ABOVE =
  /\b(?:pok(?:e|es|ing)|stick(?:s|ing)?|stuck|peep(?:s|ing)?|stand(?:s|ing)?) (?:up |right |proud )?(?:out of|above|proud of|out over)\b.{0,12}\b(?:liquid|vodka|gin|rum|brandy|spirits?|alcohol|booze|surface|level)\b|\b(?:is|are|sits?|sitting|stays?|keeps?|lies) (?:above|proud of)\b.{0,12}\b(?:liquid|vodka|gin|rum|brandy|spirits?|alcohol|booze|surface|level)\b|\b(?:wont|dont|doesnt|not|cant get .{0,20}) (?:stay(?:ing)? |keep |all |fully |properly )*(?:under(?:neath)?|submerged|covered|down)\b(?! (?:control|cover|way|the (?:stairs|sink)))|\b(?:arent|isnt) (?:all |fully |quite |properly )?(?:under|covered|submerged)\b|\b(?:spunta|spuntano|emerg\p{L}+|esc(?:e|ono)|(?<!\b(?:tirat|cavat|lasciat|presi?|pres)[oaie]? )fuori) (?:d|dal|dalla|dall|da) ?\p{L}*|\bnon (?:sta|stanno|resta|restano|rimane|rimangono|e|sono) (?:tutt[aeio] )?(?:sotto|copert[aeio]|immers[aeio])\b/u

/** Whether it steeps in the dark. */
const LIGHT = /\b(?:dark|daylight|light|sunlight|al buio|alla luce|luce|buio)\b/u
const STEEPS =
  /\b(?:(?:while|when|as|during) .{0,20}(?:steep|infus|macerat)\p{L}*|to (?:steep|macerate|infuse)|(?:mentre|quando|durante) .{0,20}(?:macer|infus)\p{L}*|a macerare)\b/u

const MOST_WORDS = 16

/** `What’s the best sugar`, `che zucchero uso`. */
const BEST_SUGAR =
  /\b(?:(?:best|right|what|which|what kind of|what sort of|whats the best kind of|what type of) sugar(?: is best| do i use| should i use| to use| for (?:this|it|liqueurs?))?|(?:che|quale) zucchero(?: uso| e meglio| devo usare| ci vuole)?) ?$/u

const GLASSES =
  /\b(?:shots?|nips?|drams?|tots?|glass|glasses|measures?|pours?|servings?|sips?|thimbles?|snifters?|bicchierin[oi]|bicchier[ei]|cicchett[oi]|dosi)\b/
const BOTTLES = /\b(?:bottles?|bottigli[ae])\b/
/** `80 people, 30 ml each`, `siamo in quaranta, 25 ml a testa`, `a shot each, there are sixty of us`. */
const FOR_PEOPLE =
  /\b(?:people|persons?|folks?|guests|friends|members|visitors|heads|mouths|noses|coming|(?:of|for) us|we are|we re|well be|we will be|there ll be|there will be|there are|persone|ospiti|invitati|amici|siamo|saremo|saranno|verranno|vengono)\b.*\b(?:each|apiece|a head|ciascun[oa]|a testa|l uno|ognuno|cadauno)\b|\b(?:each|apiece|ciascun[oa])\b.*\b(?:people|persons?|guests|of us|coming|persone|invitati)\b|\b(?:a|per) (?:head|testa|persona|person|guest)\b/
const HOW_MANY = /\b(?:how many|quant[ie])\b/
const POURED: ReadonlySet<string> = new Set(['volume', 'bottles'])

/** `How many 25 ml nips in 2 litres`: how many glasses a bottle fills, of nothing that is planned or strong. */
const isGlassesAsked = (text: string, { bits, typed, has }: Sentence): boolean =>
  HOW_MANY.test(text) &&
  (GLASSES.test(text) || (BOTTLES.test(text) && FOR_PEOPLE.test(text))) &&
  !has('units_of_alcohol') &&
  typed.tokens.length <= 2 * MOST_WORDS &&
  bits.some(({ kind }) => POURED.has(kind)) &&
  bits.every(
    ({ kind, role, value }) =>
      POURED.has(kind) || (kind === 'bare' && (value < 5 || role === 'gone' || FOR_PEOPLE.test(text))),
  )

/** `I poured in a litre and got barely 900 back, who drank it`. */
const LESS_BACK =
  /\b(?:put|poured|tipped|started (?:with|from|off)|used|had|went in|mess\p{L}*|versat\p{L}*)\b.*\b(?:got|get|getting|came|come|ended up with|left with|usciti?|uscito|esce)\b|\b(?:came|come|got|get) (?:back |out )?(?:of|from) (?:a|the|my|\d)/u
const TOO_LITTLE =
  /\b(?:barely|only|just|hardly|scarcely|merely|solo|soltanto|appena|who drank|whos drunk|who stole|where (?:did|has|is|s|are)|wheres|whered|why|missing|dov e|chi l ha|perche)\b/

/** Less came out than went in: nothing else is told but how much. */
const isLessBack = (text: string, { bits, has, typed }: Sentence): boolean =>
  LESS_BACK.test(text) &&
  TOO_LITTLE.test(text) &&
  typed.tokens.length <= MOST_WORDS + 4 &&
  !has('strained', 'filtered', 'bottled', 'own_jar', 'syrup', 'wish') &&
  bits.filter(({ kind }) => kind === 'volume' || kind === 'bare').length >= 2 &&
  bits.some(({ kind }) => kind === 'volume') &&
  bits.every(({ kind }) => kind === 'volume' || kind === 'bare' || kind === 'spirit')

/** `What can I put in with the plums?`: what goes with them. */
const ADDS_WHAT =
  /^ ?(?:(?:so|and|ok) )?(?:what (?:else )?(?:can|could|should|might|would|shall) (?:i|we|you) (?:put|add|throw|pop|steep|mix|pair)(?: (?:in|into|to|with|together|alongside|beside))+ (?:the |my |some )?|(?:che )?cosa (?:posso|potrei|possiamo) (?:mettere|aggiungere|abbinare) (?:con|a|ai|alle|al|alla|insieme a\p{L}*) (?:le |i |il |la )?)[\p{L} ]{3,24}$/u
const FOR_TASTE =
  /\b(?:to|make|so|if|sweet\p{L}*|strong\p{L}*|clear\p{L}*|thick\p{L}*|jam|cake|pie)\b(?! (?:the|my|some)\b)/u

/**
 * The entry that a plain question is about, whatever else its words would be read as: a finished drink in the freezer, plants for a
 * second time, dry sugar on what was strained off. Null where none is asked, or amounts are told.
 */
export function askedPlainly(sentence: Sentence): string | null {
  const { typed, bits, jars, has } = sentence
  const text = plain(typed.text)
  const isCounted = bits.some(
    ({ kind }) => kind === 'volume' || kind === 'mass' || kind === 'strength' || kind === 'bottles',
  )
  const isLong = isCounted || typed.tokens.length > MOST_WORDS
  const isOfDrink = (DRINK.test(text) || has('drink_named')) && !has('own_jar')
  if (!isLong && isOfDrink && (isAsked(sentence) || /\brecipes?\b|\bricett[ae]\b/.test(text)) && MADE.test(text)) {
    if (DISH.test(text)) return 'cook_with'
    if (MIXED.test(text)) return 'serve_mixed'
  }
  if (!isLong && has('units_of_alcohol') && has('glass_of') && has('drink_named') && !has('own_jar'))
    return 'serving_size'
  if (isGlassesAsked(text, sentence)) return 'serving_size'
  if (isLessBack(text, sentence)) return 'kept_back'
  // `How long does limoncello keep`: of a drink, not of how long its plant steeps.
  if (!isLong && has('keeps_long') && has('creamy', 'drink_named') && !has('own_jar', 'spent', 'freezes', 'syrup'))
    return has('creamy') ? 'keep_cream' : has('opened') ? 'keep_opened' : 'keep_time'
  const isOfPlants = PIECES.test(text) || bits.some(({ kind }) => kind === 'plant' || kind === 'jar')
  if (!isLong && isOfPlants && ABOVE.test(text) && !has('mould', 'slime', 'lid', 'how_long')) return 'keep_under'
  if (!isAsked(sentence) || isLong) return null
  if (isWithoutSugar(text)) return 'sweeteners'
  if (isOldFruit(text, sentence)) return 'ripe_fruit'
  if (ADDS_WHAT.test(text) && isOfPlants && !FOR_TASTE.test(text)) return 'mix_plants'
  if (VEGAN.test(text) && !CREAMY.test(text)) return 'vegan'
  if (BEST_SUGAR.test(text)) return 'icing_sugar'
  if (HOW_TELL.test(text) && STEEPED.test(text)) return 'steep_done'
  if (FIND_OUT.test(text) && SWEETENED.test(text) && !has('own_jar')) return 'obscuration'
  const ofKitchen = kitchenAsked(text, sentence)
  if (ofKitchen !== null) return ofKitchen
  if (WHITE.test(text) && OF_PEEL.test(text) && TAKEN_OFF.test(text)) return 'pith'
  if (LIGHT.test(text) && STEEPS.test(text) && !has('turned', 'left_in_sun', 'how_long')) return 'steep_light'
  if (ON_SPENT.test(text)) return 'dry_sugar'
  if (ONCE_MORE.test(text) && PIECES.test(text) && !has('threw_out')) return 'second_steep'
  const isDone = bits.some((bit) =>
    jars.some(
      ({ name, stage }) => (stage === 'resting' || stage === 'ready') && name.toLowerCase() === bit.text.toLowerCase(),
    ),
  )
  const isFinished =
    DRINK.test(text) ||
    has('drink_named') ||
    (isDone && /\bin(?:to)? (?:the |my )?freezer\b|nel (?:freezer|congelatore)/.test(text))
  const isOther = has(
    'how_long',
    'how_strong',
    'how_much',
    'cloud',
    'solid_ice',
    'broken',
    'curdled',
    'lid',
    'glassware',
  )
  return INTO_COLD.test(text) && isFinished && !isOther ? 'freezer_keep' : null
}
