/** A stamp, or a number with its separators and what is written onto its last digit. */
const WHOLE = /(\uFDD0[^\uFDD1]*\uFDD1|[-−+]?\d+(?:[.,:/'’\u00a0\u202f]\d+)*\p{M}*)/u

const graphemes = new Intl.Segmenter('en', { granularity: 'grapheme' })

const graphemesOf = (text: string): readonly string[] => [...graphemes.segment(text)].map(({ segment }) => segment)

/** What of a word is never cut. */
const atomsOf = (word: string): readonly string[] =>
  word.split(WHOLE).flatMap((part, index) => (index % 2 === 1 ? [part] : graphemesOf(part)))

/** Where a text may be cut, the best first. */
const WAYS: readonly (readonly [parts: (text: string) => readonly string[], joint: string])[] = [
  [(text) => text.split(' '), ' '],
  [atomsOf, ''],
  [(text) => [...text], ''],
]

/** How many of `parts`, joined, fit into `room`. */
function fitting(parts: readonly string[], joint: string, room: number, lengthOf: (text: string) => number): number {
  let taken = 0
  for (const [index, part] of parts.entries()) {
    taken += lengthOf(part) + (index === 0 ? 0 : joint.length)
    if (taken > room) return index
  }
  return parts.length
}

/**
 * The beginning of a text that fits into `room`, and the rest: cut at a space, within a word only where the word alone
 * does not fit, within a number never unless the number alone does not.
 *
 * @param room - 1 or more, as `lengthOf` counts
 * @param lengthOf - what a part takes, at least its length; of parts together no more than the sum
 */
export function cutText(
  text: string,
  room: number,
  lengthOf: (text: string) => number,
): { readonly head: string; readonly rest: string } {
  // What stands further on cannot fit.
  const near = text.slice(0, 2 * room)
  for (const [partsOf, joint] of WAYS) {
    const parts = partsOf(near)
    const count = fitting(parts, joint, room, lengthOf)
    const head = parts.slice(0, count).join(joint)
    const isAll = count === parts.length
    if (head.trim() !== '') return { head, rest: text.slice(head.length + (isAll ? 0 : joint.length)) }
  }
  const [first = ''] = text
  return { head: first, rest: text.slice(first.length) }
}

/** At most `room` UTF-16 units, with an ellipsis where something is left out. */
export const shortened = (text: string, room: number): string =>
  text.length <= room ? text : `${cutText(text, room - 1, ({ length }) => length).head.trimEnd()}…`
