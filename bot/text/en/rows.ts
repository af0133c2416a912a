import type { FreezerState } from '../../../core/liquid/freezer.ts'
import type { Measured } from '../../../core/quantity/measured.ts'
import type { Format } from '../format.ts'
import { inFreezer } from './phrases.ts'

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

const GRAM: Measured = { value: 0, plusMinus: 0.5 }

/** What stands on the right. */
export const cells = {
  volume: ({ volumeMl }: { readonly volumeMl: Measured }, format: Format) => format.volume(volumeMl),
  volume_spread: ({ volumeMl }: { readonly volumeMl: Measured }, format: Format) =>
    `${format.volume(volumeMl)} ± ${format.give.volume(volumeMl)}`,
  mass: ({ massG }: { readonly massG: Measured }, format: Format) => format.mass(massG),
  water: ({ waterMl, waterG }: { readonly waterMl: Measured; readonly waterG: Measured }, format: Format) =>
    `${format.volume(waterMl)} = ${format.mass(waterG)}`,
  syrup: ({ syrupMl, syrupG }: { readonly syrupMl: Measured; readonly syrupG: Measured }, format: Format) =>
    `${format.mass(syrupG)} = ${format.volume(syrupMl)}`,
  spirit: ({ spiritMl, abvPercent }: { readonly spiritMl: Measured; readonly abvPercent: number }, format: Format) =>
    `${format.volume(spiritMl)} of ${format.plain(abvPercent, 1)} % vol`,
  strength_spread: ({ abvPercent }: { readonly abvPercent: Measured }, format: Format) =>
    `${format.strength(abvPercent)} ± ${format.give.strength(abvPercent)}`,
  sweetness_spread: ({ sugarGPerL }: { readonly sugarGPerL: Measured }, format: Format) =>
    sugarGPerL.value === 0 ? 'none' : `${format.sweetness(sugarGPerL)} ± ${format.give.sweetness(sugarGPerL)}`,
  grams: ({ massG }: { readonly massG: Measured }, format: Format) =>
    format.mass({ ...massG, plusMinus: Math.max(massG.plusMinus, GRAM.plusMinus) }),
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
      readonly volumeMl: Measured
      readonly abvPercent: Measured
      readonly sugarGPerL: Measured
      readonly freezer: FreezerState
    },
    format: Format,
  ) =>
    `${format.mass(values.sugarG)} sugar, ${format.volume(values.waterMl)} water: ${format.volume(values.volumeMl)}` +
    ` at ${format.strength(values.abvPercent)}, ${format.sweetness(values.sugarGPerL)}, ${inFreezer[values.freezer]}`,
}
