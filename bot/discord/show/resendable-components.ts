/** What Discord adds to components when it gives them back, and does not take when they are sent again. */
const ADDED = new Set(['id'])

/** Of a picture or a file only its address can be sent. */
const ADDRESSED = new Set(['media', 'file'])

type Plain = { readonly [name: string]: unknown }

const isPlain = (value: unknown): value is Plain => typeof value === 'object' && value !== null

/** Components of a message as they can be sent in another one. */
export function shownAgain<Value>(value: Value): Value {
  if (Array.isArray(value)) return value.map(shownAgain) as Value
  if (!isPlain(value)) return value
  const kept = Object.entries(value).flatMap(([name, inner]): [string, unknown][] => {
    if (ADDED.has(name) || inner === null || inner === undefined) return []
    return [[name, ADDRESSED.has(name) && isPlain(inner) ? { url: inner.url } : shownAgain(inner)]]
  })
  return Object.fromEntries(kept) as Value
}
