import type { Bit, Sentence } from '../bits/bit.ts'
import { jarsMeant } from './jars-meant.ts'
import { liquidText, liquidsIn, spiritText } from './liquids.ts'
import type { SlotKind } from './frame.ts'
import { betterStrength, betterSweetness } from './better.ts'

/** What fills an option: its text and the bits of it; or several answers that are to be chosen from. */
export interface Filled {
  readonly text: string
  readonly bits: readonly Bit[]
  readonly choices?: readonly string[]
  /** Assumed, not said. */
  readonly isAssumed?: true
}

type Fill = (sentence: Sentence, command: string) => Filled | null

const onlyBit = (bit: Bit | undefined | null): Filled | null => (bit ? { text: bit.text, bits: [bit] } : null)

const find =
  (fits: (bit: Bit) => boolean): Fill =>
  ({ bits }) =>
    onlyBit(bits.find(fits))

const isPlant = ({ kind, role }: Bit): boolean => kind === 'plant' && role !== 'left_out'

/** A plant as it is planned: its amount, a piece that is counted, its name. */
export function plantText(bits: readonly Bit[], plant: Bit, typed: Sentence['typed']): string {
  const amount = plant.with === undefined ? undefined : bits[plant.with]
  if (amount === undefined || amount.role === 'gone') return plant.text.toLowerCase()
  const measure = amount.kind === 'bottles' ? null : amount.text
  if (amount.from > plant.from || measure === null) return [measure, plant.text.toLowerCase()].filter((part) => part !== null).join(' ')
  const between = typed.tokens.slice(amount.to, plant.from).map(({ text }) => text)
  const piece = plant.loose !== undefined && PIECES.test(plant.loose) ? plant.loose : null
  // A punnet tells nobody how much.
  if (plant.loose !== undefined && piece === null && amount.kind === 'bare') return plant.text.toLowerCase()
  const of = piece !== null && between.some((word) => word === 'of' || word === 'di') ? `${piece} of` : piece
  return [measure, of, plant.text.toLowerCase()].filter((part) => part !== null && part !== undefined).join(' ')
}

/** Pieces that are weighed by what is known of them; loose measures are not. */
const PIECES =
  /^(?:sticks?|pods?|sprigs?|cloves?|leaf|leaves|thumbs?|pieces?|slices?|heads?|bunch|bunches|stalks?|pinch|pinches|cones?|stars?|beans?|stecc(?:a|he)|bacell[oi]|baccell[oi]|rametto|rametti|fett[ae]|pezz[oi]|mazz[oi]|mazzett[oi]|peels?|zests?|bucc[ei]a?|bucce|scorz[ae])$/

const isSame = (one: Bit, other: Bit): boolean => one.ids?.[0] !== undefined && one.ids[0] === other.ids?.[0]

const plants: Fill = ({ bits, typed }) => {
  const all = bits.filter(isPlant)
  // `limoncello with 8 lemons`: named twice, it is the one that has an amount.
  const found = all.filter(
    (each, at) =>
      !all.some((other, place) => other !== each && isSame(each, other) && (other.with !== undefined || (place < at && each.with === undefined))),
  )
  if (found.length === 0) return null
  const amounts = found.flatMap(({ with: place }) => (place === undefined ? [] : [bits[place]!]))
  return { text: found.map((each) => plantText(bits, each, typed)).join(' + '), bits: [...all, ...amounts] }
}

const PEEL = 'lemon peel'

const plant: Fill = (sentence) => {
  const { bits, has } = sentence
  const found = bits.find(isPlant)
  if (found !== undefined) return { text: found.text.toLowerCase(), bits: [found, ...(found.with === undefined ? [] : [bits[found.with]!])] }
  return has('peel') ? { text: PEEL, bits: [], isAssumed: true } : null
}

const spirits: Fill = (sentence) => {
  const liquids = liquidsIn(sentence).filter(
    ({ amount, strength, word }) => amount.role === 'of_spirit' || strength !== null || word !== null || (amount.kind === 'volume' && amount.role === 'have'),
  )
  const spirit = liquids.length > 0 ? liquids : liquidsIn(sentence).slice(0, 1)
  if (spirit.length === 0) return null
  // A drink that is named apart from its amount: `vodka, 700 ml`.
  const loose = sentence.bits.find(({ kind, with: place }) => kind === 'spirit' && place === undefined)
  const named = spirit.map((each) => (each.word === null && spirit.length === 1 && loose !== undefined ? { ...each, word: loose } : each))
  return {
    text: named.map(spiritText).join(' + '),
    bits: named.flatMap(({ amount, strength, word }) => [amount, strength, word].filter((bit) => bit !== null)),
  }
}

