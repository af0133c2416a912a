import { neighboursSwapped } from '../../../core/spelling/neighbours-swapped.ts'
import { deedWords } from './deed-words.ts'
import { harmWords } from './harm-words.ts'
import { ordinaryWords } from './ordinary-words.ts'
import { telltaleWords } from './telltale-words.ts'
import { trapWords } from './trap-words.ts'
import { whoWords } from './who-words.ts'

/** Shorter words have too many neighbours. */
const SHORTEST = 5
/** From so many letters on, two slips are forgiven. */
const LONG = 8

/** A word without one letter, each in turn. */
const without = (word: string): readonly string[] =>
  Array.from({ length: word.length }, (_, index) => word.slice(0, index) + word.slice(index + 1))

const variants = (word: string): ReadonlySet<string> => {
  const one = without(word)
  return new Set([word, ...one, ...(word.length >= LONG ? one.flatMap(without) : [])])
}

/** Italian words end in four ways: `bevuto`, `bevuta`, `bevuti`, `bevute`. */
const withEndings = (word: string): readonly string[] =>
  /[oa]$/.test(word) ? [...'oaie'].map((end) => word.slice(0, -1) + end) : [word]

/** Words that stand whole in what is looked for. */
const looked = [...Object.values({ ...whoWords, ...harmWords, ...deedWords }).flat(), ...trapWords].flatMap(
  (piece) => piece.match(/[a-z]{5,}/g) ?? [],
)

const KNOWN: ReadonlySet<string> = new Set([...telltaleWords.flatMap(withEndings), ...looked, ...ordinaryWords])

/** Telltale words by their first letter, on which slips rarely fall. */
const BY_LETTER: ReadonlyMap<string, readonly string[]> = (() => {
  const map = new Map<string, string[]>()
  for (const word of new Set(telltaleWords)) {
    if (word.length < SHORTEST) continue
    const others = map.get(word[0]!)
    if (others === undefined) map.set(word[0]!, [word])
    else others.push(word)
  }
  return map
})()

/** Insertions, deletions, changes and swaps of neighbours between two words. */
function slips(one: string, other: string): number {
  let [before, last]: number[][] = [[], Array.from({ length: other.length + 1 }, (_, at) => at)]
  for (let row = 1; row <= one.length; row++) {
    const next = [row]
    for (let at = 1; at <= other.length; at++) {
      const isSame = one[row - 1] === other[at - 1]
      const isSwap = at > 1 && row > 1 && one[row - 1] === other[at - 2] && one[row - 2] === other[at - 1]
      next[at] = Math.min(
        last![at]! + 1,
        next[at - 1]! + 1,
        last![at - 1]! + (isSame ? 0 : 1),
        isSwap ? before![at - 2]! + 1 : Number.POSITIVE_INFINITY,
      )
    }
    before = last!
    last = next
  }
  return last![other.length]!
}

/** Of words as near as each other the one that is met first where letters are left out from the front on. */
function metFirst(word: string, near: readonly string[]): string | null {
  if (near.length < 2) return near[0] ?? null
  const each = near.map((candidate) => ({ candidate, variants: variants(candidate) }))
  for (const variant of variants(word)) {
    const met = each.find((one) => one.variants.has(variant))
    if (met !== undefined) return met.candidate
  }
  return null
}

/** The telltale word that a misspelt one means; the word itself where it is one, or none is near. */
function meant(word: string): string {
  if (word.length < SHORTEST || word.length > 20 || KNOWN.has(word) || /\d/.test(word)) return word
  let [fewest, near]: [number, readonly string[]] = [word.length >= LONG ? 2 : 1, []]
  for (const candidate of BY_LETTER.get(word[0]!) ?? []) {
    const allowed = Math.min(fewest, candidate.length >= LONG ? 2 : 1)
    if (Math.abs(candidate.length - word.length) > allowed) continue
    const count = slips(word, candidate)
    if (count > allowed) continue
    near = count < fewest ? [candidate] : [...near, candidate]
    fewest = count
  }
  const met = metFirst(word, near)
  if (met === null) return word
  // `Alirght` is `alright` rather than `alight`.
  const swapped = neighboursSwapped(word).filter((each) => KNOWN.has(each))
  return swapped.length === 1 ? swapped[0]! : met
}

/** Words with the misspelt ones that tell of harm put right. */
export const respelt = (words: readonly string[]): readonly string[] => words.map(meant)
