import { textFrom } from '../../../core/quantity/read/tokens.ts'
import type { Sentence } from '../bits/bit.ts'
import { jarsNamed } from '../bits/jars-of.ts'
import { isToldNow } from './is-told.ts'

/** Nobody counts so many, and no strength is so large: ml. */
const LEAST_ML = 100

const EDGES = /^[\s,;.&+]+|(?:[\s,;.&+]|\b(?:and|then|both|e|ed|poi|entrambi))+$/giu

/** `Lemon 925 ml at 87, ginger 660 at 59, both strained`: what came out stands behind each name. Null where it does not. */
export function strainedEach(sentence: Sentence): readonly string[] | null {
  const { typed, bits, spans, jars } = sentence
  const named = jarsNamed(bits, jars)
  const [one, other, another] = named
  const deed = spans.find(({ concept }) => concept === 'strained')
  if (one === undefined || other === undefined || another !== undefined || deed === undefined) return null
  if (one.jar.stage !== 'steeping' || other.jar.stage !== 'steeping' || !isToldNow(sentence, 'jar strain')) return null
  const ends = [other.bit.from, deed.from > other.bit.to ? deed.from : typed.tokens.length]
  const told = named.flatMap(({ jar, bit: { to: from } }, at) => {
    const to = ends[at]!
    const isMeasured = bits.some((amount) => amount.from >= from && amount.to <= to && amount.value >= LEAST_ML)
    return isMeasured ? [`strained ${jar.name}, ${textFrom(typed, from, to).replace(EDGES, '')}`] : []
  })
  return told.length === named.length ? told : null
}
