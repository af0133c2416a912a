import type { Token } from '../../../core/quantity/read/tokens.ts'
import type { Bit, Sentence } from './bit.ts'

const INTO =
  /^(?:in|into|inside|to|onto|nel|nello|nella|nell|nei|nelle|negli|dentro|al|allo|alla|all|ai|agli|alle|sul|sulla|sull|sui|sulle)$/
const OUT_OF =
  /^(?:from|off|dal|dallo|dalla|dall|dai|dagli|dalle|del|dello|della|dell|dei|degli|delle|nel|nello|nella|nell)$/
const ARTICLE = /^(?:the|my|our|your|that|this|il|lo|la|l|i|gli|le|jar|vaso|barattolo|di|of|mio|mia|nostr[oa]|['’])$/
const AND = /^(?:and|e|ed|&|\+|n)$/
/** Before the name of what is filled up, or sweetened. */
const FILLED = /^(?:up|topped|filled|sweetened|rabboccat[oaie]|addolcit[oaie])$/
/** Said behind the name of what is given something: `the lemon got a vanilla pod`. */
const GETS = /^(?:got|gets|gained)$/

/** Where a name is looked for: what something goes into, or what it comes out of. */
export type Way = 'into' | 'out_of'

/** The place of the word that stands before a name and its article. */
function wordBefore(tokens: readonly Token[], { from }: Bit): number {
  let at = from - 1
  while (ARTICLE.test(tokens[at]?.text ?? '') && !(tokens[at]!.text === 'of' && tokens[at - 1]?.text === 'out')) at--
  return at
}

function isBehind(tokens: readonly Token[], name: Bit, way: Way): boolean {
  const at = wordBefore(tokens, name)
  const [before, word] = [tokens[at - 1]?.text ?? '', tokens[at]?.text ?? '']
  if (way === 'out_of') return OUT_OF.test(word) || (word === 'of' && before === 'out')
  // `In with the lemon`.
  return (
    INTO.test(word) ||
    (/^(?:with|con)$/.test(word) && INTO.test(before)) ||
    // `Put in a vanilla pod` names no jar.
    (word === 'a' && before === 'dentro') ||
    FILLED.test(word) ||
    GETS.test(tokens[name.to]?.text ?? '')
  )
}

const isName = ({ kind, role, with: place }: Bit): boolean =>
  kind === 'jar' || (kind === 'plant' && role !== 'left_out' && role !== 'gone' && place === undefined)

/** The names of what something goes into or comes out of, as `in the lemon`, `out of the lemon and ginger`; they are jars, whichever there are. */
export function placedNames({ typed: { tokens }, bits }: Pick<Sentence, 'typed' | 'bits'>, way: Way): readonly Bit[] {
  const names = bits.filter(isName)
  const first = names.find((bit) => isBehind(tokens, bit, way))
  if (first === undefined) return []
  const placed = [first]
  for (const bit of names.filter(({ from }) => from >= first.to)) {
    const between = tokens.slice(placed.at(-1)!.to, bit.from).map(({ text }) => text)
    if (!AND.test(between[0] ?? '') || !between.slice(1).every((text) => ARTICLE.test(text))) break
    placed.push(bit)
  }
  return placed
}
