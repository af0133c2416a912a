import type { ConceptSpan } from '../lexicon/concepts.ts'
import type { Open, RolesAround } from './attach.ts'

const HAVING: ReadonlySet<ConceptSpan['concept']> = new Set(['have', 'only_have'])

/** `Figs in brandy: I have half a kilo and two 70 cl bottles`: of what is there the bottles hold the spirit that was named. */
export function isOfSpiritNamed({ spans }: RolesAround, bits: Open[]): boolean {
  const free = bits.filter(({ kind, role }) => kind === 'bottles' && role === null)
  const named = bits.filter(({ kind }) => kind === 'spirit')
  const isWeighed = bits.some(({ kind, role }) => kind === 'mass' && role === 'of_plant')
  const [bottles, word] = [free[0], named[0]]
  if (bottles === undefined || word === undefined || free.length > 1 || named.length > 1 || !isWeighed) return false
  if (word.with !== undefined || word.role !== null || (bottles.count ?? 1) > MOST_BOUGHT) return false
  // What is had or bought, not what is to come out; `brambles and rum, 600 g and a 70 cl bottle` is each of the two.
  const isHad = isOne(bottles) || spans.some(({ concept, to }) => HAVING.has(concept) && to <= bottles.from)
  if (!isHad || bottles.from < word.from) return false
  bottles.role = 'of_spirit'
  bottles.with = bits.indexOf(word)
  word.with = bits.indexOf(bottles)
  word.role = null
  return true
}

const isOne = ({ count, isSizeAssumed }: Open): boolean => count === 1 && isSizeAssumed !== true

const MOST_BOUGHT = 3
