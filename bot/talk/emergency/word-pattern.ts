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

/** The ways in which one of the patterns may be met where a text goes on with some two characters, in their order. */
interface Fitting<Name> {
  readonly name: Name
  readonly beginnings: readonly Beginning[]
}

/** A place of a text at which a pattern may be met: the index of the space before the word, and how. */
interface Place {
  readonly at: number
  readonly beginnings: readonly Beginning[]
}

/** From each match on to the next: the index of the space before it, and of the space after it. */
export type Matches = readonly (readonly [from: number, to: number])[]

const NONE: Matches = []

/** Where a match of the first that fits ends; -1 where none does. */
function endOf(text: string, { at, beginnings }: Place): number {
  for (const { begins, alternative } of beginnings) {
    if (!text.startsWith(begins, at + 1)) continue
    alternative.compiled ??= new RegExp(` (?:${alternative.expression})(?= )`, 'y')
    if (goesOn(alternative.compiled, text, at)) return alternative.compiled.lastIndex
  }
  return -1
}

function matchesAt(text: string, places: readonly Place[]): Matches {
  const found: (readonly [number, number])[] = []
  let from = 0
  for (const place of places) {
    const end = place.at < from ? -1 : endOf(text, place)
    if (end === -1) continue
    found.push([place.at, end])
    from = end
  }
  return found
}

const beginningsIn = (pieces: readonly string[]): readonly Beginning[] =>
  pieces.flatMap(alternativesOf).flatMap((expression) => {
    const alternative: Alternative = { expression, compiled: null }
    return beginningsOf(expression).map((begins) => ({ begins, alternative }))
  })

/** Many patterns that are looked for in the same texts, which have one space between and around their words. */
export interface WordPatterns<Name> {
  in(text: string): (name: Name) => Matches
}

/**
 * Each finds what ` (?:one|other|…)(?= )` finds with the flag `g`, the alternatives being tried in their order. Only those are
 * compiled that a text begins as: one short line needs few of thousands, and most of the patterns not at all.
 */
export function wordPatterns<Name extends string>(
  pieces: Readonly<Record<Name, readonly string[]>>,
): WordPatterns<Name> {
  const all = lazily((): readonly Fitting<Name>[] =>
    (Object.keys(pieces) as Name[]).map((name) => ({ name, beginnings: beginningsIn(pieces[name]) })),
  )
  const byLetters = new Map<string, readonly Fitting<Name>[]>()
  const fittingOf = (letters: string): readonly Fitting<Name>[] => {
    const known = byLetters.get(letters)
    if (known !== undefined) return known
    const among = letters.length === 1 ? all() : fittingOf(letters[0]!)
    const fitting = among.flatMap(({ name, beginnings }) => {
      const left = beginnings.filter(({ begins }) => letters.startsWith(begins) || begins.startsWith(letters))
      return left.length === 0 ? [] : [{ name, beginnings: left }]
    })
    byLetters.set(letters, fitting)
    return fitting
  }
  return {
    in: (text) => {
      const places = new Map<Name, Place[]>()
      // Only what follows a space is looked at, so the last one begins nothing.
      for (let at = 0; at !== -1 && at < text.length - 1; at = text.indexOf(' ', at + 1)) {
        for (const { name, beginnings } of fittingOf(text.slice(at + 1, at + 3))) {
          const known = places.get(name)
          if (known === undefined) places.set(name, [{ at, beginnings }])
          else known.push({ at, beginnings })
        }
      }
      return (name) => {
        const known = places.get(name)
        return known === undefined ? NONE : matchesAt(text, known)
      }
    },
  }
}