const spiritStrength: Fill = ({ bits }) => {
  const said = bits.find(({ kind, role }) => kind === 'strength' && role === 'have')
  const word = bits.find(({ kind }) => kind === 'spirit')
  if (said !== undefined) return { text: said.text, bits: word === undefined ? [said] : [said, word] }
  return word !== undefined && word.value > 0 ? { text: `${word.value}%`, bits: [word] } : null
}

const bottles: Fill = ({ bits }) => {
  const found = bits.filter(({ kind, role }) => kind === 'bottles' && role !== 'of_spirit')
  return found.length === 0 ? null : { text: found.map(({ text }) => text).join(' + '), bits: found }
}

const liquid: Fill = (sentence) => {
  const [first] = liquidsIn(sentence)
  if (first === undefined) return null
  return { text: liquidText(first), bits: first.word === null ? [first.amount] : [first.amount, first.word] }
}

const parts: Fill = (sentence) => {
  const liquids = liquidsIn(sentence)
  if (liquids.length < 2 || liquids.some(({ strength, word }) => strength === null && !(word !== null && word.value > 0))) return null
  return {
    text: liquids.map((each) => [spiritText(each), each.sweetness?.text].filter((part) => part !== undefined).join(' ')).join(' + '),
    bits: liquids.flatMap(({ amount, strength, sweetness, word }) => [amount, strength, sweetness, word].filter((bit) => bit !== null)),
  }
}

const strength = find(({ kind, role }) => kind === 'strength' && role === 'have')

const STYLES = [
  ['wish_dry', 'dry'],
  ['wish_medium', 'everyday'],
  ['wish_rich', 'rich'],
] as const

const wishedSweetness: Fill = ({ bits, has }) => {
  const number = bits.find(({ kind, role }) => kind === 'sweetness' && role === 'want')
  if (number !== undefined) return onlyBit(number)
  const style = STYLES.find(([concept]) => has(concept))
  return style === undefined ? null : { text: style[1], bits: [] }
}

/** An amount of something that has no word of a spirit or a plant. */
const amountOf =
  (role: Bit['role'], kind: Bit['kind']): Fill =>
  ({ bits }) => {
    const amount = bits.find((bit) => bit.role === role && bit.kind !== kind)
    if (amount === undefined) return null
    const thing = amount.with === undefined ? undefined : bits[amount.with]
    const named = kind === 'sugar' && thing !== undefined && !/^(?:white |caster |granulated )?(?:sugar|zucchero)$/.test(thing.text.toLowerCase()) ? ` ${thing.text.toLowerCase()}` : ''
    const unit = amount.kind === 'bare' ? (kind === 'sugar' ? ' g' : ' ml') : ''
    return { text: `${amount.text}${unit}${named}`, bits: thing === undefined ? [amount] : [amount, thing] }
  }

const pour: Fill = (sentence) => {
  const { bits } = sentence
  const small = bits.find(({ kind, value, role }) => kind === 'volume' && value <= 400 && role !== 'of_water')
  if (small !== undefined) return onlyBit(small)
  const bare = bits.find(({ kind, value }) => (kind === 'bare' && value >= 10 && value <= 400) )
  if (bare !== undefined) return { text: `${bare.text} ml`, bits: [bare] }
  // `a 40 at 30 degrees`: the first of two strengths is the glass.
  const [first, second] = bits.filter(({ kind }) => kind === 'strength')
  return first !== undefined && second !== undefined ? { text: first.text.replace('%', ' ml'), bits: [first] } : null
}

const gravities = ({ bits }: Sentence): readonly Bit[] => bits.filter(({ kind }) => kind === 'gravity')

const nth =
  (place: number): Fill =>
  (sentence) => {
    const all = gravities(sentence)
    return all.length === 2 ? onlyBit(all[place]) : null
  }

const brix: Fill = (sentence) => {
  const { bits, spans } = sentence
  const cue = spans.find(({ concept }) => concept === 'refractometer')
  if (cue === undefined) return null
  const near = bits.filter(({ kind, value }) => (kind === 'bare' || kind === 'strength') && value <= 85)
  const nearest = near.toSorted((one, other) => Math.abs(one.from - cue.to) - Math.abs(other.from - cue.to))[0]
  return nearest === undefined ? null : { text: nearest.text.replace('%', ''), bits: [nearest] }
}

const gravity: Fill = (sentence) => {
  const all = gravities(sentence)
  return all.length === 1 ? onlyBit(all[0]) : null
}

const when: Fill = ({ bits }) => onlyBit(bits.find(({ kind, text }) => kind === 'date' && text !== 'today'))

