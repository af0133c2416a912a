import type { CallRead } from '../../talk/frames/reading.ts'
import type { HelpText } from '../../text/help-text.ts'
import { written } from './written-call.ts'

const MOST = 3

/** Three things that it can do: the nearest to what was said, what `fits` where somebody stands, and then anything. */
export function whatItCanDo(nearest: readonly CallRead[], fits: readonly string[], help: HelpText): readonly string[] {
  const lines = nearest.map(written)
  const said = help.said().map((each) => each.said)
  // Who has begun something asks what is due before anything else.
  return [...lines, ...fits, ...(fits.length > 0 ? said.toReversed() : said)].slice(0, MOST)
}
