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
    const { name, measured, set } = leaf
    const { value, plusMinus } = measured
    if (plusMinus === 0) continue
    set(value + plusMinus)
    const high = unlessRefused(() => solve(values))
    set(value - plusMinus)
    const low = unlessRefused(() => solve(values))
    set(value)
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

const isMeasured = (x: unknown): x is Measured =>
  typeof x === 'object' && x !== null && 'value' in x && 'plusMinus' in x

/** A measured input, and how to put another number in its place. */
interface Leaf {
  /** What it is called where it stands. */
  readonly name: string
  readonly measured: Measured
  set(value: number): void
}

/** The inputs as plain numbers, each of which can be moved where it stands. */
function unfold<In>(inputs: In): { readonly values: Values<In>; readonly leaves: readonly Leaf[] } {
  const leaves: Leaf[] = []
  const place = (node: unknown, name: string, put: (value: unknown) => void): void => {
    if (isMeasured(node)) {
      leaves.push({ name, measured: node, set: put })
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
  return { values: values as Values<In>, leaves }
}
