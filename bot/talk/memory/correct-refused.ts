import type { Bit, Sentence } from '../bits/bit.ts'
import type { CallRead, TalkReading } from '../frames/reading.ts'
import { DEEDS } from '../lexicon/lexicon.ts'
import { nearestOption, withOption } from './change-call.ts'
import { optionFor, righted, textOf, WAS } from './correct-step.ts'
import type { Remembered } from './remembered.ts'
import { callReading, digitsOf, numbersOf } from './rule.ts'

/** A longer sentence is one of its own. */
const MOST_PIECES = 12

const NO = /^(?:no|nope|non|ah|doh|duh)$/

/** A unit by itself: `oops, ml`. */
const UNIT =
  /^(?:ml|cl|l|litres?|liters?|g|grams?|kg|oz|ounces?|fl oz|cups?|pints?|quarts?|lb|lbs|pounds?|litri|grammi)$/i
const LEAD =
  /^(?:oops|whoops|sorry|ops|scusa|no|i meant|meant|that(?:’|'|)s|it was|in|anzi|volevo dire|intendevo|[\s,;:.!—-])+/i

const AMOUNT = /^([\d.,]+(?:\s*\/\s*\d+)?)\s*(\p{L}[\p{L}\s]*)?$/u

/** From here on a bare number is of millilitres. */
const LEAST_ML = 20

/** The text of an option with another number in its unit. */
function inItsUnit(now: string | undefined, bit: Bit, option: string): string {
  const unit = AMOUNT.exec(now ?? '')?.[2]?.trim()
  const isLitres = unit !== undefined && /^(?:l|lit)/i.test(unit) && bit.value >= LEAST_ML
  return bit.kind !== 'bare' || unit === undefined || isLitres ? textOf(bit, option) : `${digitsOf(bit)} ${unit}`
}

/** What an amount is measured in, put right. */
function unitRighted({ typed }: Sentence, call: CallRead): CallRead | null {
  const unit = typed.text
    .replace(LEAD, '')
    .replace(/[\s.!,]+(?:not \w+)?$/, '')
    .trim()
  if (!UNIT.test(unit)) return null
  const option = ['measured', 'sugar', 'water', 'spirit'].find((each) => AMOUNT.test(call.options[each] ?? ''))
  const number = option === undefined ? undefined : AMOUNT.exec(call.options[option]!)?.[1]
  return option === undefined || number === undefined ? null : withOption(call, option, `${number} ${unit}`)
}

/** A step with a number of it put right; null where the sentence is no correction. */
function mended(sentence: Sentence, call: CallRead, isAsked: boolean): CallRead | null {
  const { typed, has } = sentence
  if (typed.tokens.length > MOST_PIECES || has('asking', 'wish', ...DEEDS)) return null
  const isSaid = typed.tokens.some(({ text }, at) => WAS.test(text) || (at === 0 && NO.test(text)))
  const numbers = numbersOf(sentence)
  const isBare = numbers.length === 1 && typed.tokens.length <= numbers[0]!.to - numbers[0]!.from + 1
  const isNot = righted(sentence, call).length < numbers.length
  // A number alone answers what is asked.
  if (!isSaid && !isNot && (!isBare || isAsked)) return null
  if (numbers.length === 0) return unitRighted(sentence, call)
  let now = call
  for (const bit of righted(sentence, call)) {
    const own = optionFor(bit, call)
    const option = bit.kind === 'bare' || own === null ? (nearestOption(call, bit.value) ?? own) : own
    if (option === null || option === 'jar' || option === 'when' || (isAsked && !(option in call.options))) return null
    const was = now.options[option]
    // Beside a name its number alone is another one: `10 lemons`.
    const text =
      was === undefined || AMOUNT.test(was) || /%/.test(was)
        ? inItsUnit(was, bit, option)
        : was.replace(/[\d.,]+(?:\s*(?:ml|cl|l|g|kg|%))?/, bit.kind === 'bare' ? digitsOf(bit) : bit.text)
    now = withOption(now, option, text)
  }
  return now === call ? null : now
}

/**
 * `Oops, it was 33 fl oz`, `no, 85 %`, behind a step that was refused or is asked about: that step, with the number put right; null where
 * none is open, or something else is said.
 */
export function refusedMended(sentence: Sentence, { refused, question }: Remembered): TalkReading | null {
  const asked = question?.kind === 'question' && /^jar /.test(question.call.command) ? question : null
  const call = refused ?? asked?.call ?? null
  if (call === null) return null
  const now = mended(sentence, call, refused === null)
  if (now === null) return null
  if (refused !== null) return callReading(now, 'record')
  if (asked === null || asked.about.kind === 'number') return null
  const changed = Object.entries(now.options).filter(([option, text]) => call.options[option] !== text)
  const withChanged = (each: CallRead): CallRead => ({
    ...each,
    options: { ...each.options, ...Object.fromEntries(changed) },
  })
  return { ...asked, call: now, choices: asked.choices.map(withChanged) }
}
