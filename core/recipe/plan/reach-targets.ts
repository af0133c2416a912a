import { DomainError } from '../../domain-error.ts'
import { abvPercent, gramsOf, type Liquid, massG, mix, sugar, sugarG, sugarGPerL, water } from '../../liquid/liquid.ts'
import { findRoot } from '../../liquid/root.ts'
import { largestSweetnessGPerL } from '../../liquid/solubility.ts'
import { expectSweetEnough, sweetestGPerL } from '../solve/syrup-for.ts'
import type { Targets } from '../targets.ts'
import { type OwnSyrup, targetsOfOwn } from './own-syrup.ts'

export interface NamedTargets {
  readonly abvPercent: number | undefined
  readonly sugarGPerL: number | undefined
  /** A recipe's own water and sugar, which tell what was not named; left out: there are none. */
  readonly own?: OwnSyrup | undefined
}

/** Where nothing else is said. */
const SUCROSE = sugar(1)

/** As strong as a drink without sugar is made of stronger spirit, % vol. Common practice, no source. */
const UNSWEETENED_PERCENT = 40

/** A gram of what sweetens, and of what stands for the water. */
export interface SyrupGrams {
  readonly gram: Liquid
  readonly filler: Liquid
}

const PLAIN: SyrupGrams = { gram: SUCROSE, filler: water(1) }

/** The usual strength and the everyday sweetness. Common practice, no source. */
export const USUAL: Targets = { abvPercent: 30, sugarGPerL: 190 }

/** The targets named; one that was not is the usual one, or the nearest to it that this infusion reaches. */
export function chooseTargets(infusion: Liquid, named: NamedTargets, of: SyrupGrams = PLAIN): Targets {
  if (abvPercent(infusion) === 0) return { ...USUAL, ...said(named) }
  if (named.own !== undefined) {
    if (named.sugarGPerL !== undefined || named.own.sugarG === null)
      expectSweetEnough(of.gram, named.sugarGPerL ?? USUAL.sugarGPerL)
    return targetsOfOwn(infusion, named.own, named, { ...of, usualGPerL: USUAL.sugarGPerL })
  }
  if (named.sugarGPerL === 0)
    return {
      abvPercent: named.abvPercent ?? Math.min(UNSWEETENED_PERCENT, abvPercent(infusion)),
      sugarGPerL: 0,
    }
  const strength = named.abvPercent ?? reachableAbvPercent(infusion, named.sugarGPerL ?? USUAL.sugarGPerL, of.gram)
  return { abvPercent: strength, sugarGPerL: named.sugarGPerL ?? reachableGPerL(infusion, strength, of) }
}

/** Throws `infusion_too_weak`, with what it does reach, where water and sugar cannot make the targets of it. */
export function expectReachable(infusion: Liquid, targets: Targets, named: NamedTargets, gram: Liquid = SUCROSE): void {
  const strongest = strongestAbvPercent(infusion, targets.sugarGPerL, gram)
  if (targets.abvPercent <= strongest * (1 + ROUNDING_SHARE)) return
  throw new DomainError('unreachable', 'infusion_too_weak', {
    infusionAbvPercent: abvPercent(infusion),
    toAbvPercent: targets.abvPercent,
    toSugarGPerL: targets.sugarGPerL,
    isSweetnessNamed: named.sugarGPerL !== undefined,
    strongestAbvPercent: strongest,
    sweetestGPerL: sweetestGPerL(infusion, targets.abvPercent, gram),
  })
}

/**
 * The targets, or the nearest that water and sugar make of this infusion: no less sweet than it is at that strength, no
 * stronger than it is with that sweetness.
 */
export function nearestTargets(
  infusion: Liquid,
  { abvPercent: strength, sugarGPerL: sweetness }: Targets,
  { gram, filler }: SyrupGrams = PLAIN,
): Targets {
  const sugarGPerL = Math.max(sweetness, ownGPerL(infusion, strength, filler))
  return { abvPercent: Math.min(strength, strongestAbvPercent(infusion, sugarGPerL, gram)), sugarGPerL }
}

/** A wish so near to what can be had is it. */
const ROUNDING_SHARE = 1e-9

const said = ({ abvPercent, sugarGPerL }: NamedTargets): Partial<Targets> => ({
  ...(abvPercent === undefined ? {} : { abvPercent }),
  ...(sugarGPerL === undefined ? {} : { sugarGPerL }),
})

/** With what sweetens alone, no water; its own strength where it is that sweet already. */
function strongestAbvPercent(infusion: Liquid, toSugarGPerL: number, gram: Liquid): number {
  const lack = (addedG: number) => toSugarGPerL - sugarGPerL(mix(infusion, gramsOf(gram, addedG)))
  if (lack(0) <= 0) return abvPercent(infusion)
  expectSweetEnough(gram, toSugarGPerL)
  let high = massG(infusion)
  while (lack(high) > 0) high *= 2
  return abvPercent(mix(infusion, gramsOf(gram, findRoot({ f: lack, low: 0, high, tolerance: 1e-12 * high }))))
}

function reachableAbvPercent(infusion: Liquid, toSugarGPerL: number, gram: Liquid): number {
  const strongest = strongestAbvPercent(infusion, toSugarGPerL, gram)
  return USUAL.abvPercent <= strongest ? USUAL.abvPercent : Math.max(0.5, Math.floor(strongest * 2) / 2)
}

const STEP_GPERL = 5

/** The everyday sweetness, less where it does not dissolve or fit, more where the infusion has more already. */
function reachableGPerL(infusion: Liquid, toAbvPercent: number, { gram, filler }: SyrupGrams): number {
  const least = ownGPerL(infusion, toAbvPercent, filler)
  const sweetest = sweetestGPerL(infusion, toAbvPercent, gram) ?? 0
  const most = Math.min(USUAL.sugarGPerL, sweetest, largestSweetnessGPerL(toAbvPercent))
  const wished = most === USUAL.sugarGPerL ? most : Math.floor(most / STEP_GPERL) * STEP_GPERL
  return wished >= least ? wished : Math.min(Math.ceil(least / STEP_GPERL) * STEP_GPERL, Math.max(sweetest, least))
}

/** The sweetness that its own sugar makes when water alone, or what stands for it, brings it to this strength; 0 without any. */
function ownGPerL(infusion: Liquid, toAbvPercent: number, filler: Liquid): number {
  const isPlain = sugarG(infusion) === 0 && sugarG(filler) === 0
  if (isPlain || toAbvPercent >= abvPercent(infusion)) return sugarGPerL(infusion)
  const filled = (addedG: number) => mix(infusion, gramsOf(filler, addedG))
  const excess = (addedG: number) => abvPercent(filled(addedG)) - toAbvPercent
  let high = massG(infusion)
  while (excess(high) > 0) high *= 2
  return sugarGPerL(filled(findRoot({ f: excess, low: 0, high, tolerance: 1e-12 * high })))
}
