import { textFrom } from '../../../core/quantity/read/tokens.ts'
import type { Bit, Sentence } from '../bits/bit.ts'
import { jarsNamed } from '../bits/jars-of.ts'

const MOST_STARS = 5

const isMark = ({ kind, value }: Bit): boolean =>
  kind === 'rating' || (kind === 'bare' && value >= 1 && value <= MOST_STARS)

/** What joins one mark to the next jar. */
const JOINING = /(?:^|[\s,;.+&]+)(?:and|then|but|the|my|e|ed|poi|ma|il|lo|la)?[\s,;.+&]*$/i

/** `Raspberry 5/5, sloe 3/5`: jars with a mark each, each as a sentence of its own; null where anything else is told. */
export function marksApart({ typed, bits, jars, has }: Sentence): readonly string[] | null {
  const named = jarsNamed(bits, jars)
  const isRated = bits.some(({ kind }) => kind === 'rating') || has('tasted')
  if (named.length < 2 || !isRated || has('asking', 'denial', 'better_of')) return null
  const told = named.map(({ jar, bit }, at) => {
    const to = named[at + 1]?.bit.from ?? typed.tokens.length
    const [mark, another] = bits.filter(({ from }) => from >= bit.to && from < to)
    if (mark === undefined || another !== undefined || !isMark(mark)) return null
    const behind = mark.to < to ? ` ${textFrom(typed, mark.to, to)}` : ''
    let note = behind
    while (note !== note.replace(JOINING, '')) note = note.replace(JOINING, '')
    return `${jar.name} ${mark.value}/${MOST_STARS}${note}`
  })
  return told.every((each) => each !== null) ? told : null
}
