import { DomainError } from '../domain-error.ts'
import { FREEZER_C, leastAbvIceFree } from '../liquid/freezer.ts'
import { KEEPS_ABV_PERCENT, keepingOf } from '../liquid/keeping.ts'
import { largestSweetnessGPerL } from '../liquid/solubility.ts'
import type { Measured } from '../quantity/measured/measured.ts'
import { liquidOf, type Portion } from '../recipe/portion.ts'
import { valuesOf } from '../recipe/propagate.ts'
import { type Adjustment, adjust } from '../recipe/solve/adjust.ts'
import { sweetnessAlone } from '../recipe/solve/sweetness-alone.ts'
import type { Targets } from '../recipe/targets.ts'
import type { TroubleFacts } from './facts.ts'
import type { RemedyKind } from './row.ts'

/** What a liqueur is brought to, and what that takes. */
export interface SolvedRemedy {
  readonly kind: RemedyKind
  readonly targets: Targets
  /** Null where no spirit is needed, % vol. */
  readonly spiritPercent: number | null
  readonly adjustment: Adjustment
}

/** What there is to put right. */
export interface Mendable {
  readonly liqueur: Portion
  /** The spirit at hand, % vol; 0 where none is known. */
  readonly spiritPercent: number
  readonly facts: TroubleFacts
}

/** Where the burn is gone, % vol. Common practice, no source. */
const MILD_PERCENT = 30
const MILDER_PERCENT = 28
/** Where nothing lives in it any more, with a margin for a slip, % vol. Judgement. */
const SAFE_PERCENT = 22
/** A strength that anybody tastes apart, % vol. Common practice, no source. */
const STEP_PERCENT = 3
/** Sweetnesses that anybody tastes apart, g/L. Common practice, no source. */
const STEP_G_PER_L = 40
const LEAST_SWEET_G_PER_L = 150
/** Less sweet by a quarter. Common practice, no source. */
const LESS_SHARE = 0.75
const ICE_MARGIN_PERCENT = 1.5

const toTen = (gPerL: number): number => Math.round(gPerL / 10) * 10

/** Up to what was planned, out of reach of yeast, out of reach of ice, else a little. */
function strongerPercent(now: number, sugarGPerL: number, facts: TroubleFacts): number {
  const { plannedPercent, keeping, inFreezer } = facts
  const planned = plannedPercent !== null && plannedPercent > now + 0.5 ? plannedPercent : 0
  const safe = keeping !== null && keeping !== 'keeps' ? SAFE_PERCENT : 0
  const freezes = inFreezer !== null && inFreezer.state !== 'pours'
  const liquid = freezes
    ? Math.ceil(leastAbvIceFree(sugarGPerL, inFreezer.freezerC ?? FREEZER_C) + ICE_MARGIN_PERCENT)
    : 0
  const wanted = Math.max(planned, safe, liquid)
  return Math.round(wanted > now + 0.5 ? wanted : now + STEP_PERCENT)
}

/** What a remedy brings a liqueur to; null where there is nothing to bring. */
function targetsFor(kind: RemedyKind, now: Targets, facts: TroubleFacts): Targets | null {
  const { abvPercent, sugarGPerL } = now
  switch (kind) {
    case 'weaker': {
      const to = abvPercent > MILD_PERCENT + 1 ? MILD_PERCENT : MILDER_PERCENT
      return abvPercent > to + 1 ? { abvPercent: to, sugarGPerL } : null
    }
    case 'stronger':
      return { abvPercent: strongerPercent(abvPercent, sugarGPerL, facts), sugarGPerL }
    case 'less_sweet': {
      const to = toTen(Math.min(LESS_SHARE * sugarGPerL, largestSweetnessGPerL(abvPercent)))
      return to >= 10 && to < sugarGPerL - 5 ? { abvPercent, sugarGPerL: to } : null
    }
    case 'sweeter': {
      const to = toTen(Math.max(sugarGPerL + STEP_G_PER_L, Math.min(LEAST_SWEET_G_PER_L, 2 * sugarGPerL)))
      return to <= largestSweetnessGPerL(abvPercent) ? { abvPercent, sugarGPerL: to } : null
    }
    default:
      return null
  }
}

/** What spirit is poured in for. */
const needsSpirit = (kind: RemedyKind): boolean => kind === 'stronger' || kind === 'less_sweet'

/** The strongest spirit that is sold to drink, % vol. */
const STRONG_PERCENT = 95

const strengthOf = (percent: number): Measured => ({ value: percent, plusMinus: 0 })

/** Whether nothing lives in it. */
const staysSound = ({ outcome }: Adjustment): boolean =>
  keepingOf(outcome) === 'keeps' && outcome.abvPercent.value >= KEEPS_ABV_PERCENT

/**
 * What a remedy takes, solved for what there is; null where the core cannot make it, or where it would make something that
 * does not keep.
 */
export function solveRemedy(kind: RemedyKind, { liqueur, spiritPercent, facts }: Mendable): SolvedRemedy | null {
  const now = { abvPercent: liqueur.abvPercent.value, sugarGPerL: liqueur.sugarGPerL.value }
  const wanted = targetsFor(kind, now, facts)
  if (wanted === null) return null
  const own = spiritPercent > wanted.abvPercent + 5 ? spiritPercent : STRONG_PERCENT
  const spirit = needsSpirit(kind) ? own : null
  try {
    // Sugar alone weakens it by a little, which nobody waters or strengthens away.
    const targets = kind === 'sweeter' ? sweetnessAlone(liquidOf(valuesOf(liqueur)), wanted.sugarGPerL) : wanted
    const adjustment = adjust(liqueur, targets, spirit === null ? null : strengthOf(spirit))
    return staysSound(adjustment) ? { kind, targets, spiritPercent: spirit, adjustment } : null
  } catch (error) {
    if (error instanceof DomainError) return null
    throw error
  }
}
