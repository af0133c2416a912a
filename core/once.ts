/** The same function, working its answer out once for each object: what is never changed has one answer. */
export const once = <Key extends object, Answer>(make: (key: Key) => Answer): ((key: Key) => Answer) => {
  const made = new WeakMap<Key, { readonly answer: Answer }>()
  return (key) => {
    const known = made.get(key) ?? { answer: make(key) }
    made.set(key, known)
    return known.answer
  }
}
