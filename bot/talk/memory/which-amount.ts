import type { Bit, Sentence } from '../bits/bit.ts'
import { jarCalled } from '../bits/jars-of.ts'
import type { CallRead } from '../frames/reading.ts'
import { NUMBER, numberOf } from '../frames/typed-number.ts'
import { digitsOf } from './rule.ts'

const UNIT =
  /(?<![a-z])(?:cupfuls?|cups?|tablespoons?|tbsps?|teaspoons?|tsps?|spoons?|pints?|quarts?|qts?|glass(?:es)?|fl oz|ounces?|oz|pounds?|lbs?|ml|cl|dl|l|lit(?:re|er)s?|litr[oi]|kg|kilos?|kilograms?|g|grams?|grammi|tazz[ae]|bicchier[ei]|cucchiai[o]?)(?![a-z])/i

/** Measures of ten, each as so many ml or g. */
const TENS: Readonly<Record<string, number>> = { ml: 1, cl: 10, dl: 100, l: 1000, g: 1, kg: 1000, kilo: 1000 }

const FIRST_NUMBER = new RegExp(NUMBER, 'u')

interface AmountTyped {
  readonly value: number
  /** Of ml and of litres the same. */
  readonly measure: string
}

/** What an amount counts and in which measure; of a bare number whatever it is held against. */
function amountTyped(text: string): AmountTyped | null {
  const value = numberOf(FIRST_NUMBER.exec(text)?.[0] ?? '')
  if (value === null) return null
  const word = UNIT.exec(text)?.[0].toLowerCase() ?? ''
  const unit = /^lit/.test(word) ? 'l' : /^gram/.test(word) ? 'g' : word.replace(/(?<=..)s$/, '')
  const factor = TENS[unit]
  const measure = factor === undefined ? unit : /l$/.test(unit) ? 'l' : 'g'
  return { value: value * (factor ?? 1), measure }
}

const SWEET = ['sugar', 'water'] as const

const isSame = (one: AmountTyped | null, other: AmountTyped | null): boolean =>
  one !== null && other !== null && (one.measure === other.measure || one.measure === '')

/**
 * What of a sweetening a number puts right, where it says so: by what it is of, else by the measure in which that was told. Both where both
 * were told in it; none where neither was.
 */
export function sweetAmountsMeant({ kind, role, text }: Bit, step: CallRead, { bits }: Sentence): readonly string[] {
  const { command, options } = step
  if (command !== 'jar sweeten' || kind !== 'volume') return []
  if (role === 'of_sugar') return ['sugar']
  if (role === 'of_water') return ['water']
  // `The water was 905 ml`.
  const [named, another] = SWEET.filter((thing) => bits.some((bit) => bit.kind === thing))
  if (named !== undefined && another === undefined) return [named]
  const told = amountTyped(text)
  return SWEET.filter((option) => options[option] !== undefined && isSame(told, amountTyped(options[option])))
}

/** How far apart two amounts are, as the larger by the smaller. */
const apart = (one: number, other: number): number =>
  Math.max(one, other) / Math.max(Number.MIN_VALUE, Math.min(one, other))

/**
 * `The number was wrong, it was 905 ml`, behind a sweetening, of a jar of which 950 ml were strained: the entry before it that holds an
 * amount nearer to what is told than the step itself does. Null where the step is the nearest.
 */
export function nearerBefore(bit: Bit, option: string, step: CallRead, { jars, bits }: Sentence): CallRead | null {
  const jar = jarCalled(step.options.jar, jars)
  const isOfIt = bits.some(({ kind }) => kind === 'water' || kind === 'sugar' || kind === 'spirit')
  const told = amountTyped(bit.kind === 'bare' ? digitsOf(bit) : bit.text)
  if (jar === undefined || told === null || isOfIt || (bit.kind !== 'volume' && bit.kind !== 'bare')) return null
  const own = amountTyped(step.options[option] ?? '')
  const ofStep = own === null ? Number.POSITIVE_INFINITY : apart(own.value, told.value)
  const before = jar
    .told()
    .slice(0, -1)
    .filter(({ kind }) => kind === 'strained' || kind === 'filtered')
    .flatMap(({ seq, typed }) =>
      typed.flatMap(([name, text]) => {
        const held = name === 'measured' ? amountTyped(text) : null
        return held !== null && isSame(told, held) ? [{ seq, far: apart(held.value, told.value) }] : []
      }),
    )
    .filter(({ far }) => far < ofStep && far < MOST_APART)
    .toSorted((one, other) => one.far - other.far)
  const [nearest] = before
  const text = bit.kind === 'bare' ? `${digitsOf(bit)} ml` : bit.text
  return nearest === undefined
    ? null
    : { command: 'jar correct', options: { jar: jar.name, entry: String(nearest.seq), measured: text } }
}

/** A slip that is worth asking about is of a number that is near; common practice, no source. */
const MOST_APART = 1.5
