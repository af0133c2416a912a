/** Does what is asked for one key after the other, in the order in which it came; for different keys at the same time. */
export type InTurn = <Result>(key: string, work: () => Promise<Result>) => Promise<Result>

export interface Queue {
  readonly inTurn: InTurn
  /** Resolves when nothing is left to do, what was asked for meanwhile included. */
  idle(): Promise<void>
}

export function queueByKey(): Queue {
  const last = new Map<string, Promise<unknown>>()
  return {
    inTurn(key, work) {
      const done = (last.get(key) ?? Promise.resolve()).then(work)
      const settled = done
        .catch(() => {})
        .then(() => {
          if (last.get(key) === settled) last.delete(key)
        })
      last.set(key, settled)
      return done
    },
    async idle() {
      while (last.size > 0) await Promise.all(last.values())
    },
  }
}
