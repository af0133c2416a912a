const listed = (first: number, words: string): readonly (readonly [string, number])[] =>
  words.split(' ').flatMap((same, at) => same.split('/').map((word) => [word, first + at] as const))

/** What stands for so many, without accents. `un` and `a` are articles: see `ARTICLES`. */
export const UNITS: ReadonlyMap<string, number> = new Map([
  ...listed(
    0,
    'zero/nil one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen',
  ),
  ...listed(17, 'seventeen eighteen nineteen'),
  ...listed(2, 'due tre quattro cinque sei sette otto nove dieci undici dodici tredici quattordici quindici sedici'),
  ...listed(17, 'diciassette diciotto diciannove'),
])

const tens = (words: string): readonly (readonly [string, number])[] =>
  listed(2, words).map(([word, count]) => [word, count * 10] as const)

export const ENGLISH_TENS: ReadonlyMap<string, number> = new Map(
  tens('twenty thirty forty/fourty fifty sixty seventy eighty ninety/ninty'),
)

export const TENS: ReadonlyMap<string, number> = new Map([
  ...ENGLISH_TENS,
  ...tens('venti trenta quaranta cinquanta sessanta settanta ottanta novanta'),
])

export const HUNDREDS: ReadonlyMap<string, number> = new Map([
  ['hundred', 100],
  ['cento', 100],
  ['duecento', 200],
  ['trecento', 300],
  ['quattrocento', 400],
  ['cinquecento', 500],
  ['seicento', 600],
  ['settecento', 700],
  ['ottocento', 800],
  ['novecento', 900],
  ['mille', 1000],
  ['thousand', 1000],
])

/** Before a vowel tens lose their own: `ventuno`. */
const stemsOfTens: readonly (readonly [tens: string, stem: string, number])[] = [...TENS].map(([tens, value]) => [
  tens,
  /[aeiou]$/.test(tens) ? tens.slice(0, -1) : tens,
  value,
])
const stemsOfHundreds = [...HUNDREDS].filter(([word]) => word.endsWith('cento'))

/** Most words are no number, and each word of a sentence is asked many times. */
const MAY_BE_JOINED = new RegExp(
  `^(?:${[...stemsOfHundreds.map(([word]) => word), ...stemsOfTens.map(([, stem]) => stem)].join('|')})`,
)

/** `ventuno`, `trentacinque`, `cinquecentocinquanta`: Italian writes a number as one word. */
export function joinedItalian(word: string): number | null {
  if (!MAY_BE_JOINED.test(word)) return null
  for (const [stem, hundreds] of stemsOfHundreds) {
    const rest = word.startsWith(stem) ? word.slice(stem.length) : ''
    const below = rest === '' ? null : (TENS.get(rest) ?? UNITS.get(rest) ?? joinedItalian(rest))
    if (below !== null) return hundreds + below
  }
  for (const [tens, stem, value] of stemsOfTens) {
    const rest = word.startsWith(tens) ? word.slice(tens.length) : word.startsWith(stem) ? word.slice(stem.length) : ''
    if (rest === 'uno' || rest === 'un') return value + 1
    const unit = rest === '' ? undefined : UNITS.get(rest)
    if (unit !== undefined && unit > 0 && unit < 10) return value + unit
  }
  return null
}
