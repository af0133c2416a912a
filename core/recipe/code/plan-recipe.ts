import { DomainError, unlessRefused } from '../../domain-error.ts'
import { abvPercent, ethanolG } from '../../liquid/liquid.ts'
import type { Measured } from '../../quantity/measured/measured.ts'
import { daysBetween } from '../../quantity/time/calendar-day.ts'
import { type Batch, timesSpirits } from '../batch.ts'
import { heldMl } from '../plan/fill-bottles.ts'
import { type Plan, planAsIs, timesOf } from '../plan/plan.ts'
import type { PlanWish } from '../plan/plan-wish.ts'
import type { NamedTargets } from '../plan/reach-targets.ts'
import { schedule } from '../plan/schedule.ts'
import { ofStrength, orAdvised } from '../plan/weak-steep-advice.ts'
import type { Portion } from '../portion.ts'
import { poured, recipeWish, type SaidOfBatch, spiritHolding, steepsAtPercent } from './recipe-wish.ts'

/** What there is to make a recipe from. */
export interface AtHand {
  /** Null: as much as it takes. */
  readonly spirits: readonly Portion[] | null
  /** Of the spirit to get, where none is at hand; null: the recipe's own. */
  readonly spiritAbvPercent: Measured | null
  /** What there is of some of its plants, by their place in the recipe, g. */
  readonly plants: readonly { readonly index: number; readonly massG: number }[]
}

/** What there was least of. */
export type CodeLimit =
  | { readonly by: 'spirit' | 'bottles' }
  /** The plant's place in the recipe. */
  | { readonly by: 'plant'; readonly index: number }

export interface RecipePlan {
  readonly wish: PlanWish
  readonly plan: Plan
  /** How many times the recipe. */
  readonly factor: number
  /** Null where it is made as it is. */
  readonly limit: CodeLimit | null
  /** How much of the spirit at hand goes in, 0 to 1. */
  readonly spiritShare: number
  /** In which the recipe itself steeps, before the plants. */
  readonly recipeAbvPercent: number
  /** Of the spirit taken, before water. */
  readonly abvPercent: number
  /** As long as its plants are usually steeped, whatever the recipe says. */
  readonly usual: { readonly fromDays: number; readonly byDays: number }
}

type Scale = { readonly factor: number; readonly limit: CodeLimit | null }

const least = (scales: readonly Scale[]): Scale =>
  scales.reduce((one, other) => (other.factor < one.factor ? other : one), {
    factor: Number.POSITIVE_INFINITY,
    limit: null,
  })

/** A bottle that is larger by less is the same one. */
const ROUNDING_SHARE = 1e-9

/**
 * A recipe with what is at hand: by the alcohol of the spirit, so that a glass holds as much of the plants; by the plants
 * and the bottles, whichever there is least of. Throws what `plan` throws, and `spirit_too_weak` where the recipe's own
 * strength and sweetness cannot be had of this spirit.
 */
export const planRecipe = (batch: Batch, atHand: AtHand, asked: SaidOfBatch): RecipePlan =>
  orAdvised(() => recipeAsIs(batch, atHand, asked), {
    isSpiritGiven: atHand.spirits !== null,
    spirit: (abvPercent) => recipeAsIs(batch, spiritInstead(atHand, abvPercent), asked).plan,
    steepAt:
      asked.steepAtPercent === null
        ? null
        : (steepAtPercent) => recipeAsIs(batch, atHand, { ...asked, steepAtPercent }).plan,
    // They go by the spirit: fewer of them are less of it all.
    plants: null,
    sugar: null,
  })

const spiritInstead = (atHand: AtHand, abvPercent: Measured): AtHand =>
  atHand.spirits === null
    ? { ...atHand, spiritAbvPercent: abvPercent }
    : { ...atHand, spirits: ofStrength(atHand.spirits, abvPercent) }

function recipeAsIs(batch: Batch, atHand: AtHand, asked: SaidOfBatch): RecipePlan {
  const ownG = ethanolG(poured(batch.spirits))
  const spiritFactor = atHand.spirits === null ? null : ethanolG(poured(atHand.spirits)) / ownG
  const spiritsFor = (factor: number): readonly Portion[] | null => {
    if (atHand.spirits !== null) return timesSpirits(atHand.spirits, factor / spiritFactor!)
    return atHand.spiritAbvPercent === null ? null : spiritHolding(factor * ownG, atHand.spiritAbvPercent)
  }
  const made = (scale: Scale): RecipePlan => {
    const { factor } = scale
    const wish = recipeWish(batch, factor, spiritsFor(factor), asked)
    return {
      wish,
      plan: planned(batch, wish, asked),
      ...scale,
      spiritShare: spiritFactor === null ? 1 : factor / spiritFactor,
      recipeAbvPercent: steepsAtPercent(batch),
      abvPercent: abvPercent(poured(wish.spirits!)),
      usual: usualDays(wish),
    }
  }
  const first = least([
    ...(spiritFactor === null ? [] : [{ factor: spiritFactor, limit: { by: 'spirit' } as const }]),
    ...atHand.plants.map(({ index, massG }) => ({
      factor: massG / batch.plants[index]!.massG.value,
      limit: { by: 'plant', index } as const,
    })),
  ])
  const isFree = first.limit === null
  const scaled = made(isFree ? { factor: 1, limit: null } : first)
  const wantedMl = heldMl(asked.bottles)
  if (wantedMl === null) return scaled
  // All of a batch grows alike, so that the bottles ask for one more step only.
  const share = wantedMl / scaled.plan.outcome.volumeMl.value
  if (!isFree && share >= 1 - ROUNDING_SHARE) return scaled
  return made({ factor: scaled.factor * share, limit: { by: 'bottles' } })
}

/** As long as these plants are usually steeped. */
export function usualDays({ plants, start }: Pick<PlanWish, 'plants' | 'start'>): RecipePlan['usual'] {
  const { strainFrom, strainBy } = schedule(
    plants.map(({ botanical }) => timesOf(botanical)),
    { start, readyBy: null },
  )
  return { fromDays: daysBetween(strainFrom, start), byDays: daysBetween(strainBy, start) }
}

function planned({ targets }: Batch, wish: PlanWish, { named }: SaidOfBatch): Plan {
  try {
    return planAsIs(wish)
  } catch (error) {
    const isTheirs = targets !== null && named.abvPercent === undefined && named.sugarGPerL === undefined
    if (!isTheirs || !(error instanceof DomainError)) throw error
    if (error.problem !== 'infusion_too_weak') throw error
    const { toAbvPercent, toSugarGPerL, strongestAbvPercent, sweetestGPerL } =
      error.values as DomainError<'infusion_too_weak'>['values']
    // Rounded to what is surely reached; and own sugar, which nothing takes out, may be in the way.
    const orNull = (most: number | null, step: number, named: (value: number) => Partial<NamedTargets>) => {
      const value = Math.floor((most ?? 0) / step) * step
      const isMade = most !== null && isPlanned({ ...wish, named: { ...wish.named, ...named(value) } })
      return isMade ? value : null
    }
    throw new DomainError('unreachable', 'spirit_too_weak', {
      spiritAbvPercent: abvPercent(poured(wish.spirits!)),
      toAbvPercent,
      toSugarGPerL,
      strongestAbvPercent: orNull(strongestAbvPercent, 0.5, (abvPercent) => ({ abvPercent })),
      sweetestGPerL: orNull(sweetestGPerL, 1, (sugarGPerL) => ({ sugarGPerL })),
    })
  }
}

const isPlanned = (wish: PlanWish): boolean => unlessRefused(() => planAsIs(wish)) !== null
