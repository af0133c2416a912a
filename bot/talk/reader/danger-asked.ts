import { plainWords } from '../../../core/spelling/normalise-name.ts'
import { withoutAccents } from '../lexicon/plain-text.ts'
import { isInAlready, isNothingHad } from './danger-told-more.ts'
import { HEAT_FOR_SPEED, NO_SPIRIT_HEATED } from './heat-for-speed.ts'

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
  'paracetamol|acetaminophen|valium|xanax|prozac|zoloft|ritalin|viagra|\\w+zepam|\\w{3,}(?:cillin|cillina|mycin|micina|prazole?o?|statin|statina|azepam|olol)|ibuprofen|aspirin|warfarin|statins?|antibiotics?|antidepressants?|ssris?|blood thinners?|anticoagulants?|beta ?blockers?|' +
  'antihistamines?|codeine|tramadol|sertraline|fluoxetine|citalopram|lithium|methotrexate|diazepam|painkillers?|insulin|metformin|prescription|medications?|(?:my|his|her|their|our|take|takes|taking|on|heart) medicines?|' +
  '(?:blood pressure|heart|sleeping|thyroid|epilepsy|allergy|cholesterol|hay fever|migraine|diabetes|water|anxiety|pain) (?:tablets?|pills?|medicines?|meds|medication)|(?:my|his|her|their|on|the) (?:meds|tablets|pills)|(?:tablets?|pills?) (?:for|against) (?:my|his|her|the)|' +
  'tachipirina|paracetamolo|aspirina|antibiotic[oi]|antidepressiv[oi]|statin[ae]|cumadin|coumadin|cortisone|anticoagulant[ei]|insulina|antidolorific[oi]|' +
  '(?:pillol[ae]|pastigli[ae]|compress[ae]|medicin[ae]|farmac[oi]) (?:per|del|della|contro)|farmac[oi]|medicinal[ei]|psicofarmac[oi]|ansiolitic[oi]|sonnifer[oi]|antistaminic[oi]|antiepilettic[oi]|la pillola|' +
  '(?:prend|assum)\\w+ (?:\\w+ ){0,2}(?:medicin[ae]|pillol[ae]|pastigli[ae]|compress[ae]|gocce per)|facendo (?:una|la) cura|cura antibiotica|in terapia(?= con|[?.,!]|$| (?:e|puo|posso))|' +
  '(?:take|takes|taking|took|had|having|prescribed) (?:\\w+ ){0,2}(?:medicine|medication|tablets(?! of)|pills?|a tablet|painkiller)|prescribed|(?:on|takes?|taking|using) (?:\\w+ )?(?:steroids?|hrt|the pill|ozempic|wegovy|mounjaro|contracepti\\w+|nitrates?|antipsychotics|opioids?|opiates)|' +
  'sildenafil|viagra|naproxen|diclofenac|prednisolone|morphine|gabapentin|pregabalin|ritalin|(?:take|takes|taking|on) (?:\\w+ )?(?:meds|medicines)'

const ANIMAL =
  '(?<!hot )dogs?(?! (?:rose|violet|wood))|cats?|pupp(?:y|ies)|kittens?|hens|chickens|pigs?|horses?|rabbits?|goats?|hamsters?|guinea pigs?|parrots?|hedgehogs?|' +
  'ducks|geese|ponys?|ponies|donkeys?|sheep(?! milk)|lambs|ferrets?|tortoises?|budgies?|pets?|' +
  'can[ei]|gatt[oi]|gattin[oi]|cagnolin[oi]|gallin[ae]|conigli[oi]?|maial[ei]|cavall[oi]|capr[ae]|capretta|pecor[ae]|anatr[ae]|oche|asin[oi]|pappagall[oi]|criceti?|furett[oi]|tartarug[ae]|animal[ei]|uccell[oi]|uccellin[oi]|polli'

/** Those too that help themselves in the hedge. */
const BEAST = `${ANIMAL}|birds?(?! cherr)|squirrels?|fox(?:es)?|badgers?|wildlife|animals?`

const BABY =
  'bab(?:y|ys|ies)|infants?|newborns?|\\d+ (?:months?|mos?) old|months? old|under (?:one|1)|first birthday|dummy|pacifier|teething|ciuccio|neonat[oaie]|lattant[ei]|\\d+ mesi|bimb[oaie]'

/** What stands on fire or in a machine, and is no syrup. */
const HOT =
  'microwav(?:e|ed|ing)|microonde|instant ?pot|pressure ?(?:pot|cook|cann)(?:er|ing|ed)?|deep ?fr(?:y|ied|ying|yer)|(?:hot|boiling|hotter) oil|olio (?:bollente|caldo)|friggere|pentola a pressione|sous ?vide|flamb\\w*|blow ?torch|' +
  '(?:set|setting|light|lighting) (?:(?!mouth|throat|tongue|lips)\\w+ ){0,3}(?:on fire|alight)|(?:on|over) (?:the |a )?(?:hob|stove|gas|cooker|burner)|(?:sul|al|sopra il) (?:fornello|gas|fuoco)|dare fuoco|(?:in|into|inside) (?:the |a |my )?(?:\\w+ )?(?:oven|slow ?cooker|air ?fryer)|(?:nel|in) forno'

const HEATED =
  '(?:re ?)?(?:boil(?:ing)?(?! water| bath)|heat(?:ing)?(?! (?:matters?|affects?|hurts?|damages?|does|is))|simmer(?:ing)?|cook(?:ing)?(?! (?:with|apples?|pears?|chocolate|oil))|microwav(?:e|ing)|stew(?:ing)?)|warm(?:ing)? (?:it|them|this|the|my|up)|(?:bring|brought|bringing)(?: \\w+){0,4} to (?:a|the) (?:boil|simmer)|' +
  '(?:ri)?(?:boll|scald)(?:o|ire|irlo|irla|are|arlo|arla)|(?:cuocere|cuocerlo|sobbollire|riscaldare|riscaldarlo)'
