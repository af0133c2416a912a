import { attempt, type Dispatch, execute, type Failure, type Outcome } from '../chat/execute.ts'
import { type HelpPage, help } from '../chat/help.ts'
import { explain } from './explain.ts'
import { render } from './render.ts'
import { renderHelp } from './render-help.ts'
import type { Screen } from './screen.ts'
import type { Speech } from './speech.ts'

/** What became of a line, and the words to print. */
export interface Answer {
  readonly text: string
  readonly failure: Failure | null
}

/** Turns a line's outcome into what is printed. */
export type Show = (outcome: Outcome | HelpPage, speech: Speech) => string

export const showText =
  (screen: Screen): Show =>
  (outcome, speech) => {
    if (!outcome.ok) return explain(outcome.path, outcome.error, speech)
    return 'reply' in outcome ? render(outcome.reply, speech, screen) : renderHelp(outcome, speech, screen)
  }

/** Answers one line. A fault in the wording is excused like any other. */
export const answer = (line: string, dispatch: Dispatch, speech: Speech, show: Show): Answer => {
  const asked = attempt(
    () => help(line, dispatch.commands, speech.commands),
    () => null,
    dispatch.log,
  )
  const outcome = asked.ok ? (asked.result ?? execute(line, dispatch)) : asked
  const called = () => (outcome.path === null ? null : { path: outcome.path, options: {} })
  const shown = attempt(() => show(outcome, speech), called, dispatch.log)
  if (shown.ok) return { text: shown.result, failure: outcome.ok ? null : outcome }
  return { text: show(shown, speech), failure: shown }
}
