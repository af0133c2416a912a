import type { Token } from '../../../core/quantity/read/tokens.ts'
import type { ConceptSpan } from '../lexicon/concepts.ts'
import type { Bit } from './bit.ts'
import { jarsNamed } from './jars-of.ts'
import type { Told } from './told-of-part.ts'

const INTO = /^(?:in|into|inside|to|nel|nello|nella|dentro|con|al|allo|alla)$/
const WITH = /^(?:with|con|a|al|alla|allo|il|lo|la)$/
const ARTICLE = /^(?:the|my|our|that|l|il|lo|la|jar|vaso)$/

/** Where the name of a jar begins that something goes into, with its `into the`; null where it is none. */
function intoAt(tokens: readonly Token[], name: Bit): number | null {
  let at = name.from - 1
  while (ARTICLE.test(tokens[at]?.text ?? '')) at--
  if (INTO.test(tokens[at]?.text ?? '')) return at
  // `In with the lemon`.
  return WITH.test(tokens[at]?.text ?? '') && INTO.test(tokens[at - 1]?.text ?? '') ? at - 1 : null
}

/** Whether a name is that of what something goes into: `into the ginger`. */
export const isPutInto = (tokens: readonly Token[], name: Bit): boolean => intoAt(tokens, name) !== null

const POURED = new Set<Bit['kind']>(['spirit', 'strength', 'sugar', 'water', 'volume', 'bottles', 'rating'])
const RUNS: ReadonlySet<string> = new Set(['steeping', 'strained', 'sweetened'])

/** `Vanilla in with the ginger, 1 pod`, `two cloves in the lemon`: a plant that is no jar's, into a jar that is named behind it. */
export function putInto({ typed: { tokens }, bits, jars }: Told): readonly ConceptSpan[] {
  if (bits.some(({ kind }) => POURED.has(kind))) return []
  const named = jarsNamed(bits, jars)
  const [into, another] = named.filter(({ jar, bit }) => RUNS.has(jar.stage) && isPutInto(tokens, bit))
  if (into === undefined || another !== undefined) return []
  const isOther = (bit: Bit): boolean => bit.kind === 'plant' && !named.some((each) => each.bit === bit)
  const begin = intoAt(tokens, into.bit)!
  return bits.some((bit) => isOther(bit) && bit.to <= begin)
    ? [{ concept: 'added', from: begin, to: into.bit.from }]
    : []
}
