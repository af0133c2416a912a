import { isTooStrongNeat } from '../../liquid/neat.ts'
import type { Syrup } from '../../recipe/solve/syrup.ts'
import { bottlesLeft } from '../state/bottle-stock.ts'
import { contentsOf } from '../state/contents.ts'
import { movedByLatePlants } from '../state/late-plants.ts'
import { plantsDue } from '../state/later-plants.ts'
import { plannedSyrup } from '../state/planned-syrup.ts'
import type { AskedOfJar } from './asked-today.ts'

type Reminded = Pick<AskedOfJar, 'story' | 'duty'>

/** Its strength, where it is ready and nobody should drink it as it is. */
function tooStrongOf({ story, duty }: Reminded) {
  if (duty.kind !== 'ready') return null
  const { abvPercent } = contentsOf(story).outcome
  return isTooStrongNeat(abvPercent.value) ? { abvPercent, isDiluted: story.sweetened !== null } : null
}

const sweetenedWith = ({ sweetener, filler, waterMl, sugarG, dissolvesG }: Syrup) => ({
  sweetener,
  filler,
  waterMl,
  sugarG,
  dissolvesG,
})

/** The facts of a jar that a reminder's sentence needs. */
export function remindedJar({ story, duty }: Reminded) {
  const sweetening = duty.kind === 'sweeten' ? plannedSyrup(story) : null
  return {
    name: story.name,
    fromDay: movedByLatePlants(story).started.days.strainFrom,
    byDay: duty.by,
    plants: duty.kind === 'add' ? plantsDue(story, duty.day).map(({ id, name }) => ({ id, name })) : [],
    syrup:
      sweetening === null
        ? null
        : { ...sweetenedWith(sweetening.syrup), isEstimated: contentsOf(story).volume === 'estimated' },
    bottles: duty.kind === 'drink' ? bottlesLeft(story) : null,
    strong: tooStrongOf({ story, duty }),
  }
}
