import { unlessRefused } from '../../../core/domain-error.ts'
import { parseBottles } from '../../../core/recipe/plan/parse-bottles.ts'
import type { Bit, Sentence } from '../bits/bit.ts'
import type { CallRead, TalkReading } from '../frames/reading.ts'
import { callReading, digitsOf, eitherOf, numbersOf } from './rule.ts'

/** `One of 250`: a single one of so many millilitres. */
const isOneOf = ({ typed: { tokens } }: Sentence, { kind, from, value }: Bit): boolean =>
  kind === 'bare' &&
  value >= LEAST_ML &&
  /^(?:of|da)$/.test(tokens[from - 1]?.text ?? '') &&
  /^(?:one|another|a|uno|una|un altra)$/.test(tokens[from - 2]?.text ?? '')

/** A bottle that holds less is no bottle, ml. */
const LEAST_ML = 20

/** `Four of 500 and one of 250`, `four half litres and two quarter litres`: all there were; null where one lot or something else is told. */
function lotsIn(sentence: Sentence, numbers: readonly Bit[]): readonly string[] | null {
  const lots: string[] = []
  for (let at = 0; at < numbers.length; at++) {
    const [bit, next] = [numbers[at]!, numbers[at + 1]]
    if (bit.kind === 'bottles') lots.push(bit.text)
    else if (isOneOf(sentence, bit)) lots.push(`1 x ${digitsOf(bit)} ml`)
    else if (bit.kind === 'bare' && next?.kind === 'volume' && bit.to === next.from) {
      lots.push(`${digitsOf(bit)} x ${next.text}`)
      at++
    } else return null
  }
  return lots.length > 1 ? lots : null
}

/** `It was three 20cl`: of several sizes it may be those of that size, or all there were. */
export function bottlesRighted(sentence: Sentence, { command, options }: CallRead): TalkReading | null {
  const numbers = numbersOf(sentence)
  const [count, size, another] = numbers
  const { jar, bottles } = options
  if (command !== 'jar bottle' || jar === undefined || bottles === undefined) return null
  const all = lotsIn(sentence, numbers)
  if (all !== null) return callReading({ command: 'jar correct', options: { jar, bottles: all.join(' + ') } }, 'record')
  if (count?.kind !== 'bare' || size?.kind !== 'volume' || another !== undefined || count.to !== size.from) return null
  const right = `${digitsOf(count)} x ${size.text}`
  const items = bottles.split('+').map((item) => item.trim())
  const at = items.findIndex((item) => sizeMl(item) === size.value)
  const correct = (text: string): CallRead => ({ command: 'jar correct', options: { jar, bottles: text } })
  const only = correct(right)
  if (at === -1 || items.length === 1) return callReading(only, 'record')
  return eitherOf(only, [only, correct(items.with(at, right).join(' + '))])
}

const sizeMl = (item: string): number | null => unlessRefused(() => parseBottles(item)[0]?.volumeMl) ?? null
