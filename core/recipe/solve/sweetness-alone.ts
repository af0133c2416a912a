import { DomainError } from '../../domain-error.ts'
import { abvPercent, gramsOf, type Liquid, massG, mix, sugar, sugarGPerL, water } from '../../liquid/liquid.ts'
import { findRoot } from '../../liquid/root.ts'
import type { Targets } from '../targets.ts'
import { enoughG } from './root-bracket.ts'
import { expectSweetEnough } from './syrup-for.ts'

/** The targets met by what sweetens alone, white sugar where nothing is said, or by water alone where less sweetness is wished for; the strength falls. */
export function sweetnessAlone(from: Liquid, toSugarGPerL: number, gram: Liquid = sugar(1)): Targets {
  const own = { abvPercent: abvPercent(from), sugarGPerL: sugarGPerL(from) }
  if (toSugarGPerL === own.sugarGPerL) return own
  if (toSugarGPerL === 0) throw new DomainError('unreachable', 'adjust_keeps_sugar', own)
  const isSweeter = toSugarGPerL > own.sugarGPerL
  if (isSweeter) expectSweetEnough(gram, toSugarGPerL)
  const withG = (addedG: number) => mix(from, isSweeter ? gramsOf(gram, addedG) : water(addedG))
  const lack = (addedG: number) => (toSugarGPerL - sugarGPerL(withG(addedG))) * (isSweeter ? 1 : -1)
  const addedG = findRoot({ f: lack, low: 0, high: enoughG(lack, massG(from)), tolerance: 1e-13 })
  return { abvPercent: abvPercent(withG(addedG)), sugarGPerL: toSugarGPerL }
}
