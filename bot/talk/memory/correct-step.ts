import { wordsFrom } from '../../../core/quantity/read/tokens.ts'
import type { Bit, Sentence } from '../bits/bit.ts'
import { jarCalled } from '../bits/jars-of.ts'
import type { CallRead } from '../frames/reading.ts'
import { NUMBER } from '../frames/typed-number.ts'
import { type Concept, DEEDS } from '../lexicon/lexicon.ts'
import { bottlesRighted } from './bottles-righted.ts'
import { callReading, digitsOf, eitherOf, NO_LIQUEUR, numbersOf, type Rule } from './rule.ts'
import { nearerBefore, sweetAmountsMeant } from './which-amount.ts'

/** Amounts of each step that can be put right, in the order in which a number is tried for them. */
const AMOUNTS: Readonly<Record<string, readonly string[]>> = {
  'jar strain': ['measured', 'strength'],
  'jar filter': ['measured'],
  'jar sweeten': ['sugar', 'water'],
  'jar bottle': ['bottles'],
  'jar taste': ['rating'],
}

/** Said of what was, not of what is wished. */
export const WAS =
  /^(?:sorry|oops|whoops|was|were|meant|mean|wrong|correction|should|actually|mistyped|typo|misread|mismeasured|miscounted|misheard|miswrote|again|shouldve|shouldbe|reread|remeasured|rechecked|correct|letto|riletto|rimisurato|ricontrollato|riguardato|rivisto|ricontato|meglio|misurato|sbagliato|sbagliata|sbagliavo|scusa|scusate|volevo|intendevo|era|erano|anzi|ops|glasses|reflection|thoughts?|reconsidered|reconsidering|ripensandoci|ripensato)$/

/** Steps of which a small number can only be a strength. */
const OF_LIQUID: ReadonlySet<string> = new Set(['jar strain'])

/** A longer sentence is one of its own. */
const MOST_PIECES = 14

/** What a step is told by: said again in a correction of it. */
const OF_STEP: Readonly<Record<string, readonly Concept[]>> = {
  'jar bottle': ['bottled'],
  'jar taste': ['tasted'],
  'jar sweeten': ['sweetened', 'added'],
  'jar strain': ['strained'],
  'jar filter': ['filtered', 'strained'],
}

/** Looked at once more. */
const AGAIN =
  /\b(?:second|another|other) (?:time|check|reading)\b|\b(?:check|checked|measured|weighed|read) (?:it |them |that )?(?:again|twice)\b|\bdouble checked\b|\b(?:second|another|closer|better) look\b|\b(?:looked|guardato|visto|letto) (?:meglio|again|closer)\b|\bchanged my mind\b|\b(?:ho|abbiamo) cambiato idea\b|\bcambio idea\b/u

/** `Wait no 910`, `aspetta, no, 910`. */
const NO =
  /^(?:(?:wait|hang on|hold on|oh|ah|er|erm|um|uh|hmm+|hm|sorry|oops|ops|actually|scusa|aspetta|anzi|,|[.!]) ?)*(?:no|nope|nah|non)\b/u

/** `910, my bad`: who says it owns up to a slip. */
const OWNED =
  /\b(?:my (?:bad|mistake|error|fault|slip)|slip of|fat fingers?|colpa mia|errore mio|mi correggo|sbagliat[oa]|mistaken|miscount|misread)\b/u

/** The number that holds: that before `not`, or behind `instead of`; the only one. */
export function righted(sentence: Sentence, step: CallRead): readonly Bit[] {
  const { typed } = sentence
  const numbers = numbersOf(sentence)
  const not = typed.tokens.findIndex(({ text }, at) => at > 0 && (text === 'not' || text === 'non'))
  if (not !== -1) return numbers.filter(({ to }) => to <= not)
  // `I said 920 but it's 940`: what was recorded is the one that does not hold.
  const others = numbers.filter((bit) => !Object.values(step.options).some((text) => hasNumber(text, bit)))
  return numbers.length === 2 && others.length === 1 ? others : numbers
}

const EACH_NUMBER = new RegExp(NUMBER, 'gu')

const hasNumber = (text: string, bit: Bit): boolean =>
  [...text.matchAll(EACH_NUMBER)].some(([number]) => number === digitsOf(bit))

