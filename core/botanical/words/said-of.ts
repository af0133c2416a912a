const THE = '(?:(?:the|my|our|his|her|their|own|a|an|any|all|i|il|gli|le|mio|mia|nostro) )*'
const STONE = '(?:stones?|pits?|pips?|seeds?|cores?|kernels?|husks?|nocciol[oi]|semi|torsol[oi])'
const PLACE =
  '(?:\\w+s )?(?:vegetable |kitchen |herb |back |front |community |walled )?' +
  '(?:gardens?|allotments?|plots?|orchards?|greenhouses?|(?:veg|vegetable) patch|yard|backyard|balcony|orto|giardino|frutteto|balcone)'

const words = (text: string): RegExp => new RegExp(`\\b(?:${text})\\b`, 'g')

/** `without stones`, `core and pips out`. */
const STONES_OUT = words(
  `(?:without|no|minus|less|senza) ${THE}${STONE}(?: (?:and|or|e|o) ${THE}${STONE})?|` +
    `${STONE}(?: (?:and|e) ${STONE})? (?:removed|out|off|taken out|discarded|tolti|tolto)`,
)

/** `with the stones in`. */
const STONES_IN = words(
  `(?:with|con) ${THE}(?:(?:whole|uncracked|intact|interi) )*${STONE}(?: (?:still|in|whole|left|intact|uncracked|interi))*|` +
    `${STONE} (?:(?:still|left|kept) )*(?:in|inside|whole|intact)|un(?:pitted|stoned)`,
)

/** Grown at home, whoever sowed it. */
const GARDEN = words(
  '(?:(?:i|we|picked|gathered|collected|harvested|cut|dug|pulled|lifted|fresh|freshly|straight|grown|grow|raccolt[aeio]|colt[aeio]) )*' +
    `(?:(?:from|in|on|out of|of|dal|dall|dalla|del|dell|della|nel|nell|di) ${THE}${PLACE}|(?:from|off|of) (?:my|our|the|a) (?:own )?(?:(?:neighbour|neighbor|friend|mother|mum|father|dad|grandmother|gran) ?s? )?(?:trees?|bush(?:es)?)|home ?grown|garden ?grown|allotment ?grown)`,
)

/** Bought, wherever. */
const SHOP = words(
  `(?:from|at|in|dal|dalla|del|della|al) ${THE}(?:farmers |farm |local |corner |health food |super ?)?(?:markets?|shops?|stores?|supermarkets?|greengrocers?|grocers?|mercato|supermercato|fruttivendolo|negozio|bottega|erboristeria)`,
)

/** Sown or planted by the maker, who knows what it is. */
const PLANTED = words(
  '(?:(?:that|which) )?(?:(?:i|we) (?:have |ve )?)?(?:planted|sowed|sown|piantat[aeio]|seminat[aeio])(?: (?:it|them|by me|myself|ourselves|by us))?',
)

const CRUSHED =
  /\b(?:crush(?:ed)?|ground|crack(?:ed)?|milled|mash(?:ed)?|blend(?:ed|er)?|blitzed|puree|pureed|powder(?:ed)?|smashed|pounded|minced|liquidi[sz]ed|pulveri[sz]ed|broken|splintered|bashed|hammered|crunched|shredded|pressed|juiced|process(?:ed|or)|muddled|pulped|squashed|squeezed|trodden|frantumat[aeio]|ammaccat[aeio]|triturat[aeio]|sminuzzat[aeio]|spremut[aeio]|macinat[aeio]|schiacciat[aeio]|pestat[aeio]|tritat[aeio]|frullat[aeio]|spezzat[aeio]|rott[aeio])\b/

/** What is left of a stone fruit without its stone. */
const STONED =
  /\b(?:stoned|pitted|destoned|depitted|deseeded|seeded|seedless|stoneless|pitless|cored|flesh|pulp|snocciolat[aeio]|denocciolat[aeio]|polpa)\b/

export interface SaidOf {
  /** The rest of the plain words. */
  readonly rest: string
  /** Null where nothing was said of them. */
  readonly stones: 'out' | 'in' | null
  readonly isCrushed: boolean
  readonly isGarden: boolean
  readonly isPlanted: boolean
}

/** What was said beside the name of a plant, in the plain words of a text, in phrases of several words. */
export const saidOf = (plain: string): SaidOf => {
  const [out, within] = [plain.replace(STONES_OUT, ' '), plain.replace(STONES_IN, ' ')]
  const isOut = out !== plain || STONED.test(plain)
  const rest = out
    .replace(STONES_IN, ' ')
    .replace(GARDEN, ' ')
    .replace(SHOP, ' ')
    .replace(PLANTED, ' ')
    .replace(/\s+/g, ' ')
    .trim()
  return {
    rest: rest === '' ? plain : rest,
    stones: isOut ? 'out' : within === plain ? null : 'in',
    isCrushed: CRUSHED.test(plain),
    isGarden: plain.search(GARDEN) !== -1,
    isPlanted: plain.search(PLANTED) !== -1,
  }
}

/** The text as typed, without the words that tell of a garden. */
export const withoutGarden = (typed: string): string =>
  typed
    .replace(new RegExp(GARDEN.source.replaceAll(' ?', "[\\s'’-]*").replaceAll(' ', "[\\s'’]+"), 'gi'), ' ')
    .replace(/\s+/g, ' ')
    .trim()
