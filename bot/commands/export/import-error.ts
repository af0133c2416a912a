import { ChatError } from '../../chat/chat-error.ts'
import type { FileProblems } from '../../chat/file-problems.ts'

/** What is wrong with a jar of a file, or with one of its entries. */
export type WrongJar = FileProblems['import_jar']

export const wrongEntry = (wrong: WrongJar): ChatError => new ChatError('bad_value', 'import_jar', wrong)
