import type { PostedIn } from '../../store/person.ts'
import type { Call } from '../calls/call.ts'
import type { Kitchen } from '../text/messages/kitchen.ts'
import type { Heading } from '../text/more-text.ts'
import type { Message, Words } from '../text/words.ts'
import type { Deep } from './depth.ts'

/** A command already filled in, offered after a reply. */
export interface Action extends Deep {
  readonly label: Message<'actions'>
  readonly call: Call
  /** Who may press it; left out, only whoever was answered. */
  readonly audience?: 'anyone'
  /** Left out where there are no buttons, and where it has no room on one: it can be typed without being offered. */
  readonly isButtonOnly?: true
  /** A button opens its line in a form, to be changed before it is sent. */
  readonly isChangedFirst?: true
  /** Nothing of whoever was answered is in it: a yes runs it not, and it is not remembered as theirs. */
  readonly isExample?: true
}

export interface Row extends Deep {
  readonly label: Message<'rows'>
  readonly cell: Message<'cells'>
  /** What to type for it, beside it; a surface with buttons has one among the actions instead. */
  readonly call?: Call
}

/** A value that survives JSON: full doubles, null where unknown, never absent. */
export type Data = null | boolean | number | string | readonly Data[] | { readonly [name: string]: Data }

/** A file that goes with a reply: a picture, a calendar. */
export interface ReplyFile {
  /** Our own, with its ending: `larderbell.ics`; lower-case letters, digits and dashes, nothing that anybody typed. */
  readonly name: string
  /** `image/png`; pictures are shown, everything else is offered. */
  readonly mime: string
  /** What is in it, for whoever cannot see it. */
  readonly alt: Message<'files'>
  /** Makes it, in the language and measures of whoever asked. Called once; what it throws is told, and the text stands. */
  draw(words: Words, kitchen: Kitchen): Promise<Uint8Array>
}

/**
 * What a command answers: data that every surface renders. The answer first, the worst caution first. It has two depths:
 * what stands on the first screen, and what is said to whoever asks for more. A fact stands at one of them.
 */
export interface Reply {
  readonly headline: Message<'headlines'>
  /** Sentences right under it, on the first screen; left out: none. */
  readonly under?: readonly Message<'headlines'>[]
  readonly table: readonly Row[]
  /** How sure the numbers are; always one question deeper. */
  readonly sure: readonly Message<'sure'>[]
  /** Plain sentences under the answer. */
  readonly notes: readonly (Message<'notes'> & Deep & { readonly heading?: Heading })[]
  readonly cautions: readonly (Message<'cautions'> & Deep)[]
  readonly actions: readonly Action[]
  /** For `--json`; see contracts in the developers' guide. */
  readonly data: { readonly [name: string]: Data }
  /** The units the person typed in, which the reply speaks too. */
  readonly kitchen: Kitchen
  /** Left out by the many replies that are text alone. At most ten, each of 10 MiB at most. */
  readonly files?: readonly ReplyFile[]
  /** `public`: for all who are there to see; left out, for whoever asked, to show on; `confidential`: for nobody else. */
  readonly visibility?: 'public' | 'confidential'
  /** Told where the answer stands, where a surface has such places and others can see it. */
  posted?(at: PostedIn): Promise<void>
}
