import type { Sentence } from '../bits/bit.ts'
import { usualStrength } from '../bits/usual-strength.ts'
import { isPlant } from '../frames/plant-slots.ts'
import type { TalkReading } from '../frames/reading.ts'

const WORDS = 'zero one two three four five six seven eight nine ten eleven twelve'.split(' ')
const PAROLE = 'zero una due tre quattro cinque sei sette otto nove dieci undici dodici'.split(' ')
const COUNT = `\\d{1,3}|an?|un|${WORDS.join('|')}|${PAROLE.join('|')}`

const PEOPLE = new RegExp(`\\b(${COUNT}) (?:people|persons|guests|friends|persone|ospiti|invitati|amici)\\b`)
const GLASSES = new RegExp(
  `\\b(${COUNT}) (?:\\d+ ?(?:ml|cl) )?(?:small |little |tiny |piccoli )?(?:glass(?:es)?|shots?|tots?|bicchierin[oi]|bicchier[ei])\\b`,
)

/** A small glass, ml. Common practice, no source. */
const GLASS_ML = 40
const MOST_GLASS_ML = 200
const BOTTLE_ML = 500
const MOST_BOTTLES = 100

const countOf = (word: string): number =>
  /^\d+$/.test(word)
    ? Number(word)
    : /^(?:an?|un)$/.test(word)
      ? 1
      : Math.max(WORDS.indexOf(word), PAROLE.indexOf(word))

/**
 * `Enough limoncello for 20 people, two small glasses each`: a plan of as many bottles as that takes. Null where no people are
 * counted, no plant or drink is named, or the amount of it is said.
 */
export function forPeople({ typed, bits, has }: Sentence): TalkReading | null {
  const text = typed.tokens.map((token) => token.text).join(' ')
  const people = countOf(PEOPLE.exec(text)?.[1] ?? 'zero')
  const plants = bits.filter(isPlant)
  // What is there is planned, whoever they are that have it: `we are three friends and have nine limes and a litre of vodka`.
  const isPoured = bits.some(({ kind, value, role }) => kind === 'volume' && value > MOST_GLASS_ML && role !== 'want')
  const isSaid = isPoured || plants.some(({ with: place }) => place !== undefined && bits[place]?.kind !== 'bare')
  if (people < 2 || plants.length === 0 || isSaid || has('units_of_alcohol', 'gave_away', 'own_jar')) return null
  const glasses = countOf(GLASSES.exec(text)?.[1] ?? 'one')
  const glassMl = bits.find(({ kind, value }) => kind === 'volume' && value <= MOST_GLASS_ML)?.value ?? GLASS_ML
  const volumeMl = people * glasses * glassMl
  const bottles = Math.ceil(volumeMl / BOTTLE_ML)
  if (glasses < 1 || bottles > MOST_BOTTLES) return null
  const strength = bits.find(({ kind, role }) => kind === 'strength' && role === 'have')?.text ?? usualStrength(bits)
  const of = plants.map((plant) => plant.text.toLowerCase()).join(' + ')
  const options = { of, strength, bottles: `${bottles} x ${BOTTLE_ML} ml` }
  const poured = { people, glasses, glassMl, volumeMl }
  return { kind: 'call', call: { command: 'plan', options }, leftOut: [], does: 'compute', poured }
}
