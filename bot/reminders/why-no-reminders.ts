import type { StorageError, StorageProblems } from '../../store/storage-error.ts'
import type { ConsoleText } from '../text/terminal-text.ts'
import type { Words } from '../text/words.ts'

/** Why no reminders come, in one line. */
export const noReminders = ({ problem, values }: StorageError, words: Words, text: ConsoleText): string => {
  if (problem === 'locked') return text.remindersElsewhere(values as StorageProblems['locked'])
  const sentence = words.problem<'closed'>(problem as 'closed', values as StorageProblems['closed'], 'metric')
  return text.noReminders({ sentence })
}
