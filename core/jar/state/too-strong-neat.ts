import { isTooStrongNeat } from '../../liquid/neat.ts'
import type { Measured } from '../../quantity/measured/measured.ts'
import { contentsOf } from './contents.ts'
import type { JarState } from './jar-state.ts'

/** The strength of what is bottled or opened, not done yet, and too strong to be drunk as it is; else null. */
export function strengthServedNeat(story: JarState): Measured | null {
  const { bottled, happened, ended } = story
  if (ended !== null || (bottled === null && !happened.some(({ kind }) => kind === 'opened'))) return null
  const { outcome, isEmpty } = contentsOf(story)
  return isEmpty || !isTooStrongNeat(outcome.abvPercent.value) ? null : outcome.abvPercent
}
