import { type Path, signatures } from '../../calls/signatures.ts'
import type { CallRead, TalkReading } from '../../talk/frames/reading.ts'
import type { CallOutcome, Dispatch } from '../run/call-outcome.ts'
import type { HelpPage } from '../run/help-page.ts'
import { typedCall } from './exactly.ts'

/** The line that was offered in place of one that was refused; null where none was. */
function lessOffered(values: unknown, commands: Dispatch['commands']): CallRead | null {
  const { line } = (values ?? {}) as { readonly line?: unknown }
  const call = typeof line === 'string' ? typedCall(line, commands) : null
  return call === null || !Object.hasOwn(signatures, call.path)
    ? null
    : { command: call.path as Path, options: { ...call.options } }
}

/** Plans that were refused with the line that mends them. */
const OFFERS_LINE = /^plan_(?:over_ceiling|ferments|too_sweet)$/

/** What is lacking in a call that was refused is an open question. */
export function questionOf(
  reading: TalkReading | null,
  outcome: CallOutcome | HelpPage,
  commands: Dispatch['commands'],
): Extract<TalkReading, { kind: 'question' }> | null {
  if (reading?.kind === 'question') return reading
  if (outcome.ok || reading?.kind !== 'call') return null
  const less = lessOffered(outcome.error.values, commands)
  if (less !== null && OFFERS_LINE.test(outcome.error.problem))
    return { kind: 'question', call: reading.call, about: { kind: 'less_of_it' }, choices: [less], leftOut: [] }
  if (outcome.error.option === undefined) return null
  const { code, problem } = outcome.error
  const isOpen = code === 'missing_option' || code === 'ambiguous' || problem === 'piece_not_weighed'
  if (!isOpen) return null
  return {
    kind: 'question',
    call: reading.call,
    about: { kind: 'lacks', option: outcome.error.option },
    choices: [],
    leftOut: [],
  }
}
