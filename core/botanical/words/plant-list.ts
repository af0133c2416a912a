import { numberWords } from '../../quantity/read/number-words.ts'

/** From two to twelve, and by the dozen; one is no count that has to be read. */
const COUNTS: ReadonlyMap<string, number> = new Map([
  ...[...numberWords].filter(([, count]) => count > 1),
  ['eleven', 11],
  ['undici', 11],
  ['twelve', 12],
  ['dodici', 12],
  ['twenty', 20],
  ['venti', 20],
  ['thirty', 30],
  ['trenta', 30],
])

const OF = '(?:\\s+(?:of|di|d))?'
const DOZEN = new RegExp(
  `^(?:(half)\\s+)?(?:(?:an?|one|una)\\s+)?(?:dozen|dozzina|(mezza)\\s+dozzina)${OF}\\s+(?=\\S)`,
  'i',
)
const COUPLE = new RegExp(`^(?:a\\s+couple|un\\s+paio)${OF}\\s+(?=\\S)`, 'i')
const ZEST_OF = '(?:(?:the|la|le)\\s+)?(?:zests?|peels?|rinds?|scorz[ae]|bucc(?:ia|e))\\s+(?:of|di)\\s+'
const COUNT = new RegExp(`^(${ZEST_OF})?(${[...COUNTS.keys()].join('|')})\\s+(?=\\p{L})`, 'iu')

const PIECE_OF =
  '(?:leaves|sprigs|strips|slices|sticks|pods|cloves|pieces|bits?|pinches|scraps|shavings|fogli[ae]|foglioline|ramett[oi]|strisc(?:ia|e)|fett(?:a|e|ina|ine)|bastoncin[oi]|pezz(?:o|i|etto|etti)|pizzic(?:o|hi))\\s+(?:of|di)\\s'

/** Words that leave the amount to the usual one; not `a few leaves of`, of which nobody knows how many. */
const SOME = new RegExp(
  `^(?:some|a\\s+few|a\\s+little|several|qualche|alcun[ei]|un\\s+po['’]?(?:\\s+di)?)\\s+(?!${PIECE_OF})(?=\\p{L})`,
  'iu',
)

/** `A few leaves of mint`, `some strips of`, `qualche foglia di`: pieces without a number. */
export const SOME_OF = new RegExp(
  `^(?:some|(?:an?\\s+)?(?:few|little)|several|qualche|alcun[ei])\\s+${PIECE_OF}+`,
  'iu',
)

const ARTICLE = '(?:an?|one|un|una|uno)\\s'
const BEGINS = `(?=(?:[0-9½¼¾⅓⅔]|half\\s|mezz[oa]\\s|${ARTICLE}|(?:${[...COUNTS.keys()].join('|')})\\s)[^+]*\\p{L}{2})`
/** `and 2 oranges`, `with 1 vanilla pod`: an amount and a name begin another plant. */
const JOINED = new RegExp(`\\s*,?\\s+(?:and|with|plus|e|con|più)\\s+${BEGINS}|\\s*&\\s*${BEGINS}`, 'giu')
/** A comma joins only behind an amount: in `cherries, 500 g, stoned` it joins nothing. */
const COMMA = new RegExp(`,\\s+${BEGINS}`, 'giu')

const HAS_AMOUNT = /[0-9½¼¾⅓⅔]/

const countedIn = (item: string): string => {
  const plain = item.trimStart()
  const space = item.slice(0, item.length - plain.length)
  const dozen = DOZEN.exec(plain)
  if (dozen !== null) {
    const isHalf = dozen[1] !== undefined || dozen[2] !== undefined
    return `${space}${isHalf ? 6 : 12} ${plain.slice(dozen[0].length)}`
  }
  const counted = plain
    .replace(COUPLE, '2 ')
    .replace(COUNT, (_, zest: string | undefined, word: string) => `${zest ?? ''}${COUNTS.get(word.toLowerCase())} `)
    .replace(SOME, '')
  return `${space}${counted}`
}

/** The comma's own item has an amount, so that what follows it is another plant's. */
const atCommas = (item: string): readonly string[] => {
  const parts: string[] = []
  let from = 0
  for (const { 0: comma, index } of item.matchAll(COMMA)) {
    if (!HAS_AMOUNT.test(countedIn(item.slice(from, index)))) continue
    parts.push(item.slice(from, index))
    from = index + comma.length
  }
  return [...parts, item.slice(from)]
}

/**
 * A list as people write it, `10 lemons and two oranges, 1 vanilla pod`, joined with ` + ` and counted in figures. Nothing
 * else of it is changed. Whether anything in it is refused is judged by the text as typed.
 */
export const plantList = (text: string): string =>
  text
    .split('+')
    .map((item) => item.split(JOINED).flatMap(atCommas).map(countedIn).join(' + '))
    .join('+')
