/** Data bits of a symbol; its fifth bit says that more follow. */
const DATA_BITS = 4
const MORE = 1 << DATA_BITS

/** A whole number from 0 as symbols of 0 to 31, high bits first. */
export function symbolsOf(whole: number): readonly number[] {
  const last = whole % MORE
  const rest = Math.floor(whole / MORE)
  return rest === 0 ? [last] : [...symbolsOf(rest).map((symbol) => symbol | MORE), last]
}

export interface Reader {
  /** The next number; null where the symbols end too soon, it has leading zeros or does not lie in the range. */
  next(range: readonly [least: number, most: number]): number | null
  isAtEnd(): boolean
}

/** Reads what `symbolsOf` wrote, from the first symbol on. */
export function readerOf(symbols: readonly number[]): Reader {
  let at = 0
  return {
    next([least, most]) {
      let whole = 0
      for (const first = at; ; ) {
        const symbol = symbols[at++]
        if (symbol === undefined || (at === first + 1 && symbol === MORE)) return null
        whole = whole * MORE + (symbol % MORE)
        if (whole > most) return null
        if (symbol < MORE) return whole >= least ? whole : null
      }
    },
    isAtEnd: () => at === symbols.length,
  }
}

/** As many items as the next number in the range says, each as `read` reads it; null where one cannot be read. */
export function several<Item>(
  reader: Reader,
  range: readonly [least: number, most: number],
  read: (reader: Reader) => Item | null,
): readonly Item[] | null {
  const count = reader.next(range)
  const items: Item[] = []
  for (let at = 0; count !== null && at < count; at++) {
    const item = read(reader)
    if (item === null) return null
    items.push(item)
  }
  return count === null ? null : items
}
