import { numberSaid } from '../../../core/quantity/said/number-said.ts'
import type { Bit, Sentence } from '../bits/bit.ts'
import { MOST_BOTTLE_ML } from '../bits/bottle-bits.ts'
import { usualStrength } from '../bits/usual-strength.ts'
import { isPlant } from '../frames/plant-slots.ts'
import type { CallRead, PouredFor, TalkReading } from '../frames/reading.ts'
import { forBottles } from '../memory/change-call.ts'
import { GLASS_ML } from '../memory/glass-rule.ts'
import type { Remembered } from '../memory/remembered.ts'
import { drinkMeant, jarsGlasses, planGlasses } from './own-glasses.ts'
import { planMeant } from './plan-asked.ts'

const WORDS = 'zero one two three four five six seven eight nine ten eleven twelve'.split(' ')
const PAROLE = 'zero una due tre quattro cinque sei sette otto nove dieci undici dodici'.split(' ')
const COUNT = `\\d{1,3}|an?|un|${WORDS.join('|')}|${PAROLE.join('|')}`

const PEOPLE =
  /^(?:people|heads|pax|persons|folks?|guests|friends|members|visitors|neighbou?rs|colleagues|persone|ospiti|invitati|amici|soci)$/
const MOST_NUMBER_WORDS = 4

/** `Twenty five guests`: how many there are; 0 where nobody counts them. */
function peopleIn(typed: Sentence['typed']): number {
  const whom = typed.tokens.findIndex(({ text }) => PEOPLE.test(text))
  for (let at = Math.max(0, whom - MOST_NUMBER_WORDS); at < whom; at++) {
    const count = numberSaid(typed, at, new Set())
    if (count !== null && count.next === whom && Number.isInteger(count.value)) return count.value
  }
  return 0
}

/** `Everybody gets a 100 ml bottle`, `una bottiglia da 100 ml a testa`. */
const A_BOTTLE = /\b(?:each|every(?:body|one)|all|apiece|a head|ciascun[oa]|ognuno|tutti|a testa)\b/
const BOTTLE = /\b(?:bottle|mini|miniature|bottiglia|bottigli(?:na|etta)|boccetta)\b/

/** How much the bottle holds of which everybody gets one; null where no such is said. */
function bottleEach(text: string, bits: readonly Bit[]): number | null {
  const sizes = bits.filter(
    ({ kind, count, isSizeAssumed }) =>
      kind === 'volume' || (kind === 'bottles' && count === 1 && isSizeAssumed !== true),
  )
  const [size, another] = sizes
  if (size === undefined || another !== undefined || !A_BOTTLE.test(text) || !BOTTLE.test(text)) return null
  return size.value <= MOST_BOTTLE_ML ? Math.round(size.value) : null
}
const GLASSES = new RegExp(
  `\\b(${COUNT}) (?:\\d+ ?(?:ml|cl) )?(?:small |little |tiny |piccoli )?(?:glass(?:es)?|shots?|tots?|bicchierin[oi]|bicchier[ei])\\b`,
)

const MOST_GLASS_ML = 200
const BOTTLE_ML = 500
const MOST_BOTTLES = 100

const countOf = (word: string): number =>
  /^\d+$/.test(word)
    ? Number(word)
    : /^(?:an?|un)$/.test(word)
      ? 1
      : Math.max(WORDS.indexOf(word), PAROLE.indexOf(word))

const ANY_GLASS = /\b(?:glass(?:es)?|shots?|tots?|enough|bicchier\p{L}*|abbastanza|bast\p{L}*)\b/u

/** The plan that was shown last, where glasses for people are wished of it and nothing else is told. */
function planOfGlasses(text: string, bits: readonly Bit[], said: Remembered): CallRead | null {
  const isOther = bits.some(({ kind, value }) => kind !== 'bare' && !(kind === 'volume' && value <= MOST_GLASS_ML))
  const plan = planMeant(said)?.call
  return plan?.command === 'plan' && !isOther && ANY_GLASS.test(text) ? plan : null
}

/** What so many people drink: a glass each, where nobody says of another number or size. */
function pouredFor(text: string, bits: readonly Bit[], people: number): PouredFor {
  const glasses = countOf(GLASSES.exec(text)?.[1] ?? 'one')
  const glassMl = bits.find(({ kind, value }) => kind === 'volume' && value <= MOST_GLASS_ML)?.value ?? GLASS_ML
  return { people, glasses, glassMl, volumeMl: people * glasses * glassMl }
}

