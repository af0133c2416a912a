import { wordsFrom } from '../../../core/quantity/read/tokens.ts'
import type { Bit, Sentence } from '../bits/bit.ts'
import type { CallRead, TalkReading } from '../frames/reading.ts'
import { scaledText } from '../frames/scaled-text.ts'
import { withOption } from './change-call.ts'
import { isOf } from './plan-rules.ts'
import { callReading, type Rule } from './rule.ts'

/** How much more or less is meant where no number is said: common practice, no source. */
const STEPS = { much: 0.5, plain: 0.25, slight: 0.1 } as const

const SAYS = /\b(?:more|less|fewer|extra|piu|meno|twice|double|triple|half|doppi[oa]|triplo|meta)\b/u

const MUCH = `(?:an? (?:lot|load|bunch|heap) |lots |loads |much |far |way |many |molt[oaie] )`
const SLIGHT = `(?:(?:just )?an? (?:bit|little|touch|few|tad|handful) |slightly |some |un po |qualche )`
const BETWEEN = `(?:(?:of|the|my|as|much|many|amount|quantity|di|del|della|dei|delle|il|la|le|lo|i) )*`
const CHANGE = new RegExp(
  String.raw`\b(?:(?<much>${MUCH})|(?<slight>${SLIGHT}))?(?<way>more|extra|less|fewer|piu|meno|twice|double|triple|half|(?:il )?doppio|(?:il )?triplo|(?:la )?meta) (?:di )?${BETWEEN}(?<what>\p{L}+)`,
  'u',
)

/** Whatever is steeped. */
const FRUIT = /^(?:fruits?|berries|peels?|zest|herbs?|leaves|beans|nuts|frutta|frutt[io]|scorz[ae]|bucc[ei]a?|foglie)$/u

const TIMES: Readonly<Record<string, number>> = {
  twice: 2,
  double: 2,
  doppio: 2,
  triple: 3,
  triplo: 3,
  half: 0.5,
  meta: 0.5,
}

/** A plant without an amount of its own. */
const isNamed = ({ kind, with: amount }: Bit): boolean => (kind === 'plant' || kind === 'jar') && amount === undefined

interface Change {
  readonly times: number
  readonly what: string
}

/** How many times as much of a plant, or of the fruit, is wished; null where nothing of the kind is said. */
function changeIn({ typed }: Pick<Sentence, 'typed'>): Change | null {
  const words = wordsFrom(typed)
    .normalize('NFD')
    .replace(/[\u0300-\u036f]/g, '')
  const found = SAYS.test(words) ? CHANGE.exec(words)?.groups : undefined
  if (found === undefined) return null
  const way = found.way!.replace(/^(?:il|la) /, '')
  const fixed = TIMES[way]
  const step = found.much !== undefined ? STEPS.much : found.slight !== undefined ? STEPS.slight : STEPS.plain
  const times = fixed ?? (/^(?:less|fewer|meno)$/.test(way) ? 1 - step : 1 + step)
  return { times, what: found.what! }
}

/** The plants of a recipe with so many times as much of the one that is wished; null where it is none of it, or has no amount. */
function plantsWith({ bits }: Sentence, of: string, { times, what }: Change): string | null {
  const [plant, another] = bits
  if (another !== undefined || (plant === undefined ? !FRUIT.test(what) : !isNamed(plant))) return null
  const items = of.split('+').map((item) => item.trim())
  const at = plant === undefined ? 0 : items.findIndex((item) => isOf(item, plant))
  const now = at === -1 ? undefined : items[at]
  const scaled = now === undefined ? undefined : scaledText('of', now, times)
  return scaled === undefined || scaled === now
    ? null
    : items.map((item, place) => (place === at ? scaled : item)).join(' + ')
}

const isOneNamed = ({ bits: [only, another] }: Sentence): boolean =>
  only !== undefined && another === undefined && isNamed(only)

/** Whether more or less of what is steeped is wished, rather than of all of it. */
export const isOfPlant = (sentence: Sentence): boolean => {
  const change = changeIn(sentence)
  return change !== null && (isOneNamed(sentence) || (sentence.bits.length === 0 && FRUIT.test(change.what)))
}

/** The plants of a call, changed as wished; null where that is not understood. */
export function plantsWished(sentence: Sentence, { options: { of } }: CallRead): string | null {
  const change = of === undefined ? null : changeIn(sentence)
  return change === null ? null : plantsWith(sentence, of!, change)
}

/** `More cherries`, `twice the fruit`, `a bit less peel`: of what steeps so much more, the rest stays. */
export const moreOfPlant: Rule = (sentence, last): TalkReading | null => {
  if (last.command !== 'plan' || sentence.has('how_much', 'asking')) return null
  const of = plantsWished(sentence, last)
  return of === null ? null : callReading(withOption(last, 'of', of))
}
