import { measureSaid } from '../../quantity/said/measure-said.ts'
import { saidText } from '../../quantity/said/said-text.ts'
import type { JarState } from './jar-state.ts'

/** Where a jar stands as it was noted last; null where nobody said. */
export const placeOf = ({ happened }: JarState): string | null =>
  happened.reduce<string | null>((place, entry) => (entry.kind === 'noted' ? (entry.where ?? place) : place), null)

const FREEZER = /\b(?:deep[- ]?)?freezer\b|\bdeep[- ]freeze\b|\bcongelatore\b|\bsurgelatore\b/i
/** Words before it by which a thing is not in it. */
const NOT_IN = /\b(?:out|from|next|beside|by|near|on|under|above|behind|fuori|vicino|accanto|sopra|sotto)\b/i

/** Whether words for a place are a freezer, and not what is beside one. */
export const isFreezer = (place: string): boolean => FREEZER.test(place) && !NOT_IN.test(place)

/** Whether a jar stands in a freezer. */
export function isInFreezer(story: JarState): boolean {
  const place = placeOf(story)
  return place !== null && isFreezer(place)
}

/** How much a vessel holds by what was said of it, mL; null where nothing tells: `2 l jar`, `a 70 cl bottle`, `demijohn`. */
export function vesselMl(vessel: string): number | null {
  const typed = saidText(vessel)
  for (let at = 0; at < typed.tokens.length; at++) {
    const found = measureSaid(typed, at, new Set())
    if (found?.kind === 'volume') return found.value > 0 ? found.value : null
  }
  return null
}
