import type { StartTimer } from '../rest/timeout.ts'

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
 *
 * @param slow - resolves where the work itself knows that it will take long, with what promising is to know of it
 */
export async function inTime<Result, Promised, Known>(
  work: Promise<Result>,
  promise: (known: Known | null) => Promise<Promised>,
  { after, slow }: { readonly after: StartTimer; readonly slow: Promise<Known> },
): Promise<InTime<Result, Promised>> {
  let promised: Promise<Promised> | null = null
  let isDone = false
  const promiseOnce = (known: Known | null): void => {
    if (isDone || promised !== null) return
    promised = promise(known)
    // Awaited below, which may be long after it has failed.
    promised.catch(() => undefined)
  }
  const stop = after(PROMISE_AFTER_MS, () => promiseOnce(null))
  void slow.then(promiseOnce)
  try {
    const result = await work
    return { result, promised: await (promised as Promise<Promised> | null) }
  } finally {
    isDone = true
    stop()
  }
}
