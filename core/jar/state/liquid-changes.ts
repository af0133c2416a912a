import {
  dissolvedIn,
  type Liquid,
  liquidFrom,
  massG,
  mix,
  NOTHING,
  part,
  volumeMl,
  water,
} from '../../liquid/liquid.ts'
import type { Values } from '../../recipe/propagate.ts'
import { sweetLiquid } from '../../recipe/sweetening.ts'
import { drawnFrom, fruitPart, type InFruit, NO_FRUIT, withoutPlants } from './in-fruit.ts'
import type { LiquidStep } from './liquid-steps.ts'

type Step<Kind extends LiquidStep['kind']> = Values<Extract<LiquidStep, { readonly kind: Kind }>>

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
  /** In the strained plants and on them; before that only the juice counts. */
  readonly inFruit: InFruit
  /** What was last poured off the sugared plants; nothing before. */
  readonly drawn: Liquid
}

export interface State extends After {
  /** What the plants will keep when they are strained. */
  readonly heldMl: number
  /** `most`, or what was measured since. */
  readonly bound: Liquid
  /** True where filters have taken their share. */
  readonly isFiltered: boolean
}

export const EMPTY: State = {
  liquid: NOTHING,
  expected: NOTHING,
  most: NOTHING,
  poured: NOTHING,
  bound: NOTHING,
  heldMl: 0,
  keptBackMl: null,
  readPercent: null,
  inFruit: NO_FRUIT,
  drawn: NOTHING,
  isFiltered: false,
}

/** What plants soaked up goes with them; nothing of it comes back when the rest is strained. */
export function liftedOut(state: State, { plants }: Step<'taken_out'>): State {
  const jarMl = volumeMl(state.liquid)
  const soakedMl = Math.min(
    state.heldMl,
    plants.reduce((sum, plant) => sum + plant.massG * plant.keptMlPerG, 0),
  )
  const liquid = part(state.liquid, jarMl === 0 ? 0 : Math.max(0, 1 - soakedMl / jarMl))
  const inFruit = withoutPlants(state.inFruit, { plants })
  return { ...state, liquid, expected: liquid, heldMl: state.heldMl - soakedMl, inFruit }
}

/** What the sugared plants gave goes in, with what else does. */
export function fruitDrawn(state: State, step: Step<'fruit_drawn'>): State {
  const { drawn, left } = drawnFrom(state.inFruit, step)
  const more = mix(drawn, water(step.waterG), sweetLiquid(step.sweetenings))
  const [liquid, most] = [mix(state.liquid, more), mix(state.bound, more)]
  return { ...state, liquid, expected: liquid, most, bound: most, inFruit: left, drawn }
}

/** A share of everything stays; of a share less sure than it is large not less than nothing. */
export function parted(state: State, kept: number): State {
  const share = Math.max(0, kept)
  const of = (liquid: Liquid): Liquid => part(liquid, share)
  const liquid = of(state.liquid)
  return {
    ...state,
    liquid,
    expected: liquid,
    most: of(state.bound),
    bound: of(state.bound),
    poured: of(state.poured),
    heldMl: state.heldMl * share,
    keptBackMl: state.keptBackMl === null ? null : state.keptBackMl * share,
    inFruit: fruitPart(state.inFruit, share),
  }
}

/** As much of it as before, of the strength and sugar that were measured; what may be left of it at most is like it. */
export function gauged(state: State, { abvPercent, sugarGPerL }: Step<'measured'>): State {
  const like = (before: Liquid): Liquid =>
    massG(before) === 0
      ? before
      : liquidFrom({ ...dissolvedIn(before), volumeMl: volumeMl(before), abvPercent, sugarGPerL })
  const liquid = like(state.liquid)
  return { ...state, liquid, expected: state.liquid, most: state.bound, bound: like(state.bound) }
}
