import { once } from '../../once.ts'
import { worthAdding } from '../../recipe/solve/worth-adding.ts'
import type { JarState, Of } from './jar-state.ts'
import { isLeftAsItIs } from './left-unsweetened.ts'
import { plannedSyrup } from './planned-syrup.ts'

/** A spirit this little stronger than the target, % vol, wants no water. Common practice, no source. */
const NO_WATER_PERCENT = 0.5

/** Whether what was strained is already what was planned, to what a kitchen can tell: its sugar went in with the plants. */
const isThereAlready = once((story: JarState): boolean => {
  if (story.strained === null || story.sweetened !== null) return false
  const planned = plannedSyrup(story)
  if (planned === null) return false
  const { sugarG, waterMl } = worthAdding(planned.syrup)
  return sugarG === 0 && waterMl === 0
})

/** Whether the plan adds water or sugar to what was strained; null where no target is known. */
export function wantsSyrup(story: JarState): boolean | null {
  const { started, strained } = story
  const { targets } = started
  if (isLeftAsItIs(story.happened)) return false
  if (targets === null) return null
  if (isThereAlready(story)) return false
  const strengthsPercent = started.spirits.map(({ abvPercent }) => abvPercent.value)
  const abvPercent = strained?.strength?.abvPercent.value ?? Math.max(0, ...strengthsPercent)
  return targets.sugarGPerL > 0 || abvPercent - targets.abvPercent > NO_WATER_PERCENT
}

/** The entry from which bottling is counted: the last syrup, or straining where none is wanted. */
export const settlesFrom = (story: JarState): Of<'sweetened'> | Of<'strained'> | null =>
  story.sweetened ?? (wantsSyrup(story) === false ? story.strained : null)

/** Whether a strained jar waits for its syrup, as far as is known; what sugar draws out of its fruit comes first. */
export const isSweetening = (story: JarState): boolean =>
  story.onFruit === null && story.sweetened === null && story.bottled === null && wantsSyrup(story) !== false
