import { HEXOSE_BESIDE_SUCROSE } from '../liquid/freezing.ts'
import { gramsOf, type Liquid, mix, sweetener, volumeMl, water } from '../liquid/liquid.ts'
import { isJuice, type MaterialId, materialOf, sugarsShare } from '../quantity/materials.ts'
import { exactly, type Measured, times } from '../quantity/measured/measured.ts'
import type { Values } from './propagate.ts'

/** An amount of one material. */
export interface Sweetening {
  readonly material: MaterialId
  readonly massG: Measured
}

/** The same with how well its sugars are known. */
export interface KnownSweetening extends Sweetening {
  /** How much of the usual sugars this jar or bottle of it has; left out: just those. */
  readonly sugarsFactor?: Measured
}

/** White sugar; nothing where there is none of it. */
export const whiteSugar = (massG: Measured): readonly Sweetening[] =>
  massG.value === 0 && massG.plusMinus === 0 ? [] : [{ material: 'white_sugar', massG }]

/** Sugars of a material as a factor of the usual ones, with their ±. */
export const sugarsFactorOf = (material: MaterialId): Measured => ({
  value: 1,
  plusMinus: sugarsShare(material) === 0 ? 0 : materialOf(material).sugarsPlusMinusG / (100 * sugarsShare(material)),
})

/** As an input whose own composition counts among what is not quite known. */
export const knownSweetenings = (sweetenings: readonly Sweetening[]): readonly KnownSweetening[] =>
  sweetenings.map((each) => {
    const sugarsFactor = sugarsFactorOf(each.material)
    return sugarsFactor.plusMinus === 0 ? each : { ...each, sugarsFactor }
  })

/** How much further than a gram of sucrose a gram of citric acid lowers the freezing point: molar masses 342.3 and 192.1. */
const ACID_BEYOND_SUCROSE = 342.3 / 192.1 - 1

/** Rounding of what is left of a gram. */
const NOTHING_SHARE = 1e-9

/** A gram of a material; where it has other sugars than usual, it has so much less water. */
export function gramOf(material: MaterialId, sugarsFactor = 1): Liquid {
  const { per100G, longerAsSucrose = 1, acidPer100G = 0 } = materialOf(material)
  const { water, sucrose, glucoseAndFructose, longer } = per100G
  const usualG = sugarsShare(material)
  const sugarG = usualG * sugarsFactor
  const extractG = 1 - usualG - water / 100
  const equivalentG = (sucrose + HEXOSE_BESIDE_SUCROSE * glucoseAndFructose + longerAsSucrose * longer) / 100
  const isAllKnown = extractG < NOTHING_SHARE
  return sweetener({
    waterG: Math.max(0, (isAllKnown ? 1 - usualG : water / 100) + usualG - sugarG),
    sugarG,
    extractG: isAllKnown ? 0 : extractG,
    sucroseEquivalentG:
      equivalentG * sugarsFactor + (isAllKnown ? 0 : extractG + (ACID_BEYOND_SUCROSE * acidPer100G) / 100),
  })
}

/** A gram of what stands for the water; of water for null, and for what is no liquid of that kind. */
export const fillerOf = (filler: MaterialId | null, sugarsFactor = 1): Liquid =>
  filler === null || !isJuice(filler) || !materialOf(filler).isSyrup ? water(1) : gramOf(filler, sugarsFactor)

/** Millilitres that a gram of it takes at 20 °C. */
export const fillerMlPerG = (filler: MaterialId | null): number =>
  filler === null ? volumeMl(water(1)) : 1 / materialOf(filler).pouredGPerMl

/** What sweetenings bring to a liquid. */
export const sweetLiquid = (sweetenings: Values<readonly KnownSweetening[]>): Liquid =>
  mix(...sweetenings.map(({ material, massG, sugarsFactor }) => gramsOf(gramOf(material, sugarsFactor), massG)))

/** Grams of sugars and of water in sweetenings, as the inputs' own values make them. */
export const sugarsInG = (sweetenings: readonly Sweetening[]): number =>
  sweetenings.reduce((sum, { material, massG }) => sum + massG.value * sugarsShare(material), 0)

export const waterInG = (sweetenings: readonly Sweetening[]): number =>
  sweetenings.reduce((sum, { material, massG }) => sum + (massG.value * materialOf(material).per100G.water) / 100, 0)

export const isSweetened = (sweetenings: readonly Sweetening[]): boolean =>
  sweetenings.some(({ massG }) => massG.value > 0)

/** `factor` times as much of each. */
export const timesSweetenings = (sweetenings: readonly Sweetening[], factor: number): readonly Sweetening[] =>
  sweetenings.map(({ material, massG }) => ({ material, massG: times(massG, factor) }))

/** Grams of sugars with their ±, added in quadrature. */
export const sugars = (sweetenings: readonly Sweetening[]): Measured =>
  sweetenings.reduce<Measured>((sum, { material, massG }) => {
    const share = sugarsShare(material)
    const ownPlusMinus = (massG.value * materialOf(material).sugarsPlusMinusG) / 100
    return {
      value: sum.value + massG.value * share,
      plusMinus: Math.hypot(sum.plusMinus, massG.plusMinus * share, ownPlusMinus),
    }
  }, exactly(0))

/** Each material once. */
export const joinSweetenings = (sweetenings: readonly Sweetening[]): readonly Sweetening[] =>
  [...new Set(sweetenings.map(({ material }) => material))].map((material) => ({
    material,
    massG: sweetenings
      .filter((each) => each.material === material)
      .reduce<Measured>(
        (sum, { massG }) => ({
          value: sum.value + massG.value,
          plusMinus: Math.hypot(sum.plusMinus, massG.plusMinus),
        }),
        exactly(0),
      ),
  }))
