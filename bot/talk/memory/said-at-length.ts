import { wordsFrom } from '../../../core/quantity/read/tokens.ts'
import type { Bit, Sentence } from '../bits/bit.ts'
import { measuresAsked } from '../frames/amount-slots.ts'
import type { CallRead } from '../frames/reading.ts'
import { amountBefore } from '../frames/scaled-text.ts'
import { takes, withOption } from './change-call.ts'
import { isOf } from './plan-rules.ts'
import { callReading, changedOf, RECORDED, type Rule, setTo } from './rule.ts'

const isThing = ({ kind }: Bit): boolean => kind === 'water' || kind === 'sugar'

/** How much there is of something is wondered at, or where it comes from. */
const WONDERS =
  /\b(?:why|how come|how ?did you (?:get|come|work|arrive)|how do you (?:get|come|work)|where (?:does|did)|perche|come mai|come (?:hai|avete) (?:fatto|calcolato)|da dove)\b/u

const OF_AMOUNT =
  /\b(?:much|little|many|few|lot|lots|amount|figure|number|tant[oaie]|poc[oah]\p{L}*|cosi|quell[oaie])\b/u

/** `I don’t want to doubt you, but why is there so much water in it?`: the answer that stands is explained, nothing is changed. */
export const explained: Rule = ({ bits, typed }, last) => {
  const text = wordsFrom(typed)
  const isOfAnswer = takes(last.command, 'to-sweetness') || takes(last.command, 'to-strength')
  if (!isOfAnswer || !bits.every((bit) => isThing(bit) && bit.with === undefined)) return null
  return WONDERS.test(text) && bits.length > 0 && OF_AMOUNT.test(text) ? { kind: 'last', what: 'why' } : null
}

/** Said of a thing that is not wanted. */
const DISLIKED =
  /\b(?:hates?|hated|detests?|loathes?|dislikes?|(?:cant|cannot|can not|couldnt) (?:abide|stand|bear|have|eat|stomach)|(?:dont|doesnt|didnt|do not|does not) (?:really |much )?(?:like|care for|want|fancy)|not (?:keen|fond)|without (?:it|that|them)|how .{0,25}\bwithout\b|come (?:viene|sarebbe) senza|out with|(?:take|leave|kick|chuck) .{0,25}\bout|via|togli\p{L}*|leva\p{L}*|non (?:mi |gli |le |ci )?piacc?(?:e|iono)|non (?:lo |la )?sopport\p{L}*|odi[oa]|detest\p{L}*)\b/u

/** `Ginger out pls`: the name and nothing but that it goes. */
const GOES_OUT = /^(?:\p{L}+ )?\p{L}+ out(?: (?:again|please|pls|then|of it))?\b/u

/** `My daughter-in-law can’t abide ginger, so how would it be without?`: of several plants the one that is named goes. */
export const disliked: Rule = ({ bits, typed }, last) => {
  const { of } = last.options
  const [plant, another] = bits
  if (last.command !== 'plan' || of === undefined || plant?.kind !== 'plant' || another !== undefined) return null
  const text = wordsFrom(typed)
  const items = of.split('+').map((item) => item.trim())
  const kept = items.filter((item) => !isOf(item, plant))
  if (/\b(?:when|how long|why|should|quando|perche|quanto)\b/.test(text)) return null
  const isSaid = DISLIKED.test(text) || GOES_OUT.test(text)
  if (!isSaid || kept.length === 0 || kept.length === items.length) return null
  return callReading(withOption(last, 'of', kept.join(' + ')))
}

const SAME =
  /^(?:(?:ok|okay|and|now|then|right|so|could i have|can i have|id like|e|ora|adesso|allora) )*(?:(?:exactly )?the |quite the |lo |la )?(?:same|stess[oa]|uguale|idem)(?: (?:thing|again|one|cosa|ricetta))?(?: please)?(?: ?, ?)? ?(?:but|with|for|only|just|ma|con|per|solo|pero)\b/u

/** `Same but oranges`, `and now the same thing for limes`: one plant in the place of the one there is, as many as there were. */
export const sameWith: Rule = ({ bits, typed }, last) => {
  const { of } = last.options
  const [plant, another] = bits.filter(({ kind, role }) => kind !== 'bare' || role !== 'of_plant')
  if (last.command !== 'plan' || of === undefined || of.includes('+')) return null
  if (plant?.kind !== 'plant' || plant.role === 'left_out' || another !== undefined) return null
  if (!SAME.test(wordsFrom(typed))) return null
  const amount = plant.with === undefined ? amountBefore(of) : bits[plant.with]?.text
  return callReading(withOption(last, 'of', [amount, plant.text.toLowerCase()].filter(Boolean).join(' ')))
}

const REFERS = /\b(?:it|that|this|those|them|these|lo|la|li|le|quello|questo|tutto)\b/u
const IN_MEASURES =
  /\b(?:in|into|using|by|to) (?:the |us |american |imperial |uk )?(?:cups?|ounces|oz|fluid ounces|pints|quarts|pounds|grams|millilitres|milliliters|ml|metric|tazze|once|grammi|millilitri)\b/u

