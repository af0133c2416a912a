import {
  abvPercent,
  dissolvedIn,
  extract,
  type Liquid,
  liquidFrom,
  massG,
  mix,
  NOTHING,
  part,
  sugar,
  volumeMl,
  water,
} from '../../liquid/liquid.ts'
import type { Values } from '../../recipe/propagate.ts'
import { type Steeping, steepLiquids } from '../../recipe/steep.ts'
import { sweetLiquid } from '../../recipe/sweetening.ts'
import { asRead, boundBy, percentRead, withStrength } from './as-read.ts'
import type { LiquidStep } from './liquid-steps.ts'

export type StepValues = Values<readonly LiquidStep[]>
type Strained = Extract<Values<LiquidStep>, { readonly kind: 'strained' }>

/** What steps make of a jar's liquid. */
export interface After {
  readonly liquid: Liquid
  /** What it would be, had nothing been measured in the last step. */
  readonly expected: Liquid
  /** The most that the last step can have left: nothing kept back since the measurement before, plants wrung out. */
  readonly most: Liquid
  /** Spirits and water as they were poured, together: the plants only weaken them. */
  readonly poured: Liquid
  /** What plants and filters kept at straining; null while steeping. */
  readonly keptBackMl: number | null
  /** What was read at straining, put right for what is dissolved, % vol, whatever was poured; null where nothing was. */
  readonly readPercent: number | null
}

interface State extends After {
  /** What the plants will keep when they are strained. */
  readonly heldMl: number
  /** `most`, or what was measured since. */
  readonly bound: Liquid
  /** True where filters have taken their share. */
  readonly isFiltered: boolean
}

const EMPTY: State = {
  liquid: NOTHING,
  expected: NOTHING,
  most: NOTHING,
  poured: NOTHING,
  bound: NOTHING,
  heldMl: 0,
  keptBackMl: null,
  readPercent: null,
  isFiltered: false,
}

/** The steps in order, as plain amounts; nothing is checked. */
export const liquidAfter = (steps: StepValues): After => steps.reduce(afterStep, EMPTY)

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
      }
    }
    case 'strained':
      return strained(state, step)
    case 'filtered': {
      const expected = part(state.liquid, state.isFiltered ? 1 : 1 - step.filterShare)
      const liquid = step.measured === null ? expected : asRead(expected, step.measured)
      const bound = step.measured === null ? state.bound : liquid
      return { ...state, liquid, expected, most: state.bound, bound, isFiltered: true }
    }
    case 'measured':
      return gauged(state, step)
    case 'taken_out':
      return liftedOut(state, step)
    case 'parted':
      return parted(state, step.kept)
  }
}

/** What plants soaked up goes with them; nothing of it comes back when the rest is strained. */
function liftedOut(state: State, { plants }: Values<Extract<LiquidStep, { readonly kind: 'taken_out' }>>): State {
  const jarMl = volumeMl(state.liquid)
  const soakedMl = Math.min(
    state.heldMl,
    plants.reduce((sum, plant) => sum + plant.massG * plant.keptMlPerG, 0),
  )
  const liquid = part(state.liquid, jarMl === 0 ? 0 : Math.max(0, 1 - soakedMl / jarMl))
  return { ...state, liquid, expected: liquid, heldMl: state.heldMl - soakedMl }
}

/** A share of everything stays. */
function parted(state: State, kept: number): State {
  const of = (liquid: Liquid): Liquid => part(liquid, Math.max(0, kept))
  const liquid = of(state.liquid)
  return {
    ...state,
    liquid,
    expected: liquid,
    most: of(state.bound),
    bound: of(state.bound),
    poured: of(state.poured),
    heldMl: state.heldMl * kept,
    keptBackMl: state.keptBackMl === null ? null : state.keptBackMl * kept,
  }
}

/** As much of it as before, of the strength and sugar that were measured; what may be left of it at most is like it. */
function gauged(
  state: State,
  { abvPercent, sugarGPerL }: Values<Extract<LiquidStep, { readonly kind: 'measured' }>>,
): State {
  const like = (before: Liquid): Liquid =>
    massG(before) === 0
      ? before
      : liquidFrom({ ...dissolvedIn(before), volumeMl: volumeMl(before), abvPercent, sugarGPerL })
  const liquid = like(state.liquid)
  return { ...state, liquid, expected: state.liquid, most: state.bound, bound: like(state.bound) }
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
  return {
    ...state,
    liquid,
    expected,
    most,
    bound: step.measured === null ? most : liquid,
    keptBackMl: Math.max(0, volumeMl(mix(jar, water(step.rinseWaterG))) - volumeMl(liquid)),
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
