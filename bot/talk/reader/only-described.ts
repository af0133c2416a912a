import type { Sentence } from '../bits/bit.ts'
import { isPastDay } from '../bits/past-day.ts'
import type { Concept } from '../lexicon/lexicon.ts'

const PARTICIPLE =
  /^(?:covered|drowned|submerged|soaked|topped|filled|immersed|drenched|smothered|layered|peeled|zested|sliced|chopped|crushed|pitted|stoned|halved|quartered|grated|put|coperti?|coperte|sommersi?|sommerse|immersi?|immerse)$/
/** Whoever did it, or that it is so: what is told with it is a deed. */
const TELLS = /^(?:i|ive|we|weve|ho|abbiamo|is|are|s|has|have|was|were|been|sono|just|now|already|done|appena|gia)$/

const BEGINS: readonly Concept[] = ['started', 'added', 'topped_up']

/** `A jar of cherries covered with vodka`: a participle behind what it is said of says how it is to be; nobody is told to have done it. */
export function isOnlyDescribed({ typed: { tokens }, spans, bits }: Sentence): boolean {
  if (bits.some(isPastDay) || tokens.some(({ text }) => TELLS.test(text))) return false
  const deeds = spans.filter(({ concept }) => BEGINS.includes(concept))
  const isBehindThing = (at: number): boolean =>
    bits.some(({ kind, to }) => kind === 'plant' && to <= at) && PARTICIPLE.test(tokens[at]?.text ?? '')
  return deeds.length > 0 && deeds.every(({ from }) => isBehindThing(from))
}
