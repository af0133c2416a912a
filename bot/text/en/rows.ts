import type { FreezerState } from '../../../core/liquid/freezer.ts'
import type { Measured } from '../../../core/quantity/measured/measured.ts'
import { measuredOut, pouredMl } from '../../../core/recipe/tool-precision.ts'
import type { Format } from '../format.ts'
import { inFreezer } from './phrases.ts'

/** The grams of what is poured, to the same step. */
function waterMass(waterMl: Measured, waterG: Measured, format: Format): string {
  const massG = (pouredMl(waterMl.value) * waterG.value) / waterMl.value
  return format.mass({ value: massG, plusMinus: measuredOut(massG).plusMinus })
}

/** What stands on the left of a table. */
export const rows = {
  infusion: () => 'Infusion',
  sugar: () => 'Sugar',
  water: () => 'Water',
  syrup: () => 'Syrup',
  spirit: () => 'Spirit',
  volume: () => 'Makes',
  strength: () => 'Strength',
  sweetness: () => 'Sweetness',
  alcohol: () => 'Alcohol in it',
  freezes: () => 'First ice',
  dry: () => 'Dry',
  everyday: () => 'Everyday',
  rich: () => 'Rich',
  light: () => 'Light',
  usual: () => 'Usual',
  strong: () => 'Strong',
}

/** What stands on the right. */
export const cells = {
  pour: ({ volumeMl }: { readonly volumeMl: Measured }, format: Format) => format.pour(volumeMl.value),
  weigh: ({ massG }: { readonly massG: Measured }, format: Format) => format.weigh(massG.value),
  volume_spread: ({ volumeMl }: { readonly volumeMl: Measured }, format: Format) =>
    `${format.volume(volumeMl)} ± ${format.give.volume(volumeMl)}`,
  mass: ({ massG }: { readonly massG: Measured }, format: Format) => format.mass(massG),
  water: ({ waterMl, waterG }: { readonly waterMl: Measured; readonly waterG: Measured }, format: Format) =>
    waterMl.value === 0 ? format.pour(0) : `${format.pour(waterMl.value)} = ${waterMass(waterMl, waterG, format)}`,
  syrup: ({ syrupMl, syrupG }: { readonly syrupMl: Measured; readonly syrupG: Measured }, format: Format) =>
    `${format.weigh(syrupG.value)} = ${format.pour(syrupMl.value)}`,
  spirit: ({ spiritMl, abvPercent }: { readonly spiritMl: Measured; readonly abvPercent: number }, format: Format) =>
    `${format.pour(spiritMl.value)} of ${format.plain(abvPercent, 1)} % vol`,
  strength_spread: ({ abvPercent }: { readonly abvPercent: Measured }, format: Format) =>
    abvPercent.value === 0 ? 'none' : `${format.strength(abvPercent)} ± ${format.give.strength(abvPercent)}`,
  sweetness_spread: ({ sugarGPerL }: { readonly sugarGPerL: Measured }, format: Format) =>
    sugarGPerL.value === 0 ? 'none' : `${format.sweetness(sugarGPerL)} ± ${format.give.sweetness(sugarGPerL)}`,
  freezes: (
    { freezesAtC, freezer }: { readonly freezesAtC: Measured; readonly freezer: FreezerState },
    format: Format,
  ) =>
    freezesAtC.value < -25
      ? `below ${format.temperature({ value: -25, plusMinus: 0 })}: ${inFreezer[freezer]}`
      : `about ${format.temperature(freezesAtC)} ± ${format.give.temperature(freezesAtC)}: ${inFreezer[freezer]}`,
  style: (
    values: {
      readonly sugarG: Measured
      readonly waterMl: Measured
      /** What of the infusion to use; null for all of it. */
      readonly infusionMl: Measured | null
      readonly volumeMl: Measured
      readonly abvPercent: Measured
      readonly sugarGPerL: Measured
      readonly freezer: FreezerState
    },
    format: Format,
  ) => {
    const infusion = values.infusionMl === null ? '' : `${format.pour(values.infusionMl.value)} of the infusion, `
    return (
      `${infusion}${format.weigh(values.sugarG.value)} sugar, ${format.pour(values.waterMl.value)} water:` +
      ` ${format.volume(values.volumeMl)} at ${format.strength(values.abvPercent)}, ${format.sweetness(values.sugarGPerL)}, ${inFreezer[values.freezer]}`
    )
  },
}