const clock: Fill = ({ typed }) => {
  const match = /\b(?:at|alle|ore)\s+(\d{1,2}(?:[:.]\d{2})?\s*(?:am|pm|o'?clock)?|noon|midday|mezzogiorno)\b/i.exec(typed.text)
  return match === null ? null : { text: match[1]!.trim(), bits: [] }
}

const until: Fill = ({ bits, has }) => {
  const date = bits.find(({ kind }) => kind === 'date')
  if (date !== undefined) return onlyBit(date)
  const span = bits.find(({ kind }) => kind === 'span')
  if (span !== undefined) return { text: `in ${span.text}`, bits: [span] }
  return has('this_week') ? { text: 'next Monday', bits: [] } : null
}

const units: Fill = ({ has }) => {
  const text = has('us_measures') ? 'us' : has('imperial_measures') ? 'imperial' : has('metric_measures') ? 'metric' : null
  return text === null ? null : { text, bits: [] }
}

const freezer: Fill = ({ typed, bits, has }) => {
  if (!has('freezer_at')) return null
  const bit = bits.find(({ kind, value }) => (kind === 'temperature' || kind === 'bare' || kind === 'strength') && Math.abs(value) >= 5 && Math.abs(value) <= 40)
  if (bit === undefined) return null
  const isBelow = typed.tokens[bit.from - 1]?.text === '-' || /^(?:minus|meno)$/.test(typed.tokens[bit.from - 1]?.text ?? '')
  const digits = /[\d.,]+/.exec(bit.text)?.[0] ?? ''
  return { text: `${isBelow || bit.value > 0 ? '-' : ''}${digits} C`, bits: [bit] }
}

const ratingOf = ({ bits }: Pick<Sentence, 'bits'>): Filled | null => {
  const said = bits.find(({ kind }) => kind === 'rating')
  if (said !== undefined) return onlyBit(said)
  const bare = bits.find(({ kind, value, with: place }) => kind === 'bare' && place === undefined && Number.isInteger(value) && value >= 1 && value <= 5)
  return onlyBit(bare)
}

/** What is said behind a rating, as it was typed. */
const note: Fill = ({ typed, bits }) => {
  const rating = ratingOf({ bits })?.bits[0]
  if (rating === undefined) return null
  const from = typed.tokens[rating.to]?.from
  const rest = from === undefined ? '' : typed.text.slice(from).replace(/^[\s,.;:!-]+/, '').trim()
  return rest === '' || rest.length < 3 ? null : { text: rest, bits: bits.filter((bit) => bit.from >= rating.to) }
}

/** How each option's words are found. */
export const fills: Readonly<Record<SlotKind, Fill>> = {
  plants,
  plant,
  added_plants: (sentence, command) => {
    const jar = jarsMeant(sentence, command)
    const others = sentence.bits.filter((bit) => isPlant(bit) && !jar.bits.includes(bit))
    if (others.length === 0) return null
    const amounts = others.flatMap(({ with: place }) => (place === undefined ? [] : [sentence.bits[place]!]))
    return { text: others.map((each) => plantText(sentence.bits, each, sentence.typed)).join(' + '), bits: [...others, ...amounts] }
  },
  spirits,
  spirit_strength: spiritStrength,
  bottles,
  liquid,
  parts,
  strength,
  wished_strength: find(({ kind, role }) => kind === 'strength' && role === 'want'),
  sweetness: find(({ kind, role }) => kind === 'sweetness' && role === 'have'),
  wished_sweetness: wishedSweetness,
  better_strength: betterStrength,
  better_sweetness: (sentence) => wishedSweetnessNumber(sentence, '') ?? betterSweetness(sentence),
  sugar: amountOf('of_sugar', 'sugar'),
  water: amountOf('of_water', 'water'),
  pour,
  brix,
  gravity,
  gravity_before: nth(0),
  gravity_after: nth(1),
  ready_by: ({ bits, has }) => (has('by_day') ? onlyBit(bits.find(({ kind }) => kind === 'date')) : null),
  when,
  until,
  clock,
  jar: (sentence, command) => jarFilled(sentence, command, false),
  jar_or_all: (sentence, command) => jarFilled(sentence, command, true),
  two_jars: (sentence) => {
    const jars = sentence.bits.filter(({ kind }) => kind === 'jar' || kind === 'plant')
    return jars.length === 2 ? { text: jars.map(({ text }) => text.toLowerCase()).join(' + '), bits: jars } : null
  },
  rating: ratingOf,
  note,
  units,
  freezer,
  shake_off: ({ has }) => (has('shaking_reminders') && has('be_quiet') ? { text: 'off', bits: [] } : null),
  new_name: () => null,
}

const wishedSweetnessNumber: Fill = ({ bits }) => onlyBit(bits.find(({ kind, role }) => kind === 'sweetness' && role === 'want'))

function jarFilled(sentence: Sentence, command: string, isAllTaken: boolean): Filled | null {
  if (isAllTaken && sentence.has('all_of_them')) return { text: 'all', bits: [] }
  const { text, bits, choices } = jarsMeant(sentence, command)
  if (text !== null) return { text, bits }
  return choices.length > 1 ? { text: '', bits, choices } : null
}
