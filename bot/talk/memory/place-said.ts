import { wordsAlone } from '../../../core/quantity/read/tokens.ts'
import type { Sentence } from '../bits/bit.ts'
import type { CallRead, TalkReading } from '../frames/reading.ts'
import { callReading } from './rule.ts'

const ORDINALS: readonly (readonly [word: RegExp, place: number])[] = [
  [/^(?:1|1st|first|one|primo|prima|former)$/, 0],
  [/^(?:2|2nd|second|two|secondo|seconda)$/, 1],
  [/^(?:3|3rd|third|three|terzo|terza)$/, 2],
  [/^(?:4|4th|fourth|four|quarto|quarta)$/, 3],
  [/^(?:5|5th|fifth|five|quinto|quinta)$/, 4],
  [/^(?:6|6th|sixth|six|sesto|sesta)$/, 5],
  [/^(?:last|latter|ultimo|ultima)$/, -1],
  [/^other$/, 1],
]

const LEAD =
  '(?:(?:ok|okay|yes|yep|oh|so|well|sorry|i|id|we|mean|meant|say|said|like|take|have|want|choose|pick|go|with|for|its|it|is|was|thats|make|then|please|si|prendo|scelgo) )*'
const NUMBERED = '(?:the )?(?:numbers?|nr|no|options?|choice|answer|numero|opzione) '
const WORD = String.raw`(\p{L}+|\d(?:st|nd|rd|th)?)`
const BEHIND = '(?: (?:please|pls|thanks|thank you|then|i (?:think|guess|mean)|per favore|grazie))*'
const OF = '(?: of (?:the |those |these )?(?:two|three|four|them|those|these))?'

/** `Number two`, `option 2`: a place and nothing else. */
const BY_NUMBER = new RegExp(`^${LEAD}${NUMBERED}${WORD}${BEHIND}$`, 'u')
/** `The second one`, `2nd please`, `the last of the three`. */
const BY_ORDER = new RegExp(
  `^${LEAD}(?:(?:the|il|la|lo|l|quello|quella) )?${WORD}(?: ones?| jar| option| choice| way| vaso)?${OF}${BEHIND}$`,
  'u',
)

const NUMBER_ALONE = /^(?:[1-9]|one|two|three|four|other)$/

/** One of several by its place: where it stands among so many, or that there is none there; null where no place is said. */
export function placeSaid({ typed }: Pick<Sentence, 'typed'>, count: number): { readonly at: number | null } | null {
  const words = wordsAlone(typed)
  const numbered = BY_NUMBER.exec(words)?.[1]
  const word = numbered ?? BY_ORDER.exec(words)?.[1]
  const place = word === undefined ? undefined : ORDINALS.find(([pattern]) => pattern.test(word))?.[1]
  if (place === undefined) return null
  const at = place < 0 ? count + place : place
  return { at: at >= 0 && at < count ? at : null }
}

/** `Number two` is no amount, whatever was said before. */
export const isNumbered = ({ typed }: Pick<Sentence, 'typed'>): boolean => BY_NUMBER.test(wordsAlone(typed))

/** A number alone may be an amount as well. */
export const isNumberAlone = ({ typed }: Pick<Sentence, 'typed'>): boolean => NUMBER_ALONE.test(wordsAlone(typed))

/** `The second one` behind the ways to finish an infusion: the one that stands there. */
export function wayChosen(sentence: Sentence, call: CallRead | null, offered: readonly CallRead[]): TalkReading | null {
  if (call?.command !== 'syrup' || call.options['to-sweetness'] !== undefined || isNumberAlone(sentence)) return null
  const lines = offered.filter(({ command }) => command === 'syrup').map((each) => JSON.stringify(each.options))
  const ways = [...new Set(lines)]
  const place = ways.length > 1 ? placeSaid(sentence, ways.length) : null
  if (place === null || place.at === null) return null
  return callReading({ command: 'syrup', options: JSON.parse(ways[place.at]!) })
}
