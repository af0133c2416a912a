import { CUP_ML } from '../../../core/quantity/customary.ts'
import { unitsSaid } from '../../../core/quantity/read/units-said.ts'
import { countTyped } from '../../../core/quantity/write/household-typed.ts'
import type { Bit, Sentence } from '../bits/bit.ts'
import { usualStrength } from '../bits/usual-strength.ts'
import { type LiquidSaid, liquidsIn, liquidText, spiritText } from './liquids.ts'
import { litresFor } from './litres-for.ts'
import type { Fill, SlotFilled } from './plant-slots.ts'

/** So many litres as somebody pours them, by the half: `1.5 l`, as near `1 1/2 quarts`. */
function spiritSaid(litres: number, isUs: boolean): string {
  if (!isUs) return `${litres} l`
  if (litres < 1) return '2 cups'
  return `${countTyped(litres)} ${litres > 1 ? 'quarts' : 'quart'}`
}

/** A drink that is named, or plants whose weight tells how much of it: the spirit that is usual. */
function usualSpirit({ bits, has, typed, isUs }: Sentence): SlotFilled | null {
  if (bits.some(({ kind }) => kind === 'bottles')) return null
  const word = bits.find(({ kind }) => kind === 'spirit')
  const drink = bits.find(({ spirit }) => spirit !== undefined)?.spirit
  const isDrinkWord = word !== undefined && drink?.includes(word.text.toLowerCase()) === true
  if (
    drink !== undefined &&
    (word === undefined || isDrinkWord) &&
    !bits.some(({ kind, role }) => kind === 'strength' && role !== 'want')
  )
    return { text: drink, bits: word === undefined ? [] : [word], isAssumed: true }
  const jar = bits.find(({ isJarSize }) => isJarSize)
  if (jar === undefined && !has('what_can_i_make', 'as_needed', 'planned_by_day', 'things_alone')) return null
  const said = bits.find(({ kind, role }) => kind === 'strength' && role === 'have')
  const abv = said?.text ?? (word !== undefined && word.value > 0 ? `${word.value}%` : usualStrength(bits))
  const isInUs = (unitsSaid(typed.text) ?? (isUs ? 'us' : 'metric')) === 'us'
  const much = jar === undefined ? spiritSaid(litresFor(bits), isInUs) : spiritInJar(jar.value, isInUs)
  const name = word === undefined || word.value === 0 ? null : word.text.toLowerCase()
  return {
    text: [much, name, abv].filter((part) => part !== null).join(' '),
    bits: [word, said, jar].filter((bit) => bit !== undefined),
    isAssumed: true,
  }
}

/** What of a jar is left for spirit where whole fruit fills it; common practice, no source. */
const SPIRIT_OF_JAR = 0.5

function spiritInJar(jarMl: number, isUs: boolean): string {
  const ml = SPIRIT_OF_JAR * jarMl
  if (!isUs) return ml < 1000 ? `${Math.max(10, Math.round(ml / 10) * 10)} ml` : `${Math.round(ml / 100) / 10} l`
  const halves = Math.max(1, Math.round((2 * ml) / CUP_ML))
  return `${countTyped(halves / 2)} ${halves > 2 ? 'cups' : 'cup'}`
}

/** `rhubarb gin, 1 litre of it`: the drink says which spirit it is, and how strong. */
function asNamed(bits: readonly Bit[], liquid: LiquidSaid): string {
  const drink = bits.find(({ spirit }) => spirit !== undefined)?.spirit
  const [, name = '', abv = ''] = /^\S+ \S+ (?:(.*) )?(\S+%)$/.exec(drink ?? '') ?? []
  if (drink === undefined || liquid.word !== null) return spiritText(liquid)
  const text =
    liquid.strength === null ? [liquidText(liquid), name, abv] : [liquidText(liquid), name, liquid.strength.text]
  return text.filter((part) => part !== '').join(' ')
}

export const spirits: Fill = (sentence) => {
  const liquids = liquidsIn(sentence).filter(
    ({ amount, strength, word }) =>
      amount.role === 'of_spirit' ||
      strength !== null ||
      word !== null ||
      (amount.kind === 'volume' && amount.role === 'have'),
  )
  const spirit = liquids.length > 0 ? liquids : liquidsIn(sentence).slice(0, 1)
  if (spirit.length === 0) return usualSpirit(sentence)
  // A drink that is named apart from its amount: `vodka, 700 ml`.
  const loose = sentence.bits.find(({ kind, with: place }) => kind === 'spirit' && place === undefined)
  const named = spirit.map((each) =>
    each.word === null && spirit.length === 1 && loose !== undefined ? { ...each, word: loose } : each,
  )
  return {
    text: named.map((each) => asNamed(sentence.bits, each)).join(' + '),
    bits: named.flatMap(({ amount, strength, word }) => [amount, strength, word].filter((bit) => bit !== null)),
  }
}

/** `per litre` is what is told anyway. */
const ONE_LITRE_ML = 1000

/** As it was said: no strength that was not. */
const asSaid = (liquid: LiquidSaid): string =>
  spiritText({ ...liquid, word: liquid.word && { ...liquid.word, value: 0 } })

/** That a plant's usual amount is asked for: `how many sloes for a bottle of gin`. */
export const doseSpirit: Fill = (sentence) => {
  const poured = liquidsIn(sentence).filter(({ amount }) => amount.kind !== 'mass')
  if (poured.length === 0) return null
  const isEach =
    sentence.has('per_litre') &&
    poured.every(({ amount, strength, word }) => amount.value === ONE_LITRE_ML && strength === null && word === null)
  const bits = poured.flatMap(({ amount, strength, word }) => [amount, strength, word].filter((bit) => bit !== null))
  return isEach ? null : { text: poured.map(asSaid).join(' + '), bits }
}

export const spiritStrength: Fill = ({ bits }) => {
  const said = bits.find(({ kind, role }) => kind === 'strength' && role === 'have')
  const word = bits.find(({ kind }) => kind === 'spirit')
  if (said !== undefined) return { text: said.text, bits: word === undefined ? [said] : [said, word] }
  if (word !== undefined && word.value > 0) return { text: `${word.value}%`, bits: [word] }
  return bits.some(({ kind }) => kind === 'bottles') ? { text: usualStrength(bits), bits: [], isAssumed: true } : null
}

export const bottles: Fill = ({ bits }) => {
  const found = bits.filter(({ kind, role }) => kind === 'bottles' && role !== 'of_spirit' && role !== 'gone')
  return found.length === 0 ? null : { text: found.map(({ text }) => text).join(' + '), bits: found }
}

export const liquid: Fill = (sentence) => {
  const [first] = liquidsIn(sentence)
  if (first === undefined) return null
  return { text: liquidText(first), bits: first.word === null ? [first.amount] : [first.amount, first.word] }
}

export const parts: Fill = (sentence) => {
  const liquids = liquidsIn(sentence)
  if (
    liquids.length < 2 ||
    liquids.some(({ strength, word }) => strength === null && !(word !== null && word.value > 0))
  )
    return null
  return {
    text: liquids
      .map((each) => [spiritText(each), each.sweetness?.text].filter((part) => part !== undefined).join(' '))
      .join(' + '),
    bits: liquids.flatMap(({ amount, strength, sweetness, word }) =>
      [amount, strength, sweetness, word].filter((bit) => bit !== null),
    ),
  }
}
