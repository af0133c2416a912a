import { unlessRefused } from '../domain-error.ts'
import type { Measured } from '../quantity/measured/measured.ts'
import { type SharedTool, toolOf } from './shared-tools.ts'

/** The same shape with a plain number where a measured one stood. */
export type Values<T> = T extends Measured ? number : T extends object ? { readonly [K in keyof T]: Values<T[K]> } : T

export type Results<Out> = { readonly [K in keyof Out]: Measured }

/** What the leaves of one tool, or a leaf of none, do to a result: all of it in quadrature, and together with their signs. */
interface Moved {
  squares: number
  sum: number
}

/**
 * Carries the ± of inputs through a solve: each is moved by its own half interval to either side, and half the difference of the
 * results is its contribution; contributions add in quadrature. Where one side cannot be solved (a strength pushed past what is
 * reachable) the other side counts alone. Inputs are independent but for what one jug or one scale measured: nobody knows how
 * much of a tool's error is its own and how much each reading's, so its inputs count as independent or as moving together,
 * whichever makes a result less certain.
 * Source: JCGM 100:2008 (GUM), 5.1.2 with the numeric form of note 2 to 5.1.3, and 5.2.2 for what moves together; moving by the
 * whole half interval instead of one standard deviation keeps the curvature inside it.
 */
export function propagate<In, Out extends { readonly [name: string]: number }>(
  inputs: In,
  solve: (values: Values<In>) => Out,
): Results<Out> {
  const { values, leaves } = unfold(inputs)
  const central = solve(values)
  const names = Object.keys(central) as (keyof Out & string)[]
  const moved = new Map<SharedTool | Leaf, Map<keyof Out & string, Moved>>()
  for (const leaf of leaves) {
    const { name, measured, put } = leaf
    if (measured.plusMinus === 0) continue
    put('high')
    const high = unlessRefused(() => solve(values))
    put('low')
    const low = unlessRefused(() => solve(values))
    put('own')
    const by = toolOf(name, measured) ?? leaf
    const results = moved.get(by) ?? new Map<keyof Out & string, Moved>()
    moved.set(by, results)
    for (const result of names) {
      const difference = risen(central[result]!, high?.[result], low?.[result])
      const before = results.get(result) ?? { squares: 0, sum: 0 }
      results.set(result, { squares: before.squares + difference * difference, sum: before.sum + difference })
    }
  }
  const plusMinusOf = (result: keyof Out & string): number => {
    let squares = 0
    for (const results of moved.values()) {
      const { squares: alone, sum } = results.get(result)!
      squares += Math.max(alone, sum * sum)
    }
    return Math.sqrt(squares)
  }
  return Object.fromEntries(
    names.map((name) => [name, { value: central[name]!, plusMinus: plusMinusOf(name) }]),
  ) as Results<Out>
}

/** By how much a result rises with an input, of one side alone where the other has no solution. */
function risen(central: number, high: number | undefined, low: number | undefined): number {
  if (high !== undefined && low !== undefined) return (high - low) / 2
  if (high !== undefined) return high - central
  return low === undefined ? 0 : central - low
}

/** The inputs as plain numbers. */
export const valuesOf = <In>(inputs: In): Values<In> => unfold(inputs).values

/** The same of what is asked about once, as a search tries it. */
export const valuesOnce = <In>(inputs: In): Values<In> => plain(inputs) as Values<In>

function plain(node: unknown): unknown {
  if (typeof node !== 'object' || node === null) return node
  if (isMeasured(node)) return node.value
  if (Array.isArray(node)) return node.map(plain)
  const values: { [name: string]: unknown } = {}
  for (const name of Object.keys(node)) values[name] = plain((node as { readonly [name: string]: unknown })[name])
  return values
}

const isMeasured = (x: unknown): x is Measured =>
  typeof x === 'object' && x !== null && 'value' in x && 'plusMinus' in x

/** A measured input as it is, or at one end of its interval. */
type End = 'own' | 'high' | 'low'

const endOf = ({ value, plusMinus }: Measured, end: End): number =>
  end === 'own' ? value : end === 'high' ? value + plusMinus : value - plusMinus

/** A measured input, and how it is moved where it stands. */
interface Leaf {
  /** What it is called where it stands. */
  readonly name: string
  readonly measured: Measured
  put(end: End): void
}

/** Inputs as plain numbers, each of which can be moved. */
interface Unfolded {
  readonly values: unknown
  readonly leaves: readonly Leaf[]
}

/** A member of a list of inputs, whose values are never changed, and its values with one of its leaves moved, made when asked for. */
interface Member {
  readonly values: unknown
  readonly leaves: readonly Pick<Leaf, 'name' | 'measured'>[]
  moved(leaf: number, end: End): unknown
}

/**
 * What members of lists were unfolded to of late, and no more of them than this: the same steps of a jar are asked about in
 * several ways one after the other, and what is worked out of the very same values is then known (`once`).
 */
const MOST_KEPT = 64
const members = new Map<object, Member>()

function memberOf(node: object): Member {
  const known = members.get(node)
  if (known !== undefined) return known
  const own = unfolded(node)
  const made = new Map<string, unknown>()
  const moved = (leaf: number, end: End): unknown => {
    if (end === 'own') return own.values
    const key = `${end} ${leaf}`
    if (!made.has(key)) {
      const { values, leaves } = unfolded(node)
      leaves[leaf]!.put(end)
      made.set(key, values)
    }
    return made.get(key)
  }
  const member: Member = { ...own, moved }
  members.set(node, member)
  const [oldest] = members.keys()
  if (members.size > MOST_KEPT) members.delete(oldest!)
  return member
}

/** The inputs as plain numbers, each of which can be moved where it stands. */
const unfold = <In>(inputs: In) =>
  (Array.isArray(inputs) ? unfoldedList(inputs) : unfolded(inputs)) as Unfolded & { readonly values: Values<In> }

function unfoldedList(list: readonly unknown[]): Unfolded {
  const parts = list.map((node): Member => {
    if (typeof node === 'object' && node !== null) return memberOf(node)
    return { values: node, leaves: [], moved: () => node }
  })
  const values = parts.map((part) => part.values)
  const leaves = parts.flatMap(({ leaves, moved }, at) =>
    leaves.map(
      ({ name, measured }, leaf): Leaf => ({
        name,
        measured,
        put(end) {
          values[at] = moved(leaf, end)
        },
      }),
    ),
  )
  return { values, leaves }
}

function unfolded(inputs: unknown): Unfolded {
  const leaves: Leaf[] = []
  const place = (node: unknown, name: string, put: (value: unknown) => void): void => {
    if (isMeasured(node)) {
      leaves.push({ name, measured: node, put: (end) => put(endOf(node, end)) })
      put(node.value)
      return
    }
    if (typeof node !== 'object' || node === null) {
      put(node)
      return
    }
    const copy: { [name: string]: unknown } | unknown[] = Array.isArray(node) ? [] : {}
    for (const [name, child] of Object.entries(node)) {
      place(child, name, (value) => {
        ;(copy as { [name: string]: unknown })[name] = value
      })
    }
    put(copy)
  }
  let values: unknown
  place(inputs, '', (value) => {
    values = value
  })
  return { values, leaves }
}
