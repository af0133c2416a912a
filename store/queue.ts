/** Does what is asked for one key after the other, for different keys at the same time. */
export interface Queue {
  add<Result>(key: string, work: () => Promise<Result>): Promise<Result>
  /** When nothing is left to do, what was added meanwhile included. */
  idle(): Promise<void>
}

export function queueByKey(): Queue {
  const last = new Map<string, Promise<unknown>>()
  return {
    add(key, work) {
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
