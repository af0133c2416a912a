import type { StorageProblems } from '../../store/storage-error.ts'
import type { Sayings } from './sayings.ts'

/** The terminal's own words: greeting, help, usage and the marks around a reply. */
export interface ConsoleText
  extends Sayings<'prompt' | 'tokenShown' | 'goodbye' | 'commands' | 'more' | 'options' | 'examples'> {
  greeting(values: { example: string }): readonly string[]
  remindersElsewhere(values: StorageProblems['locked']): string
  setAside(values: { file: string; day: string | null; folder: string; userId: string }): string
  noReminders(values: { sentence: string }): string
  fileSaved(values: { path: string }): string
  fileFailed(values: { name: string; code: string | null }): string
  /** The exact line that a sentence was understood as. */
  readAs(line: string): string
  action(label: string, line: string): string
  /** What may be said for the line of an action, by its label; null where only the line will do. */
  saying(key: string): string | null
  atLine(number: number, sentence: string): string
  option(text: string, required: boolean): string
  usage(values: { example: string }): readonly string[]
}
