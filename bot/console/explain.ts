import type { ChatProblems } from '../chat/chat-error.ts'
import type { Problem } from '../chat/execute.ts'
import { clean } from './clean.ts'
import type { Speech } from './speech.ts'

/** The sentence for a problem; one about a missing option shows the command in use. */
export const explain = (path: string | null, { problem, values }: Problem, { words, commands }: Speech): string => {
  if (problem !== 'missing_option') return clean(words.problem(problem, values, 'metric'))
  const example = path === null ? null : (commands[path]?.examples[0] ?? null)
  const missing = values as ChatProblems[typeof problem]
  return clean(words.problem(problem, { ...missing, example }, 'metric'))
}
