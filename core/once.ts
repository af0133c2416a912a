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