/** The option of a step that a number is of. */
export function optionFor({ kind, value, role }: Bit, step: CallRead): string | null {
  const options = AMOUNTS[step.command] ?? []
  const takes = (option: string): string | null => (options.includes(option) ? option : null)
  if (kind === 'strength') return takes('strength')
  if (kind === 'bottles') return takes('bottles')
  if (kind === 'rating') return takes('rating')
  if (kind === 'mass') return takes('sugar')
  if (kind === 'volume') return role === 'of_water' ? takes('water') : (takes('measured') ?? takes('water'))
  if (kind !== 'bare') return null
  const [only, another] = options
  if (only !== undefined && another === undefined && only !== 'measured') return only
  // What was read is near to what is meant, or of another size altogether.
  if (options.includes('measured')) return value >= 100 ? 'measured' : takes('strength')
  return value >= 1000 ? takes('water') : takes('sugar')
}

const UNITS: Readonly<Record<string, string>> = { measured: ' ml', strength: '%', sugar: ' g', water: ' ml' }

export const textOf = (bit: Bit, option: string): string =>
  bit.kind === 'bare' ? `${digitsOf(bit)}${UNITS[option] ?? ''}` : bit.text

/** `4 jalapeños not 2`, of a jar of lemons: it is told of another one. */
const isOfOtherPlant = ({ bits, jars }: Sentence, { options }: CallRead): boolean => {
  const jar = jarCalled(options.jar, jars)
  return (
    jar !== undefined &&
    bits.some(
      ({ kind, role, ids = [] }) =>
        kind === 'plant' && role === null && ids.length > 0 && !ids.some((each) => jar.plants.includes(each)),
    )
  )
}

/**
 * `Sorry, it was 910`: what was recorded last is put right by a line of its own; nothing is edited by hand. A strength that a liqueur
 * may have is a wish, unless it is said to be what was.
 */
export const correctedStep: Rule = (sentence, last, { step }) => {
  const { has, typed } = sentence
  if (step === null || step.command !== last.command || !(step.command in AMOUNTS)) return null
  const isAgain = AGAIN.test(wordsFrom(typed))
  if (
    (has('asking') && !isAgain) ||
    has('what_is_on', 'show_jar', 'remind', 'be_quiet', 'again') ||
    typed.tokens.length > MOST_PIECES
  )
    return null
  if (typed.tokens.some(({ text }) => text === '?')) return null
  if (isOfOtherPlant(sentence, step)) return null
  const isOfPast = isAgain || OWNED.test(wordsFrom(typed)) || typed.tokens.some(({ text }) => WAS.test(text))
  const isNo = NO.test(wordsFrom(typed))
  const isOther = righted(sentence, step).length < numbersOf(sentence).length
  const isMade = /^(?:ok |right |hm+ )?(?:make|put|call) (?:it|that)\b/i.test(typed.text)
  // What is told of a deed is a deed of its own.
  if (!isNo && has(...DEEDS) && !OF_STEP[step.command]?.some((concept) => has(concept) && isOfPast)) return null
  if (!isOfPast && !isNo && !isOther && !isMade) return null
  const bottles = bottlesRighted(sentence, {
    ...step,
    options: { ...step.options, ...(last.options.jar !== undefined && { jar: last.options.jar }) },
  })
  if (bottles !== null) return bottles
  const options: Record<string, string> = {}
  const numbers = righted(sentence, step)
  const [only] = numbers
  const { jar } = step.options
  const name = last.options.jar ?? jar
  const correctOf = (option: string, bit: Bit): CallRead => ({
    command: 'jar correct',
    options: { ...(name !== undefined && { jar: name }), [option]: textOf(bit, option) },
  })
  if (numbers.length === 1 && only !== undefined && name !== undefined) {
    const [one, other] = sweetAmountsMeant(only, step, sentence)
    if (one !== undefined && other !== undefined)
      return eitherOf(correctOf(one, only), [correctOf(one, only), correctOf(other, only)])
    const own = one ?? optionFor(only, step)
    const before = own === null ? null : nearerBefore(only, own, step, sentence)
    if (own !== null && before !== null) return eitherOf(before, [before, correctOf(own, only)])
  }
  for (const bit of numbers) {
    const isStrength = bit.kind === 'strength' || (bit.kind === 'bare' && OF_LIQUID.has(step.command))
    const isWish = isStrength && bit.value <= NO_LIQUEUR && !isOfPast
    const [meant] = sweetAmountsMeant(bit, step, sentence)
    const option = isWish ? null : (meant ?? optionFor(bit, step))
    if (option === null || option in options) return null
    options[option] = textOf(bit, option)
  }
  const day = sentence.bits.find(({ kind }) => kind === 'date')
  if (day !== undefined && isOfPast) options.when = day.text
  if (Object.keys(options).length === 0 || jar === undefined) return null
  return callReading({ command: 'jar correct', options: { jar: last.options.jar ?? jar, ...options } }, 'record')
}
