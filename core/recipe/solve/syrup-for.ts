import { DomainError } from '../../domain-error.ts'
import {
  abvPercent,
  ethanolG,
  gramsOf,
  type Liquid,
  mix,
  sugar,
  sugarG,
  sugarGPerL,
  waterG,
} from '../../liquid/liquid.ts'
import { findRoot } from '../../liquid/root.ts'
import { sugarLimitGPerL } from '../../liquid/solubility.ts'
import { apparentVolumeMlPerG } from '../../liquid/sucrose-water.ts'
import type { Targets } from '../targets.ts'
import { type Amounts, amountsFor, WATER } from './amounts-for.ts'
import { enoughG } from './root-bracket.ts'

/** Two of strength, sweetness and the syrup's sugar-to-water ratio by mass; the third follows. */
export type SyrupWish =
  | { readonly by: 'strength_and_sweetness'; readonly abvPercent: number; readonly sugarGPerL: number }
  | { readonly by: 'strength_and_ratio'; readonly abvPercent: number; readonly sugarPerWater: number }
  | { readonly by: 'sweetness_and_ratio'; readonly sugarGPerL: number; readonly sugarPerWater: number }

const SUCROSE = sugar(1)

/**
 * Grams of water and of what sweetens to add to `infusion`; throws `unreachable` with the nearest that can be had. A ratio is of what
 * sweetens, as it is weighed, to the water that is added.
 * @param gram - a gram of what sweetens; left out, of white sugar.
 * @param filler - a gram of what stands for the water; left out, of water.
 */
export function syrupFor(infusion: Liquid, wish: SyrupWish, gram: Liquid = SUCROSE, filler: Liquid = WATER): Amounts {
  switch (wish.by) {
    case 'strength_and_sweetness':
      return forTargets(infusion, wish, gram, filler)
    case 'strength_and_ratio':
      return forStrengthAndRatio(infusion, wish.abvPercent, { gram, filler, perWater: wish.sugarPerWater })
    case 'sweetness_and_ratio':
      return forSweetnessAndRatio(infusion, wish.sugarGPerL, { gram, filler, perWater: wish.sugarPerWater })
  }
}

/** Throws `sweetener_too_thin` where not even what sweetens is as sweet as that by itself. */
export function expectSweetEnough(gram: Liquid, toSugarGPerL: number): void {
  const sweetenerGPerL = sugarGPerL(gram)
  if (sugarG(gram) === 0 || toSugarGPerL >= sweetenerGPerL) {
    throw new DomainError('unreachable', 'sweetener_too_thin', { toSugarGPerL, sweetenerGPerL })
  }
}

/** Rounding of the solve, as a share of the infusion: below it a negative amount is a zero. */
const NOTHING_SHARE = 1e-9

function forTargets(infusion: Liquid, targets: Targets, gram: Liquid, filler: Liquid): Amounts {
  if (targets.sugarGPerL === 0 && sugarG(infusion) > 0)
    return { sugarG: 0, waterG: waterAlone(infusion, targets, filler) }
  expectSweetEnough(gram, targets.sugarGPerL)
  const amounts = amountsFor(infusion, targets, gram, filler)
  const nothingG = NOTHING_SHARE * (ethanolG(infusion) + waterG(infusion))
  if (amounts.sugarG < -nothingG) {
    expectSweetByFillerOnly(infusion, targets, gram, filler)
    const own = abvPercent(infusion)
    if (targets.abvPercent > own * (1 + 1e-12)) {
      throw new DomainError('unreachable', 'water_only_lowers', { abvPercent: own, toAbvPercent: targets.abvPercent })
    }
    throw new DomainError('unreachable', 'already_sweeter', {
      sugarGPerL: sugarGPerL(infusion),
      toSugarGPerL: targets.sugarGPerL,
      toAbvPercent: targets.abvPercent,
    })
  }
  if (amounts.waterG < -nothingG) {
    throw new DomainError('unreachable', 'infusion_too_weak', {
      infusionAbvPercent: abvPercent(infusion),
      toAbvPercent: targets.abvPercent,
      toSugarGPerL: targets.sugarGPerL,
      isSweetnessNamed: true,
      ...nearest(infusion, targets, gram),
    })
  }
  return {
    waterG: amounts.waterG > nothingG ? amounts.waterG : 0,
    sugarG: amounts.sugarG > nothingG ? amounts.sugarG : 0,
  }
}

/** A strength that is no further above its own, as a share of it, is what there is. Common practice, no source. */
const AS_IT_IS_SHARE = 0.02

/** Where no sugar is wished the plants' own stays in it: grams of what stands for the water that bring it to a strength. */
function waterAlone(infusion: Liquid, { abvPercent: toAbvPercent }: Targets, filler: Liquid): number {
  const own = abvPercent(infusion)
  if (toAbvPercent > own * (1 + AS_IT_IS_SHARE))
    throw new DomainError('unreachable', 'water_only_lowers', { abvPercent: own, toAbvPercent })
  if (toAbvPercent >= own * (1 - 1e-12)) return 0
  const excess = (addedG: number) => abvPercent(mix(infusion, gramsOf(filler, addedG))) - toAbvPercent
  return findRoot({ f: excess, low: 0, high: enoughG(excess, ethanolG(infusion)), tolerance: 1e-12 })
}

