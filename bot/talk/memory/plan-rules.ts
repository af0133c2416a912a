import { plantSaid } from '../../../core/botanical/find/plant-said.ts'
import { saidText } from '../../../core/quantity/said/said-text.ts'
import type { Bit } from '../bits/bit.ts'
import { liquidsIn, spiritText } from '../frames/liquids.ts'
import { plantText } from '../frames/plant-slots.ts'
import { amountBefore, nameBehind } from '../frames/scaled-text.ts'
import { forBottles, takes, withOption } from './change-call.ts'
import { callReading, isLiquidBit, type Rule } from './rule.ts'

export const bottled: Rule = ({ bits }, last) => {
  const bottles = bits.find(({ kind, role }) => kind === 'bottles' && role !== 'of_spirit')
  const others = bits.filter((bit) => bit !== bottles)
  if (bottles === undefined || others.some(({ kind }) => kind !== 'date') || !takes(last.command, 'bottles'))
    return null
  return callReading(forBottles(last, bottles.text))
}

/** `Only vodka`. */
const ONLY = /^(?:(?:but|so|its|it’s|it's|it is|ma|pero) )?(?:only|just|solo|soltanto)\b/i

const isNamedIn = (spirit = '', name: string): boolean => spirit.toLowerCase().split(/\s+/).includes(name.toLowerCase())

export const otherSpirit: Rule = (sentence, last) => {
  const words = sentence.bits.filter(({ kind }) => kind === 'spirit')
  // `Swap the gin for vodka`: the one that is there goes.
  const word = words.find(({ text }) => !isNamedIn(last.options.spirit, text)) ?? words[0]
  const strength = sentence.bits.find(({ kind, role }) => kind === 'strength' && role !== 'want')
  // `No vodka but I’ve got rum`: what is not there is no bit of the sentence.
  const isOther =
    sentence.has('only_have', 'instead', 'with_amounts') ||
    (word !== undefined && (sentence.has('could_be') || ONLY.test(sentence.typed.text))) ||
    (sentence.has('without') && sentence.has('have'))
  if ((word === undefined && strength === undefined) || !isOther) return null
  if (sentence.bits.some(({ kind }) => kind === 'plant') || !takes(last.command, 'spirit')) return null
  // What is strained is no spirit: `how much sugar for a litre at 84` is another one.
  if (last.command === 'syrup' && word === undefined) return null
  const [liquid] = liquidsIn(sentence)
  const now = /\d+(?:[.,]\d+)?\s*%/.exec(last.options.spirit ?? '')?.[0]
  const isUnnamed = word === undefined || word.value === 0
  // `For two litres of alcohol`: as strong as it was.
  if (liquid !== undefined && liquid.strength === null && isUnnamed && now !== undefined)
    return callReading(withOption(last, 'spirit', `${spiritText(liquid)} ${now}`))
  if (liquid !== undefined)
    return callReading(
      withOption(last, 'spirit', spiritText(word === undefined || liquid.word !== null ? liquid : { ...liquid, word })),
    )
  const volume = /^[\d.,]+\s*(?:x\s*[\d.,]+\s*)?\p{L}+/u.exec(last.options.spirit ?? '')?.[0]
  const abv = strength?.text ?? (word !== undefined && word.value > 0 ? `${word.value}%` : null)
  if (abv === null) return null
  const name = word === undefined || /alco|spirit|alcol/.test(word.text) ? null : word.text.toLowerCase()
  // Its strength stands apart: `dilute 1 l of 96 to 40`.
  if (last.options.strength !== undefined && name === null) return callReading(withOption(last, 'strength', abv))
  if (volume === undefined)
    return takes(last.command, 'strength') ? callReading(withOption(last, 'strength', abv)) : null
  const { strength: _, ...others } = last.options
  const apart = { ...last, options: others }
  return callReading(withOption(apart, 'spirit', [volume, name, abv].filter((part) => part !== null).join(' ')))
}

const NONE: ReadonlySet<string> = new Set()

/** Ids of the plants of an item of a recipe, whatever the language it was typed in. */
function idsOf(item: string): readonly string[] {
  const { tokens } = saidText(item)
  return tokens.flatMap((_, at) => plantSaid(tokens, at, NONE)?.ids ?? [])
}

/** Whether an item of a recipe is of a plant that is said: `10 lemons` is of `limoni`, too. */
export function isOf(item: string, { text, ids }: Bit): boolean {
  const stem = text.toLowerCase().replace(/(?:es|s|i|e|o|a)$/, '')
  return item.toLowerCase().includes(stem) || idsOf(item).some((id) => ids?.includes(id) === true)
}

export const withoutPlant: Rule = ({ bits }, last) => {
  const plant = bits.find(({ kind, role }) => kind === 'plant' && role === 'left_out')
  const { of } = last.options
  if (plant === undefined || of === undefined) return null
  const items = of.split('+').map((item) => item.trim())
  const kept = items.filter((item) => !isOf(item, plant))
  const other = bits.find(({ kind, role }) => kind === 'plant' && role !== 'left_out')
  // `Lose the lemons, use oranges`: one in the place of the other.
  if (other !== undefined && kept.length < items.length)
    return callReading(withOption(last, 'of', [...kept, other.text.toLowerCase()].join(' + ')))
  return kept.length === items.length || kept.length === 0
    ? null
    : callReading(withOption(last, 'of', kept.join(' + ')))
}

/** What names another plant for the one there is says hardly more. */
const SHORT = 7

/** `and a cinnamon stick too` adds a plant, `what about oranges` puts it in the place of the one there is. */
export const otherPlants: Rule = ({ bits, typed, has }, last) => {
  const plants = bits.filter(({ kind, role }) => kind === 'plant' && role !== 'left_out')
  const { of } = last.options
  const [first] = typed.tokens
  if (plants.length === 0 || of === undefined || bits.some(isLiquidBit)) return null
  const text = plants.map((plant) => plantText(bits, plant, typed)).join(' + ')
  const isAdded =
    /^(?:and|plus|add|also|with|e|con|aggiungi|anche)$/.test(first?.text ?? '') ||
    typed.tokens.some(({ text: word }) => /^(?:too|also|anche|aswell)$/.test(word)) ||
    typed.tokens.some(({ text: word }, at) => word === 'as' && typed.tokens[at + 1]?.text === 'well') ||
    /^(?:throw|chuck|pop|bung|stick|toss|drop|butta|metti|buttaci|mettici)$/.test(first?.text ?? '')
  if (last.command === 'botanical' || last.command === 'cautions') {
    return isAdded ||
      has('instead', 'tell_me_about') ||
      bits.length === typed.tokens.filter(({ kind }) => kind === 'word').length
      ? callReading(withOption(last, 'of', plants[0]!.text.toLowerCase()))
      : null
  }
  if (last.command !== 'plan') return null
  const own = of.split('+').map((item) => item.trim())
  const isThere = (item: string): boolean => plants.some((plant) => isOf(item, plant))
  // `with 12 lemons`: another amount of what is in it already.
  if (own.some(isThere) && plants.length === 1 && plants[0]!.with !== undefined) {
    return callReading(withOption(last, 'of', own.map((item) => (isThere(item) ? text : item)).join(' + ')))
  }
  if (isAdded && typed.tokens.length <= 10) return callReading(withOption(last, 'of', `${of} + ${text}`))
  const isOne = !of.includes('+') && plants.length === 1
  // `Could it be limes`, `I've only limes`.
  const isInstead = has('instead') || (has('only_have', 'could_be') && typed.tokens.length <= SHORT)
  if (!isInstead || !isOne) return null
  const amount = plants[0]!.with === undefined ? amountBefore(of) : undefined
  return callReading(withOption(last, 'of', [amount, text].filter((part) => part !== undefined).join(' ')))
}

/** `and the shopping list?` after a plan: what its answer offered; for both of two plans it is not the last one's. */
export const shopped: Rule = ({ bits, has }, _last, { offered }) => {
  if (has('both_of_them', 'all_of_them')) return null
  const call = offered.find(({ command }) => command === 'shopping')
  return call === undefined || bits.length > 0 || !has('to_buy') || has('before_it') ? null : callReading(call)
}

/** `with a pint of vodka instead`: how much and what of. */
export const spiritInstead: Rule = (sentence, last, said) =>
  sentence.bits.some(({ kind }) => kind === 'spirit') ? otherSpirit(sentence, last, said) : null

/** `Swap three of the lemons for limes`: so many of one, the rest of the other; null where all of them go. */
function partSwapped(item: string, gone: Bit, come: Bit, bits: readonly Bit[]): string | null {
  const [count, ...name] = item.split(/\s+/)
  const part =
    gone.with === undefined ? bits.find(({ kind, to }) => kind === 'bare' && to <= gone.from) : bits[gone.with]
  const left = part?.kind === 'bare' ? Number(count) - part.value : Number.NaN
  if (!(left > 0) || part === undefined || come.with !== undefined) return null
  return `${left} ${name.join(' ')} + ${part.value} ${come.text.toLowerCase()}`
}

/** `Damsons, not plums`: of two names of one plant the one that holds, as much of it as there was; null where they are of two. */
function kindNamed(item: string, plants: readonly Bit[]): string | null {
  const [one, other] = plants
  if (one === undefined || other === undefined || one.ids?.[0] === undefined || one.ids[0] !== other.ids?.[0])
    return null
  const held = plants.find(({ role }) => role !== 'left_out') ?? one
  const amount = held.with === undefined ? amountBefore(item) : undefined
  return [amount, held.text.toLowerCase()].filter((part) => part !== undefined).join(' ')
}

/** `swap the lemons for limes`, `limes instead of lemons`: the one that is there goes, the other comes, as many as there were. */
export const swapped: Rule = ({ bits, has }, last) => {
  const { of } = last.options
  const plants = bits.filter(({ kind }) => kind === 'plant')
  if (last.command !== 'plan' || of === undefined || plants.length !== 2 || !has('instead')) return null
  const items = of.split('+').map((item) => item.trim())
  const at = items.findIndex((item) => plants.some((plant) => isOf(item, plant)))
  const renamed = at === -1 ? null : kindNamed(items[at]!, plants)
  if (renamed !== null) return callReading(withOption(last, 'of', items.with(at, renamed).join(' + ')))
  const gone = plants.filter((plant) => items[at] !== undefined && isOf(items[at], plant))
  const come = plants.find((plant) => !gone.includes(plant))
  if (at === -1 || gone.length !== 1 || come === undefined) return null
  const share = partSwapped(items[at]!, gone[0]!, come, bits)
  if (share !== null) return callReading(withOption(last, 'of', items.with(at, share).join(' + ')))
  const amount = come.with === undefined ? amountBefore(items[at]!) : bits[come.with]!.text
  const text = [amount, come.text.toLowerCase()].filter((part) => part !== undefined).join(' ')
  return callReading(withOption(last, 'of', items.map((item, place) => (place === at ? text : item)).join(' + ')))
}

/** `I've a kilo actually`: of the one plant there is so much. */
export const weighedAnew: Rule = ({ bits, typed, has }, last) => {
  const [mass, another] = bits
  const { of } = last.options
  const isShort = typed.tokens.filter(({ kind }) => kind === 'word').length <= 8
  if (mass?.kind !== 'mass' || another !== undefined || !isShort || has('asking', 'how_much')) return null
  if (last.command !== 'plan' || of === undefined || of.includes('+') || /sugar|zucchero/.test(typed.text)) return null
  const name = nameBehind(of)
  return name === '' ? null : callReading(withOption(last, 'of', `${mass.text} ${name}`))
}

export const readyBy: Rule = ({ bits, has }, last) => {
  const [date, another] = bits
  if (date?.kind !== 'date' || another !== undefined || !has('by_day') || !takes(last.command, 'ready-by')) return null
  return callReading(withOption(last, 'ready-by', date.text))
}
