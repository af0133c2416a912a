/** Whether one letter more, less or other, or two neighbours swapped, turn one text into the other. Not the same text. */
export const isOneTypo = (from: string, to: string): boolean => {
  if (from === to || Math.abs(from.length - to.length) > 1) return false
  let start = 0
  while (start < from.length && start < to.length && from[start] === to[start]) start++
  if (from.length > to.length) return from.slice(start + 1) === to.slice(start)
  if (from.length < to.length) return from.slice(start) === to.slice(start + 1)
  const swapped = from[start] === to[start + 1] && from[start + 1] === to[start]
  return from.slice(start + 1) === to.slice(start + 1) || (swapped && from.slice(start + 2) === to.slice(start + 2))
}
