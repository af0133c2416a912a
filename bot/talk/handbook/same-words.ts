import { smallWords } from './small-words.ts'
import { stemOf } from './stem.ts'

/** Words that mean the same in a question of this kind: both spellings of English, and Italian beside it. From memory. */
const SAME =
  'child children kid kids toddler teenager bambino bambini bimbo bimbi figlio figlia ragazzi; ' +
  'fridge refrigerator refrigerate refrigerating refrigerated frigo frigorifero; ' +
  'freezer freeze freezing frozen froze congelatore congelare congela congelo congelata surgelare surgelata surgelati; ' +
  'ice icy ghiaccio ghiacciato; thaw defrost scongelare scongelo; jar kilner mason vaso vasi barattolo barattoli; ' +
  'colour color colore colorare yellower; litre liter litri; flavour flavor sapore gusto; ' +
  'sterilise sterilize milton sanitise sanitize sterilizzare; licence license permit licenza permesso; ' +
  'gift present regalo regali regalare regalarlo; peel zest rind skin skins peels buccia bucce scorza scorze scorzette; ' +
  'pan pot saucepan pans pentola pentolino; cloth muslin cheesecloth garza panno canovaccio telo; tights stocking collant calza calze; ' +
  'leftover spent avanzata avanzate avanzato rimasta rimaste esausta; ' +
  'hob stove cooker gas fornelli fornello; squeeze press wring strizzare strizzo spremere spremo torchiare; ' +
  'cupboard pantry larder dispensa; medicine medication tablets tablet pills pill antibiotics farmaci farmaco pastiglie medicine; ' +
  'windowsill window sill ledge finestra davanzale; grey gray; mould mold; fibre fiber; odour odor; ' +
  'aluminium aluminum alluminio; copper rame; colouring coloring colorante dye tint tinted; chilli chili chile chillies chilies peperoncino peperoncini; ' +
  'caster castor; boozy drunken ubriaca ubriache; whisky whiskey; cloudy cloud hazy haze milky opaque torbido torbida opaco velato velatura intorbidisce intorbida; ' +
  'clear clearing crystal-clear limpido limpida trasparente; clarify chiarificare; ' +
  'stall market boot mercatino mercato bancarella; fair fete sagra fiera; ' +
  'wash rinse lavare lavo lava lavano lavata lavate lavati lavarle lavarli sciacquare sciacquo risciacquare; fruit frutta frutti frutto berry berries bacca bacche; ' +
  'stone stones pit pits pitted unpitted kernel kernels pips nocciolo noccioli snocciolare; lid lids coperchio coperchi; ' +
  'cork corks stopper stoppers tappo tappi sughero; rust rusty arrugginisce arrugginito ruggine; metal tin metallo latta; ' +
  'plastic plastica; rubber gomma; seal gasket guarnizione; bottle bottles bottiglia bottiglie bottigliette; ' +
  'sugar sugars zucchero zuccheri; sweeten sweetening sweetened addolcire dolcificare dolcifico zuccherare zuccherato; ' +
  'syrup sciroppo sciroppi; alcohol booze alcol alcool; water acqua; honey miele; cream panna; milk latte; egg eggs uovo uova; ' +
  'yolk yolks tuorlo tuorli; white whites bianco bianca; label labels etichetta etichette; sell selling sold flog vendere vendo venderlo; ' +
  'light luce daylight; dark darkness buio; sun sunny sunlight sunshine sole; warm warmer hot caldo calda calore; ' +
  'heat heating heated scaldare scaldo scaldarlo riscaldare; cold chilled freddo fredda; cool raffreddi raffreddare; ' +
  'filter filtering filtro filtri filtrare; settle settling decantare decanto deposita depositare; ' +
  'crush crushed mash squash schiacciare schiaccio schiacciata; blend blitz frullare frullo; cut tagliare taglio; ' +
  'prick pricking stab pierce bucare buco punzecchiare forare; needle spillo; ripe maturo matura mature; ' +
  'bruised bruise ammaccata ammaccato squishy; unripe underripe acerba acerbo acerbe; powder powdered polvere; ' +
  'ground macinato macinare; bean beans chicchi chicco grani; ' +
  'shake shaking swirl agitare agito scuotere scuoto scuoterlo; float floats floating bob bobbing galleggia galleggiano galla; ' +
  'open opening opened aprire apro aprirlo aperto aperta apertura; smell sniff odore annusare; ' +
  'taste tasting assaggiare assaggio assaggi assaggiarlo; legal law legale legge illegal; ' +
  'drive driving guidare guido; pregnant pregnancy incinta gravidanza; dog dogs cane cani; cat cats gatto gatti; ' +
  'hens chickens galline; compost composting umido; bin chuck butto buttare buttarla; eat eating mangiare mangia; ' +
  'cake cakes torta torte trifle crumble pudding tiramisu; bake baking cook cooking cuocere cottura cucinare; ' +
  'post posting posted parcel mail courier spedire spedirlo pacco corriere; plane fly flying flight aereo; ' +
  'quick quicker quickest quickly speed speedy rapid fast faster fastest veloce rapido fretta; ' +
  'beginner newbie principiante principianti; double twice raddoppiare raddoppio doppio; half halve halving meta mezzo mezza; ' +
  'stain stains macchia macchie macchiato; spill spilt spilled rovesciare rovesciato; explode esplodere; ' +
  'crack cracks break rompe rompere spacca scoppia; flammable infiammabile; fire fuoco incendio; blind cieco ciechi; ' +
  'calories calorie; diabetic diabetics diabetico diabetici; caffeine caffeina; coffee caffe; vanilla vaniglia; pod pods baccello baccelli; ' +
  'cinnamon cannella; walnut walnuts noce noci; almond almonds mandorla mandorle; nutmeg moscata; wormwood assenzio; ' +
  'flower flowers fiore fiori; elderflower elderflowers sambuco; stalk stalks stem gambo gambi; petal petals petalo petali; ' +
  'mint menta; basil basilico; herb herbs erba erbe; green verde; brown marrone; ' +
  'oak rovere; barrel barrels cask botte barrique; wood legno; crystal cristallo; decanter carafe caraffa; ' +
  'temperature temperatura; hydrometer hydrometers alcoholmeter alcolometro densimetro; refractometer rifrattometro; ' +
  'percent percentage; strength gradazione gradi grado; wine vino marsala sherry; ' +
  'cheap cheaper cheapest economica economico; cost costs costa costare; brand marca; buy buying comprare compro; ' +
  'shop shops supermarket supermercato negozio; expire expires scade scadenza scadere; garage cellar cantina shed; ' +
  'scales scale bilancia; cup cups tazza tazze; jug brocca; pint pints pinta pinte; ' +
  'protected protetto; allergy allergic allergia allergico allergens allergen allergeni; ' +
  'oil olio; fat grease greasy grasso unto; essential essenziale; extract essence aroma aromi estratto flavouring flavoring; ' +
  'distil distill distilling distillare; charcoal carbon carbone brita; wax waxed waxy cera; organic biologici biologico bio; ' +
  'juice succo; slice slices fetta fette; whole intero intera interi intere; toast toasted roast roasted tostare tosto tostate; ' +
  'pick picking picked raccogliere raccolgo raccolte raccolta; wild forage foraged hedge hedgerow selvatica selvatiche bosco; ' +
  'road roadside strada; spray sprayed sprays pesticide pesticides spruzzata pesticidi diserbante; garlic aglio; botulism botulino; ' +
  'vegetable vegetables verdura verdure; safe sicuro sicura; dangerous danger poisonous toxic pericoloso pericolosi velenoso velenosi; ' +
  'acid acidity acido acidita; thick thicker denso densa gloopy syrupy sciropposo; smooth smoother silky silkier velvety vellutato morbido; ' +
  'evaporate evaporates evapora evaporare; ferment fermenta fermentare;  ' +
  'spice spices spezie spezia; clove cloves chiodi garofano; ginger zenzero; start beginning inizio; ' +
  'christmas natale; rest resting riposare riposo; bubble bubbles bolle; weigh weighing pesare peso; ' +
  'rum brandy cognac; guest guests ospite ospiti; serve served servire; cocktail cocktails; taint tainted; ' +
  'wait waiting aspettare aspetto aspetta; boil boiling bollire; dissolve dissolves scioglie sciogliere; ' +
  'store storing conservare conservo conserva conservano; ratafia rosolio; raffle tombola lotteria; ' +
  'soft morbide squidgy; weak weaker debole leggero; tap rubinetto; mix mixing mixed mescolare mescolando mescolo; ' +
  'enzyme enzymes pectinase pectolase pectolitico enzima; grater microplane zester; ' +
  'jam marmellata confettura; split slit incisa incidere; mark marking segnare; bomboniera bomboniere favour favours'

const groups: readonly (readonly string[])[] = SAME.split('; ').map((group) => group.split(' '))

/** `Cane` is a dog, though `can` is a small word: a word as it is spelt comes before its stem. */
const byWord: ReadonlyMap<string, string> = new Map(
  groups.flatMap((words) => words.map((word) => [word, `=${words[0]}`] as const)),
)

/** The words that stand beside others of their meaning, as they are spelt. */
export const wordsAlike: ReadonlySet<string> = new Set(byWord.keys())

const smallStems: ReadonlySet<string> = new Set([...smallWords].map(stemOf))

/** A shorter stem is that of several words: `velo` is no `velato`. */
const LEAST_LETTERS = 4

/** Of two groups with words of one stem the first has it. */
const byStem: ReadonlyMap<string, string> = new Map(
  groups
    .flatMap((words) => words.map((word) => [stemOf(word), `=${words[0]}`] as const))
    .filter(([stem]) => !smallStems.has(stem) && stem.length >= LEAST_LETTERS)
    .toReversed(),
)

/** The term of a word: one for all that mean the same, else its stem. */
export const termOf = (word: string): string => {
  const known = byWord.get(word)
  if (known !== undefined) return known
  const stem = stemOf(word)
  return byStem.get(stem) ?? stem
}
