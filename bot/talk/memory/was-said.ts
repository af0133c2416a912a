import { wordsFrom } from '../../../core/quantity/read/tokens.ts'
import { takes, withOption } from './change-call.ts'
import { callReading, digitsOf, numbersOf, type Rule } from './rule.ts'

/** What was measured, told as it was: `strength was 79`, `it’s really 910 ml`, `era 79`. */
const WAS =
  /\b(?:(?:strength|abv|proof|volume|amount|hydrometer|reading|infusion|it|that|gradazione|forza|volume|quantita)(?: (?:was|were|is actually|is really|is in fact|actually was|really was|reads actually|era|erano|e in realta)|s (?:actually|really)))\b|^(?:was|were|era|erano)\b/u

const MOST_WORDS = 14

/** Smaller than any amount that is told without its unit, and no strength, ml. */
const LEAST_ML = 101

/** What was worked out, by what was measured: where the option stands, a number told as it was goes there, never into what is wished. */
export const wasSaid: Rule = (sentence, last) => {
  const { typed, has } = sentence
  const [only, another] = numbersOf(sentence)
  if (last.command !== 'syrup' && last.command !== 'dilute' && last.command !== 'adjust') return null
  if (only === undefined || another !== undefined || typed.tokens.length > MOST_WORDS || typed.text.includes('?'))
    return null
  const isOther = sentence.bits.some((bit) => bit !== only && bit.kind !== 'date')
  if (isOther || has('how_much', 'how_long', 'wish') || !WAS.test(wordsFrom(typed))) return null
  const isBare = only.kind === 'bare'
  const isStrength = only.kind === 'strength' || (isBare && only.value < LEAST_ML)
  if (isStrength) {
    if (!takes(last.command, 'strength') || last.options.strength === undefined) return null
    return callReading(withOption(last, 'strength', isBare ? `${digitsOf(only)}%` : only.text))
  }
  const liquid = ['infusion', 'spirit', 'liqueur'].find((name) => last.options[name] !== undefined)
  if (liquid === undefined || !(only.kind === 'volume' || isBare)) return null
  return callReading(withOption(last, liquid, isBare ? `${digitsOf(only)} ml` : only.text))
}
