import { withoutAccents } from '../lexicon/plain-text.ts'

/** Lower case without accents and apostrophes; stops are kept, so that a pattern need not reach over them. */
const plain = (text: string): string =>
  withoutAccents(text)
    .replace(/(?<![\p{L}])(l|d|un|dell|all|nell|dall|sull|quell)[’'`]/gu, '$1 ')
    .replace(/[’'`]/g, '')
    .replace(/[^\p{L}\d?.!,%]+/gu, ' ')

const DRINK =
  'drinks?|drinking|liqueurs?|limoncello|\\w+cello|nocino|spirits?|alcohol|vodka|gin|rum|brandy|whisk(?:y|ey)|grappa|booze|infusion|jars?|bottles?|glass(?:es)?|punch|sips?|shots?|9[0-7]|' +
  'liquor[ei]|alcol|alcool|bicchier[ei]|vas[oi]|barattol[oi]|bottigli[ae]|amaro|sorso'

const DRUG =
  'paracetamol|acetaminophen|\\w{3,}(?:cillin|cillina|mycin|micina|prazole?o?|statin|statina|azepam|olol)|ibuprofen|aspirin|warfarin|statins?|antibiotics?|antidepressants?|ssris?|blood thinners?|anticoagulants?|beta ?blockers?|' +
  'antihistamines?|codeine|tramadol|sertraline|fluoxetine|citalopram|lithium|methotrexate|diazepam|painkillers?|insulin|metformin|prescription|medications?|(?:my|his|her|their|our|take|takes|taking|on|heart) medicines?|' +
  '(?:blood pressure|heart|sleeping|thyroid|epilepsy|allergy|cholesterol|hay fever|migraine|diabetes|water|anxiety|pain) (?:tablets?|pills?|medicines?|meds|medication)|(?:my|his|her|their|on|the) (?:meds|tablets|pills)|(?:tablets?|pills?) (?:for|against) (?:my|his|her|the)|' +
  'tachipirina|paracetamolo|aspirina|antibiotic[oi]|antidepressiv[oi]|statin[ae]|cumadin|coumadin|cortisone|anticoagulant[ei]|insulina|antidolorific[oi]|' +
  '(?:pillol[ae]|pastigli[ae]|compress[ae]|medicin[ae]|farmac[oi]) (?:per|del|della|contro)|farmac[oi]|medicinal[ei]'

const ANIMAL =
  '(?<!hot )dogs?(?! (?:rose|violet|wood))|cats?|pupp(?:y|ies)|kittens?|hens|chickens|pigs?|horses?|rabbits?|goats?|hamsters?|guinea pigs?|parrots?|hedgehogs?|' +
  'can[ei]|gatt[oi]|gattin[oi]|cagnolin[oi]|gallin[ae]|conigli[oi]|maial[ei]|cavall[oi]'

const BABY =
  'bab(?:y|ys|ies)|infants?|newborns?|\\d+ (?:months?|mos?) old|months? old|under (?:one|1)|first birthday|dummy|pacifier|teething|ciuccio|neonat[oaie]|lattant[ei]|\\d+ mesi|bimb[oaie]'

/** What stands on fire or in a machine, and is no syrup. */
const HOT =
  'microwav(?:e|ed|ing)|microonde|instant ?pot|pressure ?(?:pot|cook|cann)(?:er|ing|ed)?|deep ?fr(?:y|ied|ying|yer)|(?:hot|boiling|hotter) oil|olio (?:bollente|caldo)|friggere|pentola a pressione|sous ?vide|flamb\\w*|blow ?torch|' +
  '(?:set|setting|light|lighting) (?:\\w+ ){0,3}(?:on fire|alight)|(?:on|over) (?:the |a )?(?:hob|stove|gas|cooker|burner)|(?:sul|al|sopra il) (?:fornello|gas|fuoco)|dare fuoco'

/** What somebody has had for long, or has got over. */
const ILLNESS =
  'asthma(?:tic)?|inhalers?|epilep\\w+|heart (?:condition|disease|failure|trouble|problems?|murmur|attacks?)|(?:weak|bad|dodgy) (?:heart|liver)|pacemaker|(?:high|low) blood pressure|blood pressure(?! (?:tablets?|pills?|meds))|hypertension|liver (?:disease|trouble|problems?|failure|transplant)|cirrhosis|hepatitis|kidney (?:disease|trouble|problems?|failure|stones?)|gout|chemo(?:therapy)?|cancer|(?:a|her|his) stroke(?! of)|strokes|seizures|fits|(?:stomach|peptic) ulcers?|ulcers|gastritis|acid reflux|pancreatitis|vertigo|' +
  'asma|asmatic[oai]|epiless\\w+|epilettic\\w+|cardiopatic\\w+|mal(?:ato|ata) di cuore|problemi di (?:cuore|fegato|reni|stomaco)|pressione alta|ipertes\\w+|cirrosi|epatite|gotta|chemio\\w*|tumore|ictus|infarto|ulcera|gastrite|reflusso|pancreatite|vertigini'

const PERSON =
  'he|she|they|him|her|my|our|his|mum|mom|dad|nan|gran|granny|grandad|grandpa|uncle|aunt|wife|husband|brother|sister|mother|father|neighbour|mate|cousin|friend|guest|guests|somebody|someone|anybody|anyone|who|people|i|ive|im|a|mio|mia|nostr[oa]|amic[oa]|ospite|qualcuno|zi[oa]|nonn[oa]|ho|ha|chi'

const WILD = 'berr(?:y|ies)|roots?|plants?|herbs?|bush|fruits?|bacch[ae]|bacca|radic[ei]|piant[ae]|erb[ae]|frutt[io]'

const CHEMIST = '(?:disulfiram|antabuse|antabus|etiltox|metronidazole?o?|flagyl|tinidazole?o?)'

interface Asked {
  /** An entry of the handbook. */
  readonly entry: string
  readonly says: RegExp
  /** Said of something else. */
  readonly unless?: RegExp
}

const words = (text: string): RegExp => new RegExp(`(?<![\\p{L}\\d])(?:${text})(?![\\p{L}\\d])`, 'u')
const both = (one: string, other: string): RegExp =>
  new RegExp(`(?=.*(?<![\\p{L}\\d])(?:${one})(?![\\p{L}\\d]))(?=.*(?<![\\p{L}\\d])(?:${other})(?![\\p{L}\\d]))`, 'u')

/**
 * What harms whoever drinks it, or is harmed by how it is made, by the words that mean nothing else; in this order. A plan
 * or a page about a plant never stands before one of these.
 */
const ASKED: readonly Asked[] = [
  {
    entry: 'no_secret',
    says: words(
      'spik(?:e|ed|ing) (?:the|her|his|their|a|my|someones?|somebodys?) (?:\\w+ )?(?:drinks?|punch|glass|cup|juice)|' +
        '(?:so|so that) (?:he|she|they|nobody|no one) (?:sleeps?|passes out|(?:doesnt|dont|wont) notice|notices?)|(?:get|make) (?:him|her|them) drunk|' +
        'far(?:lo|la|li) ubriacare|perche (?:si addorment\\w+|dorma)',
    ),
  },
  {
    entry: 'no_secret',
    says: both(
      '(?:without|not) (?:telling|letting) (?:him|her|them|anyone|anybody|the guests|my \\w+)|senza (?:dirlo|dirglielo|dirle|che (?:lui|lei|nessuno) )',
      `${DRINK}|juice|succo|cake|torta`,
    ),
  },
  {
    entry: 'methanol',
    says: words(
      '(?:go|goes|going|make|makes|made|turn|send)(?: (?:me|you|us|people|him|her|them))? blind|(?:diventare|diventa|far diventare) ciec[oaie]',
    ),
    unless: /\bblind (?:tast|test|bak)/,
  },
  { entry: 'no_drop', says: words(CHEMIST) },
  {
    entry: 'medicines',
    says: words(DRUG),
    unless: /\b(?:cough|home) (?:medicine|remedy)|medicine (?:bottle|cabinet|chest)|old medicine\b/,
  },
  {
    entry: 'illness',
    says: both(ILLNESS, PERSON),
    unless: /\b(?:remedy|cure|cures|heal|fits (?:in|into|on|the|a|my))\b/,
  },
  {
    entry: 'pregnancy',
    says: words(
      '(?:im|i am|shes|she is|my \\w+ is|wife is|friend is) (?:\\w+ )?(?:\\d+ |\\w+ )?(?:weeks?|months?) (?:along|gone)|in the family way|bun in the oven|' +
        'aspett\\w+ un (?:bambin[oa]|figli[oa])|sono (?:al|di) (?:\\w+ )?(?:mese|mesi|settimane)|(?:im|i am|shes|she is) \\d+ (?:weeks|months)(?=.*\\b(?:sips?|glass|drink|taste|drop|ok|safe)\\b)|incinta|in gravidanza|allatt\\w+|(?:im|i am|shes|she is|wife is|friend is) expecting(?! (?:guests|it|\\d))',
    ),
  },
  {
    entry: 'allergens',
    says: words(
      'allerg(?:y|ic|ies)|anaphyla\\w+|epi ?pen|lactose|intoleran(?:t|ce|ces)|allergi[ac]\\w*|allergie|intolleran\\w+',
    ),
  },
  { entry: 'diabetes', says: words('coeliacs?|celiacs?|gluten|celiac[oai]|celiach[ie]|glutine') },
  {
    entry: 'driving',
    says: words(
      'drive home|(?:before|after|while|and|then|still|are|am|is|im|without|of) driving|(?:to|can i|can we|could i|may i|and|then|before i|i|we|ill|should i) drive|' +
        '(?:ride|cycle|cycling|biking)(?: \\w+){0,2} (?:home|back)|chainsaw|operate (?:\\w+ ){0,2}machin\\w+|motosega|behind the wheel|breathaly\\w+|guidare|mi metto al volante|al volante|(?:prima|dopo) (?:di )?guid\\w+',
    ),
    unless:
      /\bdriv(?:e|es|ing) (?:me|us|everyone|off|out|away|them|it|the|this|these|all|bottles|jars|everything) ?(?:mad|crazy|nuts|the)?\b/,
  },
  {
    entry: 'honey_babies',
    says: both('honey|miele|mead', BABY),
    unless: /\bhoney ?bab(?:y|e)|\bbaby (?:figs?|pears?|pineapples?)/,
  },
  {
    entry: 'children',
    says: both(
      'bab(?:y|ys|ies)|infants?|toddlers?|newborns?|teething|dummy|pacifier|neonat[oaie]|lattant[ei]|ciuccio',
      'brandy|whisk(?:y|ey)|rum|gin|vodka|liqueur|alcohol|spirits?|limoncello|sloe gin|liquore|grappa|alcol|nocino',
    ),
    unless: /\bbaby (?:shower|figs?|pears?|pineapples?|carrots?|leaf|bottles?)/,
  },
  {
    entry: 'children',
    says: words(
      '(?:spoon|spoonful|sip|taste|drop|glass|drink|shot|bit|little) (?:for|to) (?:the |my |our )?(?:kids?|children|little ones|toddlers?|teens?|teenagers?)|' +
        '(?:my|our|the) (?:teens?|teenagers?|kids|children|little ones)(?=.{0,40}\\b(?:can|may|could)\\b.{0,10}\\b(?:taste|try|sip|drink)\\b)|' +
        '(?:liqueur|boozy|alcohol\\w*|limoncello|sloe gin)(?: \\w+){0,3} (?:school|nursery|playgroup|childrens)',
    ),
  },
  {
    entry: 'giving_away',
    says: words(
      'check(?:ing)? (?:ids?|ages?)|proof of age|(?:what|which) age|(?:how old|old enough)(?=.*\\b(?:fair|drink|stall|have|taste|serve)\\b)|legal age|minimum age|(?:a|da) che eta',
    ),
  },
  {
    entry: 'pets',
    says: words(
      `(?:give|giving|feed|feeding|let|safe for|ok(?:ay)? for|fine for|bad for|good for|throw|dare|darle|dargli|darne)(?=.{0,40}(?<![\\p{L}])(?:${ANIMAL})(?!\\p{L}))|` +
        `(?:${ANIMAL}) (?:\\w+ ){0,2}(?:have|eat|drink|lick|licks|try|tries|taste|mangiare|bere|leccare|(?:likes|loves) (?:\\w+ )?(?:${DRINK}))`,
    ),
    unless: /\b(?:give|feed|keep) .{0,25}(?:away from|out of reach of)|hangover|hair of the dog/,
  },
  {
    entry: 'pets',
    says: both(
      '(?:al|alle|ai|agli) (?:cane|cani|gatto|gatti|galline|conigli|maiali|cavalli)',
      `${DRINK}|ciliegie|amarene|frutta|prugn\\w+|bucce|uva|uvetta`,
    ),
  },
  {
    entry: 'dry_guests',
    says: words(
      '(?:recovering|ex|former|dry) alcoholics?|alcoholics anonymous|in recovery|(?:is|been|hes|shes|im|am|are|went|gone|getting|now|staying) sober|teetotal\\w*|sobriety|on the wagon|' +
        '(?:doesnt|dont|does not|cant|no longer|stopped) drink(?:ing)?(?: (?:alcohol|any more|anymore|at all))?(?=.*\\b(?:cake|guests?|friends?|serve|give|without|food|dessert|trifle)\\b)|' +
        'ex alcolist[ai]|alcolist[ai]|astemi[oaie]|ha smesso di bere',
    ),
  },
  {
    entry: 'home_distilling',
    says: words(
      '(?:how|can|could|may|should|do|i|we|to|lets|let us|ill|build|make|try|want|going)(?: \\w+){0,4} (?:re ?)?distil(?:l|ling)?|(?:build|make|buy|run) (?:a|my own|my|an) (?:pot |home |little |small )?still|' +
        '(?:air ?still|reflux(?: column)?)(?!.*\\b(?:vodka|gin|rum|spirit|whisk(?:y|ey)|\\d+ ?%))|turbo yeast|re ?distil(?:l|led|ling)?(?= (?:the|my|it|this|that|some))|test[ae] (?:e cod[ae]|della distillazione)|distillare|ridistillare|distillator[ei]|distillo|distilliamo|alambicc\\w+',
    ),
    unless: /\b(?:distilled|still (?:life|warm|hot|cold|good)|air still (?:there|in))\b/,
  },
  {
    entry: 'herb_oil',
    says: words(
      '(?:garlic|herbs?|chill?i(?:es)?|tomato(?:es)?|basil|rosemary|aglio|erbe|peperoncin[oi]|basilico|rosmarino|pomodor[oi])(?: \\w+){0,3} (?:in|under|sotto|con|nell)(?: \\w+){0,2} ?(?:oil|olio)|' +
        '(?:garlic|herb|chill?i|basil|rosemary) oil(?! (?:drops?|ml))|(?:aglio|erbe|peperoncin[oi]|basilico|funghi|verdure|melanzane) sott ?olio|olio (?:all?|al|alle) ?(?:aglio|peperoncino|erbe|basilico)',
    ),
  },
  { entry: 'garlic', says: words('botulis\\w+|botulin\\w*|botulism\\w*') },
  {
    entry: 'selling',
    says: words(
      '(?:can|may|could|should|want to|like to|going to|legal to|allowed to|permission to|license to|licence to) (?:i |we )?(?:\\w+ )?sell|(?:i|we) sell (?:it|them|my|our|bottles?|some)|(?<!found |read |saw |seen |bought |got |ordered |recipe |found (?:this|it|that|one) |(?:read|saw|got) (?:this|it|that|one) )(?:on (?:the )?(?:internet|web)|online)|' +
        'price (?:for|of|per) (?:a|each|one|the) (?:\\w+ )?(?:bottle|glass)(?=.*\\b(?:fair|stall|market)\\b)|(?:posso|possiamo|si puo|vorrei|voglio) vendere|vendere il|vendo (?:il|la|i|le|una)',
    ),
  },
  {
    entry: 'lead_crystal',
    says: both(
      'lead ?crystal|glazed|earthenware|clay pots?|terracotta|coccio|crystal(?= (?:decanter|carafe|bottle|jar|glass))|pewter|lead glazed?|cristallo|peltro|piombo',
      'keep|keeping|stor(?:e|ing|age)|years?|months?|weeks?|leave|leaving|age|ageing|aging|conserv\\w+|tener\\w*|tengo|ann[oi]|mes[ei]|settiman[ae]|macerar\\w*|steep\\w*',
    ),
    unless: /\bcrystal clear\b/,
  },
  {
    entry: 'pans',
    says: words(
      '(?:galvani[sz]ed|zinc|copper|alumin(?:i)?um|brass|cast iron|iron) (?:\\w+ )?(?:pots?(?! still)|pans?|buckets?|kettles?|bowls?|tubs?|barrels?|jugs?|vats?)|' +
        '(?:pentol[ae]|secchi[oa]?|paiol[oi]|recipient[ei]|tin[oi]|brocc[ah]e?) (?:(?:di|in) (?:rame|alluminio|ottone|ghisa|ferro|zinco)|zincat[oaie])',
    ),
    unless:
      /\b(?:went|gone|turned|turn|grey|gray|black|tastes?|syrup|sugar|sciroppo|zucchero)\b|\bdi (?:vetro|acciaio|plastica|legno)\b/,
  },
  {
    entry: 'reuse_bottles',
    says: both(
      '(?:cola|coke|soda|soft drink|water|lemonade|squash|milk) bottles?|bottigli[ae] (?:dell |d |di )?(?:acqua|cola|aranciata)',
      '9[0-7]|spirits?|alcohol|alcol|alcool|strong',
    ),
    unless: /\bplastic|plastica\b/,
  },
  { entry: 'plastic', says: both('pvc|hose|garden hose|polystyrene|styrofoam|polistirolo', DRINK) },
  {
    entry: 'plastic',
    says: words(
      '(?:paint|detergent|chemical|petrol|fuel|bleach|cleaner|motor oil|antifreeze) (?:buckets?|canisters?|drums?|cans?|containers?|jerry ?cans?)|secchi[oa]? (?:della|di|da) (?:vernice|pittura)|tanica',
    ),
  },
  {
    entry: 'egg',
    says: words(`advocaat|egg ?nog|(?:raw eggs?|yolks?|tuorl[oi]|uov[oa] crud[aoe])(?=.*(?:${DRINK}|keep|fridge))`),
    unless: /\bwhites?\b/,
  },
  {
    entry: 'strong_neat',
    says: both(
      'shots?|neat|straight|undiluted|drinking (?:game|contest)|chug|down it|liscio|(?:bere|berlo|bevo) puro|a goccia',
      '(?:6[1-9]|[789]\\d)(?: ?%| percent| gradi| proof)?',
    ),
    unless:
      /\b(?:straight (?:away|into|in|to|from|after|on)|pour|dilut\w+|plan|recipe|litres?|ml|\d+ (?:g|lemons?|oranges?))\b/,
  },
  {
    entry: 'how_much_drink',
    says: words(
      'how many (?:glasses|shots|drinks|units|bottles)(?: \\w+){0,4} (?:can i have|can we have|should i|is safe|are safe|is ok|are ok|until|before|to get|an evening|a night|a day|a week|drunk|legless)|' +
        '(?:a|one|two|three|every) (?:\\w+ )?(?:bottle|glass|glasses|liqueur|shot|shots|nip) (?:a|every|each|per) (?:day|night|evening)|drinking (?:game|contest)|how (?:drunk|much to get drunk)|quanti bicchieri(?! (?:da|per|escono|vengono|si fanno))|quanto (?:posso|si puo|ne posso) bere',
    ),
  },
  {
    entry: 'posting',
    says: words(
      '(?:mail|post|ship|send|sending|posting|spedire|spedisco|mandare) (?:a|an|the|my|some|two|three|una|un|il|la|due|\\d+) (?:\\w+ ){0,3}?(?:bottles?|limoncello|liqueurs?|spirits?|bottigli[ae]|liquore)(?=.*\\b(?:to|a|in|by|per)\\b)|fly(?:ing)? with|(?:hand|hold) luggage|on (?:a|the) plane|in aereo|bagaglio (?:a mano|da stiva)',
    ),
  },
  {
    entry: 'foraging',
    says: words(
      `(?:mystery|unknown|unidentified|strange) (?:\\w+ )?(?:${WILD})|(?:${WILD}) (?:[\\w,]+ ){0,6}(?:no idea what|dont know what|not sure what|che non conosco|non so cosa)|` +
        `(?<=^|(?:those|some|the|these|red|black|shiny|white|blue|small|found|picked|few|ross[aeo]|ner[aeo]|delle|una|le) )(?:${WILD}) (?:\\w+ ){0,5}(?:by|from|near|along|in|nel|dal|lungo|del) (?:the |a |il |la )?(?:canal|river|hedge|hedgerow|churchyard|cemetery|ditch|roadside|railway|bosco|cimitero|fiume|siepe|fosso)`,
    ),
  },
  {
    entry: 'flame',
    says: words(
      '(?:light|lighting|lit|accend\\w+) (?:(?:the|a|my|la|il|lo|un) )?(?:sambuca|shots?|rum|brandy|absinthe|assenzio|vodka|liqueur|liquore|grappa)(?! (?:up|coloured))',
    ),
  },
  {
    entry: 'flame',
    says: both('smok(?:e|ing) (?:while|when|near|next to)|cigarettes?|fum(?:o|are|ando) (?:mentre|vicino)', DRINK),
  },
  {
    entry: 'flame',
    says: both(HOT, `${DRINK}|it (?:in|before|on)|oranges?|lemons?`),
    unless:
      /\b(?:syrup|sugar|sciroppo|zucchero|steril\w+|wash|dry|roast|toast|boiled off|caramel|honey|miele|jam|marmalade|water bath|cook(?:ed)? with|glue|label|melt)\b/,
  },
]

/** The entry that answers what a sentence asks or tells of a danger to people, or null. */
export function dangerAsked(text: string): string | null {
  const said = plain(text)
  return ASKED.find(({ says, unless }) => says.test(said) && unless?.test(said) !== true)?.entry ?? null
}

/** Asked of methanol as such, not of a spirit to be used. */
const OF_METHANOL =
  /\b(?:is there|are there|any|contains?|does|can|could|form|forms|formed|made|make|makes|danger\w*|what is|whats|risk|risks|poisoning|si forma|contiene|rischio|pericol\w+|c e|ce)\b/

/** `Is there methanol in it?`: what steeping makes is asked, no spirit is named. */
export const isOfMethanol = (text: string): boolean => {
  const said = plain(text)
  return (
    /\b(?:methanol|metanolo)\b/.test(said) &&
    OF_METHANOL.test(said) &&
    !/\b(?:add|adding|put|bit of|litre|ml|metto|aggiung\w+)\b/.test(said)
  )
}
