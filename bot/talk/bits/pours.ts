import { type ConceptSpan, wordSet } from '../lexicon/concepts.ts'
import { MOST_OF_LIQUEUR } from './asked-for.ts'
import { isJarName, isStrengthLike, joins, type Open, type RolesAround, THINGS, wordsOf } from './attach.ts'
import { isUncounted, uncount } from './said-again.ts'
import { isOfSpiritNamed } from './spirit-named.ts'

/** Whether a number may be a strength that has no sign: `at 35`. */
const isStrong = (bit: Open | undefined): boolean =>
  bit !== undefined && (bit.kind === 'strength' || isStrengthLike(bit))

/** `400 ml lemon 32% 250 g/l and 600 ml ginger 28%`: of two liquids that are as strong as that the plants are names. */
export function liqueursNamed(bits: Open[]): void {
  const groups = bits.flatMap((bit, at) => {
    if (bit.kind !== 'volume') return []
    const isNamed = bits[at + 1]?.kind === 'plant'
    const behind = bits[at + (isNamed ? 2 : 1)]
    return isStrong(behind) ? [{ plant: isNamed ? bits[at + 1]! : null }] : []
  })
  const isSweet = bits.some(({ kind }) => kind === 'sweetness')
  if (groups.length < 2 || !isSweet) return
  for (const { plant } of groups) if (plant !== null) plant.role = 'gone'
}

const INTO = /^(?:into|to|in)$/
const STRENGTH_WORD = /^(?:strength|proof|gradazione)$/

/** `turn it into vodka`, `vodka strength`: as strong as that drink is sold. */
export function asStrongAs(around: RolesAround, bits: Open[]): void {
  const { tokens } = around.typed
  const isPoured = bits.some(({ kind }) => kind === 'volume' || kind === 'bottles')
  for (const bit of bits) {
    if (bit.kind !== 'spirit' || bit.with !== undefined || bit.value === 0 || !isPoured) continue
    const isThere = bits.some(({ kind, from, value }) => kind !== 'spirit' && from < bit.from && value >= 50)
    const isInto = INTO.test(tokens[bit.from - 1]?.text ?? '') && isThere && !bits.some(({ kind }) => kind === 'plant')
    if (!isInto && !STRENGTH_WORD.test(tokens[bit.to]?.text ?? '')) continue
    bit.kind = 'strength'
    bit.text = `${bit.value}%`
    bit.role = 'want'
  }
}

