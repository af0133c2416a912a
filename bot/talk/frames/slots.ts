import type { Bit, Sentence } from '../bits/bit.ts'
import { runningAmong } from '../bits/jars-of.ts'
import { isReadyAsked } from '../bits/ready-asked.ts'
import {
  amountOf,
  brix,
  find,
  freezer,
  freezerAsked,
  gravity,
  month,
  nth,
  onlyBit,
  pour,
  recipeDays,
  units,
  when,
} from './amount-slots.ts'
import { betterStrength, betterSweetness } from './better.ts'
import type { SlotKind } from './frame.ts'
import { handledFills } from './handled-slots.ts'
import { jarFills } from './jar-slots.ts'
import { jarsMeant, monthOf, ofMonth } from './jars-meant.ts'
import { liquidsIn } from './liquids.ts'
import { newName } from './new-name.ts'
import { allPutOff } from './not-now.ts'
import { type Fill, isPlant, plant, plants, plantText, type SlotFilled } from './plant-slots.ts'
import { prices } from './price-slots.ts'
import { reminderFills } from './reminder-slots.ts'
import { bottles, doseSpirit, liquid, parts, spiritStrength, spirits } from './spirit-slots.ts'
import { isSteepTold } from './steep-until.ts'
import { sweetener } from './sweetener-slot.ts'
import { tasteFills } from './taste-slots.ts'
import { wishedSweetness } from './wished-sweetness.ts'

const isDay = ({ kind, text }: Bit): boolean => kind === 'date' && text !== 'today'

const strength = find(({ kind, role }) => kind === 'strength' && role === 'have')

/** As it is said, or that of the jar that is named, in whole % vol: no better is it known. */
const strengthOrJar: Fill = (sentence, command) => {
  const said = strength(sentence, command)
  if (said !== null || !sentence.has('own_jar')) return said
  const { text, bits } = jarsMeant(sentence, 'serving')
  const abv = sentence.jars.find(({ name }) => name === text)?.strengthPercent() ?? null
  return abv === null ? null : { text: `${Math.round(abv)}%`, bits }
}

/** Wished, or said of no liquid that is there. */
const wishedStrength: Fill = (sentence) => {
  const { bits } = sentence
  const wished = bits.find(({ kind, role }) => kind === 'strength' && role === 'want')
  if (wished !== undefined) return onlyBit(wished)
  const liquids = liquidsIn(sentence)
  if (!liquids.some((each) => each.strength !== null)) return null
  return onlyBit(bits.find((bit) => bit.kind === 'strength' && !liquids.some((each) => each.strength === bit)))
}

/** `A vanilla pod`, `another lemon`: one of it. */
const isOneOf = ({ typed }: Sentence, { from }: Bit): boolean =>
  /^(?:an?|un|uno|una|another|altro|altra|extra)$/.test(typed.tokens[from - 1]?.text ?? '')

