import { z } from 'zod'
import { option } from '../../calls/option.ts'

export const ASK = 'ask'

/** A sentence is all that it takes: a command only where there is no other line to type. */
export const askCommand = {
  path: ASK,
  input: z.object({ text: option({ read: (text) => text, write: (text) => text, most: 1000 }) }),
} as const
