import { plantSaid } from '../../../core/botanical/find/plant-said.ts'
import type { Token } from '../../../core/quantity/read/tokens.ts'
import { saidText } from '../../../core/quantity/said/said-text.ts'
import type { TalkJar } from './bit.ts'
import { jarByKind, jarBySpirit } from './jar-by-kind.ts'
import { isOver } from './jars-of.ts'

const wordsOf = (name: string): readonly string[] => saidText(name).tokens.map(({ text }) => text)

/** A jar's whole name at a piece of a sentence, the longest; an `#id` too. Names that are a plant's are left to what is in them. */
export function jarAt(
  tokens: readonly Token[],
  at: number,
  jars: readonly TalkJar[],
): { jar: TalkJar; next: number } | null {
  if (tokens[at]?.text === '#') {
    const jar = jars.find(
      ({ id }) =>
        id.toLowerCase() ===
        tokens
          .slice(at + 1, at + 3)
          .map(({ text }) => text)
          .join('')
          .toLowerCase()
          .slice(0, id.length),
    )
    if (jar !== undefined) {
      const isOne = tokens[at + 1]?.text === jar.id.toLowerCase()
      return { jar, next: isOne ? at + 2 : at + 3 }
    }
  }
  const found = jars
    .map((jar) => ({ jar, words: wordsOf(jar.name) }))
    .filter(({ words }) => words.length > 0 && words.every((word, more) => tokens[at + more]?.text === word))
    .toSorted((one, other) => other.words.length - one.words.length || rank(one.jar) - rank(other.jar))[0]
  if (found === undefined) {
    const jar = jarByKind(tokens, at, jars) ?? jarBySpirit(tokens, at, jars)
    return jar === null ? null : { jar, next: at + 1 }
  }
  const next = at + found.words.length
  const isPlant = plantSaid(tokens, at, NONE)?.next === next
  return isPlant ? null : { jar: found.jar, next }
}

const NONE: ReadonlySet<string> = new Set()

/** Of two of a name the one that runs. */
const rank = (jar: TalkJar): number => (isOver(jar) ? 1 : 0)
