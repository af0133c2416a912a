import type { Botanical } from '../../../core/botanical/botanical.ts'
import { kindTyped } from '../../../core/botanical/names/kind-typed.ts'

/** A plant of the catalogue with what its maker called it. */
interface Called {
  readonly botanical: Botanical
  readonly noun: string
}

const called = (node: object): Called | null => {
  if (!('botanical' in node && 'typed' in node)) return null
  const { botanical, typed } = node as { readonly botanical: Botanical; readonly typed: unknown }
  if (typeof typed === 'string') return { botanical, noun: typed }
  const noun = typeof typed === 'object' && typed !== null && 'noun' in typed ? typed.noun : null
  return typeof noun === 'string' ? { botanical, noun } : null
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

const isCalledAlike = (one: Called, other: Called): boolean =>
  one.botanical.id !== other.botanical.id || same(one.noun, other.noun)

/** Kinds that their entries do not name, of several inputs together; of one that is called two ways none. */
export function kindsTyped(inputs: readonly object[]): Kinds {
  const all = inputs.flatMap((input) => calledIn(input))
  const apart = all.filter((each) => all.every((other) => isCalledAlike(each, other)))
  const kinds = apart.filter(({ botanical, noun }) => kindTyped(botanical, noun) !== null)
  return Object.fromEntries(kinds.map(({ botanical, noun }) => [botanical.id, noun]))
}
