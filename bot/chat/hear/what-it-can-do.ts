import { lineOf } from '../../calls/write-line.ts'
import type { CallRead } from '../../talk/frames/reading.ts'
import type { HelpText } from '../../text/help-text.ts'

const MOST = 3

/** Three things that it can do, the nearest to what was said first. */
export function whatItCanDo(nearest: readonly CallRead[], help: HelpText): readonly string[] {
  const lines = nearest.map(({ command, options }) => lineOf({ path: command, options }))
  return [...lines, ...help.said().map(({ said }) => said)].slice(0, MOST)
}