/** From here on a sentence is no follow-up of a few words. */
const MOST_WORDS = 24

const isLong = ({ tokens }: Sentence['typed']): boolean =>
  tokens.filter(({ kind }) => kind === 'word').length > MOST_WORDS

const ALWAYS = /\b(?:always|from now on|everything|sempre|d ora in poi|tutto)\b/u

/** `Could I have that in cups and ounces, please? I’m American`: the answer that stands, in other measures. */
export const inOtherMeasures: Rule = ({ has, bits, typed }, last) => {
  const text = wordsFrom(typed)
  const kitchen = bits.length > 0 || isLong(typed) ? null : measuresAsked(has)
  if (kitchen === null || ALWAYS.test(text) || !REFERS.test(text) || !IN_MEASURES.test(text)) return null
  return takes(last.command, 'to-sweetness') || takes(last.command, 'spirit') || takes(last.command, 'infusion')
    ? { kind: 'call', call: last, does: 'compute', leftOut: [], kitchen }
    : null
}

/** `My scale only talks ounces. Could you put it that way?`: the answer that stands is to be said anew. */
const SAID_ANEW =
  /\b(?:put|say|give|show|redo|write|convert|translate|tell|express|work|turn|change|repeat|rephrase|spell|have|do) (?:me |us )?(?:it|that|this|them|those|everything|all)(?: (?:all|out|again|over|back))*(?: (?:like that|that way|for (?:me|us|those|them|that)|again|so|instead))?\b|\b(?:ridi|ridim|rifa|dimm|scrivim|conver)\p{L}*\b/u

const OUNCES = /\b(?:oz|ounces?)\b/i

const MOST_GLASS_ML = 400

/** `Our glasses are smaller, they take 25 ml`: the glass that was asked about is of another size. */
export const otherGlass: Rule = ({ bits }, last) => {
  const size = bits.find(({ kind, text }) => kind === 'volume' || (kind === 'mass' && OUNCES.test(text)))
  const [strength, another] = bits.filter((bit) => bit !== size)
  if (last.command !== 'serving' || last.options.pour === undefined || another !== undefined) return null
  if (size === undefined || size.value > MOST_GLASS_ML || (strength !== undefined && strength.kind !== 'strength'))
    return null
  // What is poured is fluid.
  const text = size.kind === 'mass' ? size.text.replace(OUNCES, 'fl oz') : size.text
  const poured = withOption(last, 'pour', text)
  return callReading(strength === undefined ? poured : withOption(poured, 'strength', strength.text))
}

/** `Could we get that up to thirty-five percent? The men would like it better`: the one number of a longer sentence that wishes it. */
export const targetAtLength: Rule = ({ bits, has, typed, jars }, last) => {
  const [only, another] = bits
  if (only === undefined || another !== undefined || isLong(typed)) return null
  const isTarget = only.kind === 'strength' || only.kind === 'sweetness'
  if (!isTarget || has('how_long', 'units_of_alcohol', 'freezes') || !REFERS.test(wordsFrom(typed))) return null
  const isWish = only.role === 'want' || has('could_be', 'instead', 'sweeter', 'drier', 'stronger', 'weaker')
  return isWish ? setTo(only, changedOf(last, jars), false) : null
}

/** `How many bottles is that?`: what was worked out says it. */
export const ofWhatWasSaid: Rule = ({ has, bits, typed }, last) => {
  const isShort = typed.tokens.filter(({ kind }) => kind === 'word').length <= 8
  const isOther = bits.length > 0 || has('keeps_long', 'bottles_left', 'to_buy', 'cost_me', 'freezes')
  return last.command === 'plan' && isShort && !isOther && has('what_of_it') ? callReading(last) : null
}

/** What shows an answer again: of what was strained its syrup, of any other step its jar; null where that would be written down twice. */
function shownOf(last: CallRead): CallRead | null {
  if (last.command === 'jar strain') return changedOf(last)
  if (!RECORDED.test(last.command)) return last
  const jar = last.options.jar ?? last.options.name
  return jar === undefined ? null : { command: 'jar show', options: { jar } }
}

/** `In cups please`, `in cups please, my scale is broken`. */
export const inMeasures: Rule = ({ has, bits, typed }, last) => {
  const text = wordsFrom(typed)
  const isSaidAnew = SAID_ANEW.test(text) && !ALWAYS.test(text)
  const isLed = IN_MEASURES.exec(text)?.index === 0
  if (bits.length > 0 || (isLed || isSaidAnew ? isLong(typed) : typed.tokens.length > 8)) return null
  const kitchen = measuresAsked(has)
  const call = kitchen === null ? null : shownOf(last)
  return call === null || kitchen === null ? null : { kind: 'call', call, does: 'compute', leftOut: [], kitchen }
}
