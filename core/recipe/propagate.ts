import { DomainError } from '../domain-error.ts'
import type { Measured } from '../quantity/measured/measured.ts'

/** The same shape with a plain number where a measured one stood. */
export type Values<T> = T extends Measured ? number : T extends object ? { readonly [K in keyof T]: Values<T[K]> } : T

export type Results<Out> = { readonly [K in keyof Out]: Measured }

/**
 * Carries the ± of independent inputs through a solve: each input is moved by its own half interval to either side, and
 * half the difference of the results is its contribution; contributions add in quadrature. Where one side cannot be
 * solved (a strength pushed past what is reachable) the other side counts alone.
 * Source: JCGM 100:2008 (GUM), 5.1.2 with the numeric form of note 2 to 5.1.3; moving by the whole half interval instead
 * of one standard deviation keeps the curvature inside it.
 */
export function propagate<In, Out extends { readonly [name: string]: number }>(
  inputs: In,
  solve: (values: Values<In>) => Out,
): Results<Out> {
  const { values, leaves } = unfold(inputs)
  const central = solve(values)
  const names = Object.keys(central) as (keyof Out & string)[]
  const squares = new Map<keyof Out & string, number>(names.map((name) => [name, 0]))
  for (const { measured, set } of leaves) {
    const { value, plusMinus } = measured
    if (plusMinus === 0) continue
    set(value + plusMinus)
    const high = attempt(() => solve(values))
    set(value - plusMinus)
    const low = attempt(() => solve(values))
    set(value)
    for (const name of names) {
      const difference =
        high && low
          ? ((high[name] as number) - (low[name] as number)) / 2
          : ((high ?? low ?? central)[name] as number) - (central[name] as number)
      squares.set(name, squares.get(name)! + difference * difference)
    }
  }
  return Object.fromEntries(
    names.map((name) => [name, { value: central[name]!, plusMinus: Math.sqrt(squares.get(name)!) }]),
  ) as Results<Out>
}

/** The inputs as plain numbers. */
export const valuesOf = <In>(inputs: In): Values<In> => unfold(inputs).values

const isMeasured = (x: unknown): x is Measured =>
  typeof x === 'object' && x !== null && 'value' in x && 'plusMinus' in x

/** A measured input, and how to put another number in its place. */
interface Leaf {
  readonly measured: Measured
  set(value: number): void
}

/** The inputs as plain numbers, each of which can be moved where it stands. */
function unfold<In>(inputs: In): { readonly values: Values<In>; readonly leaves: readonly Leaf[] } {
  const leaves: Leaf[] = []
  const place = (node: unknown, put: (value: unknown) => void): void => {
    if (isMeasured(node)) {
      leaves.push({ measured: node, set: put })
      put(node.value)
      return
    }
    if (typeof node !== 'object' || node === null) {
      put(node)
      return
    }
    const copy: { [name: string]: unknown } | unknown[] = Array.isArray(node) ? [] : {}
    for (const [name, child] of Object.entries(node)) {
      place(child, (value) => {
        ;(copy as { [name: string]: unknown })[name] = value
      })
    }
    put(copy)
  }
  let values: unknown
  place(inputs, (value) => {
    values = value
  })
  return { values: values as Values<In>, leaves }
}

/** Null where the moved inputs have no solution; a fault of ours is not swallowed. */
function attempt<T>(solve: () => T): T | null {
  try {
    return solve()
  } catch (error) {
    if (error instanceof DomainError && error.code !== 'internal') return null
    throw error
  }
}
