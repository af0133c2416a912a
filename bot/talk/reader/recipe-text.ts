import { numberWords } from '../../../core/quantity/read/number-words.ts'
import { isSaidInUs } from '../../../core/quantity/read/units-said.ts'
import type { Surroundings } from '../bits/bit.ts'
import { sentenceIn } from '../bits/sentence.ts'
import type { TalkReading } from '../frames/reading.ts'
import { BULLET, isTitle, recipeLines, STEP } from './recipe-lines.ts'

/** A pasted recipe as it is read, and what of it was not taken, in its own words. */
export interface RecipeText {
  readonly text: string
  readonly unread: readonly string[]
}

const SIZE = '(\\d+(?:[.,]\\d+)?)[ -]?(ml|cl|dl|l|lt|litres?|liters?|litr[oi])'
const OF = '(?: of| di)?'

/** `1 bottle (750 ml) vodka`, `2 (70 cl) bottles of gin`, `a 750-ml bottle of rum`: so much is poured. */
const BOTTLES = [
  new RegExp(
    `^(\\d+|an?|one|una?)? ?(?:bottles?|btl|bottigli[ae]|fifth) ?\\((?:about |ca |circa |da )?${SIZE}(?: each| l'una)?\\)${OF} ?`,
    'iu',
  ),
  new RegExp(`^(\\d+|an?|one|una?)? ?\\(${SIZE}\\) ?(?:bottles?|bottigli[ae])${OF} ?`, 'iu'),
  new RegExp(`^(an?|one|una?)? ?${SIZE}[ -](?:bottle)${OF} ?`, 'iu'),
]

const STRIPS =
  /^((?:\d+|an?|one|two|three|four|some|a few)(?: (?:wide|thin|long|large|small|big))? (?:strips?|twists?|curls?|slivers?|pieces?)) (?!of )(?=\p{L}+ (?:zest|peel|rind)\b)/iu

/** Ready-made flavour, which is stirred in to taste after straining. */
const STIRRED_IN =
  /^(?:[\d.,/½⅓⅔¼¾⅛ ]+|a |an |half a |un |una |mezzo )(?:tsp|tsps|teaspoons?|tbsp|tablespoons?|drops?|dash(?:es)?|splash|ml|oz|caps?|capfuls?|cucchiain[oi]|cucchia[io]|gocce|fialett[ae])?\.? ?(?:of |di )?(?:pure |real |good )?(?:\p{L}+ ){0,2}(?:extract|essence|flavou?ring|estratto|essenza|aroma)\b/iu

const STEEPS =
  /\b(?:infus\p{L}*|steep\p{L}*|macer\p{L}*|soak\p{L}*|leave|let|stand|sit|lasci\p{L}*|keep|store|wait|aspett\p{L}*|riposare|cellar|cupboard|dark)\b/iu

/** Behind the straining: no time in the plants. */
const AFTERWARDS =
  /\b(?:age[ds]?|ageing|aging|mature[ds]?|mellow|strain\p{L}*|filter\p{L}*|filtr\p{L}*|bottl\p{L}*|imbottigli\p{L}*|invecchi\p{L}*|before (?:drinking|serving))\b/iu

/** A volume of fruit in measures larger than a cup, in cups. */
const IN_CUPS = /^([\d.]+|an?|one|two|half an?) ?(qts?|quarts?|pints?|pts?)\.? (?:of )?(?=\p{L})/iu
const CUPS = { q: 4, p: 2 } as const
const HALF = /^half an?$/i

const LASTS = /\b(?:days?|weeks?|months?|fortnight|giorn[oi]|settiman[ae]|mes[ei])\b/

const CLAUSES = /[,;.]\s+|(?<!\bnow(?: and)?)\s+(?:and then|then|poi|e poi|quindi)\s+/iu

const plainLine = (line: string): string => {
  let text = line.replace(BULLET, '').trim()
  for (const pattern of BOTTLES)
    text = text.replace(pattern, (_, count: string | undefined, size: string, unit: string) => {
      const times = /^\d+$/.test(count ?? '') ? Number(count) : 1
      const each = Number(size.replace(',', '.'))
      return `${times === 1 ? size : Math.round(times * each * 100) / 100} ${unit} `
    })
  return text.replace(STRIPS, '$1 of ').trim()
}