/** How each option's words are found. */
export const fills: Readonly<Record<SlotKind, Fill>> = {
  plants,
  plant,
  plant_list: ({ bits }) => {
    const all = bits.filter(isPlant)
    return all.length === 0 ? null : { text: all.map(({ text }) => text.toLowerCase()).join(' + '), bits: all }
  },
  any_litre: (sentence, command) => liquid(sentence, command) ?? { text: '1 l', bits: [], isAssumed: true },
  litre_as_it_is: ({ bits }) => {
    const said = bits.find(({ kind, role }) => kind === 'strength' && role === 'have')
    const sweet = bits.find(({ kind }) => kind === 'sweetness')
    return said && sweet ? { text: `1 l ${said.text} ${sweet.text}`, bits: [said, sweet] } : null
  },
  litre_of_strength: ({ bits }) => {
    const said = bits.find(({ kind, role }) => kind === 'strength' && role === 'have')
    return said === undefined ? null : { text: `1 l ${said.text}`, bits: [said] }
  },
  added_plants: (sentence, command) => {
    const jar = jarsMeant(sentence, command)
    const others = sentence.bits.filter((bit) => isPlant(bit) && !jar.bits.includes(bit))
    // `Popped another lemon in`: of the jar that is meant, more of the same.
    const more =
      others.length > 0
        ? others
        : sentence.bits.filter((bit) => isPlant(bit) && (bit.with !== undefined || isOneOf(sentence, bit)))
    if (more.length === 0) return null
    const amounts = more.flatMap(({ with: place }) => (place === undefined ? [] : [sentence.bits[place]!]))
    return {
      text: more
        .map((each) =>
          each.with === undefined && isOneOf(sentence, each)
            ? `1 ${each.text.toLowerCase()}`
            : plantText(sentence.bits, each, sentence.typed, true),
        )
        .join(' + '),
      bits: [...more, ...amounts],
    }
  },
  spirits,
  dose_spirit: doseSpirit,
  spirit_strength: spiritStrength,
  bottles,
  liquid,
  parts,
  strength,
  wished_strength: wishedStrength,
  sweetness: find(({ kind, role }) => kind === 'sweetness' && role === 'have'),
  strength_or_jar: strengthOrJar,
  wished_sweetness: wishedSweetness,
  better_strength: betterStrength,
  better_sweetness: (sentence) => wishedSweetnessNumber(sentence, '') ?? betterSweetness(sentence),
  sugar: amountOf('of_sugar', 'sugar'),
  sweetener,
  water: amountOf('of_water', 'water'),
  pour,
  brix,
  gravity,
  gravity_before: nth(0),
  gravity_after: nth(1),
  ready_by: (sentence) => {
    const { bits, has } = sentence
    if (!has('by_day') || isSteepTold(sentence)) return null
    return onlyBit(bits.findLast(({ kind, text }) => kind === 'date' && text !== 'today'))
  },
  day_asked: (sentence) => (isReadyAsked(sentence) ? onlyBit(sentence.bits.findLast(isDay)) : null),
  recipe_days: recipeDays,
  month,
  when,
  only_jar: ({ jars }) => {
    const [only, another] = runningAmong(jars)
    return only === undefined || another !== undefined ? null : { text: only.name, bits: [], isAssumed: true }
  },
  known_jar: (sentence, command) => (sentence.has('own_jar') ? jarFilled(sentence, command, false) : null),
  wished_or_said_strength: find(({ kind }) => kind === 'strength'),
  jar: (sentence, command) => jarFilled(sentence, command, false),
  jar_or_all: (sentence, command) => allPutOff(sentence, command) ?? jarFilled(sentence, command, true),
  two_jars: (sentence) => {
    const months = sentence.typed.tokens.filter(({ text }) => monthOf(text) !== null).map(({ text }) => text)
    const jars = sentence.bits.filter(({ kind }) => kind === 'jar' || kind === 'plant')
    if (jars.length === 0 && months.length === 2)
      return { text: months.map((month) => ofMonth(month, sentence.jars)).join(' + '), bits: [] }
    return jars.length === 2 ? { text: jars.map(({ text }) => text.toLowerCase()).join(' + '), bits: jars } : null
  },
  jar_list: (sentence, command) => {
    const named = sentence.bits.filter(({ kind, role }) => (kind === 'jar' || kind === 'plant') && role !== 'left_out')
    if (named.length === 0) return null
    const texts = named.map((bit) => jarsMeant({ ...sentence, bits: [bit] }, command).text ?? bit.text.toLowerCase())
    return { text: [...new Set(texts)].join(' + '), bits: named }
  },
  prices,
  ...tasteFills,
  units,
  freezer,
  freezer_asked: freezerAsked,
  new_name: newName,
  ...handledFills,
  ...jarFills,
  ...reminderFills,
}

const wishedSweetnessNumber: Fill = ({ bits }) =>
  onlyBit(bits.find(({ kind, role }) => kind === 'sweetness' && role === 'want'))

function jarFilled(sentence: Sentence, command: string, isAllTaken: boolean): SlotFilled | null {
  const steeping = sentence.jars.filter(({ stage }) => stage === 'steeping')
  // `The two of them` are all where there are two.
  const isOfTwo = sentence.has('both_of_them') && command === 'jar shake'
  if (isAllTaken && isOfTwo && steeping.length > 2)
    return { text: '', bits: [], choices: steeping.map(({ name }) => name) }
  if (isAllTaken && (isOfTwo || sentence.has('all_of_them'))) return { text: 'all', bits: [] }
  const { text, bits, choices } = jarsMeant(sentence, command)
  if (text !== null) return { text, bits }
  return choices.length > 1 ? { text: '', bits, choices } : null
}
