import { isRecord, type Json } from './json.ts'

/** What is wrong with a payload, and where in it. */
export interface Problem {
  readonly path: readonly (string | number)[]
  readonly message: string
}

export const problem = (path: Problem['path'], message: string): Problem => ({ path, message })

export const showProblem = ({ path, message }: Problem): string => `${path.join('.') || '(body)'}: ${message}`

/** The tree of `_errors` in which Discord answers 50035. */
export const errorTree = (problems: readonly Problem[]): Json => {
  const root: Record<string, unknown> = {}
  for (const { path, message } of problems) {
    let node = root
    for (const step of path) {
      const next = isRecord(node[step]) ? (node[step] as Record<string, unknown>) : {}
      node[step] = next
      node = next
    }
    const errors = Array.isArray(node._errors) ? node._errors : []
    node._errors = [...errors, { code: 'BASE_TYPE_INVALID', message }]
  }
  return root
}

/** The values that occur more than once. */
export const repeated = <Value>(values: readonly Value[]): readonly Value[] => [
  ...new Set(values.filter((value, index) => values.indexOf(value) !== index)),
]
