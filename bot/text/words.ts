import type { Problems } from '../../core/domain-error.ts'
import type { StorageProblems } from '../../store/storage-error.ts'
import type { ChatProblems } from '../chat/chat-error.ts'
import type { PictureText } from './en/pictures.ts'
import type { sentences } from './en/sentences.ts'
import type { Format } from './format.ts'
import type { Kitchen } from './kitchen.ts'

/** The groups of sentences a language has; each is a map from key to a function of its values. */
type Sentences = typeof sentences

/** One sentence to be said: which one, and the values it needs. A language turns it into words. */
export type Message<Group extends keyof Sentences> = {
  [Key in keyof Sentences[Group]]: {
    readonly group: Group
    readonly key: Key
    readonly values: ValuesOf<Sentences[Group][Key]>
  }
}[keyof Sentences[Group]]

/** What a sentence has to be told: nothing where it takes no values. */
type ValuesOf<Sentence> = Sentence extends () => string
  ? undefined
  : Sentence extends (values: infer Values, format: Format) => string
    ? Values
    : never

/** Every problem that can reach a person: core's, the chat's and the store's. */
export type AllProblems = Problems & ChatProblems & StorageProblems

/** Turns messages into a person's language and measures. */
export interface Words {
  say<Group extends keyof Sentences>(message: Message<Group>, kitchen: Kitchen): string
  problem<Key extends keyof AllProblems>(key: Key, values: AllProblems[Key], kitchen: Kitchen): string
  /** What stands on pictures, and how numbers and days are written there. */
  onPictures(kitchen: Kitchen): { readonly text: PictureText; readonly format: Format }
}