const HEATED_ONCE = '(?:re ?)?(?:boiled|heated|simmered|cooked|microwaved|warmed)|bollito|scaldato|cotto'

const BOOZE =
  '(?:booze|spirits?|alcohol|liqueurs?|liquor|vodka|gin|rum|brandy|bourbon|tequila|mezcal|whisk(?:y|ey)|grappa|everclear|moonshine|alcol|alcool|liquore|9[0-7])'

/** Heated, and with what; what is done apart, before or after is none. */
const TOGETHER =
  '(?: (?!then|before|after|until|once|when|let|cool|cooled|cold|off|mix|top|dilute|cover|fill|steep|infuse|add|prima|poi|dopo|finche|senza|without)[\\w%]+){0,6}? ' +
  `(?:with|and|con|nella?|in) (?:(?:the|my|some|its|any|all|that|la|il|lo|l|un|po|di) ){0,2}${BOOZE}`

/** `Heated the vodka with the sugar`: the spirit is named first. */
const HEATED_FIRST =
  `(?:up )?(?:(?:the|my|some|all|that|our|la|il|lo|l|un|po|di) ){0,2}${BOOZE}(?: up)? (?:with|and|con|e|insieme) ` +
  '(?:(?:the|my|some|its|all|a|la|il|lo|l|un|po|di|with|con) ){0,2}(?:sugar|syrup|honey|zucchero|sciroppo|miele)(?! (?:apart|separately|separatamente))'

/** What somebody has had for long, or has got over. */
const ILLNESS =
  'asthma(?:tic)?|inhalers?|epilep\\w+|heart (?:condition|disease|failure|trouble|problems?|murmur|attacks?)|(?:weak|bad|dodgy) (?:heart|liver)|pacemaker|(?:high|low) blood pressure|blood pressure(?! (?:tablets?|pills?|meds))|hypertension|liver (?:disease|trouble|problems?|failure|transplant)|cirrhosis|hepatitis|kidney (?:disease|trouble|problems?|failure|stones?)|gout|chemo(?:therapy)?|cancer|(?:a|her|his) stroke(?! of)|strokes|seizures|fits|(?:stomach|peptic) ulcers?|ulcers|gastritis|acid reflux|pancreatitis|vertigo|' +
  'asma|asmatic[oai]|epiless\\w+|epilettic\\w+|cardiopatic\\w+|mal(?:ato|ata) di cuore|problemi di (?:cuore|fegato|reni|stomaco)|pressione alta|ipertes\\w+|cirrosi|epatite|gotta|chemio\\w*|tumore|ictus|infarto|ulcera|gastrite|reflusso|pancreatite|vertigini'

const PERSON =
  'he|she|hes|shes|they|theyre|him|her|my|our|his|mum|mom|dad|nan|gran|granny|grandad|grandpa|uncle|aunt|wife|husband|brother|sister|mother|father|neighbour|mate|cousin|friend|guest|guests|somebody|someone|anybody|anyone|who|people|i|ive|im|a|mio|mia|nostr[oa]|amic[oa]|ospite|qualcuno|zi[oa]|nonn[oa]|ho|ha|chi'

const WOMAN =
  'wife|girlfriend|partner|sister|daughter|mum|mom|aunt|cousin|niece|friend|guest|neighbour|neighbor|colleague|she|shes|who|whos|somebody|someone|anyone|mother|woman|women|lady|in law|couple|they|theyre|we|were'

const PEOPLE = `${WOMAN}|boyfriend|husband|brother|son|dad|father|uncle|nephew|mate|man|men|boss|gran|nan|granny|grandad|grandpa|he|hes|ive|im|i|people|guests`

const ALLERGEN =
  '(?:tree ?)?nuts?|almonds?|walnuts?|hazelnuts?|pistachios?|peanuts?|cashews?|pecans?|dairy|milk|cream|eggs?|lactose|gluten|wheat|soya?|sesame|mustard|celery|sulphites?|sulfites?|strawberr(?:y|ies)|citrus|kiwi|honey|fish|shellfish'

const ALLERGENE =
  'noc[ie]|nocciol[ae]|mandorl[ae]|pistacch[io]+|arachid[ei]|latticini|latte|panna|uov[ao]|lattosio|glutine|grano|soia|sesamo|sedano|senape|solfiti|fragol[ae]|agrumi|miele'

/** What is had of it, or asked for. */
const TIPPLE =
  '(?:an?|one|two|three|the|\\d+|another|little|small|my|some) (?:\\w+ ){0,2}?(?:glass(?:es)?(?! (?:jar|bottle|lid))|sips?|shots?|drops?|tastes?|nips?|drinks?|tots?)|(?:after|before|with) (?:one|two|an? (?:small|little|quick) one|tasting|drinking|having|it)|' +
  '(?:have|had|having|try|taste|drink|drinking|sip) (?:one|it|some|a|any|this|too)|(?:can|may|could) (?:i|he|she|they|we) (?:taste|try|drink)|' +
  'bicchier\\w+|sors[oi]|gocc\\w+|assaggi\\w*|provarl\\w+|ber(?:e|lo|la|ne)|bevut\\w+'

