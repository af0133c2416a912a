/** Endings of English and Italian, the longest first; what is left of a word has at least three letters. */
const ENDINGS = [
  ...['andolo', 'iamolo', 'iamo', 'ando', 'endo'],
  ...['arlo', 'arla', 'arli', 'arle', 'arci', 'arne', 'arsi', 'erlo', 'erla', 'erli', 'erle', 'erne', 'ersi'],
  ...['irlo', 'irla', 'irli', 'irle', 'irne', 'irsi', 'ings', 'edly'],
  ...['ata', 'ate', 'ati', 'ato'],
  ...['ing', 'ers', 'ies', 'ied', 'est', 'are', 'ere', 'ire'],
  ...['ed', 'er', 'es', 'ly', 's', 'y'],
] as const

const LEAST_LEFT = 3

/** Of these more has to be left: `limiti` are no limes. */
const LONGER = ['uta', 'ute', 'uti', 'uto', 'ita', 'ite', 'iti', 'ito', 'ano', 'ono'] as const

/** `filtering`, `filtered` and `filters` as one; likewise `limone` and `limoni`, `lavo`, `lavate` and `lavarla`. Both sides of a search go through it. */
export const stemOf = (said: string): string => {
  if (/\d/.test(said)) return said
  // `Bianchi` is `bianco`.
  const word = said.replace(/([cg])h[ei]$/, '$1i')
  const ending =
    LONGER.find((each) => word.endsWith(each) && word.length - each.length > LEAST_LEFT) ??
    ENDINGS.find((each) => word.endsWith(each) && word.length - each.length >= LEAST_LEFT)
  const stem = ending === undefined || word.endsWith('ss') ? word : word.slice(0, -ending.length)
  const single = /([b-df-hj-np-tv-z])\1$/.test(stem) && stem.length > LEAST_LEFT + 1 ? stem.slice(0, -1) : stem
  return single.length > LEAST_LEFT ? single.replace(/[aeio]+$/, '') : single
}
