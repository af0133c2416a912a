/** Does work one piece at a time for each key, in the order in which it came. */
export type InTurn = <Result>(key: string, work: () => Promise<Result>) => Promise<Result>

export const newTurns = (): InTurn => {
  const last = new Map<string, Promise<unknown>>()
  return async (key, work) => {
    const before = last.get(key) ?? Promise.resolve()
    const mine = before.then(work, work)
    last.set(key, mine)
    try {
      return await mine
    } finally {
      if (last.get(key) === mine) last.delete(key)
    }
  }
}