/** `How many lemons and how much spirit`: what goes in, of no jar that stands there. */
const RECIPE_ASKED = /\b(?:how (?:many|much)|quant[ieao])\b.* (?:and|e) .*\b(?:how (?:many|much)|quant[ieao])\b/u

/** Whether what there is will do. */
const IS_ENOUGH =
  /^(?:(?:and|so|but|ok|e|ma) )*(?:(?:is|will|would|does|do|have|has|are|can|could) .*\b(?:enough|do|stretch|last|suffice|go round|serve)\b|(?:mi |ci |ne ho )?(?:basta|bastera|bastano|abbastanza)\b)|\b(?:is|s) (?:it|that|this|there) enough\b/u
/** `How many bottles do I need for 20 guests`. */
const BOTTLES_FOR = /\b(?:how many bottles|quante bottiglie)\b.* (?:for|per)\b/u
const HOW_MANY = /\b(?:how (?:many|much)|quant[ie])\b/u

/** Whether the plan or the jar that is meant has enough for so many; null where nothing is there, or a plan for them is wished. */
function glassesThere(sentence: Sentence, said: Remembered, text: string, people: number): TalkReading | null {
  const { bits } = sentence
  const isOther = bits.some(
    ({ kind, value }) => !/^(?:bare|jar|plant)$/.test(kind) && !(kind === 'volume' && value <= MOST_GLASS_ML),
  )
  const isEnough = IS_ENOUGH.test(text)
  const isGlasses = HOW_MANY.test(text) && (ANY_GLASS.test(text) || BOTTLES_FOR.test(text))
  if (isOther || !(isEnough || isGlasses)) return null
  const poured = pouredFor(text, bits, people)
  const meant = drinkMeant(sentence, said)
  if ('plan' in meant) return planGlasses(meant.plan, poured)
  const ofJars = jarsGlasses(meant.jars, poured)
  const isOfNothing = isGlasses && meant.jars.length === 0 && !bits.some(({ kind }) => kind === 'plant')
  return ofJars ?? (isOfNothing ? { kind: 'topic', entry: 'serving_size', more: [], poured } : null)
}

/**
 * `Enough limoncello for 20 people, two small glasses each`: a plan of as many bottles as that takes; behind a plan that names none of it, of that.
 * Null where no people are counted, no plant or drink is meant, or the amount of it is said.
 */
export function forPeople(sentence: Sentence, said: Remembered): TalkReading | null {
  const { typed, bits, has } = sentence
  const text = typed.tokens.map((token) => token.text).join(' ')
  const people = peopleIn(typed)
  const plants = bits.filter(isPlant)
  // What is there is planned, whoever they are that have it: `we are three friends and have nine limes and a litre of vodka`.
  const isPoured = bits.some(({ kind, value, role }) => kind === 'volume' && value > MOST_GLASS_ML && role !== 'want')
  const eachMl = bottleEach(text, bits)
  const isOfPlant = plants.some(({ with: place }) => place !== undefined && bits[place]?.kind !== 'bare')
  const isSaid = eachMl === null && (isPoured || isOfPlant)
  const there = people < 2 || isPoured ? null : glassesThere(sentence, said, text, people)
  if (there !== null) return there
  const planned = plants.length === 0 ? planOfGlasses(text, bits, said) : null
  if (
    people < 2 ||
    (plants.length === 0 && planned === null) ||
    isSaid ||
    has('units_of_alcohol', 'gave_away') ||
    (has('own_jar') && !RECIPE_ASKED.test(text))
  )
    return null
  const strength = bits.find(({ kind, role }) => kind === 'strength' && role === 'have')?.text ?? usualStrength(bits)
  const of = plants.map((plant) => plant.text.toLowerCase()).join(' + ')
  if (eachMl !== null) {
    if (people > MOST_BOTTLES) return null
    const options = { of, strength, bottles: `${people} x ${eachMl} ml` }
    return { kind: 'call', call: { command: 'plan', options }, leftOut: [], does: 'compute' }
  }
  const { glasses, volumeMl, ...poured } = pouredFor(text, bits, people)
  const bottles = Math.ceil(volumeMl / BOTTLE_ML)
  if (glasses < 1 || bottles > MOST_BOTTLES) return null
  const filled = `${bottles} x ${BOTTLE_ML} ml`
  const call: CallRead =
    planned === null ? { command: 'plan', options: { of, strength, bottles: filled } } : forBottles(planned, filled)
  return { kind: 'call', call, leftOut: [], does: 'compute', poured: { ...poured, glasses, volumeMl } }
}
