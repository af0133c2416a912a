import { once } from '../../../core/once.ts'
import type { Token } from '../../../core/quantity/read/tokens.ts'
import { conceptsIn, wordSet } from './concepts.ts'
import type { Lexicon } from './lexicon.ts'

/** `1 l` is a litre, no article. */
const isLitre = (tokens: readonly Token[], at: number): boolean =>
  tokens[at]!.text === 'l' && tokens[at - 1]?.kind === 'number'

const thingsOf = once(
  (lexicon: Lexicon) => new Set(`${lexicon.sugars}, ${lexicon.waters}, ${lexicon.loose}`.split(/[\s,]+/)),
)

const shareOf = (all: readonly Token[], lexicon: Lexicon): number => {
  const tokens = all.filter((_, at) => !isLitre(all, at))
  const [small, fillers] = [wordSet(lexicon.small), wordSet(lexicon.fillers)]
  const telling = tokens.filter(({ text }) => small.has(text)).length
  const understood = new Set(
    conceptsIn(tokens, lexicon).flatMap(({ from, to }) => Array.from({ length: to - from }, (_, more) => from + more)),
  )
  const known = tokens.filter(({ text }, at) => understood.has(at) || fillers.has(text)).length
  // `Limoncello, 10 lemons, 700 g sugar`: what is sweet or wet has another word in each.
  const things = thingsOf(lexicon)
  return telling + 2 * (known + tokens.filter(({ text }) => things.has(text)).length)
}

/** The language of a sentence: that which more of its words belong to, the first one where they are even. */
export function lexiconFor(tokens: readonly Token[], lexicons: readonly Lexicon[]): Lexicon {
  const shares = lexicons.map((lexicon) => shareOf(tokens, lexicon))
  return lexicons[shares.indexOf(Math.max(...shares))]!
}
