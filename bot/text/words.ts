import type { Call } from '../calls/call.ts'
import type { Invocation } from '../calls/invocation.ts'
import type { Format } from './format.ts'
import type { AllProblems, Messages } from './language.ts'
import type { Kitchen } from './messages/kitchen.ts'
import type { PictureText } from './picture-text.ts'

/** One sentence to be said: which one, and the values it needs. A language turns it into words. */
export type Message<Group extends keyof Messages> = {
  [Key in keyof Messages[Group]]: {
    readonly group: Group
    readonly key: Key
    readonly values: Messages[Group][Key]
  }
}[keyof Messages[Group]]

/** Turns messages into a person's language and measures. */
export interface Words {
  say<Group extends keyof Messages>(message: Message<Group>, kitchen: Kitchen): string
  /** What to type for a call. */
  line(call: Call | Invocation): string
  problem<Key extends keyof AllProblems>(key: Key, values: AllProblems[Key], kitchen: Kitchen): string
  /** What stands on pictures, and how numbers and days are written there. */
  onPictures(kitchen: Kitchen): { readonly text: PictureText; readonly format: Format }
}
