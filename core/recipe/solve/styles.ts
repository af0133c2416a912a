import { DomainError } from '../../domain-error.ts'
import type { Liquid } from '../../liquid/liquid.ts'
import { USUAL_MATERIAL } from '../../quantity/materials.ts'
import { styleSweetnessGPerL } from '../../quantity/read/sweetness-at.ts'
import { liquidOf, type Portion } from '../portion.ts'
import { valuesOf } from '../propagate.ts'
import { gramOf } from '../sweetening.ts'
import { type Syrup, type SyrupOf, syrup } from './syrup.ts'
import { type SyrupWish, strongestAbvPercent } from './syrup-for.ts'
import type { SyrupTargets } from './syrup-wish.ts'

/** Common practice, no source. */
const STRENGTH_PERCENT = { light: 25, usual: 30, strong: 35 } as const

export type StyleKey = keyof typeof styleSweetnessGPerL | keyof typeof STRENGTH_PERCENT

export interface Style {
  readonly key: StyleKey
  readonly wish: SyrupWish
  readonly syrup: Syrup
}

/**
 * Three worked ways to finish an infusion where too little was said to fix one: three sweetnesses at 30 % vol (or the
 * strength or ratio named), or three strengths at the sweetness named. What cannot be reached gives way to the nearest,
 * in half per cents; ways that come out alike are shown once.
 */
export function styles(
  infusion: Portion,
  named: SyrupTargets,
  atMostMl: number | null,
  of: SyrupOf = {},
): readonly Style[] {
  const liquid = liquidOf(valuesOf(infusion))
  const attempts = candidates(liquid, named, gramOf(of.sweetener ?? USUAL_MATERIAL)).map(({ key, wish }) =>
    attempt(key, wish, () => syrup(infusion, wish, atMostMl, of)),
  )
  const found = attempts.filter((each): each is Style => !(each instanceof DomainError))
  if (found.length === 0) throw attempts[0]
  return found.filter((style, index) => found.findIndex(({ wish }) => same(wish, style.wish)) === index)
}

const same = (a: SyrupWish, b: SyrupWish): boolean => JSON.stringify(a) === JSON.stringify(b)

function candidates(liquid: Liquid, named: SyrupTargets, gram: Liquid): readonly { key: StyleKey; wish: SyrupWish }[] {
  const sweetnesses = Object.entries(styleSweetnessGPerL) as [keyof typeof styleSweetnessGPerL, number][]
  const strengths = Object.entries(STRENGTH_PERCENT) as [keyof typeof STRENGTH_PERCENT, number][]
  if (named.sugarPerWater !== undefined) {
    const { sugarPerWater } = named
    return sweetnesses.map(([key, sugarGPerL]) => ({
      key,
      wish: { by: 'sweetness_and_ratio', sugarGPerL, sugarPerWater },
    }))
  }
  const both = (abvPercent: number, sugarGPerL: number): SyrupWish => ({
    by: 'strength_and_sweetness',
    abvPercent,
    sugarGPerL,
  })
  if (named.sugarGPerL !== undefined) {
    const { sugarGPerL } = named
    return strengths.map(([key, strength]) => ({
      key,
      wish: both(reachable(liquid, strength, sugarGPerL, gram), sugarGPerL),
    }))
  }
  return sweetnesses.map(([key, sugarGPerL]) => ({
    key,
    wish: both(named.abvPercent ?? reachable(liquid, STRENGTH_PERCENT.usual, sugarGPerL, gram), sugarGPerL),
  }))
}

/** The strength wished for, or the highest half per cent below it that sugar alone leaves. */
function reachable(liquid: Liquid, wishedPercent: number, toSugarGPerL: number, gram: Liquid): number {
  const strongest = strongestAbvPercent(liquid, toSugarGPerL, gram)
  return wishedPercent <= strongest ? wishedPercent : Math.max(0.5, Math.floor(strongest * 2) / 2)
}

function attempt(key: StyleKey, wish: SyrupWish, solve: () => Syrup): Style | DomainError {
  try {
    return { key, wish, syrup: solve() }
  } catch (error) {
    if (error instanceof DomainError) return error
    throw error
  }
}