/** `1 qt blackberries`: how much of a fruit fills a cup is known. A pint is one of two cups only in a US recipe. */
function inCups(line: string, surroundings: Surroundings, isUs: boolean): string {
  const [all, count = '', measure = ''] = IN_CUPS.exec(line) ?? []
  const kind = measure.toLowerCase().startsWith('q') ? 'q' : 'p'
  const rest = all === undefined ? '' : line.slice(all.length)
  const { bits } = sentenceIn(rest, surroundings)
  const isFruit = bits[0]?.kind === 'plant' && !bits.some((each) => each.kind === 'spirit')
  if (!isFruit || (kind === 'p' && !isUs)) return line
  const measures = HALF.test(count) ? 0.5 : (numberWords.get(count.toLowerCase()) ?? Number(count))
  return `${measures * CUPS[kind]} cups ${rest}`
}

/** How long it is to steep by a line that says what is to be done, and what else the line says; null where it says none. */
function steeped(line: string, surroundings: Surroundings) {
  const clauses = line.split(CLAUSES)
  const end = clauses.findIndex((clause) => AFTERWARDS.test(clause))
  const before = end === -1 ? clauses : clauses.slice(0, end)
  for (const [at, clause] of before.entries()) {
    const { bits } = sentenceIn(clause, surroundings)
    const spans = bits.filter(({ kind, text }) => (kind === 'span' || kind === 'date') && LASTS.test(text))
    if (spans.length !== 1 || bits.length > 1 || !STEEPS.test(clause)) continue
    const rest = clauses.filter((_, place) => place !== at).join(', ')
    return {
      text: `${/^[^a-z]*(?:giorn|settiman|mes[ei])/i.test(spans[0]!.text.replace(/^un[oa]? /, '')) ? 'per' : 'for'} ${spans[0]!.text}`,
      rest,
    }
  }
  return null
}

/** Says what is to be done, and names no amount that goes in. */
const isStep = (line: string, surroundings: Surroundings): boolean =>
  !sentenceIn(line, surroundings).bits.some(
    ({ kind, role, with: place }) =>
      kind === 'volume' || kind === 'mass' || (kind === 'plant' && place !== undefined) || role === 'of_sugar',
  )

/**
 * A recipe that was pasted, line by line: its name goes, what goes in stands plainly, of what is to be done only how long it steeps.
 * Null where the lines are none.
 */
export function recipeText(typed: string, surroundings: Surroundings): RecipeText | null {
  const lines = typed
    .split(/\n+/)
    .map((line) => line.trim())
    .filter((line) => line !== '')
  const count = recipeLines(lines, surroundings)
  if (count === 0) return null
  const [text, unread]: [string[], string[]] = [[], []]
  const isUs = isSaidInUs(typed, surroundings.isUs ?? false)
  let isTimed = false
  for (const [at, line] of lines.entries()) {
    if (at === 0 && isTitle(line, surroundings)) continue
    const plain = inCups(plainLine(line), surroundings, isUs)
    if (STIRRED_IN.test(plain)) {
      unread.push(plain)
      continue
    }
    const isOfSteps = at < count && isStep(plain, surroundings) && !/^[\d½¼¾]/.test(plain)
    const time = isOfSteps && !isTimed ? steeped(plain, surroundings) : null
    if (time !== null) {
      isTimed = true
      text.push(time.text)
      if (time.rest !== '') unread.push(time.rest)
    } else if (isOfSteps && STEP.test(plain)) unread.push(plain)
    else text.push(plain)
  }
  return { text: text.join('\n'), unread }
}

const INTRODUCED =
  /^(?:(?:so|ok|okay|hi|hello|right|well),? )*(?:here(?:['’]?s| is)|this is|i have|i['’]ve got|ecco|questa [eè]) (?:my|the|a|our|this|la mia|la|una|la nostra)(?: [\p{L}'’]+){0,4} ?(?:recipe|ricetta)(?: [\p{L}'’]+){0,4} ?[:–—-]\s*(?=\S)/iu

/** Without what only says that a recipe follows: `here is my recipe: 2 lb raspberries`. */
export const withoutIntroduction = (typed: string): string => typed.replace(INTRODUCED, '')

/** A plan of a recipe that was pasted names each line of which nothing was taken, whole. */
export function namingLines(reading: TalkReading, lines: readonly string[]): TalkReading {
  if (reading.kind !== 'call' || reading.call.command !== 'plan' || lines.length === 0) return reading
  const others = reading.leftOut.filter((word) => !lines.some((line) => line.includes(word)))
  return { ...reading, leftOut: [...others, ...lines] }
}
