import type { Surroundings } from '../bits/bit.ts'
import { sentenceOnce } from '../bits/sentence-once.ts'
import { measuresAsked } from '../frames/amount-slots.ts'
import type { TalkReading } from '../frames/reading.ts'
import { measureAsked } from './measure-asked.ts'

const NAMES =
  'cups?|ounces|oz|fl oz|fluid ounces|quarts?|pints?|pounds|ml|millilit(?:re|er)s|lit(?:re|er)s|grams|metric|imperial|units|measures?|measurements|tazze|once|litri|grammi|misure|unità'
const WHOSE = '(?:us|u\\.s\\.|american|british|uk|imperial|metric|european|americane|inglesi|metriche)'

/** `In US cups`, `in cups please`, `all in ounces and cups`: no amount of anything. */
const BESIDE = new RegExp(
  `(?:^|[\\s,;.(–—-]+)(?:(?:and|but|all|everything|the amounts?|answer|tell me|show (?:me|it)|give (?:me|it)|tutto|dimmelo)\\s+)*(in (?:${WHOSE} )?(?:${NAMES})(?: (?:${WHOSE}|please|per favore))?(?:(?: and | or | e |, )(?:${NAMES}))*(?: ${WHOSE})?(?:,? (?:please|pls|per favore|if you can|thanks|grazie))?)(?=[\\s.,;!?)]|$)(?! (?:of|di)\\b)`,
  'iu',
)

/**
 * A plan with whose measures it is to be told in, said beside it: the plan without these words, told in them. Null where nobody's are
 * wished, or no plan is read of the rest.
 */
export function withMeasures(
  text: string,
  surroundings: Surroundings,
  read: (text: string) => TalkReading,
): TalkReading | null {
  const found = BESIDE.exec(text)
  // `1 lb 4 oz in grams` is worked out, whatever was planned before.
  if (found === null || measureAsked(sentenceOnce(text, surroundings)) !== null) return null
  const { has } = sentenceOnce(found[1]!, surroundings)
  const kitchen = measuresAsked(has)
  if (kitchen === null) return null
  const rest = `${text.slice(0, found.index)}${text.slice(found.index + found[0].length)}`
  const reading = read(rest.replace(/^[\s,;:.)]+/, ''))
  if (reading.kind === 'question' && reading.call.command === 'plan')
    return { ...reading, leftOut: [...reading.leftOut, found[1]!] }
  return reading.kind === 'call' && reading.call.command === 'plan' ? { ...reading, kitchen } : null
}
