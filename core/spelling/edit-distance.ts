/** How many letters more, less, other or swapped with a neighbour turn one text into the other: Damerau–Levenshtein, restricted. */
export const editDistance = (from: string, to: string): number => {
  let before: number[] = []
  let last = Array.from({ length: to.length + 1 }, (_, at) => at)
  for (let i = 1; i <= from.length; i++) {
    const row = [i]
    for (let j = 1; j <= to.length; j++) {
      const isSame = from[i - 1] === to[j - 1]
      const isSwapped = i > 1 && j > 1 && from[i - 1] === to[j - 2] && from[i - 2] === to[j - 1]
      const swap = isSwapped ? before[j - 2]! + 1 : Number.POSITIVE_INFINITY
      row.push(Math.min(last[j]! + 1, row[j - 1]! + 1, last[j - 1]! + (isSame ? 0 : 1), swap))
    }
    before = last
    last = row
  }
  return last[to.length]!
}
