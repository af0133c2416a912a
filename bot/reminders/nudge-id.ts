import { createHash } from 'node:crypto'
import type { Nudge } from '../../store/person.ts'

const LENGTH = 24

/** The same for the same person, reminders and instant; 24 digits and letters from a to f. */
export const nudgeId = (userId: string, duties: Nudge['duties'], madeMs: number): string =>
  createHash('sha256')
    .update(JSON.stringify([userId, madeMs, duties.map(({ jarId, key }) => [jarId, key])]))
    .digest('hex')
    .slice(0, LENGTH)
