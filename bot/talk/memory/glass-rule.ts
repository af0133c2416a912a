import { wordsFrom } from '../../../core/quantity/read/tokens.ts'
import type { Sentence } from '../bits/bit.ts'
import { callReading, type Rule } from './rule.ts'

/** A small glass, where nothing is said of its size, ml. Common practice, no source. */
export const GLASS_ML = 40

/** The same, and a bottle of a liqueur, ml. */
const USUAL = { glassMl: GLASS_ML, bottleMl: 500 } as const

const MOST_GLASS_ML = 400
const MOST_GLASSES = 20

/** Measures that a bar has names for, ml: those of the United Kingdom. */
const CALLED: readonly (readonly [RegExp, number])[] = [
  [/\b(?:a|per|one) single\b/, 25],
  [/\b(?:a|per|one) double\b/, 50],
]

const BOTTLE = /\b(?:a|per|the|una|alla) (?:bottle|bottiglia)\b/

const ALCOHOL = /\b(?:alcohol|alcol|units?|unita|how strong|what(?:s| is) in|cosa c e)\b/

/** Whether it is asked how much alcohol there is in a glass. */
const isAsked = ({ has, typed }: Sentence): boolean =>
  has('units_of_alcohol') || (has('glass_of') && ALCOHOL.test(wordsFrom(typed)))

/** How much is poured, as an option takes it. Ounces of a drink are fluid. */
export function poured(sentence: Sentence): string {
  const ounces = sentence.bits.find(({ kind, text }) => kind === 'mass' && OUNCES.test(text))
  return ounces === undefined ? `${Math.round(pouredMl(sentence))} ml` : ounces.text.replace(OUNCES, 'fl oz')
}

const OUNCES = /\b(?:oz|ounces?)$/i

function pouredMl({ bits, typed, has }: Sentence): number {
  const called = CALLED.find(([pattern]) => pattern.test(wordsFrom(typed)))?.[1]
  const said = bits.find(({ kind, value }) => kind === 'volume' && value <= MOST_GLASS_ML)?.value ?? called
  const bottle = bits.find(({ kind }) => kind === 'bottles')
  const count = bits.find(({ kind, value }) => kind === 'bare' && value >= 1 && value <= MOST_GLASSES)?.value ?? 1
  if (said !== undefined) return count * said
  if (bottle !== undefined && !has('glass_of'))
    return bottle.isSizeAssumed === true ? (bottle.count ?? 1) * USUAL.bottleMl : bottle.value
  return count * (BOTTLE.test(wordsFrom(typed)) && !has('glass_of') ? USUAL.bottleMl : USUAL.glassMl)
}

/** `two glasses of that: how much alcohol`: of what was worked out last, where it is known how strong it comes out. */
export const glassesOf: Rule = (sentence, last, { drink }) => {
  const isOfOther = sentence.bits.some(({ kind }) => kind === 'plant' || kind === 'jar' || kind === 'strength')
  if (isOfOther || !isAsked(sentence)) return null
  const known = drink === null ? undefined : `${Math.round(drink.abvPercent)}%`
  const strength =
    last.options['to-strength'] ?? (last.command === 'serving' ? last.options.strength : undefined) ?? known
  if (strength === undefined) return null
  return callReading({ command: 'serving', options: { pour: poured(sentence), strength } })
}
