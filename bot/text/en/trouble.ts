import type { TroubleProblems } from '../../../core/trouble/problems.ts'
import type { Written } from '../language.ts'
import { either } from './phrases.ts'

/** What cannot be asked of a trouble. */
export const troubleProblems = {
  unknown_symptom: ({ typed, nearest }) => {
    const meant = nearest.map((name) => `“${name}”`)
    const question =
      meant.length === 0
        ? 'What do you see, smell or taste? Say cloudy, bitter or fizzing, for example.'
        : `Do you mean ${either(meant)}?`
    return `I don’t know “${typed}” as a trouble. ${question}`
  },
} satisfies Written<TroubleProblems>
