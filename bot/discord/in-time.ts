import type { After } from './after.ts'

/** Discord takes a first answer for three seconds, the way there and back included. */
const PROMISE_AFTER_MS = 1200

export interface InTime<Result, Promised> {
  readonly result: Result
  /** What promising came to; null where the work was done before it had to be promised. */
  readonly promised: Promised | null
}

/**
 * The rule for every first answer: what is ready soon is the answer itself, anything else is promised meanwhile and
 * said when it is ready.
 */
export async function inTime<Result, Promised>(
  work: Promise<Result>,
  promise: () => Promise<Promised>,
  after: After,
): Promise<InTime<Result, Promised>> {
  let promised: Promise<Promised> | null = null
  const stop = after(PROMISE_AFTER_MS, () => {
    promised = promise()
    // Awaited below, which may be long after it has failed.
    promised.catch(() => undefined)
  })
  try {
    const result = await work
    return { result, promised: await (promised as Promise<Promised> | null) }
  } finally {
    stop()
  }
}
