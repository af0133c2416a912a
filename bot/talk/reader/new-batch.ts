import { textFrom } from '../../../core/quantity/read/tokens.ts'
import type { Sentence, Surroundings } from '../bits/bit.ts'
import { sentenceIn } from '../bits/sentence.ts'
import { type Concept, DEEDS } from '../lexicon/lexicon.ts'

const JOIN = /^(?:and|e|ed|then|poi|also|plus|anche|[+&,;.!])$/
const MAKES =
  /^(?:started|starting|start|begun|began|begin|plan|planning|planned|make|made|making|set|put|inizia\p{L}*|comincia\p{L}*|avvia\p{L}*|pianifica\p{L}*|prepara\p{L}*|fai|faccio)$/u
const BEFORE = /^(?:i|we|ive|weve|have|just|now|ho|abbiamo|che|ora|adesso|new|a|to)$/

/** Told of a jar, which no batch that is only begun has had done to it. */
const OF_A_JAR: readonly Concept[] = [...DEEDS].filter((deed) => deed !== 'started' && deed !== 'added')

const isBatch = ({ bits, has }: Sentence): boolean =>
  has('plants_and_spirit') && bits.some(({ kind, with: place }) => kind === 'plant' && place !== undefined)

/** `Drank a bottle of the lemon and start 200 g ginger in 50 cl vodka`: what was done to a jar, and a batch of its own behind it; null where there is none. */
export function newBatchBehind(sentence: Sentence, surroundings: Surroundings): readonly string[] | null {
  const { typed } = sentence
  const { tokens } = typed
  if (!sentence.has(...OF_A_JAR) || !isBatch(sentence)) return null
  for (let at = 1; at < tokens.length - 2; at++) {
    if (!JOIN.test(tokens[at]!.text)) continue
    let verb = at + 1
    while (JOIN.test(tokens[verb]?.text ?? '') || BEFORE.test(tokens[verb]?.text ?? '')) verb++
    if (!MAKES.test(tokens[verb]?.text ?? '')) continue
    let begin = at
    while (JOIN.test(tokens[begin]!.text)) begin++
    const [one, other] = [textFrom(typed, 0, at), textFrom(typed, begin, tokens.length)]
    const isTold = sentenceIn(one, surroundings).has(...OF_A_JAR)
    if (isTold && isBatch(sentenceIn(other, surroundings))) return [one, other]
  }
  return null
}
