/**
 * What bottles and jars of a name hold, ml, as they are sold most often. A bottle of wine and a magnum: Directive 2007/45/EC. All
 * others: common practice, no source.
 */
const HOLD: readonly (readonly [names: string, ml: number])[] = [
  ['wine bottle, champagne bottle, prosecco bottle, cava bottle, bottle da vino, bottle di vino', 750],
  ['magnum', 1500],
  ['jeroboam', 3000],
  ['demijohn', 4500],
  ['growler', 1900],
  ['beer bottle, swing top bottle, flip top bottle', 500],
  ['milk bottle', 568],
  ['hip flask', 200],
  ['jam jar', 370],
  ['kilner jar', 1000],
  ['mason jar', 946],
]

/** A mug, ml; common practice, no source. */
export const MUG_ML = 280

/**
 * What is drunk from, ml, as amounts are told by it where nothing is measured. A pint: UK Weights and Measures Act 1985. All others:
 * common practice, no source.
 */
const DRUNK_FROM: readonly (readonly [names: string, ml: number])[] = [
  ['coffee mug, tea mug, mug', MUG_ML],
  ['pint glass', 568],
  ['tumbler', 250],
  ['tea cup, teacup', 200],
]

/** Names with what they hold, ml, the longest first. */
export const CUSTOMARY_MEASURES: readonly (readonly [name: string, ml: number])[] = [...HOLD, ...DRUNK_FROM]
  .flatMap(([names, ml]) => names.split(', ').map((name) => [name, ml] as const))
  .toSorted(([one], [other]) => other.length - one.length)

const NAMES: readonly (readonly [words: readonly string[], ml: number])[] = HOLD.flatMap(([names, ml]) =>
  names.split(', ').map((name) => [name.split(' '), ml] as const),
)

const singular = (word: string): string => word.replace(/^bottigli[ae]$/, 'bottle').replace(/(?<=..)s$/, '')

/** The bottle or jar whose name some words begin with: how many words it is, and what it holds, ml; null where none is. */
export function customaryBottle(words: readonly string[]): { readonly words: number; readonly ml: number } | null {
  const said = words.map(singular)
  const found = NAMES.find(([name]) => name.every((word, at) => said[at] === word))
  return found === undefined ? null : { words: found[0].length, ml: found[1] }
}
