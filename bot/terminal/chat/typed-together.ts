/** How the lines of one paste are told: how many of those at hand are one thing, and whether a line may begin such. */
export interface Together {
  readonly countOf: (lines: readonly string[]) => number
  readonly mayBegin: (line: string) => boolean
}

/** What was typed at once, and at which line it began, counted from 1. */
export interface TypedAtOnce {
  readonly text: string
  readonly line: number
}

/** What is pasted comes in within this long, ms; nobody types a line so fast. */
const PASTED_MS = 40

const TIMED_OUT = Symbol('timed out')

const MOST_WAITED_FOR = 30

/** Lines as they are typed; those of a recipe that was pasted come as one, with its lines apart. None is lost from here on, whenever the first is asked for. */
export const typedTogether = (lines: AsyncIterable<string>, together: Together): AsyncGenerator<TypedAtOnce> =>
  gathered(lines[Symbol.asyncIterator](), together)

async function* gathered(
  iterator: AsyncIterator<string>,
  { countOf, mayBegin }: Together,
): AsyncGenerator<TypedAtOnce> {
  const buffer: string[] = []
  let coming: Promise<IteratorResult<string>> | null = null
  let number = 1
  const next = () => {
    coming ??= iterator.next()
    return coming
  }
  const taken = ({ value, done }: IteratorResult<string>): boolean => {
    coming = null
    if (done !== true) buffer.push(value)
    return done !== true
  }
  let isOpen = true
  while (isOpen || buffer.length > 0) {
    if (buffer.length === 0) {
      isOpen = taken(await next())
      if (!isOpen) return
    }
    while (isOpen && buffer.length < MOST_WAITED_FOR && mayBegin(buffer[0]!) && isGoingOn(buffer, countOf)) {
      const found = await Promise.race([next(), after(PASTED_MS)])
      if (found === TIMED_OUT) break
      isOpen = taken(found)
    }
    const count = Math.max(1, countOf(buffer))
    yield { text: buffer.splice(0, count).join('\n'), line: number }
    number += count
  }
}

/** Whether the lines at hand may still be going on: the last of them is not what ended a recipe. */
const isGoingOn = (lines: readonly string[], countOf: Together['countOf']): boolean => {
  const count = countOf(lines)
  return count === 0 || count === lines.length
}

const after = (ms: number): Promise<typeof TIMED_OUT> =>
  new Promise((resolve) => {
    setTimeout(() => resolve(TIMED_OUT), ms)
  })
