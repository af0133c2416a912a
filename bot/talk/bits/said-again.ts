import { SPIRIT_BOTTLE_ML } from '../../../core/quantity/us-bottles.ts'
import { wordSet } from '../lexicon/concepts.ts'
import { isJarName, type Open, type RolesAround } from './attach.ts'

/** Two amounts that are as near as this are one, as a share. */
const SAME = 0.02

const SAYS_AGAIN =
  /^(?:, ?)?(?:\(|thats|that is|its|which is|=|ie|i e|meaning|cioe|ossia|vale a dire)(?: (?:about|circa|a|an))?$/

const isPoured = ({ kind, role }: Open): boolean => kind === 'volume' || (kind === 'bottles' && role === 'of_spirit')

const mlOf = ({ kind, value, isSizeAssumed, assumedMl = SPIRIT_BOTTLE_ML, count = 1 }: Open): number =>
  kind === 'bottles' && isSizeAssumed === true ? count * assumedMl : value

/** `A handle of rum (1.75 l)`, `a bottle, that’s 70 cl`: an amount that is said again in other words is no second one. */
export function saidAgain({ typed }: RolesAround, bits: Open[]): void {
  bits.forEach((bit, at) => {
    if (bit.kind !== 'volume' || bit.role === 'of_water' || bit.role === 'of_spirit' || at === 0) return
    const first = bits
      .slice(0, at)
      .find((other) => isPoured(other) && other.role !== 'of_water' && other.role !== 'gone')
    if (first === undefined || Math.abs(mlOf(first) - bit.value) > SAME * bit.value) return
    const between = typed.tokens.slice(bits[at - 1]!.to, bit.from).map(({ text }) => text)
    if (SAYS_AGAIN.test(between.join(' '))) bit.role = 'gone'
  })
}

/** `A handle of vodka (1.75)`, `a bottle of gin (70)`: how large it is, in litres, cl or ml, where its brackets hold nothing else. */
export function sizeInBrackets({ typed: { tokens } }: RolesAround, bits: Open[]): void {
  bits.forEach((bit, at) => {
    const isAlone = tokens[bit.from - 1]?.text === '(' && tokens[bit.to]?.text === ')'
    if (bit.kind !== 'bare' || bit.with !== undefined || !isAlone) return
    const first = bits.slice(0, at).findLast((other) => isPoured(other) && other.role !== 'of_water')
    const size = [1000, 10, 1].map((each) => each * bit.value).find((ml) => ml >= BOTTLE.least && ml <= BOTTLE.most)
    if (first === undefined || size === undefined) return
    if (Math.abs(mlOf(first) - size) <= SAME * size) bit.role = 'gone'
    else if (first.isSizeAssumed === true) Object.assign(bit, { kind: 'volume', value: size, text: `${size} ml` })
  })
}

/** What a bottle of spirit may hold, ml. */
const BOTTLE = { least: 200, most: 3000 } as const

/** `A jar`, `a carrier bag`: an article before what holds something counts nothing, unless it is of a plant. */
export function articles({ typed, lexicon }: RolesAround, bits: Open[]): void {
  const loose = wordSet(lexicon.loose)
  for (const bit of bits) {
    const isOne = bit.kind === 'bare' && bit.value === 1 && bit.with === undefined && bit.role === null
    // `One 35 ml glass`, `started one jar`: what is told of it counts.
    const isOneOf = /^(?:one)$/.test(typed.tokens[bit.from]!.text)
    const isMeasured = bits.some((each) => each.kind === 'volume' && each.from === bit.to)
    if (isOne && isOneOf && (isMeasured || /^(?:jar|glass|shot|pour)$/.test(typed.tokens[bit.to]?.text ?? '')))
      bit.role = 'gone'
    if (
      isOne &&
      /^(?:an?|un|una|uno)$/.test(typed.tokens[bit.from]!.text) &&
      loose.has(typed.tokens[bit.to]?.text ?? '')
    )
      bit.role = 'gone'
  }
}

const LARGE =
  /^(?:big|large|small|little|medium|huge|nice|fat|good|decent|tiny|ripe|grand[ei]|gross[eiao]|piccol[eiao]|bell[eiao]|matur[eiao])$/
const ONES = /^(?:ones?|em|of|them|those)$/

/** Nothing tells how many there are of a plant: `a basket of quinces` tells none. */
export function isUncounted(bits: readonly Open[], plant: Open): boolean {
  const amount = plant.with === undefined ? undefined : bits[plant.with]
  return amount === undefined || (amount.kind === 'bare' && amount.value <= 1 && plant.loose !== undefined)
}

/** The measure that tells no number goes. */
export function uncount(bits: readonly Open[], plant: Open): void {
  if (plant.with !== undefined) bits[plant.with]!.role = 'gone'
  delete plant.loose
}

/** `I counted twenty`, `used eight`, `there turned out to be sixteen`, `sono dodici`: of what was spoken of. */
const COUNTING =
  /^(?:call|bought|buy|buying|grabbed|nabbed|found|gathered|foraged|harvested|ordered|comprat[eo]|comprati|raccolt[ei]|trovat[ei]|count|counted|counting|kept|keep|keeping|used|use|using|saved|saving|picked|chose|took|take|taking|have|had|got|ive|weve|left|be|are|were|was|its|theres|made|makes|came|comes|gave|abbiamo|ho|sono|erano|saranno|contat[ei]|tenut[ei]|scelt[ei]|pres[ei]|usat[ei]|x)$/

/** Behind a number that stands by itself. */
const ALONE =
  /^(?:[.,;!?)]|bought|and|plus|e|ed|so|but|ma|left|altogether|total|all|or|of|in|per|for|con|with|per|circa|)$/

const MOST_COUNTED = 150

/** Whether somebody counted the plant before it: `lemons x 10`, `a crate of lemons, I counted twenty`. */
function isCountedApart({ typed }: RolesAround, { from, to, value }: Open, plant: Open): boolean {
  if (value < 1 || value > MOST_COUNTED || !ALONE.test(typed.tokens[to]?.text ?? '')) return false
  const words = typed.tokens.slice(plant.to, from).map(({ text }) => text)
  const last = words.findLastIndex((word) => COUNTING.test(word))
  return last !== -1 && words.length - last <= 4 && words.length <= MOST_BETWEEN
}

const MOST_BETWEEN = 14

/**
 * `Pomegranate. Two big ones`, `a box of quinces, six of them`, `albicocche, una cinquantina`: so many of the one plant that has no
 * count, where nothing else is behind the number.
 */
export function countedBehind(around: RolesAround, bits: Open[]): void {
  const { typed, lexicon } = around
  const loose = wordSet(lexicon.loose)
  bits.forEach((bit, at) => {
    if (bit.kind !== 'bare' || bit.with !== undefined || bit.role !== null || !Number.isInteger(bit.value)) return
    const plant = bits[at - 1]
    if (plant?.kind !== 'plant' || plant.role !== null || !isUncounted(bits, plant)) return
    let next = bit.to
    while (LARGE.test(typed.tokens[next]?.text ?? '')) next++
    const behind = typed.tokens[next]?.text ?? ''
    const isNamed = ONES.test(behind) || (next > bit.to && !loose.has(behind) && /^(?:[.,;]|)$/.test(behind))
    const isRound = /^(?:una?|a)$/.test(typed.tokens[bit.from]!.text) && bit.value >= 10
    const isCounted = !isJarName(around, plant) && isCountedApart(around, bit, plant)
    if (!isNamed && !isRound && !isCounted) return
    uncount(bits, plant)
    bit.with = at - 1
    bit.role = 'of_plant'
    plant.with = at
  })
}
