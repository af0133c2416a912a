import {
  abvPercent,
  dissolvedIn,
  type Liquid,
  liquidFrom,
  massG,
  part,
  solidsGPerL,
  sugarGPerL,
  volumeMl,
  water,
} from '../../liquid/liquid.ts'
import { abvPercentUnderSolids } from '../../liquid/measure/obscuration.ts'
import { volumeMlAt20 } from '../../liquid/measure/volume-at-20.ts'
import { modelShare } from '../../liquid/model-error.ts'
import { strengthAt20 } from '../../recipe/portion.ts'
import type { Values } from '../../recipe/propagate.ts'
import type { ReadAmount } from '../entry/entry.ts'
import type { LiquidStep } from './liquid-steps.ts'

type Strained = Extract<Values<LiquidStep>, { readonly kind: 'strained' }>

/** The same composition, as much as was read; nothing is measured as water. */
export function asRead(liquid: Liquid, { amount, by, atC }: Values<ReadAmount>): Liquid {
  const like = massG(liquid) === 0 ? water(1) : liquid
  if (by === 'mass') return part(like, amount / massG(like))
  const composition = () => ({ abvPercent: abvPercent(like), sugarGPerL: sugarGPerL(like) })
  const readMl = atC === 20 ? amount : volumeMlAt20(amount, composition(), atC)
  return part(like, readMl / volumeMl(like))
}

/** What a hydrometer showed, put right for what is dissolved. */
export const percentRead = (liquid: Liquid, { strength, denserShare }: Strained): number =>
  abvPercentUnderSolids({
    apparentPercent: strengthAt20(strength!),
    solidsGPerL: solidsGPerL(liquid),
    denserShare: denserShare * modelShare(liquid),
  })

/** What is put right is not put beyond what was poured. */
export const boundBy = (pouredPercent: number, readPercent: number, { strength }: Strained): number =>
  Math.min(readPercent, Math.max(strengthAt20(strength!), pouredPercent))

/** The same volume, and as much dissolved, of this strength. */
export const withStrength = (liquid: Liquid, trueAbvPercent: number): Liquid =>
  liquidFrom({
    ...dissolvedIn(liquid),
    volumeMl: volumeMl(liquid),
    abvPercent: trueAbvPercent,
    sugarGPerL: sugarGPerL(liquid),
  })
