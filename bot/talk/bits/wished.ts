import { MOST_OF_LIQUEUR } from './asked-for.ts'
import { type Open, type RolesAround, wordsOf } from './attach.ts'

const STOP = /^[.;!?]$/

/** Whether a wish stands between the bit before and this one, or the one before is wished and this is joined to it. */
export function isWished(around: RolesAround, bits: readonly Open[], at: number): boolean {
  const bit = bits[at]!
  const from = bits[at - 1]?.to ?? 0
  const words = wordsOf(around, from, bit.from)
  const stop = words.findLastIndex((word) => STOP.test(word))
  const near = words.slice(stop + 1)
  const last = near.findLast((word) => !FILLING.has(word))
  const isCue = around.spans.some(
    ({ concept, from: begin, to: end }) =>
      concept === 'wish' && begin >= from && end <= bit.from && begin >= from + stop,
  )
  if (isCue || near.some((word) => word === '→' || word === '>')) return true
  if (LIMIT.test(near.join(' '))) return true
  const isThinning = around.spans.some(({ concept }) => concept === 'thin')
  if (isThinning && last !== undefined && /^(?:for|per|get)$/.test(last) && bits[at - 1] !== undefined) return true
  // `Syrup for 30 and 200 g a litre`.
  const isSyrupFor = /^(?:syrup|sciroppo)$/.test(near.at(-2) ?? '') && /^(?:for|per|to|a)$/.test(near.at(-1) ?? '')
  // `How much syrup for 28 %?`
  if (isSyrupFor && bit.kind === 'strength' && bit.value <= MOST_OF_LIQUEUR) return true
  if ((isSyrupFor || TOWARD.test(near.join(' '))) && bits[at - 1] !== undefined) return true
  if (isSugarFor(around, bit) || isComeOut(near.join(' '), bits, at)) return true
  if (last !== undefined && /^(?:to|until|towards|fino|a|ad)$/.test(last) && isToward(around, near, bits, at))
    return true
  const before = bits[at - 1]
  return before?.role === 'want' && near.every((word) => JOIN.has(word))
}

/** `No more than thirty`, `not above 25%`, `non oltre i trenta gradi`: how far it may go is what is wished. */
const LIMIT =
  /(?:^| )(?:(?:no|not|nothing) (?:\p{L}+ )?(?:more|higher|stronger|over|above|beyond|past)(?: than)?|at (?:the )?most|max(?:imum)?|under|below|up to|non (?:oltre|piu di|sopra|superare|supera|superi)|al massimo|massimo|sotto) ?(?:a|the|about|i|gli|al|ai)?$/u

/** `Syrup to get 28`, `per arrivare a 28`. */
const TOWARD =
  /(?:^| )(?:to (?:get|have|reach|hit|land|finish|end|make|arrive|arrive at|come)(?: it| this| that| up| out| down)*(?: at| on| to| about| around)*|per (?:arrivare|avere|ottenere|raggiungere|scendere|portarlo)(?: a| ad| i| ai| circa)*)$/

/** `The sugar for 130 grams a litre`, `quanto zucchero per 28`. */
function isSugarFor({ typed: { tokens } }: RolesAround, { kind, value, from }: Open): boolean {
  if (kind !== 'sweetness' && !(kind !== 'style' && value <= MOST_OF_LIQUEUR)) return false
  const [thing, word] = [tokens[from - 2]?.text ?? '', tokens[from - 1]?.text ?? '']
  return /^(?:sugar|zucchero)$/.test(thing) && /^(?:for|per)$/.test(word)
}

/** `So that it has 32`, `until it is 28`, `such that we get 30`. */
const COMES_OUT =
  /(?:^| )(so|so that|such that|until|till|til|that|in modo che|affinche) (?:(?:it|i|we|they|this|the \p{L}+) )?(?:has|have|gets?|is|comes?|becomes?|lands?|reaches|makes?|will (?:be|have|get)|ends?|abbia|sia|venga|arrivi)(?: out| up| down)*(?: at| to| on| about| around| a| ad)*$/u

/** What is told of how it is to come out; of `that` only where it is asked what goes in: `a litre that is 40 %` is there. */
function isComeOut(near: string, bits: readonly Open[], at: number): boolean {
  const [, joined] = COMES_OUT.exec(near) ?? []
  if (joined === undefined || bits[at - 1] === undefined) return false
  const isAdded = bits[at - 1]!.kind === 'sugar' || bits[at - 1]!.kind === 'water'
  return joined !== 'that' || isAdded || /\bsyrup\b/.test(near)
}

const FILLING = new Set(['about', 'around', 'roughly', 'say', 'circa', 'a', 'the', 'it', 'nice', 'bit', 'of'])

