/** The same function, working its answer out once for each object: what is never changed has one answer. */
export const once = <Key extends object, Answer>(make: (key: Key) => Answer): ((key: Key) => Answer) => {
  const made = new WeakMap<Key, { readonly answer: Answer }>()
  return (key) => {
    const known = made.get(key) ?? { answer: make(key) }
    made.set(key, known)
    return known.answer
  }
}

/** What is worked out when it is first asked for, and kept: what most lines never need costs them nothing. */
export const lazily = <Value>(make: () => Value): (() => Value) => {
  let made: { readonly value: Value } | null = null
  return () => {
    made ??= { value: make() }
    return made.value
  }
}

/** The same function, keeping the answer of the object that it was asked of last: of one that is made, asked about and forgotten. */
export const forLast = <Key extends object, Answer>(make: (key: Key) => Answer): ((key: Key) => Answer) => {
  let last: { readonly key: Key; readonly answer: Answer } | null = null
  return (key) => {
    if (last?.key !== key) last = { key, answer: make(key) }
    return last.answer
  }
}

/** So many numbers of late are kept, a power of two. */
const SLOTS = 256

/** The same function of a number, keeping the answers of numbers of late: what is worked out of one is often asked for again. */
export const ofLate = (make: (x: number) => number): ((x: number) => number) => {
  const [keys, answers] = [new Float64Array(SLOTS).fill(Number.NaN), new Float64Array(SLOTS)]
  const key = new Float64Array(1)
  const [low, high] = [0, 1]
  const words = new Uint32Array(key.buffer)
  return (x) => {
    key[0] = x
    const slot = Math.imul(words[low]! ^ Math.imul(words[high]!, 0x85ebca6b), 0x9e3779b1) >>> 24
    if (keys[slot] === x) return answers[slot]!
    const answer = make(x)
    keys[slot] = x
    answers[slot] = answer
    return answer
  }
}

/** So many texts of late are kept of each function, and none that is longer than most options are. */
const MOST_TEXTS = 64
const LONGEST_KEPT = 200

/** The same function of a text, keeping what it made of texts of late: a line is read, tried and read again, and its parts come back in the next. */
export const ofTexts = <Answer>(make: (text: string) => Answer): ((text: string) => Answer) => {
  const made = new Map<string, { readonly answer: Answer }>()
  return (text) => {
    const known = made.get(text)
    if (known !== undefined) return known.answer
    const answer = make(text)
    if (text.length > LONGEST_KEPT) return answer
    made.set(text, { answer })
    const [oldest] = made.keys()
    if (made.size > MOST_TEXTS) made.delete(oldest!)
    return answer
  }
}
