import { contentsOf } from './contents.ts'
import type { JarState } from './jar-state.ts'

/** Less than a hydrometer tells, % vol. Common practice, no source. */
export const NOTICED_PERCENT = 0.1

/** Whether the entry `seq` made a jar stronger; null where nobody would notice. */
export function madeStronger(story: JarState, seq: number): boolean | null {
  const before = { ...story, happened: story.happened.filter((entry) => entry.seq !== seq) }
  const [is, was] = [story, before].map((each) => contentsOf(each).outcome.abvPercent.value) as [number, number]
  return Math.abs(is - was) < NOTICED_PERCENT ? null : is > was
}
