/** Typed names longer than this have no near relative. */
const LONGEST = 40

/** Damerau–Levenshtein in its restricted form: insertions, deletions, changes and swaps of neighbours. */
const distance = (from: string, to: string): number => {
  let before: number[] = []
  let above = Array.from({ length: to.length + 1 }, (_, column) => column)
  for (let row = 1; row <= from.length; row++) {
    const current = [row]
    for (let column = 1; column <= to.length; column++) {
      const same = from[row - 1] === to[column - 1]
      const swapped = from[row - 1] === to[column - 2] && from[row - 2] === to[column - 1]
      current.push(
        Math.min(
          above[column]! + 1,
          current[column - 1]! + 1,
          above[column - 1]! + (same ? 0 : 1),
          swapped && row > 1 && column > 1 ? before[column - 2]! + 1 : Number.POSITIVE_INFINITY,
        ),
      )
    }
    before = above
    above = current
  }
  return above[to.length]!
}

/** The known name that was most likely meant, or null where none is close. */
export const nearest = (typed: string, known: readonly string[]): string | null => {
  const name = typed.toLowerCase()
  if (name.length < 2 || name.length > LONGEST) return null
  let found: string | null = null
  let least = Math.max(1, Math.floor(name.length / 3)) + 1
  for (const candidate of known) {
    const steps = distance(name, candidate)
    if (steps < least) {
      found = candidate
      least = steps
    }
  }
  if (found !== null) return found
  const begun = known.filter((candidate) => candidate.startsWith(name))
  return begun.length === 1 ? begun[0]! : null
}
