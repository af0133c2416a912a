import type { JarState, Of } from './jar-state.ts'

/** A spirit this little stronger than the target, % vol, wants no water. Common practice, no source. */
export const NO_WATER_PERCENT = 0.5

/** Whether the plan adds water or sugar to what was strained; null where no target is known. */
export function wantsSyrup({ started, strained }: JarState): boolean | null {
  const { targets } = started
  if (targets === null) return null
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
