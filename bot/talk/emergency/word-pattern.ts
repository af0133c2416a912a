import { lazily } from '../../../core/once.ts'

/** One of the ways in which a pattern can be met, compiled when a text first begins as it does. */
interface Alternative {
  readonly expression: string
  compiled: RegExp | null
}

/** An alternative by how its matches may begin. */
interface Beginning {
  readonly begins: string
  readonly alternative: Alternative
}

/** The index after the group that begins at `from`. */
function afterGroup(text: string, from: number): number {
  let [depth, isClass] = [0, false]
  for (let at = from; at < text.length; at++) {
    const character = text[at]
    if (character === '\\') at++
    else if (isClass) isClass = character !== ']'
    else if (character === '[') isClass = true
    else if (character === '(') depth++
    else if (character === ')' && --depth === 0) return at + 1
  }
  return text.length
}

/** Parts between the bars that stand in no brackets; a part that is one group and no more is taken apart as well. */
function alternativesOf(text: string): readonly string[] {
  const parts: string[] = []
  let from = 0
  const add = (part: string): void => {
    const isGroup = part.startsWith('(?:') && afterGroup(part, 0) === part.length
    if (isGroup) parts.push(...alternativesOf(part.slice(3, -1)))
    else parts.push(part)
  }
  for (let at = 0; at < text.length; at++) {
    const character = text[at]
    if (character === '\\') at++
    else if (character === '[') at = text.indexOf(']', at)
    else if (character === '(') at = afterGroup(text, at) - 1
    else if (character === '|') {
      add(text.slice(from, at))
      from = at + 1
    }
  }
  add(text.slice(from))
  return parts
}

const LITERALS = /[a-z0-9 ,]*/y
const LOOK_AROUND = /\(\?<?[=!]/y
const CLASS = /\[((?:[a-z0-9](?:-[a-z0-9])?)+)\]/y
const OPTIONAL = /(?:[?*]|\{0,?\d*\})\??/y
const REPEATED = /[+{]/y

/** Whether an expression goes on at `at` with a pattern, which then has moved to its end. */
const goesOn = (pattern: RegExp, text: string, at: number): boolean => {
  pattern.lastIndex = at
  return pattern.test(text)
}

const charactersOf = (ranges: string): readonly string[] =>
  (ranges.match(/.-.|./g) ?? []).flatMap((range) => {
    const [first, last] = [range.charCodeAt(0), range.charCodeAt(range.length - 1)]
    return Array.from({ length: last - first + 1 }, (_, more) => String.fromCharCode(first + more))
  })

/** Texts with one of which every match of an expression begins; an empty one where that is not told by its first part. */
function beginningsOf(text: string, from = 0): readonly string[] {
  if (goesOn(LOOK_AROUND, text, from)) return beginningsOf(text, afterGroup(text, from))
  let [first, end]: [readonly string[], number] = [[''], from]
  if (text.startsWith('(?:', from)) {
    end = afterGroup(text, from)
    first = alternativesOf(text.slice(from + 3, end - 1)).flatMap((each) => beginningsOf(each))
  } else if (goesOn(CLASS, text, from)) {
    end = CLASS.lastIndex
    first = charactersOf(text.slice(from + 1, end - 1))
  } else if (goesOn(LITERALS, text, from)) {
    end = LITERALS.lastIndex
    // What follows says how often the last of them comes.
    if (end > from + 1 && (goesOn(OPTIONAL, text, end) || goesOn(REPEATED, text, end))) end--
    first = [text.slice(from, end)]
  }
  return end > from && goesOn(OPTIONAL, text, end) ? [...first, ...beginningsOf(text, OPTIONAL.lastIndex)] : first
}

/** Words that are looked for in a text with one space between and around its words. */
export interface WordPattern {
  /** From each match on to the next: the index of the space before it, and of the space after it. */
  matches(text: string): readonly (readonly [from: number, to: number])[]
}

/**
 * Finds what ` (?:one|other|…)(?= )` finds with the flag `g`, the alternatives being tried in their order. Only those are
 * compiled that a text begins as: one short line needs few of thousands.
 */
export function wordPattern(pieces: readonly string[]): WordPattern {
  const all = lazily((): readonly Beginning[] =>
    pieces.flatMap(alternativesOf).flatMap((expression) => {
      const alternative: Alternative = { expression, compiled: null }
      return beginningsOf(expression).map((begins) => ({ begins, alternative }))
    }),
  )
  const byLetters = new Map<string, readonly Beginning[]>()
  const beginningWith = (letters: string): readonly Beginning[] => {
    const known = byLetters.get(letters)
    if (known !== undefined) return known
    const among = letters.length === 1 ? all() : beginningWith(letters[0]!)
    const fitting = among.filter(({ begins }) => letters.startsWith(begins) || begins.startsWith(letters))
    byLetters.set(letters, fitting)
    return fitting
  }
  /** Where a match of the first that fits ends; -1 where none does. */
  const endOf = (text: string, at: number): number => {
    for (const { begins, alternative } of beginningWith(text.slice(at + 1, at + 3))) {
      if (!text.startsWith(begins, at + 1)) continue
      alternative.compiled ??= new RegExp(` (?:${alternative.expression})(?= )`, 'y')
      if (goesOn(alternative.compiled, text, at)) return alternative.compiled.lastIndex
    }
    return -1
  }
  return {
    matches: (text) => {
      const found: (readonly [number, number])[] = []
      for (let at = 0; at !== -1 && at < text.length - 1; ) {
        const end = endOf(text, at)
        if (end !== -1) found.push([at, end])
        at = end === -1 ? text.indexOf(' ', at + 1) : end
      }
      return found
    },
  }
}
