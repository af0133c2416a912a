import type { Place } from '../../store/person.ts'

/** Places that did not take a person's reminders when they were last tried; in memory only. */
export interface ClosedPlaces {
  has(userId: string, place: Place): boolean
  close(userId: string, place: Place): void
  open(userId: string, place: Place): void
  /** Whether somebody has still to be told that it is closed. */
  isNews(userId: string, place: Place): boolean
  told(userId: string, place: Place): void
}

const MOST_PLACES = 10_000

export const closedPlaces = (): ClosedPlaces => {
  /** To whether its person was told. */
  const closed = new Map<string, boolean>()
  const keyOf = (userId: string, place: Place): string => `${userId} ${JSON.stringify(place)}`
  return {
    has: (userId, place) => closed.has(keyOf(userId, place)),
    close(userId, place) {
      const key = keyOf(userId, place)
      const [oldest] = closed.keys()
      if (closed.size >= MOST_PLACES && oldest !== undefined && !closed.has(key)) closed.delete(oldest)
      closed.set(key, closed.get(key) ?? false)
    },
    open: (userId, place) => {
      closed.delete(keyOf(userId, place))
    },
    isNews: (userId, place) => closed.get(keyOf(userId, place)) === false,
    told(userId, place) {
      const key = keyOf(userId, place)
      if (closed.has(key)) closed.set(key, true)
    },
  }
}
