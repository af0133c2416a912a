import { wordsFrom } from '../../../core/quantity/read/tokens.ts'
import type { Sentence } from '../bits/bit.ts'
import { jarCalled } from '../bits/jars-of.ts'
import type { CallRead } from '../frames/reading.ts'
import type { Concept } from '../lexicon/lexicon.ts'
import { scaled, strengthened, sweetened, sweetnessNow, takes, withOption } from './change-call.ts'
import { callReading, changedOf, isAmountBit, RECORDED, type Rule, setTo, WORKED_OUT } from './rule.ts'

export const tasteChanged: Rule = (sentence, last, { drink }) => {
  const { has, jars } = sentence
  const call = changedOf(last, jars)
  const isSlight = has('slightly')
  let changed: CallRead | null = null
  // `Too strong` of what was only worked out is a wish; of a jar it may be trouble.
  const isOfTarget = sentence.bits.every(
    ({ kind, value }) =>
      kind === 'strength' || kind === 'sweetness' || (value === 0 && (kind === 'sugar' || kind === 'water')),
  )
  const isWorkedOut = WORKED_OUT.test(last.command) && isOfTarget && sentence.bits.length <= 1
  const says = (...concepts: readonly Concept[]): boolean => isWorkedOut && has(...concepts)
  const [isSweeter, isDrier] = [has('sweeter') || says('too_dry'), has('drier') || says('too_sweet')]
  const [isStronger, isWeaker] = [has('stronger') || says('too_weak'), has('weaker') || says('too_strong')]
  const isDrierAlone = isDrier && !isSweeter && !isStronger && !isWeaker
  if (isDrierAlone && call.options['to-sweetness'] !== undefined && sweetnessNow(call) === 0)
    return { kind: 'small_talk', key: 'driest' }
  if (takes(call.command, 'to-sweetness') && (isDrier || isSweeter))
    changed = sweetened(call, isSweeter, isSlight, drink?.sugarGPerL)
  if (takes(call.command, 'to-strength') && (isStronger || isWeaker))
    changed = strengthened(
      changed ?? call,
      isStronger,
      isSlight,
      drink?.abvPercent ?? jarCalled(call.options.jar, jars)?.strengthPercent(),
    )
  if (changed === null) return null
  // A step in place of a number that is said would be a guess.
  if (sentence.bits.some(({ kind, value }) => kind === 'mass' && value > 0)) return null
  const factor = factorBeside(sentence)
  changed = factor === null ? changed : (scaled(changed, factor) ?? changed)
  // A target that is said with it goes before the step.
  const target = sentence.bits.find(({ kind }) => kind === 'strength' || kind === 'sweetness')
  return target === undefined ? callReading(changed) : (setTo(target, changed, false) ?? callReading(changed))
}

const TASTES: ReadonlySet<Concept> = new Set(['sweeter', 'drier', 'stronger', 'weaker'])
const JOINS = /^(?:and|but|,|&|\+|e|ed|ma|then|only|just)$/

/** `Double and less sweet`: how many times as much, where that is said beside a taste and not of it, as `twice as sweet` is. */
function factorBeside({ spans, typed }: Sentence): number | null {
  const size = spans.find(({ concept }) => concept in FACTORS)
  const taste = spans.find(({ concept }) => TASTES.has(concept))
  if (size === undefined || taste === undefined) return null
  const [from, to] = size.to <= taste.from ? [size.to, taste.from] : [taste.to, size.from]
  const isApart = typed.tokens.slice(from, to).some(({ text }) => JOINS.test(text))
  return isApart ? FACTORS[size.concept as keyof typeof FACTORS] : null
}

const FACTORS = { twice: 2, thrice: 3, halve: 0.5 } as const

export const styled: Rule = (sentence, last) => {
  const call = changedOf(last, sentence.jars)
  if (!takes(call.command, 'to-sweetness') || sentence.bits.some(isAmountBit)) return null
  const style = sentence.has('wish_dry')
    ? 'dry'
    : sentence.has('wish_medium')
      ? 'everyday'
      : sentence.has('wish_rich')
        ? 'rich'
        : null
  if (style === null || sentence.typed.tokens.length > 7) return null
  const changed = withOption(call, 'to-sweetness', style)
  // `28% and dry`: both are wished.
  const strength = sentence.bits.find(({ kind }) => kind === 'strength')
  return strength === undefined ? callReading(changed) : (setTo(strength, changed, false) ?? callReading(changed))
}

const PARTS: readonly (readonly [RegExp, number])[] = [
  [/\b(?:two|2) thirds\b|\bdue terzi\b/, 2 / 3],
  [/\b(?:three|3) quarters\b|\btre quarti\b/, 0.75],
  [/\b(?:a|one) third\b|\bun terzo\b/, 1 / 3],
  [/\b(?:a|one) quarter\b|\bun quarto\b/, 0.25],
]

/** How many times as much is said, and where that ends; null where nothing of it is. */
export function factorSaid({ spans, typed }: Pick<Sentence, 'spans' | 'typed'>) {
  const span = spans.find(({ concept }) => concept in FACTORS)
  if (span !== undefined) return { times: FACTORS[span.concept as keyof typeof FACTORS], from: span.from, to: span.to }
  const { tokens } = typed
  for (const at of tokens.keys()) {
    const words = tokens.slice(at, at + 2).map(({ text }) => text)
    const part = PARTS.find(([pattern]) => words.length === 2 && pattern.test(words.join(' ')))
    if (part !== undefined) return { times: part[1], from: at, to: at + 2 }
  }
  return null
}

export const resized: Rule = ({ has, bits, typed }, last) => {
  // `Poured half of it into a flask`: what is written down is done no second time, half as large.
  if (RECORDED.test(last.command)) return null
  if (bits.length > 0 && !bits.every(({ kind }) => kind === 'bare')) return null
  const words = wordsFrom(typed)
  const part = PARTS.find(([pattern]) => pattern.test(words))?.[1]
  const factor = part ?? (has('twice') ? 2 : has('thrice') ? 3 : has('halve') ? 0.5 : null)
  const changed = factor === null ? null : scaled(last, factor)
  return changed === null ? null : callReading(changed)
}
