import type { Place } from '../../store/person.ts'
import type { Surface } from './delivery.ts'

const MOST_PLACES = 4

export const isSamePlace = (one: Place, other: Place): boolean => JSON.stringify(one) === JSON.stringify(other)

/** A place and those to fall back to, in order; a circle of them ends. */
export function placesFrom(first: Place, after: Surface['after']): readonly Place[] {
  const places: Place[] = []
  for (let place: Place | null = first; place !== null && places.length < MOST_PLACES; place = after(place)) {
    places.push(place)
  }
  return places
}
