import { commands } from '../test-desk.ts'

const PATHS = [...commands.map(({ path }) => path), 'help'].toSorted((one, other) => other.length - one.length)

const OPTIONS = new Map(commands.map(({ path, input }) => [path, Object.keys(input.shape)]))

/** A line in a text: the longest that may be meant, and where it must at least reach to. */
export interface LineIn {
  readonly path: string
  readonly text: string
  /** Ends at which the line may stop: the nearest to the whole first. */
  readonly ends: readonly number[]
}

/** What ends a line for certain: the sentence, or the clause. */
const CLOSES = /(?:[;!?”)]|[.,:](?=\s|$)|\s[–—]\s)/

/** What follows where a command is only spoken of. */
const SPOKEN_OF = /\s(?:also needs|needs|has no option|one of|takes|lists|asks)\s/

const escaped = (text: string): string => text.replace(/[$()*+.?[\\\]^{|}]/g, '\\$&')

/**
 * The lines that a text tells somebody to type: from a slash and a command's name on. A line that follows a colon, or
 * `for example`, is the rest of its paragraph; any other ends somewhere before the clause does, but not before its last
 * option.
 */
export function linesIn(text: string): readonly LineIn[] {
  const found: LineIn[] = []
  for (const match of text.matchAll(/(?<![\p{L}\p{N}/<.])\/(?=[a-z])/gu)) {
    const from = match.index + 1
    const path = PATHS.find((each) => new RegExp(`^${escaped(each)}(?![\\w-])`).test(text.slice(from)))
    if (path === undefined) {
      found.push({ path: '', text: text.slice(match.index, match.index + 30), ends: [] })
      continue
    }
    const rest = text
      .slice(match.index)
      .split(/\n|\s\s+|(?<=\S.*)(?:, [^/]*| or )\/[a-z]/)[0]!
      .split(SPOKEN_OF)[0]!
    const isWhole = /(?:: |for example |type |with )$/.test(text.slice(0, match.index))
    const options = OPTIONS.get(path) ?? []
    const named = [...rest.matchAll(new RegExp(`(?<=\\s)(?:${[...options, 'zzz'].join('|')}):\\s*\\S*[^\\s,]`, 'g'))]
    const least = named.length === 0 ? path.length + 1 : named.at(-1)!.index + named.at(-1)![0].length
    const closes = [...rest.slice(least).matchAll(new RegExp(CLOSES, 'g'))].map(({ index }) => least + index)
    const ends = [
      rest.length,
      ...closes,
      ...[...rest.slice(least, closes[0] ?? rest.length).matchAll(/\s/g)].map(({ index }) => least + index),
      least,
    ]
    found.push({
      path,
      text: rest,
      ends: isWhole && named.length > 0 ? [rest.length, ...closes] : ends.toSorted((a, b) => b - a),
    })
  }
  return found
}
