/** A press that comes so soon after the answer to the same one is a finger that slipped. */
const AGAIN_MS = 2000

/** A button on a message, and who pressed it. */
export interface PressOf {
  readonly button: string
  readonly userId: string
}

/** What a press came to. */
export interface Acted<Result> {
  readonly result: Result
  /** It is said now. */
  answered(nowMs: number): void
}

export interface Presses {
  /**
   * What `act` comes to. Null, without acting, where the same button did something a moment ago, or is doing it; one that
   * came to nothing, as `hasDone` says, is in nobody's way, nor is one after which the same person did something else.
   */
  once<Result>(
    press: PressOf,
    nowMs: number,
    act: () => Promise<Result>,
    hasDone: (result: Result) => boolean,
  ): Promise<Acted<Result> | null>
  /** Somebody does something else than press a button; whether that came to something. */
  otherwise(userId: string, isDone: Promise<boolean>): void
}

interface Press {
  readonly userId: string
  readonly isDone: Promise<boolean>
  hasDone: boolean
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
  /** What was done before this began is no longer the last that was done. */
  const otherwise = (userId: string, isDone: Promise<boolean>): void => {
    const before = [...latest].filter(([, press]) => press.userId === userId && press.hasDone)
    if (before.length === 0) return
    void isDone.then((done) => {
      for (const [button, press] of done ? before : []) if (latest.get(button) === press) latest.delete(button)
    })
  }
  return {
    async once({ button, userId }, nowMs, act, hasDone) {
      forgetOld(nowMs)
      for (let before = latest.get(button); before !== undefined; before = latest.get(button)) {
        if (await before.isDone) return null
      }
      const work = act()
      const isDone = work
        .then(hasDone, () => false)
        .then((done) => {
          if (done) press.hasDone = true
          else latest.delete(button)
          return done
        })
      const press: Press = { userId, isDone, hasDone: false, answeredMs: null }
      otherwise(userId, isDone)
      latest.set(button, press)
      const result = await work
      return {
        result,
        answered: (atMs) => {
          press.answeredMs = atMs
        },
      }
    },
    otherwise,
  }
}
