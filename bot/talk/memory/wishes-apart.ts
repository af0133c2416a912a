import { textFrom, wordAt } from '../../../core/quantity/read/tokens.ts'
import type { Bit, Sentence } from '../bits/bit.ts'
import type { TalkReading } from '../frames/reading.ts'
import { DEEDS } from '../lexicon/lexicon.ts'
import { changedBy } from './change-call.ts'
import { followUp } from './follow-up.ts'
import { isSizeOfJar } from './part-of-plan.ts'
import type { Remembered } from './remembered.ts'
import { callReading, digitsOf, numbersOf, WORKED_OUT } from './rule.ts'
import { factorSaid } from './taste-rules.ts'

/** What joins two wishes of one recipe. */
const JOIN = /^(?:and|but|then|also|e|ed|ma|poi|anche|[,;.!&+])$/

const MOST_WORDS = 22
const MOST_CLAUSES = 4

/** Its clauses; a join within an amount, `two and a half litres`, parts none. */
function clausesOf({ typed, bits }: Sentence): readonly string[] {
  const { tokens } = typed
  const isWithin = (at: number): boolean => bits.some(({ from, to }) => from < at && at < to)
  const cuts = tokens.flatMap(({ text }, at) => (JOIN.test(text) && !isWithin(at) ? [at] : []))
  return [-1, ...cuts].flatMap((cut, at) => {
    const [from, to] = [cut + 1, cuts[at] ?? tokens.length]
    return from < to ? [textFrom(typed, from, to)] : []
  })
}

/** Before a number that does not hold: `28 percent not 30`. */
const NOT = /^(?:not|non|than|che)$/

/** The two of `two thirds`. */
const isWithin = ({ from, to }: Bit, part: { readonly from: number; readonly to: number } | null): boolean =>
  part !== null && part.from <= from && to <= part.to

/** A wish of which a number stands in nothing that it came to is asked about. */
function withEachNumber(reading: TalkReading | null, sentence: Sentence, { call }: Remembered): TalkReading | null {
  if (reading?.kind !== 'call' || reading.does !== 'compute' || call === null || !WORKED_OUT.test(call.command))
    return reading
  // A price is for what is sold, `£18 a bottle` is one of 700 ml, and a glass is of a size of its own.
  if (reading.call.command !== call.command) return reading
  const texts = [reading.call, call].flatMap(({ options }) => Object.values(options)).join(' ')
  const numbers = new Set(texts.match(/\d+(?:[.,]\d+)?/g))
  const isSaid = (bit: Bit): boolean =>
    numbers.has(digitsOf(bit)) || (bit.text.includes(' ') && texts.includes(bit.text))
  const isGone = ({ role, from }: Bit): boolean =>
    role === 'gone' || role === 'left_out' || role === 'price' || NOT.test(wordAt(sentence.typed, from - 1))
  // `How much alcohol in a bottle of it`: no number is told.
  const isNone = ({ kind, from }: Bit): boolean =>
    kind === 'bottles' && /^(?:a|una)$/.test(wordAt(sentence.typed, from))
  // `20 per cent less sugar` is worked out.
  const isShare = reading.call.options['to-sweetness'] !== call.options['to-sweetness']
  const left = numbersOf(sentence).find(
    (bit) =>
      !isGone(bit) &&
      !isNone(bit) &&
      !isSaid(bit) &&
      !isSizeOfJar(bit, sentence.typed) &&
      !isWithin(bit, factorSaid(sentence)) &&
      !(isShare && bit.kind === 'strength'),
  )
  if (left === undefined) return reading
  return {
    kind: 'question',
    call: reading.call,
    about: { kind: 'number', typed: textFrom(sentence.typed, left.from, left.to) },
    choices: [reading.call],
    leftOut: [],
  }
}

/**
 * `Eight bottles out of it, and with vodka`: each clause changes what the one before came to. Null where fewer than two of them change
 * anything, or where one that tells an amount, a thing or a deed changes nothing.
 */
function wishesApart(sentence: Sentence, said: Remembered, read: (text: string) => Sentence): TalkReading | null {
  const { call } = said
  const words = sentence.typed.tokens.filter(({ kind }) => kind === 'word').length
  if (call === null || said.question !== null || !WORKED_OUT.test(call.command) || words > MOST_WORDS) return null
  const clauses = clausesOf(sentence)
  if (clauses.length < 2 || clauses.length > MOST_CLAUSES) return null
  let now = call
  let [changes, kept] = [0, 0]
  for (const clause of clauses) {
    const own = read(clause)
    const reading = followUp(own, { ...said, call: now })
    const isOfNothing = reading === null || (reading.kind === 'last' && reading.what === 'let_be')
    if (isOfNothing && own.bits.length === 0 && !own.has(...DEEDS, 'asking')) continue
    if (reading?.kind !== 'call' || reading.does !== 'compute' || reading.call.command !== call.command) return null
    // `Keep 30, but drier`.
    if (changedBy(now, reading.call).length === 0) kept++
    else changes++
    now = reading.call
  }
  return changes === 0 || changes + kept < 2 ? null : callReading(now)
}

/** What a sentence means after what was said before: as a whole, or clause by clause where more of it is said so. */
export function wished(sentence: Sentence, said: Remembered, read: (text: string) => Sentence): TalkReading | null {
  const whole = followUp(sentence, said)
  const each = withEachNumber(whole, sentence, said)
  const apart = wishesApart(sentence, said, read)
  if (apart?.kind !== 'call' || said.call === null) return each
  const isWhole =
    whole?.kind === 'call' &&
    each === whole &&
    changedBy(said.call, whole.call).join() === changedBy(said.call, apart.call).join()
  return isWhole ? whole : apart
}
