import { plainWords } from '../../../core/spelling/normalise-name.ts'
import { wordSet } from './concepts.ts'

/** Words that say that it is not the one that was spoken of, or which of several. */
const OTHER = wordSet(`
  other others second third fourth previous former latter altro altra secondo seconda terzo terza precedente
`)

/** What one jar is told from another by, where no name is said. */
const KIND = wordSet(`
  first last next new newer newest old older oldest big bigger biggest small smaller smallest large larger largest little tall short round square
  red yellow green blue white black brown orange pink purple clear dark pale
  primo prima ultimo ultima nuovo nuova vecchio vecchia grande piccolo piccola alto alta rosso rossa giallo gialla verde bianco bianca nero nera scuro scura
`)

/** What may stand around those. */
const AROUND = wordSet(`
  the a my our his her their that this one ones jar batch bottle il lo la l un una mio mia nostro nostra quello quella vaso vasetto barattolo
`)

/** Whether words in a jar's place say one from another without a name: `the other`, `old one`, `other lemon`, `l'altro`. */
export function tellsApart(text: string): boolean {
  const words = plainWords(text)
  if (words.some((word) => OTHER.has(word))) return true
  return words.some((word) => KIND.has(word)) && words.every((word) => KIND.has(word) || AROUND.has(word))
}
