import { lazily } from '../../../core/once.ts'
import { aloneWords } from './alone-words.ts'
import { deedWords } from './deed-words.ts'
import { harmWords } from './harm-words.ts'
import { livedWith } from './lived-with.ts'
import { plainWords } from './plain-words.ts'
import { respelt } from './respell.ts'
import { trapWords } from './trap-words.ts'
import { type WhoKind, whoWords } from './who-words.ts'
import { type Matches, wordPatterns } from './word-pattern.ts'

/** Where in a text something stands, in words: `from` the first, `to` the one after the last. */
export interface WordSpan {
  readonly from: number
  readonly to: number
}

/** Somebody who is named, or pointed at. */
export interface Mention extends WordSpan {
  readonly kind: WhoKind
}

export type WordClass = keyof typeof harmWords | keyof typeof deedWords | keyof typeof aloneWords

/** A text, ready to be looked at. */
export interface SaidOfHarm {
  /** The words with one space between and around. */
  /** In plain words, before what only sounds like harm was blanked. */
  readonly plain: string
  readonly text: string
  spans(name: WordClass): readonly WordSpan[]
  /** In order; of two at one place the longer first. */
  mentions(): readonly Mention[]
  /** Whether a class has a match near a span: so many words before or after it. */
  near(name: WordClass, span: WordSpan, before: number, after: number): boolean
  /** The words of a stretch, as they stand. */
  between(from: number, to: number): string
}

const CLASSES = wordPatterns<WordClass>({ ...harmWords, ...deedWords, ...aloneWords })
const WHO = wordPatterns<WhoKind>(whoWords)
const KINDS = Object.keys(whoWords) as readonly WhoKind[]
const TRAPS = wordPatterns({ traps: [...trapWords, ...livedWith] })

/** A text in which `xx` stands for every word that means nothing here. */
function withoutTraps(text: string): string {
  let [rest, done] = ['', 0]
  for (const [from, to] of TRAPS.in(text)('traps')) {
    rest += text.slice(done, from) + text.slice(from, to).replace(/\S+/g, 'xx')
    done = to
  }
  return rest + text.slice(done)
}

/** Matches in words. */
const inWords = (matches: Matches, wordAt: Uint16Array): readonly WordSpan[] =>
  matches.map(([from, to]) => ({ from: wordAt[from + 1]!, to: wordAt[to - 1]! + 1 }))

/** The number of the word that each character of a text belongs to. */
function wordsAt(text: string): Uint16Array {
  const at = new Uint16Array(text.length + 1)
  let word = -1
  for (let index = 0; index < text.length; index++) {
    if (text[index] !== ' ' && text[index - 1] === ' ') word++
    at[index] = Math.max(0, word)
  }
  return at
}

export function saidIn(typed: string): SaidOfHarm {
  const plain = ` ${respelt(plainWords(typed)).join(' ')} `
  const text = withoutTraps(plain)
  const words = text.trim().split(' ')
  const wordAt = wordsAt(text)
  const matchesOf = CLASSES.in(text)
  const known = new Map<WordClass, readonly WordSpan[]>()
  const spans = (name: WordClass) => {
    const before = known.get(name)
    if (before !== undefined) return before
    const found = inWords(matchesOf(name), wordAt)
    known.set(name, found)
    return found
  }
  return {
    plain,
    text,
    spans,
    mentions: lazily((): readonly Mention[] => {
      const whoMatches = WHO.in(text)
      return KINDS.flatMap((kind) => inWords(whoMatches(kind), wordAt).map((span) => ({ ...span, kind }))).sort(
        (one, other) => one.from - other.from || other.to - one.to,
      )
    }),
    near: (name, { from, to }, before, after) =>
      spans(name).some((each) => each.from < to + after && each.to > from - before),
    between: (from, to) => words.slice(Math.max(0, from), to).join(' '),
  }
}
