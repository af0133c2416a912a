import type { Invocation } from '../../calls/invocation.ts'
import type { Problem } from './call-outcome.ts'
import type { Try } from './example-tried.ts'
import { lineWith } from './line-instead.ts'

/** What a spirit or an infusion that is too weak can still make. */
interface Reach {
  readonly strongestAbvPercent: number | null
  readonly sweetestGPerL: number | null
}

const TOO_WEAK: readonly Problem['problem'][] = ['infusion_too_weak', 'spirit_too_weak']

/** Less sugar than that nobody wishes for, g/L. */
const LEAST_WISHED_G_PER_L = 20

/** Rounded down, so that it still works. */
const down = (value: number, step: number): number => Math.floor(value / step + 1e-9) * step

/** A problem of something too weak, with the line that asks for the nearest it can become, tried: as strong as it gets, else less sweet. */
export async function withTargetsInstead(problem: Problem, call: Invocation, attempt: Try): Promise<Problem> {
  if (!TOO_WEAK.includes(problem.problem)) return problem
  const { strongestAbvPercent: strongest, sweetestGPerL: sweetest } = problem.values as unknown as Reach
  const changes = [
    ...(strongest === null ? [] : [1, 0.5].map((step) => ({ 'to-strength': `${down(strongest, step)}%` }))),
    ...(sweetest === null || sweetest < LEAST_WISHED_G_PER_L ? [] : [{ 'to-sweetness': `${down(sweetest, 10)} g/L` }]),
  ]
  for (const changed of changes) {
    const line = lineWith(call, changed)
    if ((await attempt(line)).ok) return { ...problem, values: { ...problem.values, line } as Problem['values'] }
  }
  return problem
}