/** What is driven, ridden or worked with. */
const MACHINE =
  'driv(?:e|es|ing|er|ers)|(?:the|my|our|a|by) car(?! (?:boot|park))|motor ?(?:bike|cycle)|scooter|moped|(?:on|ride|riding|by|take) (?:my |the |a )?(?:bike|bicycle)|cycl(?:e|ing)|minibus|lorry|tractor|fork ?lift|chain ?saw|(?:circular|band|table|power) saw|power tools?|' +
  'mow(?:er|ing)?|machines|machinery|(?:fly|pilot)(?:ing)? (?:a|the|my)|sail(?:ing)?|up (?:a|the) ladder|go(?:ing)? (?:for a )?swim(?:ming)?|over the limit|drink driv(?:e|ing)|breathaly\\w+|' +
  'guid(?:are|o|i|ando|atore|iamo|ano)|chi guida|(?:la|in|mia) macchina|(?:in|l) auto|in moto|motorino|monopattino|in bici(?:cletta)?|motosega|macchinari|trattore|muletto|al volante|patente'

const WILD =
  'lea(?:f|ves)|flowers?|mushrooms?|fogli[ae]|fior[ei]|berr(?:y|ies)|roots?|plants?|herbs?|bush|fruits?|bacch[ae]|bacca|radic[ei]|piant[ae]|erb[ae]|frutt[io]'

/** What wild things are taken for by their looks. */
const LOOK_ALIKE =
  '\\w*(?:currants?|berr(?:y|ies)|cherr(?:y|ies)|sloes?|plums?|damsons?|bullaces?|haws?|hips?|grapes?|garlic|parsley|carrots?|fennel|celery|cress|mint|sage|ribes|mirtill[oi]|lampon[ei]|mor[ae]|ciliegi[ea]|prugnol[ei]|sambuco|aglio|prezzemolo|carot[ae]|finocchi[oi])'

/** What leaves some of itself behind in whatever held it. */
const CHEMICAL =
  'bleach|detergent|washing up liquid|washing liquid|fabric softener|cleaner|cleaning fluid|paint|varnish|creosote|white spirit|turps|turpentine|petrol|gasoline|diesel|fuel|kerosene|engine oil|motor oil|antifreeze|' +
  'screen ?wash|weed ?killer|pesticide|insecticide|slug pellet|fertili[sz]er|plant feed|shampoo|chemicals?|acid|ammonia|glue'
const CHIMICO =
  'candeggina|varechina|detersivo|ammorbidente|ammoniaca|vernice|pittura|smalto|acquaragia|trementina|benzina|gasolio|olio motore|antigelo|diserbante|pesticida|insetticida|concime|shampoo|acido'

/** Where fire is, and what stands or is poured beside it. */
const BY_FIRE =
  '(?:next to|near|beside|by|close to|against|on top of|over|onto|above|in front of) (?:(?:the|a|an|my|our|open|lit|hot|wood|log|gas|naked|little) )*(?:gas|hob|stove|cooker|fire|fireplace|wood ?burner|candles?|heater|barbecue|bbq|bonfire|flame|aga|pilot light)|by candle ?light|with (?:the |some )?candles (?:lit|burning)|' +
  '(?:vicino|accanto|davanti|sopra|di fianco) (?:al|alla|allo|all|ai|alle|il|la|a una|a un) (?:\\w+ )?(?:stufa|fornello|fornelli|camino|fuoco|caminetto|candel[ae]|fiamma|gas|griglia)|a lume di candela'
const BY_HEAT =
  '(?:next to|near|beside|by|against|on top of|on|onto|above|in) (?:(?:the|a|my|our|hot) )*(?:boiler|radiator|furnace|heating pipes?|airing cupboard)|(?:vicino|accanto|sopra|sul) (?:al|alla|il|la|a)? ?(?:caldaia|termosifone|radiatore|calorifero)'
const STANDS =
  '(?:mov|shift|stood|stand|put|keep|kept|leav|left|stor|sits|sat|sitting|filter|strain|sweeten|bottl|pour|shook|shak|tast|spost|mess|teng|tenut|lasci|filtr|travas|imbottigli|scoss|agit)\\w*'
const ONLY_ASKED =
  /\?|^ ?(?:can|could|should|is|are|may|does|do|will|would|what|how|where|posso|puo|va bene|dove|meglio)\b|\b(?:away from|far from|not|never|dont|lontan[oa]|mai|syrup|sugar|sciroppo|zucchero|jam|steril\w+)\b/

const CHEMIST = '(?:disulfiram|antabuse|antabus|etiltox|metronidazole?o?|flagyl|tinidazole?o?)'

const NO_LABEL =
  'un ?label\\p{L}*|unmarked|(?:without|no|lost its|missing its) (?:an? |any |the |its )?labels?|labels? (?:has |had |is |was )?(?:come|came|fallen|fell|gone|missing|peeled|washed|worn)|(?:unknown|mystery) bottle|(?:senza|priv[oa] di) etichetta'
const FOUND =
  'found|find|came across|there(?:s| is| was)|gave|given|left|inherited|got|have|old|trovat\\p{L}*|c era|regalat\\p{L}*|dat[oa]|ereditat\\p{L}*|vecchi[oa]'
const AS_SPIRIT =
  '(?:smell|stink|reek)\\p{L}* (?:\\p{L}+ ){0,3}(?:spirits?|alcohol|strong|vodka|gin|booze|meths)|clear (?:liquid|stuff)|(?:odora|puzza|sa|odore) (?:\\p{L}+ ){0,2}(?:alcol|alcool|spirito)|(?:of|with) (?:\\p{L}+ )?(?:spirits?|alcohol)|liquido (?:trasparente|chiaro)|(?:di|d) (?:alcol|alcool|spirito)'

interface Asked {
  /** An entry of the handbook. */
  readonly entry: string
  readonly says: RegExp
  /** Said of something else. */
  readonly unless?: RegExp
}

