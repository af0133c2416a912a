import type { ConceptSpan } from '../lexicon/concepts.ts'
import { jarsNamed } from './jars-of.ts'
import { isPutInto } from './put-into.ts'
import type { Told } from './told-of-part.ts'

const SWEET = /^(?:sugar|sugars|syrup|syrups|water|zucchero|sciroppo|acqua)$/
const IN = /^(?:in|dentro)$/
const IS = /^(?:is|are|all|now|e|ora)$/
const ARTICLE = /^(?:the|il|lo|la|l)$/
const ENDS = /^(?:[:,.;!(-]|)$/

/** `Syrup in: 450 g sugar, 1.2 l water`, `sugar and water in, 400 g and 1 l`, `in: 500 g sugar`, `dentro lo sciroppo`: where it is told alone. */
function inAlone({ typed: { tokens }, bits }: Told): { readonly from: number; readonly to: number } | null {
  const isAmount = bits.some(({ kind }) => kind === 'mass' || kind === 'volume' || kind === 'bare')
  if (!isAmount) return null
  const word = (at: number): string => tokens[at]?.text ?? ''
  const at = tokens.findIndex(({ text }, place) => {
    if (!IN.test(text)) return false
    const isDigit = tokens[place + 1]?.kind === 'number'
    const isFirst = place === 0 && (word(1) === ':' || SWEET.test(word(ARTICLE.test(word(1)) ? 2 : 1)))
    const before = IS.test(word(place - 1)) ? word(place - 2) : word(place - 1)
    return isFirst || (SWEET.test(before) && (ENDS.test(word(place + 1)) || isDigit))
  })
  return at === -1 ? null : { from: at, to: at + 1 }
}

const SUGARED: ReadonlySet<string> = new Set(['strained', 'sweetened'])
const OTHERS: ReadonlySet<string> = new Set(['spirit', 'strength', 'bottles', 'rating'])

/** The water or sugar that goes into a jar without a word of a deed: `only water, 900 ml into the lemon`. */
export function sugarInto(told: Told): readonly ConceptSpan[] {
  const { typed, bits, jars, spans } = told
  if (bits.some(({ kind }) => OTHERS.has(kind)) || spans.some(({ concept }) => concept === 'sweetened')) return []
  const isSweet = bits.some(({ kind, role }) => (kind === 'sugar' || kind === 'water') && role !== 'left_out')
  const named = jarsNamed(bits, jars)
  const waits = jars.some(({ stage }) => SUGARED.has(stage))
  const [into, another] = named
  if (another !== undefined) return []
  const alone = waits && (into === undefined || SUGARED.has(into.jar.stage)) ? inAlone(told) : null
  if (alone !== null) return [{ ...alone, concept: 'sweetened' }]
  const isPlant = bits.some((bit) => bit.kind === 'plant' && bit !== into?.bit)
  const isAdded = spans.some(({ concept }) => concept === 'added')
  if (into === undefined || !isSweet || isPlant || isAdded || !isPutInto(typed.tokens, into.bit)) return []
  const span = { from: into.bit.from - 1, to: into.bit.from }
  if (into.jar.stage === 'strained') return [{ ...span, concept: 'sweetened' }]
  return into.jar.stage === 'steeping' || into.jar.stage === 'sweetened' ? [{ ...span, concept: 'added' }] : []
}