export const JOIN = new Set([
  'and',
  ',',
  'e',
  'with',
  'n',
  'at',
  'about',
  'around',
  'quite',
  'nice',
  '&',
  '+',
  'but',
  'on',
  'the',
  'con',
  'circa',
  'maybe',
  'ed',
])

/** `to` before a number that is no first one; in Italian `a` says `at` as well. */
function isToward({ lexicon }: RolesAround, near: readonly string[], bits: readonly Open[], at: number): boolean {
  if (near.includes('to') || near.includes('until') || near.includes('towards')) return true
  // `mezzo litro a 40 e mezzo litro a 20`: behind an amount it says how strong that is.
  if (lexicon.id !== 'it' || bits[at - 1]?.kind === 'volume') return false
  return near.includes('fino') || bits.slice(0, at).some(({ kind, role }) => kind === 'strength' && role !== 'want')
}

/** Plants with amounts and what is poured on them: a sweetness is what it is to have. */
const isPlanned = (bits: readonly Open[]): boolean =>
  bits.some(({ kind, with: place }) => kind === 'plant' && place !== undefined) &&
  bits.some(({ kind, role }) => kind === 'volume' || (kind === 'bottles' && role === 'of_spirit'))

/** A spirit whose word tells that it is stronger: `vodka`. */
export const isStronger = ({ kind, value }: Open): boolean => kind === 'spirit' && value > MOST_OF_LIQUEUR

/** `Strong like 32%`, `sui 28 gradi`. */
const HOW_STRONG = /^(?:strong|strongish|like|sui|intorno|forte)$/

/** `A litre of vodka and 2 lb strawberries, 32%`: behind what is steeped, and too weak for the spirit that is named, it is what comes out. */
function isOfLiqueur(around: RolesAround, bits: readonly Open[], at: number): boolean {
  const [before, bit, next] = [bits[at - 1], bits[at]!, bits[at + 1]]
  const isSaidSo = wordsOf(around, before?.to ?? 0, bit.from).some((word) => HOW_STRONG.test(word))
  const thing = before?.with !== undefined && before.kind !== 'plant' ? bits[before.with] : before
  return (
    bit.value <= MOST_OF_LIQUEUR &&
    (thing?.kind === 'plant' || isSaidSo) &&
    next?.kind !== 'spirit' &&
    next?.kind !== 'volume' &&
    bits.slice(0, at).some(isStronger) &&
    bits.filter(({ kind }) => kind === 'strength').length === 1
  )
}

/** Strengths with a sign, and sweetnesses: there or wished. */
export function wishes(around: RolesAround, bits: Open[]): void {
  bits.forEach((bit, at) => {
    if (bit.kind !== 'strength' && bit.kind !== 'sweetness' && bit.kind !== 'style') return
    if (bit.role !== null) return
    const isOfPlan = bit.kind === 'sweetness' && isPlanned(bits)
    const isToCome = bit.kind === 'strength' && isOfLiqueur(around, bits, at)
    bit.role = isOfPlan || isToCome || isWished(around, bits, at) ? 'want' : 'have'
  })
  // `Limoncello, 14 lemons, 32 %`: no spirit is sold so weak.
  const isPlants = bits.some(
    ({ kind, with: place, spirit }) => kind === 'plant' && (place !== undefined || spirit !== undefined),
  )
  const said = bits.filter(({ kind }) => kind === 'strength')
  const isLiquid = bits.some(
    ({ kind, role }) => kind === 'volume' || kind === 'spirit' || (kind === 'bottles' && role === 'of_spirit'),
  )
  if (isPlants && !isLiquid && said.length === 1 && said[0]!.value <= MOST_OF_LIQUEUR) said[0]!.role = 'want'
  // Of two strengths of one liquid the one behind is wished, where it is lower.
  const open = bits.filter(({ kind, role }) => kind === 'strength' && role === 'have')
  const liquids = bits.filter(
    ({ kind, role }) =>
      (kind === 'volume' && role !== 'of_water') || kind === 'bottles' || (kind === 'bare' && role === 'of_spirit'),
  )
  const [first, second] = open
  if (
    open.length === 2 &&
    liquids.length === 1 &&
    second!.value < first!.value &&
    !bits.some(({ role }) => role === 'want')
  ) {
    second!.role = 'want'
    // `What syrup gets me 30 % and 200 g per litre`.
    const behind = bits[bits.indexOf(second!) + 1]
    if (behind?.kind === 'sweetness' && wordsOf(around, second!.to, behind.from).every((word) => JOIN.has(word)))
      behind.role = 'want'
  }
}
