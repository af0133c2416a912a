import type { CauseText } from '../messages/trouble.ts'
import { bound } from './phrases.ts'

/** A cause as it’s said: what it is, how it’s told from others, what to do, and what else there is to know. */
export const told = (cause: string, tell: string, todo: string, more: string | null = null): CauseText => ({
  cause: bound(cause),
  tell: bound(tell),
  todo: bound(todo),
  more: more === null ? null : bound(more),
})
