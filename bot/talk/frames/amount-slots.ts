import { type Bit, bit, type Sentence } from '../bits/bit.ts'
import { isSpan, steepSpan } from '../bits/steep-span.ts'
import { monthOf } from './jars-meant.ts'
import type { Fill, SlotFilled } from './plant-slots.ts'
import { daysUntil, steepUntil } from './steep-until.ts'

export const onlyBit = (bit: Bit | undefined | null): SlotFilled | null =>
  bit ? { text: bit.text, bits: [bit] } : null

export const find =
  (fits: (bit: Bit) => boolean): Fill =>
  ({ bits }) =>
    onlyBit(bits.find(fits))

/** One amount with what it is of, where an option has to be told. */
function amountText(bits: readonly Bit[], amount: Bit, kind: Bit['kind']): SlotFilled {
  const thing = amount.with === undefined ? undefined : bits[amount.with]
  const named =
    kind === 'sugar' &&
    thing !== undefined &&
    !/^(?:white |caster |granulated )?(?:sugar|zucchero)$/.test(thing.text.toLowerCase())
      ? ` ${thing.text.toLowerCase()}`
      : ''
  const unit = amount.kind === 'bare' ? (kind === 'sugar' ? ' g' : ' ml') : ''
  return { text: `${amount.text}${unit}${named}`, bits: thing === undefined ? [amount] : [amount, thing] }
}

/** An amount of something that has no word of a spirit or a plant; of what sweetens there may be several. */
export const amountOf =
  (role: Bit['role'], kind: Bit['kind']): Fill =>
  ({ bits }) => {
    const amounts = bits.filter((bit) => bit.role === role && bit.kind !== kind)
    const [first] = amounts
    if (first === undefined) return null
    if (kind !== 'sugar' || !isOfSeveral(bits, amounts)) return amountText(bits, first, kind)
    const parts = amounts.map((amount) => amountText(bits, amount, kind))
    return { text: parts.map(({ text }) => text).join(' + '), bits: parts.flatMap((part) => part.bits) }
  }

/** `6 oz of sugar and 3 oz of honey`: each of another thing; the same thing twice is said again. */
const isOfSeveral = (bits: readonly Bit[], amounts: readonly Bit[]): boolean => {
  const things = amounts.map((amount) => (amount.with === undefined ? null : bits[amount.with]?.text.toLowerCase()))
  return things.every((thing) => thing) && new Set(things).size === things.length
}

const OUNCES = / ?(?:oz|ounces?|once|oncia)\b/i

export const pour: Fill = (sentence) => {
  const { bits, has } = sentence
  // What is poured by the ounce is poured, not weighed.
  const ounces = has('units_of_alcohol')
    ? bits.find(({ kind, text }) => kind === 'mass' && OUNCES.test(text))
    : undefined
  if (ounces !== undefined) return { text: ounces.text.replace(OUNCES, ' fl oz'), bits: [ounces] }
  const small = bits.find(({ kind, value, role }) => kind === 'volume' && value <= 400 && role !== 'of_water')
  if (small !== undefined) return onlyBit(small)
  const bare = bits.find(({ kind, value, role }) => kind === 'bare' && role === null && value >= 10 && value <= 400)
  if (bare !== undefined) return { text: `${bare.text} ml`, bits: [bare] }
  // `a 40 at 30 degrees`: the first of two strengths is the glass.
  const [first, second] = bits.filter(({ kind }) => kind === 'strength')
  return first !== undefined && second !== undefined ? { text: first.text.replace('%', ' ml'), bits: [first] } : null
}

export const gravities = ({ bits }: Sentence): readonly Bit[] => bits.filter(({ kind }) => kind === 'gravity')

export const nth =
  (place: number): Fill =>
  (sentence) => {
    const all = gravities(sentence)
    return all.length === 2 ? onlyBit(all[place]) : null
  }