/** The nearest that can be had to targets out of reach; null where its sugar would not stay dissolved either. */
function nearest(infusion: Liquid, targets: Targets, gram: Liquid) {
  const strongest = strongestAbvPercent(infusion, targets.sugarGPerL, gram)
  const sweetest = sweetestGPerL(infusion, targets.abvPercent, gram)
  return {
    strongestAbvPercent: targets.sugarGPerL <= sugarLimitGPerL(strongest) ? strongest : null,
    sweetestGPerL: sweetest === null ? null : Math.min(sweetest, sugarLimitGPerL(targets.abvPercent)),
  }
}

/** The strongest that `infusion` can be at this sweetness: what sweetens alone added, no water. */
export function strongestAbvPercent(infusion: Liquid, toSugarGPerL: number, gram: Liquid = SUCROSE): number {
  const own = abvPercent(infusion)
  if (toSugarGPerL <= sugarGPerL(infusion)) return own
  expectSweetEnough(gram, toSugarGPerL)
  const waterAt = (strength: number) =>
    amountsFor(infusion, { abvPercent: strength, sugarGPerL: toSugarGPerL }, gram).waterG
  // Just above nothing the water wanted is without bound; at its own strength, or with no room for water, none is left.
  const roomPercent = (1000 - toSugarGPerL * apparentVolumeMlPerG(toSugarGPerL)) / 10
  const high = Math.min(own * (1 - (toSugarGPerL - sugarGPerL(infusion)) * 5e-4), roomPercent)
  return waterAt(high) >= 0 ? high : findRoot({ f: waterAt, low: own * 1e-3, high, tolerance: 1e-12 })
}

/** The sweetest that `infusion` can be at this strength: what sweetens alone added; null above its own strength. */
export function sweetestGPerL(infusion: Liquid, toAbvPercent: number, gram: Liquid = SUCROSE): number | null {
  if (toAbvPercent > abvPercent(infusion)) return null
  const abvWith = (addedG: number) => abvPercent(mix(infusion, gramsOf(gram, addedG))) - toAbvPercent
  const addedG = findRoot({ f: abvWith, low: 0, high: enoughG(abvWith, ethanolG(infusion)), tolerance: 1e-12 })
  return sugarGPerL(mix(infusion, gramsOf(gram, addedG)))
}

/** A syrup of so much of what sweetens to each gram of what stands for the water. */
interface SyrupParts {
  readonly gram: Liquid
  readonly filler: Liquid
  readonly perWater: number
}

const withSyrup = (infusion: Liquid, addedG: number, { gram, filler, perWater }: SyrupParts): Liquid =>
  mix(infusion, gramsOf(filler, addedG / perWater), gramsOf(gram, addedG))

function forStrengthAndRatio(infusion: Liquid, toAbvPercent: number, parts: SyrupParts): Amounts {
  const own = abvPercent(infusion)
  if (toAbvPercent > own * (1 + 1e-12)) {
    throw new DomainError('unreachable', 'water_only_lowers', { abvPercent: own, toAbvPercent })
  }
  if (toAbvPercent >= own * (1 - 1e-12)) return { sugarG: 0, waterG: 0 }
  const excess = (addedG: number) => abvPercent(withSyrup(infusion, addedG, parts)) - toAbvPercent
  const addedG = findRoot({ f: excess, low: 0, high: enoughG(excess, ethanolG(infusion)), tolerance: 1e-13 })
  return { sugarG: addedG, waterG: addedG / parts.perWater }
}

function forSweetnessAndRatio(infusion: Liquid, toSugarGPerL: number, parts: SyrupParts): Amounts {
  const { gram, filler, perWater: sugarPerWater } = parts
  const syrupGPerL = sugarGPerL(mix(filler, gramsOf(gram, sugarPerWater)))
  if (toSugarGPerL >= syrupGPerL) {
    throw new DomainError('unreachable', 'syrup_not_sweet_enough', { toSugarGPerL, sugarPerWater, syrupGPerL })
  }
  const lack = (addedG: number) => toSugarGPerL - sugarGPerL(withSyrup(infusion, addedG, parts))
  const addedG = findRoot({ f: lack, low: 0, high: enoughG(lack, ethanolG(infusion)), tolerance: 1e-13 })
  return { sugarG: addedG, waterG: addedG / sugarPerWater }
}

/** Throws `filler_too_sweet`, with how sweet it makes it, where only what stands for the water is too sweet. */
function expectSweetByFillerOnly(infusion: Liquid, targets: Targets, gram: Liquid, filler: Liquid): void {
  if (sugarG(filler) === 0 || amountsFor(infusion, targets, gram).sugarG < 0) return
  const excess = (addedG: number) => abvPercent(mix(infusion, gramsOf(filler, addedG))) - targets.abvPercent
  if (excess(0) <= 0) return
  const addedG = findRoot({ f: excess, low: 0, high: enoughG(excess, ethanolG(infusion)), tolerance: 1e-12 })
  const leastGPerL = sugarGPerL(mix(infusion, gramsOf(filler, addedG)))
  throw new DomainError('unreachable', 'filler_too_sweet', { toSugarGPerL: targets.sugarGPerL, leastGPerL })
}
