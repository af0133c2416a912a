import type { TalkReading } from '../../talk/frames/reading.ts'
import type { Kitchen } from '../../text/messages/kitchen.ts'
import type { DepthShown } from '../depth.ts'
import type { CallOutcome, Failure } from '../run/call-outcome.ts'
import type { HelpPage } from '../run/help-page.ts'
import type { MoreLead } from '../run/more.ts'

/** What became of a line that somebody typed, and how it was understood. */
export interface Heard {
  readonly outcome: CallOutcome | HelpPage
  /** The exact line; null where it was exact already, or where no command was meant. */
  readonly read: string | null
  /** The answers to a question, as lines. */
  readonly choices: readonly string[]
  /** What is shown of the reply; left out: what the surface usually shows. */
  readonly shown?: DepthShown
  /** Of the rest of a reply: how old it is, or that there is none. */
  readonly lead?: MoreLead
  readonly kitchen?: Kitchen
  /** What else the sentence told of, in order, each answered by itself. */
  readonly also?: readonly Heard[]
}

/** What was understood, and what of it is to be remembered. */
export interface Understood {
  readonly heard: Heard
  readonly reading: TalkReading | null
  /** Kept already, deed by deed. */
  readonly isRemembered?: true
}

export const heard = (
  outcome: CallOutcome | HelpPage,
  read: string | null = null,
  choices: readonly string[] = [],
): Heard => ({
  outcome,
  read,
  choices,
})

/** A question, or a sentence that was not understood: nothing was done. */
export const asked = (
  path: string | null,
  error: Failure['error'],
  read: string | null,
  choices: readonly string[] = [],
): Heard => heard({ ok: false, path, error, kitchen: 'metric' }, read, choices)
