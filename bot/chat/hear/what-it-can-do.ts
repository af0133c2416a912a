import { lineOf } from '../../calls/write-line.ts'
import type { CallRead } from '../../talk/frames/reading.ts'

/** What may be said to begin with, in sentences that are understood. */
const BEGIN = ['10 lemons and a litre of 95%', 'how much ginger per litre?', 'what’s on?'] as const

const MOST = 3

/** Three things that it can do, the nearest to what was said first. */
export function whatItCanDo(nearest: readonly CallRead[]): readonly string[] {
  const lines = nearest.map(({ command, options }) => lineOf({ path: command, options }))
  return [...lines, ...BEGIN].slice(0, MOST)
}
