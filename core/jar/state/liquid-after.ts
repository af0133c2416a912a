import { abvPercent, extract, type Liquid, massG, mix, part, sugar, volumeMl, water } from '../../liquid/liquid.ts'
import { once } from '../../once.ts'
import type { Values } from '../../recipe/propagate.ts'
import { type Steeping, steepLiquids } from '../../recipe/steep.ts'
import { sweetLiquid } from '../../recipe/sweetening.ts'
import { asRead, boundBy, percentRead, withStrength } from './as-read.ts'
import { withDrySugar, withPlants, withSoaked } from './in-fruit.ts'
import { type After, EMPTY, fruitDrawn, gauged, liftedOut, parted, type State } from './liquid-changes.ts'
import type { LiquidStep } from './liquid-steps.ts'

export type StepValues = Values<readonly LiquidStep[]>
type Strained = Extract<Values<LiquidStep>, { readonly kind: 'strained' }>

/** The steps in order, as plain amounts; nothing is checked. */
export const liquidAfter = (steps: StepValues): After =>
  steps.reduce<State>((state, step) => statesAfter(state)(step), EMPTY)

/** What one step makes of a state is kept: the same steps are asked about in several ways, most of them as they were. */
const statesAfter = once((state: State) => once((step: Values<LiquidStep>) => afterStep(state, step)))

function afterStep(state: State, step: Values<LiquidStep>): State {
  switch (step.kind) {
    case 'in': {
      const { poured, jar, keptBackMl } = steepLiquids({ ...step, filterShare: 0 })
      const liquid = mix(state.liquid, jar)
      const most = mix(state.bound, poured, sweetLiquid(step.sweetenings), wrungOut(step))
      const allPoured = mix(state.poured, poured)
      return {
        ...state,
        liquid,
        expected: liquid,
        most,
        bound: most,
        poured: allPoured,
        heldMl: state.heldMl + keptBackMl,
        inFruit: withPlants(state.inFruit, step),
      }
    }
    case 'strained':
      return strained(state, step)
    case 'filtered': {
      const isTaken = step.isRacked || !state.isFiltered
      const expected = part(state.liquid, isTaken ? 1 - step.filterShare : 1)
      const liquid = step.measured === null ? expected : asRead(expected, step.measured)
      const bound = step.measured === null ? state.bound : liquid
      return { ...state, liquid, expected, most: state.bound, bound, isFiltered: state.isFiltered || !step.isRacked }
    }
    case 'fruit_sugared':
      return {
        ...state,
        expected: state.liquid,
        most: state.bound,
        inFruit: withDrySugar(state.inFruit, step),
      }
    case 'fruit_drawn':
      return fruitDrawn(state, step)
    case 'measured':
      return gauged(state, step)
    case 'taken_out':
      return liftedOut(state, step)
    case 'parted':
      return parted(state, step.kept)
  }
}

/** All that plants bring, as if they kept none of it. */
const wrungOut = ({ plants }: Values<Steeping>): Liquid =>
  mix(
    water(plants.reduce((sum, plant) => sum + plant.massG * plant.waterShare, 0)),
    sugar(plants.reduce((sum, plant) => sum + plant.massG * plant.sugarShare, 0)),
    extract(plants.reduce((sum, plant) => sum + plant.massG * plant.extractShare, 0)),
  )

/**
 * What is rinsed through the drained plants mixes with all that they keep, once and wholly, and they keep as much of that
 * mixture as before. Estimated: a quick rinse reaches less of it, a slow one more.
 */
function strained(state: State, step: Strained): State {
  const { liquid: jar, heldMl } = state
  const jarMl = volumeMl(jar)
  const keptShare = jarMl === 0 ? 0 : Math.min(1, heldMl / jarMl)
  const rinse = mix(part(jar, keptShare), water(step.rinseWaterG))
  const rinsedShare = step.rinseWaterG === 0 ? 0 : Math.max(0, 1 - heldMl / volumeMl(rinse))
  const drained = mix(part(jar, 1 - keptShare), part(rinse, rinsedShare))
  const expected = part(drained, 1 - step.filterShare)
  const like = massG(expected) === 0 ? jar : expected
  const readPercent = step.strength === null ? null : percentRead(like, step)
  const liquid = asMeasured(expected, state, step, readPercent)
  const most = mix(state.bound, water(step.rinseWaterG))
  const leftMl = Math.max(0, volumeMl(mix(jar, water(step.rinseWaterG))) - volumeMl(liquid))
  // What did not come out is in the plants, but no more of it than they hold.
  const soaks = step.rinseWaterG > 0 ? rinse : massG(liquid) > 0 ? liquid : jar
  return {
    ...state,
    liquid,
    expected,
    most,
    bound: step.measured === null ? most : liquid,
    keptBackMl: leftMl,
    inFruit: withSoaked(state.inFruit, soaks, Math.min(heldMl, leftMl)),
    readPercent,
    isFiltered: step.measured === null,
  }
}

/** What plants drink up leaves nothing; what was measured all the same is as the jar was. */
function asMeasured(
  expected: Liquid,
  { liquid: jar, poured }: State,
  step: Strained,
  readPercent: number | null,
): Liquid {
  if (step.measured === null && massG(expected) === 0) return expected
  const like = massG(expected) === 0 ? jar : expected
  const read = readPercent === null ? like : withStrength(like, boundBy(abvPercent(poured), readPercent, step))
  return step.measured === null ? read : asRead(read, step.measured)
}