export const brix: Fill = (sentence) => {
  const { bits, spans } = sentence
  const cue = spans.find(({ concept }) => concept === 'refractometer')
  if (cue === undefined) return null
  const near = bits.filter(({ kind, value }) => (kind === 'bare' || kind === 'strength') && value <= 85)
  const nearest = near.toSorted((one, other) => Math.abs(one.from - cue.to) - Math.abs(other.from - cue.to))[0]
  return nearest === undefined ? null : { text: nearest.text.replace('%', ''), bits: [nearest] }
}

export const gravity: Fill = (sentence) => {
  const all = gravities(sentence)
  return all.length === 1 ? onlyBit(all[0]) : null
}

/** Up to which, not on which: `shook both, leave the ginger till Monday`. */
const UP_TO = /^(?:until|till|til|before|fino|entro)$/

export const when: Fill = ({ bits, typed }) => {
  const isEnd = (from: number): boolean =>
    [from - 1, from - 2].some((at) => UP_TO.test(typed.tokens[at]?.text ?? '')) ||
    UP_TO.test(typed.tokens[from]?.text ?? '')
  return onlyBit(bits.find(({ kind, text, from }) => kind === 'date' && text !== 'today' && !isEnd(from)))
}

/** The only span of a sentence; null where there is none, or several. */
export function recipeSpan(bits: readonly Bit[]): Bit | null {
  const spans = bits.filter(isSpan)
  return spans.length === 1 ? spans[0]! : null
}

/** How long a recipe lets it lie: the only span beside plants that have amounts. */
export const recipeDays: Fill = (sentence) => {
  const { bits, has } = sentence
  const until = has('plants_and_spirit') ? steepUntil(sentence) : null
  const days = until === null ? null : daysUntil(until, sentence)
  if (until !== null && days !== null) return { text: `${days} days`, bits: [until] }
  const span = recipeSpan(bits)
  const isSteeped = span !== null && has('plants_and_spirit') && steepSpan(sentence) === span
  const isRecipe = isSteeped || (has('plants_and_spirit') && has('plant_amount') && !has('how_long'))
  if (span === null || !isRecipe) return null
  return { text: span.text.replace(/^(?:an?|one|una?|un')(?= )/, '1'), bits: [span] }
}

/** The month that is asked for; the one that it is where none is named. */
export const month: Fill = ({ typed }) => {
  const at = typed.tokens.findIndex(({ text }) => monthOf(text) !== null)
  if (at === -1) return { text: 'now', bits: [], isAssumed: true }
  const { text } = typed.tokens[at]!
  return { text, bits: [bit('date', at, at + 1, 0, text)], isAssumed: true }
}

/** Whose measures are asked for; null where nobody's. */
export function measuresAsked(has: Sentence['has']): 'us' | 'imperial' | 'metric' | null {
  if (has('us_measures')) return 'us'
  if (has('imperial_measures')) return 'imperial'
  return has('metric_measures') ? 'metric' : null
}

export const units: Fill = ({ has }) => {
  const text = measuresAsked(has)
  return text === null ? null : { text, bits: [] }
}

export const freezer: Fill = ({ typed, bits, has }) => {
  if (!has('freezer_at')) return null
  const bit = bits.find(
    ({ kind, value }) =>
      (kind === 'temperature' || kind === 'bare' || kind === 'strength') &&
      Math.abs(value) >= 5 &&
      Math.abs(value) <= 40,
  )
  if (bit === undefined) return null
  const isBelow =
    typed.tokens[bit.from - 1]?.text === '-' || /^(?:minus|meno)$/.test(typed.tokens[bit.from - 1]?.text ?? '')
  const digits = /[\d.,]+/.exec(bit.text)?.[0] ?? ''
  return { text: `${isBelow || bit.value > 0 ? '-' : ''}${digits} C`, bits: [bit] }
}

/** How cold it is where it is asked whether a drink freezes; its sign may stand apart. */
export const freezerAsked: Fill = ({ typed, bits }) => {
  const bit = bits.find(({ kind }) => kind === 'temperature')
  if (bit === undefined) return null
  const isBelow = /^(?:[-−–]|minus|meno)$/.test(typed.tokens[bit.from - 1]?.text ?? '')
  return { text: isBelow && !bit.text.startsWith('-') ? `-${bit.text}` : bit.text, bits: [bit] }
}
