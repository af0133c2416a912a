import type { CommandText } from '../text/command-text.ts'
import type { commands } from './index.ts'

type Listed = (typeof commands)[number]

/** A text for every command and each of its options: one that is missing does not compile. */
export type CommandTexts = {
  readonly [Path in Listed['path']]: CommandText & {
    readonly options: { readonly [Name in keyof Extract<Listed, { path: Path }>['input']['shape']]: string }
  }
}
