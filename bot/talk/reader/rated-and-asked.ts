import { textFrom, wordsFrom } from '../../../core/quantity/read/tokens.ts'
import type { Bit, Sentence, Surroundings } from '../bits/bit.ts'
import { jarsNamed, runningAmong } from '../bits/jars-of.ts'
import { sentenceIn } from '../bits/sentence.ts'
import { symptomIn } from '../frames/symptoms.ts'
import type { Concept } from '../lexicon/lexicon.ts'
import { ASKS_MENDING } from '../memory/mend-asked.ts'

const JOIN = /^(?:and|so|but|e|ed|ma|then|poi|allora|[-—,;:.!?])$/

/** Of a jar that was found good, what is next is what it shows. */
const ASKS_NEXT = /^(?:what (?:now|next)|now what|what do (?:i|we) do (?:now|next))/

/** What is only said to be too much or too little, by what is wrong then. */
const PLAINLY: readonly (readonly [Concept, string])[] = [
  ['too_strong', 'harsh'],
  ['too_weak', 'too weak'],
  ['too_sweet', 'too sweet'],
  ['too_dry', 'not sweet enough'],
]

const GOOD = 4

const MOST_ASKED = 12

/** Where the clause begins that asks what to do about it, and what stands before it; null where none does. */
function askedAt({ typed }: Sentence): { readonly end: number; readonly asked: string } | null {
  const { tokens } = typed
  for (let at = tokens.length - 2; at > 0 && tokens.length - at <= MOST_ASKED; at--) {
    if (!JOIN.test(tokens[at]!.text) || JOIN.test(tokens[at + 1]!.text)) continue
    const asked = wordsFrom(typed, at + 1)
    if (!ASKS_MENDING.test(asked)) continue
    let end = at
    while (end > 0 && JOIN.test(tokens[end - 1]!.text)) end--
    return { end, asked }
  }
  return null
}

const BECAUSE = /^(?:because|since|as|cause|its|it|is|perche|e|era|for|the|per|il|lo|la|l)$/

const isMark = ({ kind, value }: Bit): boolean => kind === 'rating' || (kind === 'bare' && value >= 1 && value <= 5)

/** The mark that is given: of bare numbers where it says that it rates. */
const markIn = ({ bits, has }: Sentence): Bit | undefined =>
  bits.find(({ kind }) => kind === 'rating') ?? (has('rated', 'tasted') ? bits.find(isMark) : undefined)

/** Without its mark, `2 stars, bitter` is bitter. */
const withoutMark = ({ typed, bits }: Sentence, mark: Bit): string => {
  const { tokens } = typed
  const isName = (at: number): boolean =>
    bits.some(({ kind, from, to }) => (kind === 'jar' || kind === 'plant') && from <= at && at < to)
  let from = mark.to
  while (from < tokens.length && (JOIN.test(tokens[from]!.text) || BECAUSE.test(tokens[from]!.text) || isName(from)))
    from++
  return from < tokens.length ? textFrom(typed, from) : textFrom(typed, 0, mark.from)
}

/**
 * `2 stars, too sweet, can I fix that?`: the mark is written down, and what is wrong is answered of that jar. Null where no mark is given,
 * or nothing is asked about mending.
 */
export function ratedAndAsked(sentence: Sentence, surroundings: Surroundings): readonly string[] | null {
  const mark = markIn(sentence)
  const cut = mark === undefined ? null : askedAt(sentence)
  if (mark === undefined || cut === null || mark.to > cut.end) return null
  const one = textFrom(sentence.typed, 0, cut.end)
  const rated = sentenceIn(one, surroundings)
  if (rated.has('asking', 'hypothesis') || markIn(rated) === undefined) return null
  const plain = PLAINLY.find(([concept]) => rated.has(concept))?.[1]
  const told = symptomIn(rated) === null ? plain : withoutMark(rated, mark)
  if (told === undefined) return ASKS_NEXT.test(cut.asked) && mark.value >= GOOD ? null : [one]
  const [named] = jarsNamed(rated.bits, surroundings.jars)
  const [only, ...others] = runningAmong(surroundings.jars)
  const jar = named?.jar ?? (others.length === 0 ? only : undefined)
  return [
    one,
    jar === undefined || jarsNamed(sentenceIn(told, surroundings).bits, surroundings.jars).length > 0
      ? told
      : `${jar.name}, ${told}`,
  ]
}
