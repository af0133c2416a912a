import { isRefused } from '../../../core/domain-error.ts'
import { parseHave, STRONG } from '../../../core/shopping/parse-have.ts'
import type { Bit, Sentence } from '../bits/bit.ts'
import { liquidsIn, spiritText } from './liquids.ts'
import { type Fill, isPlant, plantText } from './plant-slots.ts'

/** From here on something else is said than what is there. */
const NO_MORE =
  /^(?:want|wants|wanting|need|needs|buy|buying|get|getting|make|making|would|d|should|how|what|can|could|do|does|if|so|then|voglio|vorrei|vogliamo|serve|servono|devo|compro|comprare|fare|faccio|posso|cosa|come|quanto|quanta|quanti|quante|se)$/

/** What stands behind the things of which it tells: `10 lemons at home`. */
const BEHIND =
  /^(?:at home|in the (?:cupboard|pantry|kitchen|larder|freezer|fridge|garden)|on hand|to use up|left over|leftover|sitting here|spare|avanzat[oiae]|a casa|in casa|in dispensa)$/

/** Before it, nothing is there: it is denied, asked, or only thought of. */
const NOT_SO =
  /^(?:if|suppose|imagine|when|once|do|does|did|don|dont|doesn|didn|not|no|never|t|without|se|quando|non|senza)$/
const NEAR = 3

const RELATIVE = /^(?:that|which|i|we|just|ve|have|had|che|abbiamo|appena)$/

interface Within {
  readonly from: number
  readonly to: number
}

/** The pieces in which it is told what is there; null where nothing is. */
function toldIn({ typed: { tokens }, spans, bits }: Sentence): Within | null {
  const wordsOf = ({ from, to }: Within): string =>
    tokens
      .slice(from, to)
      .map(({ text }) => text)
      .join(' ')
  const said = spans.filter(({ concept }) => concept === 'have').toSorted((one, other) => one.from - other.from)
  const [first] = said
  if (first === undefined) return null
  if (tokens.slice(Math.max(0, first.from - NEAR), first.to).some(({ text }) => NOT_SO.test(text))) return null
  const isEnd = ({ kind, text }: (typeof tokens)[number]): boolean =>
    NO_MORE.test(text) || (kind === 'sign' && /^[.;?!]$/.test(text))
  // `Raspberries that I just picked`: said of what stands before it.
  const last = bits.findLast(({ to }) => to <= first.from)
  const between = last === undefined ? [] : tokens.slice(last.to, first.from)
  const isBehind = last?.kind === 'plant' && between.length > 0 && between.every(({ text }) => RELATIVE.test(text))
  if (isBehind || BEHIND.test(wordsOf(first))) {
    const before = tokens.slice(0, first.from).findLastIndex(isEnd)
    return { from: before + 1, to: first.from }
  }
  const rest = tokens.slice(first.to).findIndex(isEnd)
  return { from: first.to, to: rest === -1 ? tokens.length : first.to + rest }
}

/**
 * What a plan needs and is there already, with its amount: `I have a litre of vodka and 10 lemons`, `ho un litro di alcol`. Asked, denied
 * or only thought of, nothing is there.
 */
export const had: Fill = (sentence) => {
  const { bits, typed } = sentence
  const within = toldIn(sentence)
  if (within === null) return null
  const isWithin = ({ from, to }: Bit): boolean => from >= within.from && to <= within.to
  const plants = bits.filter((bit) => isPlant(bit) && isWithin(bit) && bit.with !== undefined)
  const spirits = liquidsIn(sentence).filter(({ amount }) => isWithin(amount))
  const sugars = bits.flatMap((sugar) => {
    if (sugar.kind !== 'sugar' || !isWithin(sugar)) return []
    const amount = bits.findLast(({ kind, to }) => kind === 'mass' && to <= sugar.from && sugar.from - to <= 2)
    return amount === undefined ? [] : [{ amount, sugar }]
  })
  const texts = [
    ...plants.map((plant) => plantText(bits, plant, typed)),
    ...spirits.map(spiritText).filter((text) => STRONG.test(text)),
    ...sugars.map(({ amount, sugar }) => `${amount.text} ${sugar.text.toLowerCase()}`),
  ].filter((text) => !isRefused(() => parseHave(text)))
  if (texts.length === 0) return null
  return { text: texts.join(' + '), bits: sugars.flatMap(({ amount, sugar }) => [amount, sugar]), isAssumed: true }
}
