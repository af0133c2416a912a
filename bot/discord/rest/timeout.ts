/** Calls `act` after so many milliseconds, unless what it returns is called before. */
export type StartTimer = (ms: number, act: () => void) => () => void

export const after: StartTimer = (ms, act) => {
  const timer = setTimeout(act, ms)
  return () => clearTimeout(timer)
}

/** Resolves after so many milliseconds. */
export const pause = (ms: number, afterwards: StartTimer): Promise<void> =>
  new Promise((resolve) => {
    afterwards(ms, resolve)
  })

/** Resolves with the work, or without it after so many milliseconds. */
export const atMost = (ms: number, work: Promise<unknown>, afterwards: StartTimer): Promise<void> =>
  new Promise((resolve) => {
    const cancel = afterwards(ms, resolve)
    work.finally(() => {
      cancel()
      resolve()
    })
  })
