/** Each word that comes of one by swapping two letters beside each other. */
export const neighboursSwapped = (word: string): readonly string[] => {
  const all = Array.from(
    { length: Math.max(0, word.length - 1) },
    (_, at) => word.slice(0, at) + word[at + 1] + word[at] + word.slice(at + 2),
  )
  return [...new Set(all)].filter((each) => each !== word)
}
