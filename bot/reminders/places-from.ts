import type { Place } from '../../store/person.ts'
import type { Surface } from './delivery.ts'

export const isSamePlace = (one: Place, other: Place): boolean => JSON.stringify(one) === JSON.stringify(other)

/** A place and those to fall back to, in order; a circle of them ends. */
export function placesFrom(first: Place, after: Surface['after']): readonly Place[] {
  const places: Place[] = []
  let place: Place | null = first
  while (place !== null) {
    const next: Place = place
    if (places.some((each) => isSamePlace(each, next))) break
    places.push(next)
    place = after(next)
  }
  return places
}
