import { type Liquid, mix, sugar, water } from '../liquid/liquid.ts'
import { type MaterialId, materials } from '../quantity/materials.ts'
import { exactly, type Measured, times } from '../quantity/measured/measured.ts'
import type { Values } from './propagate.ts'

/** An amount of one material. */
export interface Sweetening {
  readonly material: MaterialId
  readonly massG: Measured
}

/** White sugar; nothing where there is none of it. */
export const whiteSugar = (massG: Measured): readonly Sweetening[] =>
  massG.value === 0 && massG.plusMinus === 0 ? [] : [{ material: 'white_sugar', massG }]

/** Sugars and water in a gram, all sugars counted as sucrose. */
const sugarsIn = (material: MaterialId): number => {
  const { sucroseFraction, invertFraction } = materials[material]
  return sucroseFraction + invertFraction
}

/** What sweetenings bring to a liquid. */
export const sweetLiquid = (sweetenings: Values<readonly Sweetening[]>): Liquid =>
  mix(
    ...sweetenings.map(({ material, massG }) =>
      mix(sugar(massG * sugarsIn(material)), water(massG * materials[material].waterFraction)),
    ),
  )

/** Grams of sugars and of water in sweetenings, as the inputs' own values make them. */
export const sugarsInG = (sweetenings: readonly Sweetening[]): number =>
  sweetenings.reduce((sum, { material, massG }) => sum + massG.value * sugarsIn(material), 0)

export const waterInG = (sweetenings: readonly Sweetening[]): number =>
  sweetenings.reduce((sum, { material, massG }) => sum + massG.value * materials[material].waterFraction, 0)

export const isSweetened = (sweetenings: readonly Sweetening[]): boolean =>
  sweetenings.some(({ massG }) => massG.value > 0)

/** `factor` times as much of each. */
export const timesSweetenings = (sweetenings: readonly Sweetening[], factor: number): readonly Sweetening[] =>
  sweetenings.map(({ material, massG }) => ({ material, massG: times(massG, factor) }))

/** Grams of sugars with their ±, added in quadrature. */
export const sugars = (sweetenings: readonly Sweetening[]): Measured =>
  sweetenings.reduce<Measured>(
    (sum, { material, massG }) => ({
      value: sum.value + massG.value * sugarsIn(material),
      plusMinus: Math.hypot(sum.plusMinus, massG.plusMinus * sugarsIn(material)),
    }),
    exactly(0),
  )

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
