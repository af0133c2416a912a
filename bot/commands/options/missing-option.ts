import { ChatError } from '../../chat/chat-error.ts'

/** A command lacks an option; `example`: how it is typed, null where the command's own example tells. */
export const missing = (command: string, option: string, example: string | null = null): ChatError =>
  new ChatError('missing_option', 'missing_option', { command, option, example }, { option })
