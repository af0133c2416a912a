import type { Botanical } from '../../botanical/botanical.ts'
import { type CeilingCheck, ceilingsUsed, checkCeilings } from '../../botanical/limits/ceilings.ts'
import type { Keeping } from '../../liquid/keeping.ts'
import { abvPercent, mix, volumeMl, water } from '../../liquid/liquid.ts'
import type { MaterialId } from '../../quantity/materials.ts'
import { exactly, type Measured, times } from '../../quantity/measured/measured.ts'
import { liquidOf, type Portion } from '../portion.ts'
import { propagate } from '../propagate.ts'
import type { Outcome } from '../solve/outcome.ts'
import { type Steep, type Steeping, steepUnjudged } from '../steep.ts'
import type { SugarStays } from '../sugar-stays.ts'
import { isSweetened, timesSweetenings } from '../sweetening.ts'
import { allFinishedMl, type Targets } from '../targets.ts'
import { byTool, measuredOut } from '../tool-precision.ts'
import { drinkKeeping, keptShortly, restedShortly } from './drink-keeping.ts'
import { expectedSyrup } from './expected-syrup.ts'
import { type Filled, fillBottles, heldMl } from './fill-bottles.ts'
import { type DosedPlant, gramsWished, infusionIn, jarOf } from './jar-of.ts'
import type { PlanWish } from './plan-wish.ts'
import { chooseTargets, expectReachable } from './reach-targets.ts'
import { type Schedule, saidDays, schedule } from './schedule.ts'
import { spiritForBottles } from './spirit-for-bottles.ts'
import { steepWithin } from './steep-within.ts'
import { expectUsual, type ToldDays, toldDays, type UnknownPlant } from './unknown-plant.ts'
import { ofStrength, orAdvised } from './weak-steep-advice.ts'

export interface Plan {
  readonly steeping: Steeping
  readonly steep: Steep
  readonly plants: readonly DosedPlant[]
  readonly unknown: readonly UnknownPlant[]
  readonly spiritMl: Measured
  readonly spiritAbvPercent: Measured
  /** Water that dilutes the spirit before it meets the plants. */
  readonly dilutionMl: Measured
  readonly targets: Targets
  readonly waterG: Measured
  readonly waterMl: Measured
  /** What to sweeten with after straining, beside what went in with the plants, and how much of it. */
  readonly sweetener: MaterialId
  /** What stands for the water; null for water. The amounts of water are of it. */
  readonly filler: MaterialId | null
  readonly sugarG: Measured
  readonly syrupG: Measured
  readonly syrupMl: Measured
  /** Grams of that sugar that its water dissolves at 20 °C; null where all of it does. */
  readonly dissolvesG: number | null
  readonly outcome: Outcome
  readonly sugarStays: SugarStays
  readonly filled: Filled
  readonly ceilings: CeilingCheck
  /** What it is to become: exact, since its syrup is worked out of what is measured. `steep.keeping` is the jar's. */
  readonly keeping: Keeping
  /** Null where a plant is unknown: then only what the maker told is. */
  readonly schedule: Schedule | null
  readonly told: ToldDays
}

/** From plants and spirit, or from plants and bottles, to everything a batch needs and becomes. */
export const plan = (wish: PlanWish): Plan =>
  orAdvised(() => planAsIs(wish), {
    isSpiritGiven: wish.spirits !== null,
    spirit: (spiritAbvPercent) =>
      planAsIs({ ...wish, spiritAbvPercent, spirits: wish.spirits && ofStrength(wish.spirits, spiritAbvPercent) }),
    steepAt: wish.steepAtPercent === null ? null : (steepAtPercent) => planAsIs({ ...wish, steepAtPercent }),
    plants: (share) => planAsIs(withLess(wish, share)),
    sugar: isSweetened(wish.sweetenings)
      ? (share) => planAsIs({ ...wish, sweetenings: timesSweetenings(wish.sweetenings, share) })
      : null,
  })

const withLess = (wish: PlanWish, share: number): PlanWish => ({
  ...wish,
  plants: wish.plants.map((plant) => ({ ...plant, massG: plant.massG && times(plant.massG, share) })),
  unknown: wish.unknown.map((plant) => ({ ...plant, massG: times(plant.massG, share) })),
})

/** The same, without a word of what would do instead of a steep that is too weak. */
export function planAsIs(wish: PlanWish): Plan {
  const ownDays = wish.plants.map(({ botanical }) => timesOf(botanical))
  const dated = { ...wish, kept: wish.kept ?? saidDays(wish.steepFor) }
  const days = wish.unknown.length > 0 || ownDays.length === 0 ? null : schedule(ownDays, dated)
  const { steeping, plants } = jarOf(wish, wish.spirits ?? [portionToFind(wish)])
  const weighed = plants.map(({ botanical, massG }) => ({ botanical, massG: massG.value }))
  const steeped = wish.isPoured === true ? steepUnjudged(steeping) : steepWithin(steeping, weighed)
  expectUsual(wish.unknown, steeped.pouredMl)
  const targets = chooseTargets(steeped.infusion, wish.named, gramsWished(wish))
  expectReachable(steeped.infusion, targets, wish.named, gramsWished(wish).gram)
  const keeping = drinkKeeping(targets, wish)
  const sweetened = expectedSyrup(steeping, targets, wish)
  const { spiritMl, spiritAbvPercent } = propagate({ spirits: steeping.spirits }, ({ spirits }) => {
    const poured = mix(...spirits.map(liquidOf))
    return { spiritMl: volumeMl(poured), spiritAbvPercent: abvPercent(poured) }
  })
  const finishedMl = sweetened.outcome.volumeMl.value
  return {
    steeping,
    plants,
    unknown: wish.unknown,
    ...sweetened,
    steep: steeped,
    spiritMl,
    spiritAbvPercent,
    dilutionMl: byTool(times(steeping.waterG, volumeMl(water(1))), measuredOut),
    targets,
    filled: fillBottles(finishedMl, wish.bottles),
    ceilings: (wish.isPoured === true ? ceilingsUsed : checkCeilings)(
      weighed,
      steeped.pouredMl,
      allFinishedMl(steeped.jar, targets),
    ),
    keeping,
    schedule: days === null || keeping === 'keeps' ? days : schedule(ownDays.map(restedShortly), keptShortly(dated)),
    told: toldDays(wish.start, wish.steepFor),
  }
}

/** Its own days, as `schedule` takes them. */
export const timesOf = ({ timesDays: { tasteFrom, usualMin, usualMax, restMin } }: Botanical) => ({
  tasteDays: tasteFrom,
  usualMinDays: usualMin,
  usualMaxDays: usualMax,
  restMinDays: restMin,
})

const portion = (spiritMl: number, abvPercent: Measured): Portion => ({
  amount: measuredOut(spiritMl),
  by: 'volume',
  atC: 20,
  abvPercent,
  abvAtC: 20,
  sugarGPerL: exactly(0),
})

function portionToFind(wish: PlanWish): Portion {
  const exact = exactly(wish.spiritAbvPercent.value)
  const spiritMl = spiritForBottles({
    infusionOf: (spiritMl) => infusionIn(jarOf(wish, [portion(spiritMl, exact)])),
    targetsOf: (infusion) => chooseTargets(infusion, wish.named, gramsWished(wish)),
    wantedMl: heldMl(wish.bottles) ?? 0,
  })
  return portion(spiritMl, wish.spiritAbvPercent)
}
