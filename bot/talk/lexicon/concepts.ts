import type { Token } from '../../../core/quantity/read/tokens.ts'
import type { Concept, Lexicon } from './lexicon.ts'

/** Where a concept stands, in pieces of the sentence. */
export interface ConceptSpan {
  readonly concept: Concept
  readonly from: number
  readonly to: number
  /** Pieces within it that any word may stand at. */
  readonly gaps?: readonly number[]
}

type Pattern = readonly string[]

/** `gave|got ~ shake|stir` is each of the one with each of the other. */
const eachPattern = (phrase: string): readonly Pattern[] =>
  phrase
    .trim()
    .split(/\s+/)
    .reduce<readonly Pattern[]>(
      (begun, part) => begun.flatMap((words) => part.split('|').map((word) => [...words, word])),
      [[]],
    )

const GAP = '~'
const MOST_GAP = 4

interface Index {
  readonly byWord: ReadonlyMap<string, readonly (readonly [Concept, Pattern])[]>
  /** By the first letter of the stem. */
  readonly byStem: ReadonlyMap<string, readonly (readonly [stem: string, Concept, Pattern])[]>
}

const indexes = new WeakMap<Lexicon, Index>()

function indexOf(lexicon: Lexicon): Index {
  const known = indexes.get(lexicon)
  if (known !== undefined) return known
  const byWord = new Map<string, (readonly [Concept, Pattern])[]>()
  const byStem = new Map<string, (readonly [string, Concept, Pattern])[]>()
  for (const [name, list] of Object.entries(lexicon.concepts)) {
    const concept = name as Concept
    for (const pattern of list.split(',').flatMap(eachPattern)) {
      const [first = ''] = pattern
      if (first === '') continue
      if (first.endsWith('*'))
        byStem.set(first[0]!, [...(byStem.get(first[0]!) ?? []), [first.slice(0, -1), concept, pattern]])
      else byWord.set(first, [...(byWord.get(first) ?? []), [concept, pattern]])
    }
  }
  const index = { byWord, byStem }
  indexes.set(lexicon, index)
  return index
}

const fits = (part: string, word: string): boolean =>
  part.endsWith('*') ? word.startsWith(part.slice(0, -1)) : part === word

const STOPS = new Set(['.', ';', '!', '?'])

/** Where a pattern that begins at a piece ends; null where it does not hold. */
function endOf(tokens: readonly Token[], at: number, pattern: Pattern, part = 0): number | null {
  if (part === pattern.length) return at
  const wanted = pattern[part]!
  if (wanted !== GAP) {
    const word = tokens[at]?.text
    return word !== undefined && fits(wanted, word) ? endOf(tokens, at + 1, pattern, part + 1) : null
  }
  for (let skipped = 0; skipped <= MOST_GAP; skipped++) {
    if (skipped > 0 && STOPS.has(tokens[at + skipped - 1]?.text ?? '.')) return null
    const end = endOf(tokens, at + skipped, pattern, part + 1)
    if (end !== null) return end
  }
  return null
}

/** The pieces that stand in the gaps of a pattern that holds. */
function gapsOf(tokens: readonly Token[], from: number, pattern: Pattern): readonly number[] {
  let at = from
  return pattern.flatMap((wanted, part) => {
    if (wanted !== GAP) {
      at++
      return []
    }
    const begin = at
    while (endOf(tokens, at, pattern, part + 1) === null) at++
    return Array.from({ length: at - begin }, (_, more) => begin + more)
  })
}

/** Every concept of a language in a sentence; of several phrases of one concept at one place the longest. */
export function conceptsIn(tokens: readonly Token[], lexicon: Lexicon): readonly ConceptSpan[] {
  const { byWord, byStem } = indexOf(lexicon)
  const found: ConceptSpan[] = []
  tokens.forEach(({ text }, at) => {
    const longest = new Map<Concept, { readonly to: number; readonly pattern: Pattern }>()
    const look = (concept: Concept, pattern: Pattern): void => {
      const to = endOf(tokens, at, pattern)
      if (to !== null && to > (longest.get(concept)?.to ?? at)) longest.set(concept, { to, pattern })
    }
    for (const [concept, pattern] of byWord.get(text) ?? []) look(concept, pattern)
    for (const [stem, concept, pattern] of byStem.get(text[0] ?? '') ?? [])
      if (text.startsWith(stem)) look(concept, pattern)
    for (const [concept, { to, pattern }] of longest)
      found.push({ concept, from: at, to, ...(pattern.includes(GAP) && { gaps: gapsOf(tokens, at, pattern) }) })
  })
  return found
}

const sets = new Map<string, ReadonlySet<string>>()

/** The words of a list of a lexicon. */
export function wordSet(list: string): ReadonlySet<string> {
  const known = sets.get(list)
  if (known !== undefined) return known
  const set: ReadonlySet<string> = new Set(list.split(/\s+/).filter((word) => word !== ''))
  sets.set(list, set)
  return set
}