const words = (text: string): RegExp => new RegExp(`(?<![\\p{L}\\d])(?:${text})(?![\\p{L}\\d])`, 'u')
// Anchored, so that it is tried once and not from each letter.
const both = (one: string, other: string): RegExp =>
  new RegExp(`^(?=.*(?<![\\p{L}\\d])(?:${one})(?![\\p{L}\\d]))(?=.*(?<![\\p{L}\\d])(?:${other})(?![\\p{L}\\d]))`, 'u')

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
  {
    entry: 'no_label',
    says: new RegExp(
      `^(?=.*(?<!\\p{L})(?:${NO_LABEL})(?!\\p{L}))(?=.*(?<!\\p{L})(?:${FOUND})(?!\\p{L}))(?=.*(?<!\\p{L})(?:${AS_SPIRIT})(?!\\p{L}))`,
      'u',
    ),
    unless:
      /\b(?:(?:my|our) (?:own )?(?:\w+ )?(?:liqueurs?|limoncello|jars?|batch\w*|cordial)|labels? (?:for|to print)|stick|print|mio liquore|mia bottiglia)\b/,
  },
  { entry: 'no_drop', says: words(CHEMIST) },
  {
    entry: 'medicines',
    says: words(DRUG),
    unless:
      /\b(?:cough|home) (?:medicine|remedy)|medicine (?:bottle|cabinet|chest)|old medicine|(?:campden|steril\w+|dishwasher|effervescent) (?:tablets?|pills?)\b/,
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
        'aspett\\w+ un (?:bambin[oa]|figli[oa])|sono (?:al|di) (?:\\w+ )?(?:mese|mesi|settimane)|(?:im|i am|shes|she is) \\d+ (?:weeks|months)(?=.*\\b(?:sips?|glass|drink|taste|drop|ok|safe)\\b)|incinta|in gravidanza|allatt\\w+|dolce attesa|futura mamma|future mamme|partoris\\w+|partorir\\w*|cerc\\w+ (?:\\w+ ){0,2}(?:un )?(?:bambino|figlio)|rimanere incinta|(?:moglie|sorella|vicina|amica|ospite|figlia|cognata|cugina|lei|sono) (?:e )?(?:al|alla) \\w+ (?:mese|settimana)|' +
        `(?:im|i am|(?:${WOMAN})s?)(?: is| are| am| who is| whos)? expecting(?=$|[?.!,]| (?:a (?:baby|child|little)|(?:her|our|their|his) (?:first|second|third|next|baby)|twins|again|and|so|in|can|could|may|is|would|too|another|soon|or|but|right|what|does|should|wants?|have|has|had|asked|asks|keeps|allowed|try|taste|drink|the|an? (?:sip|drop|taste|glass|small|little|drink)|to (?:drink|have|taste|try))(?!\\p{L}))|` +
        `(?:${WOMAN})(?: is| are| s)? due (?:in (?:\\w+ )?(?:jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec|spring|summer|autumn|winter|weeks|months)\\w*|any day|next month|soon)|expectant (?:${WOMAN})|(?:mum|mom|mother)s? to be|` +
        'be pregnant|\\d+ weeks (?:along|gone)|trimester|having (?:a|her|our|another) bab(?:y|ies)|baby (?:is )?on the way|with child|try(?:ing)? (?:for a (?:baby|child)|to (?:conceive|get pregnant|fall pregnant|have a baby))|(?:doing|having|going through) ivf|' +
        '(?:breast|chest) ?(?:feed|feeds|feeding|fed|milk)|lactating|(?:express|pump)ing milk|feed(?:ing|s)? (?:the|my|her|our) (?:baby|newborn|little one) (?:myself|herself|too|still)|nursing (?:mum|mom|mother|woman|women|a baby|her|my|the|our|friend|guest)\\w*|' +
        `(?:im|i am|ive been|${WOMAN})(?: is| are| s)? (?:still )?nursing(?! (?:a drink|a beer|a glass|home|hangover))`,
    ),
  },
  {
    entry: 'allergens',
    says: words(
      'allerg(?:y|ic|ies)|anaphyla\\w+|epi ?pen|lactose|intoleran(?:t|ce|ces)|allergi[ac]\\w*|allergie|intolleran\\w+|(?:in|get|gets|got|has|have|had|with) hives|hives (?:from|if|when)|orticaria|' +
        `(?:cant|cannot|can not|mustnt|must not|may not|shouldnt|doesnt|dont|not allowed to|unable to) (?:have|eat|take|touch|tolerate) (?:\\w+ ){0,2}?(?:${ALLERGEN}(?<!gluten|wheat))|` +
        `(?:${PEOPLE}) (?:\\w+ ){0,2}?(?:react(?:s|ed)? (?:badly |strongly )?to|sensitive to(?! (?:light|heat|cold|the smell|bitter|sweet|alcohol))|(?:get|gets|got|come|comes|came|break|breaks|broke) (?:\\w+ ){0,3}?(?:rash|welts|blotches))|` +
        `(?:swells?|swell|puffs?|blows?) up (?:\\w+ ){0,3}?(?:${ALLERGEN})|(?:throat|face|lips|tongue|mouth) (?:swells?|itch(?:es)?|tingles?|closes?)(?: up)? (?:from|with|after|when|if|at)|(?:gonfia|gonfiano) (?:la (?:faccia|gola|lingua)|le labbra) (?:con|se|quando)|` +
        `non (?:puo|posso|possono|deve|devono|toller\\w+) (?:\\w+ ){0,2}?(?:${ALLERGENE})(?<!glutine)|non toller\\w+|sensibil[ei] (?:al|alle|ai|agli|alla)|(?:mi|gli|le) vien\\w+ (?:\\w+ ){0,2}(?:sfogo|eruzione|bolle) con`,
    ),
  },
  {
    entry: 'diabetes',
    says: words('coeliacs?|celiacs?|gluten|wheat allergy|cant have wheat|celiac[oaih]e?|celiach[ie]|glutine'),
  },
  {
    entry: 'driving',
    says: words(
      '(?:drive|drove|driven) home|drove (?:back|off|there|after|straight)|(?:ho|abbiamo|ha|sono andat[oa] a) guid\\w+|(?:before|after|while|and|then|still|are|am|is|im|without|of) driving|(?:to|can i|can we|could i|may i|and|then|before i|i|we|ill|should i) drive|' +
        '(?:ride|cycle|cycling|biking)(?: \\w+){0,2} (?:home|back)|chainsaw|operate (?:\\w+ ){0,2}machin\\w+|motosega|drive (?:us|him|her|them|everyone|everybody) (?:all )?(?:back|home)|designated driver|behind the wheel|breathaly\\w+|guidare|mi metto al volante|al volante|(?:prima|dopo) (?:di )?guid\\w+',
    ),
    unless:
      /\bdriv(?:e|es|ing) (?:me|us|everyone|off|out|away|them|it|the|this|these|all|bottles|jars|everything)\b(?! (?:all )?(?:back|home)\b)|\b(?:reminders?|nudges?|messages|pings|promemoria)\b.{0,60}\b(?:i|we|ill|well|to) drive (?:to|up|down|over|out|across|through)\b(?!.*\b(?:drunk|drink|glass|taste|sip|after)\b)/,
  },
  {
    entry: 'driving',
    says: both(MACHINE, TIPPLE),
    unless:
      /\bdriv(?:e|es|ing) (?:me|us|everyone|them|it) ?(?:mad|crazy|nuts)|(?:ice|washing|sewing|coffee|bottling|vending) machines?|\b(?:leave|left|keep|carry|transport) (?:\w+ ){0,4}in (?:the|my) car\b/,
  },
  {
    entry: 'hangover',
    says: words(
      'hang ?overs?|hung ?over|hair of the dog|morning after (?:pills?|cure|feeling)|postumi|(?:dopo ?)?sbornia|dopo ?sbronza|' +
        '(?:head ?ache|(?:head|tete|skull) (?:is |s )?(?:killing|pounding|splitting|thumping|banging|throbbing|hurts?|aches?)|(?:killing|pounding|splitting|thumping) head(?:ache)?|rough|grim|rotten|dreadful)(?: \\w+){0,4} (?:after|from|since|because of)(?: \\w+){0,3} (?:last night|yesterday|limoncello|liqueur|gin|vodka|the (?:fair|party|tasting)|too much|drinking|night before)|' +
        'mal di testa (?:dopo|da|per|del giorno dopo)(?= .*(?:bevut|ber|limoncello|liquore|sera|festa))',
    ),
    unless: /\d|\b(?:jars?|plan|recipe|name|called|label|infus\w+)\b/,
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
      'brandy|whisk(?:y|ey)|rum|gin|vodka|liqueur|alcohol|spirits?|limoncello|sloe gin|liquore|grappa|alcol|nocino|gums?|cough|colic|gengive|(?:a|one|the) bottle for',
    ),
    unless:
      /\b(?:christening|naming day|birthday|battesimo)\b|\bbaby (?:food|shower|figs?|pears?|pineapples?|carrots?|leaf|bottles?)/,
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
      `(?:give|giving|feed|feeding|let|safe for|ok(?:ay)? for|all right for|fine for|bad for|good for|poisonous to|toxic to|throw|threw|fed|gave|tossed|chucked|hurt|harm|kill|dare|darle|dargli|darne)(?=.{0,50}(?<![\\p{L}])(?:${BEAST})(?!\\p{L}))|` +
        `(?:can|may|could) (?:\\w+ ){0,2}?(?:birds?|squirrels?|animals?) (?:have|eat|drink|lick|try)|(?:${ANIMAL}) (?:wants?|would like|begs?|is begging|likes?|loves?) (?:some|a (?:lick|taste|sip|drop|bit|little))|` +
        `(?:drop|bit|some|little|sip|splash|spoon\\w*) (?:of (?:\\w+ ){1,3})?(?:in|into|on) (?:the |my |our )?(?:${ANIMAL})s? (?:\\w+ )?(?:milk|food|water|bowl|dish)|` +
        `(?:goccio|goccia|goccetto|po|sorso) (?:\\w+ ){0,4}(?:del|dello|della|dei|delle|degli) (?:${ANIMAL})|` +
        `(?:${ANIMAL}) (?:\\w+ ){0,2}(?:have|eat|drink|lick|licks|try|tries|taste|mangiare|bere|leccare|(?:likes|loves) (?:\\w+ )?(?:${DRINK}))`,
    ),
    unless: /\b(?:give|feed|keep) .{0,25}(?:away from|out of reach of)|hangover|hair of the dog/,
  },
  {
    entry: 'pets',
    says: both(
      `(?:al|allo|alla|alle|ai|agli|all) (?:mi[oae]i? )?(?:${ANIMAL})`,
      `${DRINK}|ciliegie|amarene|frutta|prugn\\w+|bucce|scorze|avanzi|uva|uvetta|dar(?:e|ne|lo|la|li|le)|fa(?:nno)? male|va bene|un po|lamponi|pericolos\\w+`,
    ),
  },
  {
    entry: 'dry_guests',
    says: words(
      '(?:recovering|ex|former|dry) alcoholics?|alcoholics anonymous|in recovery|(?:is|been|hes|shes|im|am|are|went|gone|getting|now|staying) sober|teetotal\\w*|sobriety|on the wagon|' +
        '(?:doesnt|dont|does not|cant|no longer|stopped) drink(?:ing)?(?: (?:alcohol|any more|anymore|at all))?(?=.*\\b(?:cake|guests?|friends?|serve|give|without|food|dessert|trifle)\\b)|' +
        `alcoholics(?! anonymous)|(?:an|was|were|is|former|known|dry) alcoholic(?=$|[?.!,]| (?:and|or|who|so|to|has|have|can|may|could|would|will|but|in|at|with|for|is|if|now|friend|guest|uncle|any|too|drink it|taste|try|want|wants)(?! (?:or not)))|in (?:the )?aa|aa meetings?|` +
        `(?:quit|quits|gave up|given up|giving up|gives up|stopped|packed in|swor[en] off|(?<!(?:boil|burn|cook|evaporat|driv|steam|cool)\\w* )off) (?:the )?(?:drinking(?! (?:tea|coffee|it|water|milk|cola|the|that|this|them))|drink|booze|sauce)|(?:drink|drinking|alcohol|booze) problems?|problems? with (?:drink|drinking|alcohol)|used to drink(?! (?:it|this|that|them|tea|coffee|a))|rehab|` +
        `(?:former|ex|heavy|problem) drinkers?|(?:${PEOPLE})(?: is| has| have| s| was)? (?:been )?(?:dry|clean) (?:for|since)|(?<!(?:boil|burn|cook|evaporat|driv|steam)\\w* )off alcohol|doesnt drink (?:any more|anymore)|relapse\\w*|` +
        'alcolist[ai]|alcolismo|alcolizzat[oaie]|alcolisti anonimi|astemi[oaie]|smess\\w+ (?:di|con) (?:bere|l alcol)|smett\\w+ di bere|non bev\\w+ piu|problem[ai] (?:con|di|d) (?:l )?(?:alcol|alcool|bere)|comunita (?:per|di recupero)|in recupero|(?:e|essere|stat[oa]|sono|rimast[oa]|rimanere) sobri[oa]|disintossica\\w+',
    ),
  },
  {
    entry: 'home_distilling',
    says: words(
      '(?:how|can|could|may|should|do|i|we|to|lets|let us|ill|build|make|try|want|going)(?: \\w+){0,4} (?:re ?)?distil(?:l|ling)?|(?:build|make|buy|run) (?:a|my own|my|an) (?:pot |home |little |small )?still|(?:a|an|his|her|our|their|own|the) (?:(?:small|little|old|copper|pot|home) )*still (?:in (?:the|his|her|our|their|a)|at home|of (?:his|her|their) own)|burn (?:(?:me|us|our|my|some|the) )*(?:own )?(?:spirit|schnapps|brandy|grappa|rakia|palinka) (?:from|of|out of)|' +
        '(?:air ?still|reflux(?: column)?)(?!.*\\b(?:vodka|gin|rum|spirit|whisk(?:y|ey)|\\d+ ?%))|turbo yeast|re ?distil(?:l|led|ling)?(?= (?:the|my|it|this|that|some))|test[ae] (?:e cod[ae]|della distillazione)|distillare|ridistillare|(?:re)?distilled (?:it|them|the \\w+)(?! (?:water|spirit|vodka))|(?:ho|abbiamo|ha) (?:ri)?distillat[oaie]|distillator[ei]|distillo|distilliamo|alambicc\\w+',
    ),
    unless: /\b(?:distilled(?! (?:it|them|the)\b)|still (?:life|warm|hot|cold|good)|air still (?:there|in))\b/,
  },
  {
    entry: 'herb_oil',
    says: words(
      '(?:garlic|herbs?|chill?i(?:es)?|tomato(?:es)?|basil|rosemary|aglio|erbe|peperoncin[oi]|basilico|rosmarino|pomodor[oi])(?: \\w+){0,3} (?:in|under|and|with|sotto|con|nell|e)(?: \\w+){0,2} ?(?:oil|olio)(?! (?:lamp|paint))|' +
        '(?:garlic|herb|chill?i|basil|rosemary) oil(?! (?:drops?|ml))|(?:aglio|erbe|peperoncin[oi]|basilico|funghi|verdure|melanzane) sott ?olio|olio (?:all?|al|alle) ?(?:aglio|peperoncino|erbe|basilico)',
    ),
  },
  { entry: 'garlic', says: words('botulis\\w+|botulin\\w*|botulism\\w*') },
  {
    entry: 'selling',
    says: words(
      '(?:can|may|could|should|want to|like to|going to|legal to|allowed to|permission to|license to|licence to) (?:i |we )?(?:\\w+ )?sell|(?:i|we) sell (?:it|one|two)|sold (?:one|two|three|some|\\d+|a bottle|it|them)(?= (?:at|to|on|for|bottles?))|(?:i|we) sell (?:it|them|my|our|bottles?|some)|(?<!found |read |saw |seen |bought |got |ordered |recipe |found (?:this|it|that|one) |(?:read|saw|got) (?:this|it|that|one) )(?:on (?:the )?(?:internet|web)|online)|' +
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
    entry: 'lead_crystal',
    says: words(
      '(?:lead|pewter) (?:\\w+ )?(?:weights?|sinkers?|shot|pipes?|foil)|pes[oi] di piombo|piomb[oi] da pesca|piombin[oi]',
    ),
  },
  {
    entry: 'pans',
    says: words(
      '(?:galvani[sz]ed|zinc|copper|brass|rusty) (?:\\w+ )?(?:weights?|nails?|wires?|screws?|mesh|pipes?|bolts?|springs?|sieves?|colanders?|strainers?|taps?)|(?:chiod[oi]|fil[oi]|vit[ei]) (?:zincat[oi]|di rame|arrugginit[oi])|' +
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
    entry: 'reuse_bottles',
    says: words(
      `(?:${CHEMICAL}) (?:\\w+ )?(?:bottles?|cans?|tins?|tubs?|drums?|containers?|buckets?|filters?|strainers?|sieves?|funnels?|jars?|jugs?|sprayers?)|(?:${CHEMICAL}) (?:still|left) (?:in|on)|` +
        '(?:bottle|bucket|tub|container|filter|strainer|sieve|funnel|jar)s? (?:from the (?:paint|diy|hardware|chemical) (?:shop|store)|(?:that |which )?(?:once |had |used to )?(?:held|contain|hold|had|have)\\w* (?:\\w+ )?(?:' +
        CHEMICAL +
        '))|' +
        `(?:bottigli[ae]|filtr[oi]|colin[oi]|imbut[oi]|secchi[oa]?|latt[ae]|barattol[oi]|fust[oi]|contenitor[ei]) (?:di |d |da |del |dell |della |per |per la )?(?:${CHIMICO})`,
    ),
    unless: /\bnew\b|\bnuov[oaie]\b|\b(?:next to|near|beside|behind|under|among|vicino|accanto)\b/,
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
      '(?:mail|post|ship|send|sending|posting|spedire|spedisco|mandare) (?:a|an|the|my|some|two|three|una|un|il|la|due|\\d+) (?:\\w+ ){0,3}?(?:bottles?|limoncello|liqueurs?|spirits?|bottigli[ae]|liquore)(?=.*\\b(?:to|a|in|by|per)\\b)|(?:mailed|shipped|posted) (?:one|two|three|some|it|a bottle|the bottles?)(?=.*\\b(?:to|abroad)\\b)(?!.*\\b(?:recipe|channel|group|code|online)\\b)|fly(?:ing)? with|(?:hand|hold) luggage|on (?:a|the) plane|in aereo|bagaglio (?:a mano|da stiva)',
    ),
  },
  {
    entry: 'foraging',
    says: words(
      `(?:mystery|unknown|unidentified|strange) (?:\\w+ )?(?:${WILD})|(?:${WILD}),? (?:[\\w,]+ ){0,6}(?:no idea what|dont know what|not sure what|che non conosco|non so cosa)|` +
        `(?:${WILD})(?: [\\w,]+){0,8}? (?:(?:looks?|looking|looked) (?:(?:a bit|a lot|just|kind of|rather|very much|almost|exactly|something) )?like|resembl(?:e|es|ing)|(?:as)?somigli\\w+ a(?:i|l|lle)?|sembra(?:no)?|(?:che )?paiono) (?:(?:a|an|some|wild|red|black|white|little|small|tiny|the|i|le|gli|delle|dei|un|una) ){0,3}${LOOK_ALIKE}(?=$| |,)|` +
        `(?<=^|\\b(?:but|and|well|ok|because|think|hope|they|these|those|all|maybe|perhaps|ma|pero) )(?:(?:they|these|those) (?:all )?(?:do |did |really |sort of |certainly )*(?:look|looked|seem|appear)(?: (?:a bit|a lot|just|kind of|rather|very much|almost|exactly|to be|to me))* (?:like )?|(?:sembrano|paiono|somigliano a|assomigliano a)(?: proprio| molto)? )(?:(?:a|some|wild|red|black|small|tiny|the|i|le|gli|delle|dei|bacche di|frutti di) ){0,3}${LOOK_ALIKE}(?:(?: to me| i think| a me| credo)?$|[?.!,])|` +
        `(?<=^|(?:those|some|the|these|red|black|shiny|white|blue|small|found|picked|few|ross[aeo]|ner[aeo]|delle|dei|una|due|tre|le|i) )(?:${WILD}) (?:\\w+ ){0,5}(?:by|from|near|along|in|nel|dal|dalla|nella|lungo|del|della) (?:the |a |il |la )?(?:canal|river|hedge|hedgerow|park|verge|woods?|churchyard|cemetery|ditch|roadside|railway|bosco|parco|cimitero|fiume|siepe|fosso)`,
    ),
  },
  { entry: 'heat_to_speed', says: HEAT_FOR_SPEED, unless: NO_SPIRIT_HEATED },
  {
    entry: 'heat_spirit',
    says: words(
      `(?:${HEATED}|${HEATED_ONCE}) ${HEATED_FIRST}|(?:${HEATED})${TOGETHER}|(?:${HEATED_ONCE})${TOGETHER} (?:still |already |all |in )*(?:in|inside|dentro)(?! (?:the|my) (?:jar|bottle))|` +
        '(?:far|fatto|faccio|fai|fare|facendo) evaporare (?:(?:un|po|di|d|l|il|lo|tutto) )*(?:alcol|alcool|spirito)|(?:boiled|heated|simmered|cooked|warmed) (?:it all|everything|the lot|them all) together|(?:bollito|scaldato|cotto) tutto insieme',
    ),
    unless:
      /\b(?:cakes?|puddings?|pies?|sauces?|stews?|gravy|chili con|meat|chicken|beef|jam|marmalade|custard|torte?|salsa|carne|marmellata|heat resistant|no heat|without heat\w*|boil\w* water bath)\b/,
  },
  {
    entry: 'keep_cream',
    says: words(
      '(?:how long|quanto)(?=.*\\b(?:cream|dairy|egg|eggnog|advocaat|custard|panna|uov[ao])\\b)(?=.*\\b(?:keeps?|lasts?|dura|durano|conserva)\\b)',
    ),
    unless: /\b(?:ice cream|cream of tartar|creamy|no (?:cream|egg)|without (?:cream|egg)|senza)\b/,
  },
  // It is on the heat: that it is turned off stands in the answer.
  {
    entry: 'heat_spirit',
    says: words(
      `(?:pan|saucepan|pot|pentola|pentolino) (?:of|with|full of|di|con) (?:\\w+ ){0,4}?(?:${DRINK})(?: \\w+){0,6}? (?:on|over|sul|sulla) (?:the |a |my )?(?:hob|stove|gas|cooker|burner|heat|ring|fornello|fuoco|piastra)`,
    ),
  },
  {
    entry: 'flame',
    says: words(
      '(?:light|lighting|lit|accend\\w+) (?:(?:the|a|my|la|il|lo|un) )?(?:sambuca|shots?|rum|brandy|absinthe|assenzio|vodka|liqueur|liquore|grappa)(?! (?:up|coloured))',
    ),
  },
  { entry: 'flame', says: both(BY_FIRE, STANDS), unless: ONLY_ASKED },
  { entry: 'steep_temperature', says: both(BY_HEAT, STANDS), unless: ONLY_ASKED },
  {
    entry: 'cool_syrup',
    says: both(
      '(?:boiling|hot|scalding|steaming) (?:sugar )?syrup|syrup (?:(?:was|is|were|still|nearly|almost|as) )*(?:boiling|hot|steaming|scalding)|sciroppo (?:(?:ancora|era|e|molto|ben) )*(?:bollente|caldo|fumante)',
      '(?:added|poured|sweetened|stirred|went|mixed|tipped|put|aggiunt\\w+|versat\\w+|mess\\w+|dolcificat\\w+)',
    ),
    unless: /\b(?:cool\w*|cold|raffredd\w+|fredd\w+)\b|\?/,
  },
  {
    entry: 'flame',
    says: words(
      '(?:smoked|had|having|lit) (?:a|my) (?:cigarette|fag|cigar|pipe)(?: \\w+){0,2} (?:next|near|beside|over|by|while)|(?:lit|lighting|set light to|set fire to) (?:a bit|some|a drop|a spoon\\w*|it)(?= (?:to|for|with|up|and|of|just|on)|$|[.,])|' +
        '(?:pour|threw|thrown|tip|chuck|toss|splash)\\w* (?:\\w+ ){0,5}?(?:on|onto|over|into) (?:the |a |an |my )?(?:bonfire|fire|barbecue|bbq|coals|grill|embers|log burner)|' +
        '(?:hob|gas|stove|cooker|burner|candles?) (?:was|were|is|are) (?:still )?(?:on|lit|burning)|(?:fornello|gas|stufa) (?:era|e) (?:ancora )?acces[oa]|' +
        '(?:ovens?|hobs?|stoves?|cookers?|burners?|heaters?|gas) (?:is )?on (?:right )?(?:next to|near|beside|by) (?:it|them|the (?:jar|bottle)s?)',
    ),
    unless: /\b(?:syrup|sugar|sciroppo|zucchero|jam)\b/,
  },
  {
    entry: 'flame',
    says: both('smok(?:e|ing) (?:while|when|near|next to)|cigarettes?|fum(?:o|are|ando) (?:mentre|vicino)', DRINK),
  },
  {
    entry: 'flame',
    says: both(HOT, `${DRINK}|it (?:in|before|on)|oranges?|lemons?|l ho|lo ho|ho mess\\w+`),
    unless:
      /\b(?:syrup|sugar|sciroppo|zucchero|steril\w+|wash|dry|roast|toast|boiled off|caramel|honey|miele|jam|marmalade|water bath|cook(?:ed)? with|glue|label|melt|candied|bak(?:e|ed|ing)|cakes?|torta|candit[ei]|essicc\w+|asciug\w+|tostat\w+)\b/,
  },
]

