import { DomainError } from '../domain-error.ts'
import type { Measured } from '../quantity/measured.ts'

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
  const central = solve(valuesOf(inputs))
  const names = Object.keys(central) as (keyof Out & string)[]
  const squares = new Map<keyof Out & string, number>(names.map((name) => [name, 0]))
  const count = moved(inputs, -1, 0).count
  for (let index = 0; index < count; index++) {
    const up = moved(inputs, index, 1)
    if (up.plusMinus === 0) continue
    const high = attempt(() => solve(up.values))
    const low = attempt(() => solve(moved(inputs, index, -1).values))
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
export const valuesOf = <In>(inputs: In): Values<In> => moved(inputs, -1, 0).values

const isMeasured = (x: object): x is Measured => 'value' in x && 'plusMinus' in x

/** The inputs as plain numbers, the `index`th measured one moved by `sign` times its ±. */
function moved<In>(inputs: In, index: number, sign: number): { values: Values<In>; count: number; plusMinus: number } {
  let count = 0
  let plusMinus = 0
  const walk = (node: unknown): unknown => {
    if (typeof node !== 'object' || node === null) return node
    if (isMeasured(node)) {
      const mine = count++ === index
      if (mine) plusMinus = node.plusMinus
      return mine ? node.value + sign * node.plusMinus : node.value
    }
    if (Array.isArray(node)) return node.map(walk)
    return Object.fromEntries(Object.entries(node).map(([name, child]) => [name, walk(child)]))
  }
  return { values: walk(inputs) as Values<In>, count, plusMinus }
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
