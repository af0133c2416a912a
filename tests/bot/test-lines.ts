import { readFileSync } from 'node:fs'
import { join } from 'node:path'

const botanical = join(import.meta.dirname, '..', 'core', 'botanical')

const linesOf = (file: string): readonly string[] =>
  readFileSync(join(botanical, file), 'utf8')
    .split('\n')
    .filter((line) => line !== '')

/** Spirits as they are bought and typed, with amount and strength; our own. */
export const goodSpirits = linesOf('good-spirits.txt')

/** What must not be drunk, in nine languages, as `metho 95%`: words that were typed in trials, and a strength. */
const undrinkable = linesOf('undrinkable-spirits.txt')

/** The same as the text of `spirit:`, the strength behind the words and before them. */
export const undrinkableSpirits = undrinkable.flatMap((line) => {
  const [, words, strength] = /^(.*?) ?(\d+(?:\.\d+)?%)?( ethanol)?$/.exec(line)!
  return words === '' || strength === undefined
    ? [`1 l ${line}`]
    : [`1 l ${words} ${strength}`, `1 l ${strength} ${words}`]
})
