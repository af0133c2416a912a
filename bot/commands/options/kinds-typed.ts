/** A plant of the catalogue with what its maker called it. */
interface Called {
  readonly id: string
  readonly noun: string
}

const called = (node: object): Called | null => {
  if (!('botanical' in node && 'typed' in node)) return null
  const { botanical, typed } = node as { readonly botanical: { readonly id: string }; readonly typed: unknown }
  if (typeof typed === 'string') return { id: botanical.id, noun: typed }
  const noun = typeof typed === 'object' && typed !== null && 'noun' in typed ? typed.noun : null
  return typeof noun === 'string' ? { id: botanical.id, noun } : null
}

/** Every plant inside an input, however deep. */
function calledIn(node: unknown, found: Called[] = []): readonly Called[] {
  if (typeof node !== 'object' || node === null) return found
  const own = called(node)
  if (own === null) for (const each of Object.values(node)) calledIn(each, found)
  else found.push(own)
  return found
}

/** What plants are called, by their ids. */
export type Kinds = Readonly<Record<string, string>>

const same = (one: string, other: string): boolean =>
  one.toLowerCase().replace(/e?s$/, '') === other.toLowerCase().replace(/e?s$/, '')

/** Those of several inputs together; of one that is called two ways none. */
export function kindsTyped(inputs: readonly object[]): Kinds {
  const all = inputs.flatMap((input) => calledIn(input))
  const apart = all.filter(({ id, noun }) => all.every((other) => other.id !== id || same(other.noun, noun)))
  return Object.fromEntries(apart.map(({ id, noun }) => [id, noun]))
}
