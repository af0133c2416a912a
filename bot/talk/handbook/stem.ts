/** Endings of English and Italian, the longest first; what is left of a word has at least three letters. */
const ENDINGS = [
  'ings',
  'ing',
  'edly',
  'ers',
  'ies',
  'ied',
  'are',
  'ere',
  'ire',
  'ed',
  'er',
  'es',
  'ly',
  's',
  'y',
] as const

const LEAST_LEFT = 3

/** `filtering`, `filtered` and `filters` as one; likewise `limone` and `limoni`. Both sides of a search go through it. */
export const stemOf = (word: string): string => {
  if (/\d/.test(word)) return word
  const ending = ENDINGS.find((each) => word.endsWith(each) && word.length - each.length >= LEAST_LEFT)
  const stem = ending === undefined || word.endsWith('ss') ? word : word.slice(0, -ending.length)
  const single = /([b-df-hj-np-tv-z])\1$/.test(stem) && stem.length > LEAST_LEFT + 1 ? stem.slice(0, -1) : stem
  return single.length > LEAST_LEFT ? single.replace(/[aeio]+$/, '') : single
}
