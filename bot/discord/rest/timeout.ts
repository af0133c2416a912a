/** Calls `act` after so many milliseconds, unless what it returns is called before. */
export type After = (ms: number, act: () => void) => () => void

export const after: After = (ms, act) => {
  const timer = setTimeout(act, ms)
  return () => clearTimeout(timer)
}

/** Resolves after so many milliseconds. */
export const pause = (ms: number, afterwards: After): Promise<void> =>
  new Promise((resolve) => {
    afterwards(ms, resolve)
  })

/** Resolves with the work, or without it after so many milliseconds. */
export const atMost = (ms: number, work: Promise<unknown>, afterwards: After): Promise<void> =>
  new Promise((resolve) => {
    const cancel = afterwards(ms, resolve)
    work.finally(() => {
      cancel()
      resolve()
    })
  })
