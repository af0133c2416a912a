import type { ChatProblems } from '../../text/messages/chat-problems.ts'
import type { Problem } from './call-outcome.ts'
import type { Try } from './example-tried.ts'
import { EXAMPLES } from './option-examples.ts'

/** Makes of a whole line, as typed, the ones that may have been meant. */
const MEANT: {
  readonly [Key in keyof ChatProblems]?: (values: ChatProblems[Key], typed: string) => readonly string[]
} = {
  unknown_command: ({ typed: name, nearest }, typed) =>
    // `/lable lemon` of a jar is `/jar label lemon`.
    nearest === null
      ? []
      : [nearest, `jar ${nearest}`].map((path) => `/${typed.replace(/^\s*\/?\s*/, '').replace(name, () => path)}`),
  unknown_option: ({ typed: name, nearest }, typed) =>
    nearest === null ? [] : [typed.replace(`${name}:`, () => `${nearest}:`)],
  option_empty: ({ option }, typed) => {
    const empty = new RegExp(`(?<!\\S)${option}\\s*:\\s*(?=$|[\\p{L}-]+:)`, 'iu')
    return [...(EXAMPLES[option] ?? []).map((text) => `${option}:${text} `), ''].map((text) =>
      typed.replace(empty, () => text).trim(),
    )
  },
  colon_missing: ({ option }, typed) => [typed.replace(new RegExp(`(?<=\\s)${option}\\s+`, 'i'), () => `${option}:`)],
  quote_open: (_, typed) => [`${typed}"`],
}

/** Why a line could not be read, with the one that was meant, where that runs. */
export async function withLineMeant(problem: Problem, typed: string, attempt: Try): Promise<Problem> {
  const meant = MEANT[problem.problem as keyof ChatProblems] as
    | ((values: object, typed: string) => readonly string[])
    | undefined
  for (const line of meant?.(problem.values, typed) ?? []) {
    if (line !== typed && (await attempt(line)).ok) {
      return { ...problem, values: { ...problem.values, line } as Problem['values'] }
    }
  }
  return problem
}
