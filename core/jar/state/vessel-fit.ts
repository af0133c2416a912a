import { mix, volumeMl, water } from '../../liquid/liquid.ts'
import { times } from '../../quantity/measured/measured.ts'
import { liquidOf } from '../../recipe/portion.ts'
import { valuesOf } from '../../recipe/propagate.ts'
import { jarMlFor, type Plant, roomMlOf } from '../../recipe/steep.ts'
import { sweetLiquid } from '../../recipe/sweetening.ts'
import { contentsOf } from './contents.ts'
import type { JarState } from './jar-state.ts'
import { stepsOf } from './liquid-steps.ts'

/** How a vessel suits what is in a jar, mL. */
export interface VesselFit {
  readonly vesselMl: number
  /** The room that liquid and plants take; estimated while it steeps. */
  readonly filledMl: number
  /** `too_small`: it does not go in; `brim`: no room to shake or swell; `empty`: so much air browns what is in it. */
  readonly fit: 'too_small' | 'brim' | 'fits' | 'empty'
  /** The smallest usual size that suits it. */
  readonly betterMl: number
}

/** Fuller than this there is no room to shake, and glass in a freezer may burst. Common practice, no source. */
const BRIM_SHARE = 0.95
/** Less full than this there is much air over the plants. Common practice, no source. */
const EMPTY_SHARE = 0.5

const partOf = (plants: readonly Plant[], share: number): readonly Plant[] =>
  plants.map((plant) => ({ ...plant, massG: times(plant.massG, share) }))

/** What was poured in, before the plants' own juice, and the plants that are in it. */
function steeping(story: JarState): { readonly liquidMl: number; readonly plants: readonly Plant[] } {
  let [liquidMl, plants]: [number, readonly Plant[]] = [0, []]
  for (const { step } of stepsOf(story.happened)) {
    if (step.kind === 'in') {
      const { spirits, waterG, sweetenings } = valuesOf(step)
      liquidMl += volumeMl(mix(...spirits.map(liquidOf), water(waterG), sweetLiquid(sweetenings)))
      plants = [...plants, ...step.plants]
    }
    if (step.kind === 'parted') {
      const { value } = step.kept
      liquidMl *= value
      plants = partOf(plants, value)
    }
    if (step.kind === 'taken_out') {
      const out = step.plants.reduce((sum, { massG }) => sum + massG.value, 0)
      const all = plants.reduce((sum, { massG }) => sum + massG.value, 0)
      const left = all === 0 ? 0 : Math.max(0, 1 - out / all)
      plants = partOf(plants, left)
    }
  }
  return { liquidMl, plants }
}

/** Of a vessel that holds so many mL; null where there is nothing in the jar. */
export function vesselFit(story: JarState, vesselMl: number): VesselFit | null {
  const { outcome, isEmpty } = contentsOf(story)
  const inside =
    story.strained === null ? steeping(story) : { liquidMl: isEmpty ? 0 : outcome.volumeMl.value, plants: [] }
  const filledMl = roomMlOf(inside.liquidMl, inside.plants)
  if (filledMl === 0) return null
  const share = filledMl / vesselMl
  const isAir = story.strained === null && share < EMPTY_SHARE
  const fit = share > 1 ? 'too_small' : share > BRIM_SHARE ? 'brim' : isAir ? 'empty' : 'fits'
  return { vesselMl, filledMl, fit, betterMl: jarMlFor(inside.liquidMl, inside.plants) }
}
