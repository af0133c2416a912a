import { refusedIn } from '../../../core/botanical/refuse/refused-in.ts'
import { asked, type Heard } from './heard.ts'

/** What says enough already, or says that nobody knows what was done. */
const SAYS_IT: ReadonlySet<string> = new Set(['refused', 'over_ceiling', 'unsure'])

/**
 * What became of a line with its slash. One that did not run, for whatever reason, may name a poison where nothing was read
 * (`/jar add lemon 500 ml meths`): that is said before the slip of the pen is.
 */
export function poisonNamed(line: string, heard: Heard): Heard {
  const { outcome } = heard
  if (outcome.ok || SAYS_IT.has(outcome.error.code) || SAYS_IT.has(outcome.error.problem)) return heard
  const danger = refusedIn(line)[0]
  if (danger === undefined) return heard
  const { code, problem, values } = danger.problem
  return asked(null, { code, problem, values }, null)
}
