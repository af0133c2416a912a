import type { Surface } from '../../reminders/delivery.ts'
import { languageFor, type Spoken } from '../../text/language.ts'
import { terminalLanguage } from '../show/language-for-terminal.ts'
import { render } from '../show/render.ts'
import type { Screen } from '../show/screen.ts'

export interface Sitting extends Spoken {
  /** Whoever sits at the terminal; nobody else is reached there. */
  readonly userId: string
  readonly screen: Screen
  readonly say: (text: string) => void
  readonly isHeard: () => boolean
}

/** Reminders in the terminal. It remembers what it printed; what an earlier one printed, nobody can tell. */
export function consoleSurface({ userId, screen, say, isHeard, ...spoken }: Sitting): Surface {
  const printed = new Set<string>()
  return {
    placeOf: (wanted) => (wanted === userId ? { kind: 'console' } : null),
    after: () => null,
    async send({ nudgeId, reply, settings }) {
      if (!isHeard()) return 'failed'
      // Nobody asked, so nothing stands there to ask more of: it is said at once.
      say(render(reply, terminalLanguage(languageFor(spoken, settings)), screen, [], 'whole'))
      printed.add(nudgeId)
      return 'sent'
    },
    findSent: async ({ nudgeId }) => (printed.has(nudgeId) ? 'there' : 'unknown'),
  }
}