/** `a 700 ml bottle at 40`: a bottle whose strength is said holds spirit, where nothing else does. */
export function bottlesPoured(around: RolesAround, bits: Open[]): void {
  const isOther = bits.some(
    ({ kind, role }) => (kind === 'volume' && role !== 'of_water') || (kind === 'bottles' && role === 'of_spirit'),
  )
  if (isOther) return
  // `Six 500 ml bottles of orange at 30%`: no spirit is sold so weak.
  const isFilled = bits.some(({ kind, role, count = 1 }) => kind === 'bottles' && role === null && count > 1)
  const said = bits.filter(({ kind, role }) => kind === 'strength' && role !== null)
  if (isFilled && said.length === 1 && said[0]!.value <= MOST_OF_LIQUEUR) said[0]!.role = 'want'
  if (isOfSpiritNamed(around, bits)) return
  bits.forEach((bit, at) => {
    const next = bits[at + 1]
    if (bit.kind !== 'bottles' || bit.role !== null || (bit.count ?? 1) > 3) return
    if (next?.kind !== 'strength' || next.role !== 'have') return
    if (!wordsOf(around, bit.to, next.from).every((word) => /^(?:at|of|,|@|a|ad|da|di|al|\()$/.test(word))) return
    // `Three half litre bottles, 28 percent`: no spirit is sold so weak, it is what they are filled with.
    if ((bit.count ?? 1) > 1 && next.value <= MOST_OF_LIQUEUR) {
      next.role = 'want'
      return
    }
    bit.role = 'of_spirit'
    if (bit.isSizeAssumed === true) return
    bit.kind = 'volume'
    bit.text = bit.text.replace(/^1 x /, '')
  })
}

/** What a strength may be in US proof where it has no sign. */
const PROOF = { least: 100, most: 194 } as const

const MOST_WORDS = 2

/** Words that nothing knows: what stands on a label. */
function isName({ typed, lexicon, spans }: RolesAround, from: number, to: number): boolean {
  const [fillers, between] = [wordSet(lexicon.fillers), wordSet(lexicon.between)]
  const isSaid = (at: number): boolean => spans.some((span: ConceptSpan) => span.from <= at && at < span.to)
  const words = typed.tokens.slice(from, to)
  const isNameWord = ({ kind, text }: (typeof words)[number], more: number): boolean =>
    kind === 'word' && text.length > 2 && !fillers.has(text) && !between.has(text) && !isSaid(from + more)
  const first = words.findIndex(({ text }) => !/^(?:of|di|x)$/.test(text))
  const rest = first === -1 ? [] : words.slice(first)
  return rest.length > 0 && rest.length <= MOST_WORDS && rest.every((word, more) => isNameWord(word, first + more))
}

/** `12 fl oz of zorble 151`, `a litre of zorble 80`: behind a name that nothing knows stands how strong it is. */
export function namedStrength(around: RolesAround, bits: Open[]): void {
  bits.forEach((bit, at) => {
    const before = bits[at - 1]
    if (bit.kind !== 'bare' || bit.with !== undefined || before?.with !== undefined) return
    if (before?.kind !== 'volume' && before?.kind !== 'bottles') return
    if (!isName(around, before.to, bit.from)) return
    const isProof = bit.value >= PROOF.least && bit.value <= PROOF.most
    if (!isProof && !isStrong(bit)) return
    if (/^(?:ml|minutes|people|days|weeks|months|\p{L}{4,})$/u.test(around.typed.tokens[bit.to]?.text ?? '')) return
    bit.kind = 'strength'
    bit.text = isProof ? `${bit.text} proof` : `${bit.text}%`
    bit.value = isProof ? bit.value / 2 : bit.value
    bit.role = 'have'
    before.role = 'of_spirit'
  })
}

/** `make 40 out of a litre of 95`: so strong it is to be. */
export function madeOf(around: RolesAround, bits: Open[]): void {
  bits.forEach((bit, at) => {
    if (!isStrong(bit) || bit.with !== undefined || at > 0) return
    const words = wordsOf(around, bit.to, bits[at + 1]?.from ?? bit.to)
    const isFrom = words.includes('out') || words[0] === 'from' || words[0] === 'da'
    const before = around.typed.tokens[bit.from - 1]?.text ?? ''
    const hasOther = bits.slice(at + 1).some((other) => isStrong(other))
    if (!isFrom || !hasOther || !/^(?:make|get|want|need|fare|ottenere|a|an|some)$/.test(before)) return
    bit.kind = 'strength'
    if (!bit.text.includes('%')) bit.text = `${bit.text}%`
    bit.role = 'want'
  })
}

const OF_THEM = /^(?:em|them|those|these|it|loro)$/

/** `passionfruit off the vine, about 25 of em`, `ne ho 25`: so many of the plant before it. */
export function ofThem(around: RolesAround, bits: Open[]): void {
  bits.forEach((bit, at) => {
    if ((bit.kind !== 'bare' && bit.kind !== 'mass') || bit.with !== undefined) return
    const [of, them] = wordsOf(around, bit.to, bit.to + 2)
    const before = wordsOf(around, Math.max(bits[at - 1]?.to ?? 0, bit.from - 4), bit.from)
    const isNe = before.includes('ne') && !before.slice(before.indexOf('ne')).includes(',')
    if (!(of === 'of' && OF_THEM.test(them ?? '')) && !isNe) return
    const place = bits.findLastIndex(
      (plant, where) => where < at && plant.kind === 'plant' && plant.role === null && isUncounted(bits, plant),
    )
    if (place === -1) return
    uncount(bits, bits[place]!)
    bit.with = place
    bit.role = 'of_plant'
    bits[place]!.with = at
  })
}

/** `cardamom + coffee, ten pods and 80 g`: amounts of pieces and weights behind plants that have none, one for each, in order. */
export function respectively(around: RolesAround, bits: Open[], least: number): void {
  // `Lemon at 22 and 180 grams, freezer ok?`: of sugar.
  if (around.spans.some(({ concept }) => concept === 'freezes')) return
  const loose = wordSet(around.lexicon.loose)
  const isNamedTwice = (bit: Open): boolean =>
    bits.some((other) => other !== bit && other.kind === 'plant' && isSame(other, bit))
  const isAmount = (bit: Open | undefined): boolean =>
    bit?.kind === 'mass' || (bit?.kind === 'bare' && loose.has(around.typed.tokens[bit.to]?.text ?? ''))
  const isOpen = ({ with: place, role }: Open): boolean => place === undefined && role === null
  const open = bits.filter(
    (bit, at) =>
      bit.kind === 'plant' &&
      isOpen(bit) &&
      !isNamedTwice(bit) &&
      !isJarName(around, bit) &&
      !(isAmount(bits[at - 1]) || bits[at - 1]?.kind === 'bare'),
  )
  const amounts = bits.filter((bit, at) => isAmount(bit) && isOpen(bit) && !THINGS.has(bits[at + 1]?.kind ?? 'jar'))
  if (open.length < least || open.length !== amounts.length || open.at(-1)!.from > amounts[0]!.from) return
  open.forEach((plant, at) => {
    const amount = amounts[at]!
    amount.with = bits.indexOf(plant)
    amount.role = 'of_plant'
    plant.with = bits.indexOf(amount)
    if (amount.kind === 'bare') plant.loose = around.typed.tokens[amount.to]!.text
  })
}

const isSame = ({ ids: one = [] }: Open, { ids: other = [] }: Open): boolean => one.some((id) => other.includes(id))

/** `1 pineapple (1.2 kg)`: the weight tells more than the count. */
export function weighedInBrackets(around: RolesAround, bits: Open[]): void {
  bits.forEach((bit, at) => {
    const plant = bits[at - 1]
    const count = plant?.with === undefined ? undefined : bits[plant.with]
    if (bit.kind !== 'mass' || bit.with !== undefined || plant?.kind !== 'plant' || count?.kind !== 'bare') return
    const words = wordsOf(around, plant.to, bit.from)
    if (words[0] !== '(' || !joins(around, plant.to + 1, bit.from)) return
    count.role = 'gone'
    bit.with = at - 1
    bit.role = 'of_plant'
    plant.with = at
  })
}