const TELLING = words(`${BEAST}|${DRUG}|${ILLNESS}|${ALLERGEN}|${ALLERGENE}|${BABY}`)

/** Whether a word by itself tells of somebody or something that may be harmed: it is no slip of another. */
export const tellsOfHarm = (word: string): boolean => TELLING.test(word)

/** The entry that answers what a sentence asks or tells of a danger to people, or null. */
export function dangerAsked(text: string): string | null {
  const said = plain(text)
  const entry = ASKED.find(({ says, unless }) => says.test(said) && unless?.test(said) !== true)?.entry ?? null
  if (entry === 'driving' && isNothingHad(said)) return 'sober_driver'
  return entry === 'foraging' && isInAlready(said) ? 'unknown_steeped' : entry
}

/** Before what somebody takes by prescription: `my gran is on steroids`. */
const TAKEN =
  /(?:^| )(?:on|takes|taking|take|took|had|have|ive had|need|needs|prescribed|prend[oe]|prendono|sotto) (?:\p{L}+ ){0,3}$/u
const MADE =
  /\b(?:put|puts|putting|add|adding|in|into|infus\p{L}*|steep\p{L}*|dissolv\p{L}*|crush\p{L}*|mix\p{L}*|make|making|start|plan|spike|slip|mett\p{L}*|aggiung\p{L}*|sciogl\p{L}*|nel|nella|far\p{L}*)\b|\d/u

/** Whether a medicine whose name begins at this word is one that somebody takes, and nothing is made with it. */
export const isTakenBySomebody = (text: string, { from }: { readonly from: number }): boolean =>
  TAKEN.test(`${plainWords(text).slice(0, from).join(' ')} `) &&
  dangerAsked(text) === 'medicines' &&
  !MADE.test(plain(text))

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
