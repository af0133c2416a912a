import type { RefusalId } from '../refused.ts'

const STONE_FRUIT =
  '(?:apricot|peach|peache|cherr(?:y|ie)|plum|nectarine|sloe|damson|mirabelle|greengage|gage|prune|bullace|myrobalan|blackthorn|loquat|medlar|stone fruit)s?|' +
  'albicocc(?:a|he|o|hi)|pesc(?:a|he|o|hi)|cilieg(?:i?[aeo]|i)|amaren[aeo]|visciol[aeo]|marasc(?:a|he|o)|' +
  'prugn[aeo]l?[aeoi]?|susin[aeoi]|nettarin[ae]|mirabolan[oi]|mandorl[oi]|drup[ae]|nespol[aeoi]|nisperos?|nesperas?|cerezas?|cerejas?|pessegos?|damascos?|' +
  'wisni|moreli|brzoskwini|sliw|kirschen?|albaricoques?'
const PIP_FRUIT = '(?:apple|quince|pear)s?|mel[ae](?: cotogn[ae])?|per[ae]|cotogn[ae]'
const PART =
  'kernels?|pits?|stones?|pips?|seeds?|noyaux?|nocciol(?:in)?[oi]|sem[ei]|armellin[ae]|oss[oi]|huesos?|carocos?|pestk[aiy]|kostochk\\w+|cekirde\\w+|bark'
const LEAF = 'leaf|leaves|twigs?|fogli[ae]|rametti'
const FILLER =
  '(?: (?:\\d+|of|from|the|an?|my|di|d|del|della|delle|dei|degli|dal|dalle|tree|inside|raw|whole|dried|and|their|with|con|coi|e|i|il|gli|loro|a|few|some|all|cracked|crushed|ground|roasted|bitter|fresh))*'
/** Fruit whose stones are inside of it when it is crushed; a chopped almond is none. */
export const HOLDS_STONES = new RegExp(`\\b(?:${STONE_FRUIT.replace('mandorl[oi]|', '')})\\b`)

/** Fruit whose pips are whole unless it is crushed with its core. */
export const HOLDS_PIPS = new RegExp(`\\b(?:${PIP_FRUIT})\\b`)

const PLANT =
  'plants?|berry|berries|herbs?|leaf|leaves|flowers?|roots?|seeds?|bark|weeds?|bush|mushrooms?|piant[ae]|bacc(?:a|he)|' +
  'erb[ae]|fogli[ae]|fior[ei]|radic[ei]|sem[ei]|cortecci[ae]|arbust[oi]|cespugli?o?|fung(?:o|hi)'
const ANY =
  'some|random|any|certain|various|mixed|other|strange|funny|red|black|blue|white|yellow|purple|green|small|tiny|' +
  'little|pretty|nice|local|fresh|dried|from|my|the|a|an|of|in|by|behind|near|our|garden|house|road|river|' +
  'qualche|alcun[ei]|un|una|delle|dei|vari[ei]?|mist[ei]|ross[aeoi]|ner[aeio]|blu|bianc(?:a|he)|giall[ae]|viola|piccol[aei]|' +
  'bell[aei]|del|di|dal|mio|giardino|stran[aei]'

/** Said of a plant that nobody sold. */
export const FORAGED = new RegExp(
  '\\b(?:forag(?:e|ed|ing|er)|wild|wildcrafted|wild ?picked|hedgerows?|road ?sides?|river ?(?:sides?|banks?)|stream ?sides?|self (?:picked|dug)|' +
    'dug|gathered|found|(?:picked|collected|harvested) (?:\\w+ )?(?:in|from|on|by|out|near|myself|along)|' +
    '(?:from|in|by|near|along|beside) (?:the|a|our|my|his|her|their|\\w+s) (?:wild|woods?|forest|hedge|meadow|mountains?|ditch|fields?|park|river(?:bank|side)?|stream|lake|canal|path|road|track)|' +
    'selvatic(?:o|a|i|he)|spontane[aeio]|raccolt[aeio]|colt[aeio]|scavat[aeio]|' +
    '(?:(?<!fragol[aeio] |fragolin[ae] )di|nel|del|dal|nei|dei) bosc(?:o|hi)|(?:in|di|della|dalla) montagna|di campo|nei campi|nei prati|lungo il fiume|trovat[aeio])\\b',
)

/** Said of what somebody picked, wherever it stood. */
export const PICKED =
  /\b(?:(?:hand|self|freshly|fresh|home|just)? ?picked|i (?:have |ve )?(?:picked|cut|collected|harvested)|ho (?:raccolto|colto))\b/

export interface RefusalRule {
  readonly id: RefusalId
  readonly pattern: RegExp
  /** Taken out before the pattern looks. */
  readonly except?: RegExp
  /** Means hardly anything else in a sentence, where others of its id do. */
  readonly isTelling?: true
}

