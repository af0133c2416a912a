/** A press that comes so soon after the answer to the same one is a finger that slipped. */
const AGAIN_MS = 2000

export interface Presses {
  /**
   * What `act` comes to. Null, without acting, where the same button did something a moment ago, or is doing it; one that
   * came to nothing, as `hasDone` says, is in nobody's way.
   */
  once<Result>(
    button: string,
    nowMs: number,
    act: () => Promise<Result>,
    hasDone: (result: Result) => boolean,
  ): Promise<Result | null>
  /** What it came to has been said. */
  answered(button: string, nowMs: number): void
}

interface Press {
  readonly isDone: Promise<boolean>
  /** Null: not yet. */
  answeredMs: number | null
}

/** Buttons pressed just now, so that pressing one twice in a row does its work once. */
export const newPresses = (): Presses => {
  const latest = new Map<string, Press>()
  const forgetOld = (nowMs: number): void => {
    for (const [button, { answeredMs }] of latest) {
      if (answeredMs !== null && (answeredMs > nowMs || nowMs - answeredMs >= AGAIN_MS)) latest.delete(button)
    }
  }
  return {
    async once(button, nowMs, act, hasDone) {
      forgetOld(nowMs)
      for (let before = latest.get(button); before !== undefined; before = latest.get(button)) {
        if (await before.isDone) return null
      }
      const work = act()
      const isDone = work
        .then(hasDone, () => false)
        .then((done) => {
          if (!done) latest.delete(button)
          return done
        })
      latest.set(button, { isDone, answeredMs: null })
      return work
    },
    answered(button, nowMs) {
      const press = latest.get(button)
      if (press !== undefined) press.answeredMs = nowMs
    },
  }
}
