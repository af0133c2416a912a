import { asCapital, exceptOwn } from './except-own.ts'
import { MONTHS, WEEKDAYS } from './phrases.ts'

/** What a kitchen that pours in cups calls otherwise: as we say it, as it is said there. */
export const AMERICAN_WORDS = [
  ['hob', 'stove'],
  ['gas cooker', 'gas stove'],
  ['cling film', 'plastic wrap'],
  ['kitchen paper', 'paper towel'],
  ['tea towel', 'dish towel'],
  ['muslin', 'cheesecloth'],
  ['measuring jug', 'measuring cup'],
  ['worktop', 'countertop'],
  ['under the tap', 'under the faucet'],
  ['from the tap', 'from the faucet'],
  ['the bin', 'the trash'],
  ['bin it', 'throw it out'],
  ['bin them', 'throw them out'],
  ['stones', 'pits'],
  ['stoned', 'pitted'],
  ['pips', 'seeds'],
  ['caster sugar', 'superfine sugar'],
  ['icing sugar', 'powdered sugar'],
  ['bicarbonate of soda', 'baking soda'],
  ['treacle', 'molasses'],
  ['beetroot', 'beet'],
  ['petrol', 'gasoline'],
  ['nail varnish', 'nail polish'],
  ['methylated spirit', 'denatured alcohol'],
  ['methylated spirits', 'denatured alcohol'],
  ['poison centre', 'poison control center'],
  ['centre', 'center'],
  ['centres', 'centers'],
  ['litre', 'liter'],
  ['litres', 'liters'],
  ['millilitres', 'milliliters'],
  ['fibres', 'fibers'],
  ['grey', 'gray'],
  ['aluminium', 'aluminum'],
  ['ageing', 'aging'],
  ['towards', 'toward'],
] as const

/** Spellings of whole families of words. */
const SPELLINGS: readonly (readonly [RegExp, string])[] = [
  // A stone fruit is one there too, and of a jar's stone nobody speaks.
  [/\bstone\b(?! fruit)/g, 'pit'],
  [/\bStone (?=them|it|the|and)/g, 'Pit '],
  [/\bparaffin\b(?! wax)/g, 'kerosene'],
  [/\b(dis|un|multi)?(col|flav|vap|od|neighb|fav|sav|behavi)our/gi, '$1$2or'],
  [/\b(m)ould/gi, '$1old'],
  [/\b(s)ulph/gi, '$1ulf'],
  [/\b((?:un)?label|shrivel|travel|cancel|level)l(ed|ing)\b/gi, '$1$2'],
  [
    /\b(crystall|pasteur|steril|sanit|oxid|homogen|galvan|aromat|neutral|organ|recogn|real|caramel)is(e|es|ed|ing|ation)\b/gi,
    '$1iz$2',
  ],
  [/(\d)[ \u00a0]%/g, '$1%'],
]

const MONTH = MONTHS.map((month) => `${month}|${month.slice(0, 3)}`).join('|')
const DAY = '(?:[12]?\\d|3[01])'
const DATES: readonly (readonly [RegExp, string])[] = [
  [new RegExp(`\\b(${DAY}) to (${DAY})[ \\u00a0](${MONTH})\\b(?: (\\d{4})\\b)?`, 'g'), '$3 $1 to $2, $4'],
  [
    new RegExp(`\\b(?:(${WEEKDAYS.join('|')}) )?(${DAY})[ \\u00a0](${MONTH})\\b(?: (\\d{4})\\b)?`, 'g'),
    '$1, $3 $2, $4',
  ],
]

/** A part that is not there leaves its comma. */
const inOrder = (text: string): string =>
  DATES.reduce((said, [date, told]) => said.replace(date, (...found) => toldOf(told, found)), text)

const toldOf = (told: string, found: readonly unknown[]): string =>
  told
    .replaceAll(/\$(\d)/g, (_, at: string) => String(found[Number(at)] ?? ''))
    .replace(/^, /, '')
    .replace(/, $/, '')

const WORDS: ReadonlyMap<string, string> = new Map(AMERICAN_WORDS)
const ANY_WORD = new RegExp(
  `\\b(?:${AMERICAN_WORDS.map(([word]) => word)
    .toSorted((one, other) => other.length - one.length)
    .join('|')})\\b`,
  'gi',
)

const spelt = (text: string): string =>
  SPELLINGS.reduce(
    (said, [spelling, told]) => said.replace(spelling, told),
    inOrder(text).replace(ANY_WORD, (word) => asCapital(word, WORDS.get(word.toLowerCase())!)),
  )

/**
 * A text of ours as it is said in a kitchen that pours in cups: its words, its spelling, its dates. Names and notes of somebody's own
 * stay as they are, and so do lines to type.
 */
export const inAmerican = (text: string, own: readonly string[]): string => exceptOwn(text, own, spelt)