const words = (text: string): RegExp => new RegExp(`\\b(?:${text})\\b`)
const everywhere = (text: string): RegExp => new RegExp(`\\b(?:${text})\\b`, 'g')

/**
 * Phrasings that no list of names holds, over the plain words of one part of what was typed, joined by single spaces.
 * They are read in this order.
 */
export const refusalRules: readonly RefusalRule[] = [
  {
    id: 'essential_oils',
    pattern: words(
      'oils?|olio|oli|olii|oleoresins?|essenz[ae]|essences?|attar|eo|he (?:de|d)|drops? of|gocc(?:ia|e) d[i]?|extracts?|estratt[oi]|tinctures?|' +
        'tintur[ae]|absolutes?|co2|terpenes?|limonene|menthol crystals?|thymol|eucalyptol|camphor|capsaicin|concentrates?|resins?|' +
        'ol|oel|\\w+oel|(?:lavendel|nelken|orangen|zitronen|rosen|minz|pfefferminz|eukalyptus|wermut|teebaum|anis|fenchel|kummel|thymian|salbei|rosmarin|wacholder|zimt)ol|' +
        'atherisch\\w*|huiles?|aceites?|oleos?|olejek|olejk\\w+|maslo|elaio|eterisk\\w*|etherische',
    ),
    except: everywhere(
      '(?:olive|sunflower|rapeseed|canola|corn|coconut|sesame|vegetable|cooking|peanut) oils?|' +
        'oli[oi]? (?:d |di |da )?(?:oliva|semi|girasole|mais|cocco|sesamo)',
    ),
  },
  {
    id: 'kernels',
    pattern: words(
      `(?:${STONE_FRUIT}|${PIP_FRUIT})${FILLER} (?:${PART})(?: (?:(?:all|well|half|first|then|still|also) )*(?:cracked|crushed|smashed|rotti|schiacciati|spaccati|pestati))?(?! (?:of|di|d|removed|out|discarded|taken|tolti)\\b)|` +
        `(?:${PART}|mandorl[ae]) (?:of|from|inside|di|d|del|della|delle|dei|degli|dal|dalle)${FILLER} (?:${STONE_FRUIT}|${PIP_FRUIT})|` +
        '(?<!(?:hazelnut|walnut|almond|pine|cashew|sweet|palm) )kernels?|armellin[ae]|noyaux?|^(?:(?:di|dei|i|con|coi|e|loro|alcuni) )*nocciol(?:in)?[oi]$|' +
        'almonds?(?: (?:that|which|are|the|very))* bitter(?! oranges?)|mandorl[ae](?: (?:quelle|molto|un|po))* amar[ae]|amygdalin|amigdalina|' +
        '(?:cracked|crushed|smashed|hammered|ground) (?:(?:open|up|all|some|of|the|its|their|a|few|most) )*(?:stones|pits|pips|kernels)(?! (?:out|off|away|removed)\\b)|' +
        '(?:rott[oi]|schiacciat[oi]|spaccat[oi]|pestat[oi]) (?:(?:i|gli|tutti|alcuni) )*nocciol[oi]',
    ),
    except: everywhere(
      '(?:aroma|essenza|estratto) (?:di |alla |alle )?mandorl[ae] amar[ae]|' +
        '(?:without|no|minus|senza|less)(?: (?:the|their|any|i|il|gli))? (?:stones?|pits?|pips?|seeds?|kernels?|nocciol[oi]|semi)|' +
        '(?:stones?|pits?|pips?|seeds?) (?:removed|out|taken out|discarded)|' +
        // Asked, and a weight of 14 pounds.
        '(?:stones?|pits?) (?:(?:left|stay|go|kept|come|be) )?in or (?:come |be |go )?(?:out|not)|(?:stones?|pits?) out or in|(?:half a|\\d+|two|three|four|five|six) stone of|' +
        '(?:with|con)(?: (?:the|their|i|il|whole|uncracked))* (?:stones?|pits?|nocciol[oi])(?! (?:(?:all|well|half|first|then|still|also) )*(?:cracked|crushed|smashed|broken|split|ground|rotti|schiacciati|spaccati|pestati)\\b)(?: (?:in|whole|left in|intact|uncracked|interi))?',
    ),
  },
  {
    id: 'stone_fruit_leaves',
    pattern: words(
      `(?:${STONE_FRUIT})(?: tree)? (?:${LEAF})(?! (?:of|di|d)\\b)|almond (?:tree )?leaf|almond (?:tree )?leaves|` +
        `(?:${LEAF}) (?:of|from|di|d|del|della|delle|dei|degli|dal)${FILLER} (?:${STONE_FRUIT})`,
    ),
  },
  {
    id: 'elder_raw',
    pattern: words(
      'elder ?flowers?(?: heads?| umbels?)? (?:with|and)(?: (?:the|their|its|some|all|green|long|and))* (?:stems?|stalks?|leaf|leaves|twigs?)|' +
        'fior[ei] (?:di )?sambuco con (?:i |le |gli )?(?:gambi|foglie|rametti|steli|piccioli)',
    ),
  },
  {
    id: 'elderberry',
    pattern: words(
      'elder ?berr(?:y|ies)|bacc(?:a|he) (?:di |del |nere di )?sambuc(?:o|hi)|elder (?:tree )?(?:fruits?|berr(?:y|ies))|' +
        'frutt[oi] (?:di |del )?sambuco|berr(?:y|ies) (?:of|from) (?:an? |the |my |our )?elder|sambucus (?:nigra )?(?:fruits?|berr(?:y|ies))',
    ),
  },
  {
    id: 'plant_milk',
    // Before the rule of milk, cream and butter: these come of plants.
    pattern: words(
      '(?:almond|coconut|oat|soya?|rice|cashew|hazelnut|pea|hemp|macadamia|plant) (?:milk|cream)s?|(?:peanut|almond|cashew|hazelnut|nut|pistachio|sesame|tahini) butters?|tahini|' +
        'cream of coconut|latte (?:di|d) (?:mandorl[ae]|cocco|soia|riso|avena|nocciola)|burro (?:di|d) (?:arachidi|mandorle)',
    ),
  },
  {
    id: 'dairy_egg',
    pattern: words(
      'smietan\\w*|jajk\\w*|smetan\\w*|eigelbe?|eierlikor|white chocolate|eggs?|yolks?|egg ?whites?|egg ?nogs?|advocaat|milks?|buttermilk|creams?|yogh?urts?|butter|mascarpone|ricotta|cheese|' +
        'custard|half and half|kefir|uov[oa]|tuorl[oi]|album[ei]|latte|panna|burro|zabaione|formaggio',
    ),
    except: everywhere(
      'cocoa butter|cacao butter|milk thistles?|burro di cacao|cream of tartar|butter (?:beans?|nuts?)|cream soda',
    ),
  },
  {
    id: 'medicines',
    pattern: words(
      'medicin[ae]s?|medicinal[ei]|medications?|drugs?|tablets?|pills?|pillol[ae]|painkillers?|pastigli[ae]|compress[ae]|farmac[oi]|' +
        'aspirin[ae]?s?|paracetamol[oi]?|acetaminophen|ibuprofene?|codeina?e?|valium|diazepam|xanax|viagra|antibiotic(?:s|o|i)?|' +
        'acetylsalicylic\\w*|diclofenac|naproxen|diphenhydramine|antihistamines?|\\w*azepam|\\w*azolam|zopiclone|zolpidem|pseudoephedrine|' +
        'insulin|metformin|warfarin|quinine|nitroglycerine?|sildenafil|testosterone|steroids?|prednisone|\\w*cillin|oxycodone|methadone|' +
        'fluoxetine|sertraline|lithium|laxatives?|iodine|disulfiram|metronidazole|barbiturates?|tabletten?|schlaftabletten?|comprimes?|' +
        'medicaments?|somniferes?|medicamentos?|comprimidos?|remedios?|tabletk\\w+|lekarstw\\w+|lek nasenny|ilac|' +
        'antidolorific[oi]|sonnifer[oi]|sedativ(?:es?|[oi])|tranquilli[sz]ers?|melatonina?|tachipirina|' +
        'cough (?:syrup|mixture|drops?)|sciroppo per la tosse|antidepressants?|antidepressiv[oi]',
    ),
  },
  {
    id: 'florist_flowers',
    pattern: words(
      'florists?|fiora(?:io|i)|fiorist[ai]|bouquets?|cut (?:flowers?|roses?)|(?:flower|rose) (?:shops?|stalls?|arrangements?)|' +
        'garden cent(?:re|er)s?|(?:gift|craft|candle|soap) shops?|pot ?pourris?|mazz[oi] di (?:fiori|rose)|(?:fiori|rose) (?:del|dal) mazzo|fiori recisi|bunch(?:es)? (?:of )?(?:flowers|roses)|(?:flowers?|roses?) bunch(?:es)?|rose recise|' +
        '(?:wedding|funeral|valentines?|supermarket|petrol station) (?:flowers?|roses?)|from a vase|dal vaso',
    ),
  },
  {
    id: 'wild_garlic',
    pattern: words(
      'ramsons?|ramps|wild garlic|bears? garlic|buckrams|wood garlic|aglio (?:ursino|orsino|selvatico|degli orsi|di bosco)|' +
        'garlic (?:\\w+ ){0,3}(?:wild|foraged|woods?|forest)|(?:wild|foraged) (?:\\w+ )?garlic|allium ursinum',
    ),
  },
  {
    id: 'mushrooms',
    pattern: words(
      '(?:wild|foraged) (?:\\w+ )?mushrooms?|fung(?:o|hi) (?:selvatic\\w+|del bosco|di bosco)|magic mushrooms?|toadstools?|mushrooms?|fung(?:o|hi)',
    ),
  },
  {
    id: 'drugs',
    pattern: words(
      'cocaine?|cocaina|green dragon|(?:grams?|g|oz|ounces?|eighth|bag|pinch|handful) of weed|weed (?:tincture|butter|vodka|gin|rum|liqueur|infusion|edibles?)|(?<!jimson |the )weed (?:in|with) (?:vodka|gin|rum|everclear|alcohol|spirit)|(?:with|with some|some) weed$|pot (?:brownies?|butter|cookies?)|space (?:cakes?|brownies?)|heroin|eroina|mdma|ecstasy|lsd|thc|hashish|hash|marihuana|coca (?:leaf|leaves)|foglie di coca|ketamine?|amphetamines?|peyote|ayahuasca',
    ),
  },
  {
    id: 'animals',
    isTelling: true,
    pattern: words(
      '(?:vipers?|snakes?|adders?|scorpions?|viper[ae]|serpent[ei]|scorpion[ei]) (?:\\w+ ){0,2}(?:in|into|nella?|nell|mezcal|wine|grappa|vodka|liqueur|gin|whisk(?:y|ey)|rum|jar|bottle)|' +
        'raw (?:oysters?|fish|meat|prawns?|clams?|chicken)|(?:pesce|carne) crud[oa]',
    ),
  },
  {
    id: 'chemicals',
    isTelling: true,
    pattern: words(
      '(?:acetone?|hexane|butane|chloroform|ether|esano|butano) (?:extract\\w*|extraction|wash|soak|in|into|to)|(?:estrazione|estrarre|extract\\w*) (?:\\w+ ){0,3}(?:with|using|con) (?:acetone?|hexane|butane|ether|esano|butano)|trielina|trichloroethylene',
    ),
  },
  {
    id: 'animals',
    pattern: words(
      'chickens?|beef|bacon|hams?|pork|steaks?|jerky|fish|salmon|oysters?(?! (?:plant|leaf|leaves))|clams?|shrimps?|anchov(?:y|ies)|mouse|mice|toads?|frogs?|geckos?|' +
        'lizards?|spiders?|tarantulas?|centipedes?|bees?(?! balm| pollen)|wasps?|hornets?|spanish fly|cantharid\\w+|cobras?|rattlesnakes?|bile|antlers?|blood(?! oranges?| limes?| peach(?:es)?)|' +
        'urine|placenta|schlangen?|alacran(?:es)?|yilan',
    ),
  },
  {
    id: 'garden_poisons',
    // Words that are a letter away from too much to be looked for with typos, or whose other half makes them good.
    pattern: words(
      '(?<!\\b(?:day|water) )lil(?:y|ies)|giglio|gigli|callas?|(?<!\\bbutchers? )brooms?|(?<!\\bsea )buckthorns?|' +
        'lis|lys',
    ),
  },
  {
    id: 'unnamed_plant',
    pattern: words(
      'unknown|unidentified|unnamed|mystery|nameless|sconosciut[aeio]|misterios[aeio]|non identificat[aeio]|' +
        '(?:do not|don t|dont|did not|didn t|not sure|no idea|cannot|can t|cant|unsure|forgot) (?:\\w+ ){0,4}(?:know|knows|name|names|what|which|identify|it is|recogni[sz]e)|' +
        'non (?:\\w+ )?(?:so|conosco|sappiamo|riconosco|ricordo)|senza nome|' +
        `(?:some kind|some sort|kind|sort) of (?:${PLANT})`,
    ),
  },
]

/** Nothing but a plant in general: `some red berries`, `erbe miste`. */
export const UNNAMED = new RegExp(`^(?:(?:${ANY}) )*(?:${PLANT})(?: (?:${ANY}|${PLANT}))*$`)

/** Plants that look like hemlock. */
export const CARROT_FAMILY = words(
  'carrots?|carot[ae]|parsnips?|pastinac[ah]e?|celery|sedano|parsley|prezzemolo|chervil|cerfoglio|fennels?|finocch\\w+|angelic\\w*|' +
    'caraways?|carvi|corianders?|coriandol[oi]|anise(?:ed)?s?|anic[ei]|cumin|cumino|lovage|dill|aneto',
)
