/** Keys by the time each is set for, the earliest first; of one time the lesser key. */
export interface TimeHeap {
  /** Sets or moves a key. */
  set(key: string, atMs: number): void
  delete(key: string): void
  has(key: string): boolean
  earliest(): { readonly key: string; readonly atMs: number } | null
}

interface Item {
  readonly key: string
  atMs: number
  /** Where it stands in the heap. */
  place: number
}

const isBefore = (one: Item, other: Item): boolean =>
  one.atMs < other.atMs || (one.atMs === other.atMs && one.key < other.key)

/** A binary heap whose items know their place, so that setting and deleting take the logarithm of their number. */
export function timeHeap(): TimeHeap {
  const heap: Item[] = []
  const items = new Map<string, Item>()

  const put = (item: Item, place: number): void => {
    heap[place] = item
    item.place = place
  }

  const settle = (item: Item): void => {
    let place = item.place
    while (place > 0) {
      const above = heap[(place - 1) >> 1]!
      if (!isBefore(item, above)) break
      put(above, place)
      place = (place - 1) >> 1
    }
    for (;;) {
      const [left, right] = [heap[2 * place + 1], heap[2 * place + 2]]
      const below = left !== undefined && right !== undefined && isBefore(right, left) ? right : left
      if (below === undefined || !isBefore(below, item)) break
      const free = below.place
      put(below, place)
      place = free
    }
    put(item, place)
  }

  return {
    set(key, atMs) {
      const known = items.get(key)
      const item = known ?? { key, atMs, place: heap.length }
      item.atMs = atMs
      if (known === undefined) {
        items.set(key, item)
        heap.push(item)
      }
      settle(item)
    },
    delete(key) {
      const item = items.get(key)
      if (item === undefined) return
      items.delete(key)
      const last = heap.pop()!
      if (last === item) return
      put(last, item.place)
      settle(last)
    },
    has: (key) => items.has(key),
    earliest: () => heap[0] ?? null,
  }
}
