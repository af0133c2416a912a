import type { Dispatch } from '../chat/execute.ts'
import type { Screen } from './screen.ts'
import type { Speech } from './speech.ts'

/** What the terminal is given to work with; built in main. */
export interface Desk {
  readonly commands: Dispatch['commands']
  readonly speech: Speech
  readonly screen: Screen
  readonly now: () => number
  readonly log: Dispatch['log']
  readonly out: (text: string) => void
  readonly err: (text: string) => void
  /** False once nobody reads the output any more. */
  readonly isHeard: () => boolean
  readonly input: NodeJS.ReadableStream
  /** Where a prompt and what is typed appear; null where nobody sits at a terminal. */
  readonly terminal: NodeJS.WritableStream | null
}
