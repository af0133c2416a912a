import type { Asker } from '../../chat/command.ts'
import type { Dispatch } from '../../chat/run/call-outcome.ts'
import type { Language } from '../../text/language.ts'
import type { SaveFile } from '../files/save-file.ts'
import type { TerminalLanguage } from '../show/language-for-terminal.ts'
import type { Screen } from '../show/screen.ts'

/** What the terminal is given to work with; built in main. */
export interface TerminalSession {
  readonly commands: Dispatch['commands']
  /** Whoever sits at the terminal. */
  readonly asker: Asker
  /** Around the answers. */
  readonly speech: TerminalLanguage
  /** In an answer, for whoever it is given to. */
  readonly speechIn: (language: Language) => TerminalLanguage
  readonly screen: Screen
  /** Where the files of replies go. */
  readonly saveFile: SaveFile
  readonly now: () => number
  readonly log: Dispatch['log']
  readonly out: (text: string) => void
  readonly err: (text: string) => void
  /** False once nobody reads the output any more. */
  readonly isHeard: () => boolean
  readonly input: NodeJS.ReadableStream
  /** Ends the chat as /quit does. */
  readonly ended: AbortSignal
  /** Reminds whoever sits at the terminal, at once and until it is stopped, each time as a block of text. */
  readonly remind: (say: (text: string) => void) => Promise<() => Promise<void>>
  /** Where a prompt and what is typed appear; null where nobody sits at a terminal. */
  readonly terminal: NodeJS.WritableStream | null
}
