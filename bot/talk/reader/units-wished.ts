import type { Sentence } from '../bits/bit.ts'
import { measuresAsked } from '../frames/amount-slots.ts'
import type { TalkReading } from '../frames/reading.ts'
import type { Concept } from '../lexicon/lexicon.ts'

const MEASURES: ReadonlySet<Concept> = new Set(['metric_measures', 'us_measures', 'imperial_measures'])
/** Before and behind measures that somebody does not use. */
const NOT_BEFORE =
  /(?:^| )(?:no|not|never|dont|doesnt|cant|cannot|without|hate|instead of|rather than|than|non|niente|senza|invece (?:di|delle|dei)) (?:\p{L}+ ){0,3}$/u
const NOT_BEHIND =
  /^ (?:(?:and|or|e|o) \p{L}+ )?(?:mean nothing|means nothing|are no use|are useless|confuse|non (?:le|li|lo|la|ne))/u
/** Whoever says so wants to be answered in them. */
const SPOKEN =
  /(?:^| )(?:talk|speak|answer|reply|write|work|show|tell|give|use|using|put|do|have|say|think|measure|keep|stick|switch|parl\p{L}*|rispond\p{L}*|dai|dammi|dimmi|usa\p{L}*|scriv\p{L}*|please|per favore) (?:\p{L}+ ){0,5}$/u
/** `Could you put it that way?`: what was answered, not how all is to be. */
const OF_ANSWER = /(?:^| )(?:put|say|give|show|tell|write|convert) (?:me )?(?:it|that|this|them)(?= |$)/
const OTHER = /(?:^| )(?:how much|how many|whats?|what is|what are|quant[oaie]|cos ?[’']? ?e)(?= |$)/

/**
 * `Can you talk in ml and grams please, I don’t know those ounces`: whose measures somebody wants to be answered in, of which others are
 * denied; null where none, where both are wished, or where anything is converted.
 */
export function unitsWished({ typed: { tokens }, spans, bits, has }: Sentence): TalkReading | null {
  const text = tokens.map((token) => token.text).join(' ')
  if (
    has('with_amounts') ||
    bits.some(({ kind }) => kind === 'plant' || kind === 'jar') ||
    OTHER.test(text) ||
    OF_ANSWER.test(text)
  )
    return null
  const words = (from: number, to: number): string =>
    tokens
      .slice(from, to)
      .map((token) => ` ${token.text}`)
      .join('')
  const named = spans.filter(({ concept }) => MEASURES.has(concept))
  const isDenied = ({ from, to }: (typeof named)[number]): boolean =>
    NOT_BEFORE.test(`${words(Math.max(0, from - 5), from)} `) || NOT_BEHIND.test(words(to, to + 6))
  const meant = named.filter((span) => !isDenied(span))
  const [first] = meant
  const isSpoken =
    meant.some(({ from }) => SPOKEN.test(`${words(Math.max(0, from - 7), from)} `)) || /please|favore/.test(text)
  if (first === undefined || !(isSpoken || meant.length < named.length)) return null
  const units = measuresAsked((...concepts) => meant.some(({ concept }) => concepts.includes(concept)))
  const isOne = meant.every(({ concept }) => (concept === 'metric_measures') === (units === 'metric'))
  if (units === null || !isOne) return null
  return { kind: 'call', call: { command: 'settings', options: { units } }, leftOut: [], does: 'set' }
}
