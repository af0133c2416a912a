import type { BitKind, Sentence } from '../bits/bit.ts'
import type { Remembered } from '../memory/remembered.ts'

/** Things and amounts that are of their kind, whatever they are: `strained the damsons` tells as much as `strained the lemon`. */
const OF_A_KIND: ReadonlySet<BitKind> = new Set([
  'plant',
  'spirit',
  'jar',
  'date',
  'volume',
  'mass',
  'strength',
  'sweetness',
  'bottles',
  'temperature',
  'rating',
  'gravity',
  'span',
  'style',
  'sugar',
  'water',
])

/** Words that are longer than this are known by their beginning too, whatever their ending. */
const BEGINNING = 5

/** Words by which the length of a sentence is told apart, and how many lengths there are. */
const LENGTHS = { words: 4, most: 5 } as const

/** The sentence as a row of words, each number and each thing by its kind. */
function rowOf({ typed: { tokens }, bits }: Sentence): readonly string[] {
  const row: string[] = []
  let at = 0
  while (at < tokens.length) {
    const { kind, text } = tokens[at]!
    const thing = bits.find((bit) => bit.from === at && bit.to > at && OF_A_KIND.has(bit.kind))
    if (thing !== undefined) row.push(`<${thing.kind}>`)
    else if (kind === 'number') row.push('#')
    else if (text !== ',' && text !== '.') row.push(text)
    at = thing?.to ?? at + 1
  }
  return row
}

const isWord = (each: string): boolean => !each.startsWith('<')

/**
 * What there is about a sentence that may tell what it is after: its words and pairs of words, the notions of the lexicon in it, its
 * amounts and things, how long it is, and what was said before it. Each once.
 */
export function featuresOf(sentence: Sentence, said: Remembered | undefined): readonly string[] {
  const row = rowOf(sentence)
  const { bits, spans, jars } = sentence
  return [
    ...new Set([
      'any',
      ...row,
      ...row.map((each, at) => `${row[at - 1] ?? '^'} ${each}`),
      `${row.at(-1) ?? '^'} $`,
      ...row.filter((each) => isWord(each) && each.length > BEGINNING).map((each) => `${each.slice(0, BEGINNING)}*`),
      ...spans.map(({ concept }) => `notion ${concept}`),
      ...bits.map(({ kind, role }) => `bit ${kind} ${role}`),
      jars.length > 0 ? 'jars' : 'no jars',
      ...(said?.call ? ['after', `after ${said.call.command}`] : []),
      ...(said?.question ? [`asked ${said.question.about.kind}`] : []),
      `length ${Math.min(LENGTHS.most, Math.floor(row.length / LENGTHS.words))}`,
    ]),
  ]
}
