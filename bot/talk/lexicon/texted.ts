/** Words that are shortened, at a telephone or in talk, or with a figure for a sound in them, as they are typed on a telephone. */
const TEXTED: Readonly<Record<string, string>> = {
  b4: 'before',
  '2day': 'today',
  '2nite': 'tonight',
  '2moro': 'tomorrow',
  '2morrow': 'tomorrow',
  l8r: 'later',
  nite: 'night',
  tonite: 'tonight',
  tmrw: 'tomorrow',
  tomoz: 'tomorrow',
  yday: 'yesterday',
  arvo: 'afternoon',
  arv: 'afternoon',
  brekkie: 'breakfast',
  brekky: 'breakfast',
}

const EACH = new RegExp(`(?<![\\p{L}\\p{N}])(?:${Object.keys(TEXTED).join('|')})(?![\\p{L}\\p{N}])`, 'giu')

/** `2 sweet 4 me`: figures that sound like words, where nothing is counted. */
const SOUNDS: readonly (readonly [RegExp, string])[] = [
  [
    /(?<![\p{L}\p{N}.,/])2(?= (?:sweet|strong|weak|dry|boozy|bitter|hot|spicy|harsh|sour|thick|much|late|soon)(?=\s*(?:$|[.,!?;)])| (?:4|for|to|and|but|so|lol|pls|please|imo|now|already)(?!\p{L})))/giu,
    'too',
  ],
  [/(?<![\p{L}\p{N}.,/])4(?= (?:me|us|him|her|my|the|xmas|christmas)(?!\p{L}))/giu, 'for'],
]

/** `2 lb. raspberries`: the dot of a unit that is cut short ends no sentence. */
const CUT_SHORT =
  /(?<=[\d½¼¾⅓⅔] ?)(lbs?|ozs?|pts?|qts?|gals?|tsps?|tbsps?)\.(?= +(?!(?:i|we|it|is|are|was|they|how|what|when|where|which|why|can|could|do|does|should|will|then|leave|strain|steep|put|add)\b)\p{Ll})/giu

/** A sentence with those words written out. */
export const writtenOut = (text: string): string => {
  const said = SOUNDS.reduce(
    (before, [sound, word]) => before.replace(sound, word),
    text.replace(EACH, (word) => TEXTED[word.toLowerCase()]!),
  )
  return said.includes('. ') ? said.replace(CUT_SHORT, '$1') : said
}
