import { holdsOnlyFinite } from '../../core/only-finite.ts'
import type { Reply } from './reply.ts'

const hasAbsent = (data: unknown): boolean => {
  if (data === undefined) return true
  if (typeof data !== 'object' || data === null) return false
  return Object.values(data).some(hasAbsent)
}

/** A reply with a number that is none, or with data that would vanish from JSON, is a fault of ours. */
export const verifyReply = (reply: Reply): void => {
  if (!holdsOnlyFinite(reply)) throw new RangeError('a number in the reply is not finite')
  if (hasAbsent(reply.data)) throw new RangeError('a value in the data is absent')
}
