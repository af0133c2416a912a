import { exactly } from '../../../core/quantity/measured/measured.ts'
import { mix } from '../../../core/recipe/solve/mix.ts'
import { syrup } from '../../../core/recipe/solve/syrup.ts'
import { whiteSugar } from '../../../core/recipe/sweetening.ts'
import { portion, poured, waterPortion } from './kitchens.ts'

export interface Wish {
  readonly infusionMl: number
  readonly abvPercent: number
  readonly toAbvPercent: number
  readonly toSugarGPerL: number
}

/** Three typical batches: citrus from strong spirit, herbs at 60 %, berries in overproof rum. */
export const BATCHES: readonly Wish[] = [
  { infusionMl: 920, abvPercent: 90, toAbvPercent: 30, toSugarGPerL: 250 },
  { infusionMl: 1400, abvPercent: 60, toAbvPercent: 28, toSugarGPerL: 190 },
  { infusionMl: 700, abvPercent: 75.5, toAbvPercent: 35, toSugarGPerL: 120 },
]

/**
 * The rule of three: strength falls as the volume grows, and volumes add. `sugarMlPerG` is the room left for the sugar,
 * 0 for those who forget it, 0.6 for those who do not. Common practice, no source.
 */
export const ruleOfThree = ({ infusionMl, abvPercent, toAbvPercent, toSugarGPerL }: Wish, sugarMlPerG: number) => {
  const finalMl = (infusionMl * abvPercent) / toAbvPercent
  const sugarG = (finalMl * toSugarGPerL) / 1000
  return { finalMl, sugarG, waterMl: finalMl - infusionMl - sugarG * sugarMlPerG }
}

/** What the rule's amounts really make, and the water that would have been right. */
export const ruleCompared = (wish: Wish, sugarMlPerG: number) => {
  const rule = ruleOfThree(wish, sugarMlPerG)
  const infusion = portion(wish.infusionMl, wish.abvPercent)
  const portions = [infusion, waterPortion(exactly(rule.waterMl), 'volume')]
  const { outcome } = mix({ portions, sweetenings: whiteSugar(exactly(rule.sugarG)) })
  const { toAbvPercent, toSugarGPerL } = wish
  const right = syrup(infusion, { by: 'strength_and_sweetness', abvPercent: toAbvPercent, sugarGPerL: toSugarGPerL })
  const wanted = poured(right.outcome.volumeMl).value
  return {
    rule,
    madeMl: outcome.volumeMl.value,
    madePercent: outcome.abvPercent.value,
    madeGPerL: outcome.sugarGPerL.value,
    offPercent: outcome.abvPercent.value - toAbvPercent,
    offMl: outcome.volumeMl.value - wanted,
    offPromisedMl: outcome.volumeMl.value - rule.finalMl,
    rightWaterMl: right.waterMl.value,
  }
}

const signed = (value: number, decimals: number) => {
  const text = Math.abs(value).toFixed(decimals)
  return Number(text) === 0 ? text : `${value < 0 ? '−' : '+'}${text}`
}

const batchName = ({ infusionMl, abvPercent, toAbvPercent, toSugarGPerL }: Wish) =>
  `${infusionMl} ml of ${abvPercent} % to ${toAbvPercent} %, ${toSugarGPerL} g/L`

/** The rows of the table in core/README.md, as they stand there. */
export const readmeRows = (): readonly string[] =>
  BATCHES.map((wish) => {
    const cells = [0, 0.6].flatMap((sugarMlPerG) => {
      const { offPercent, offMl } = ruleCompared(wish, sugarMlPerG)
      return [`${signed(offPercent, 1)} % vol`, `${signed(offMl, 0)} ml`]
    })
    return `| ${[batchName(wish), ...cells].join(' | ')} |`
  })
