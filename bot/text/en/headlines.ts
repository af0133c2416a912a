import type { FreezerState } from '../../../core/liquid/freezer.ts'
import type { Measured } from '../../../core/quantity/measured/measured.ts'
import type { Format } from '../format.ts'
import { inFreezer, listed } from './phrases.ts'

interface Made {
  readonly volumeMl: Measured
  readonly abvPercent: Measured
  readonly sugarGPerL: Measured
  readonly freezer: FreezerState
}

const made = ({ volumeMl, abvPercent, sugarGPerL, freezer }: Made, format: Format): string => {
  const sweet = sugarGPerL.value > 0 ? ` with ${format.sweetness(sugarGPerL)} of sugar` : ''
  return `about ${format.volume(volumeMl)} at ${format.strength(abvPercent)}${sweet}, ${inFreezer[freezer]}`
}

const some = (amount: Measured, text: string): string[] => (amount.value > 0 ? [text] : [])

interface Added {
  readonly sugarG: Measured
  readonly waterMl: Measured
  readonly syrupG: Measured | null
  readonly infusionMl: Measured | null
}

/** What to add to the infusion. */
function addition(values: Added, sugar: string, water: string, infusion: string, format: Format): string {
  const to = values.infusionMl === null ? '' : ` to ${infusion}`
  const [hasSugar, hasWater] = [values.sugarG.value > 0, values.waterMl.value > 0]
  if (!hasSugar && !hasWater) return 'Add nothing, it is there already'
  if (!hasSugar) return `Add ${water} water${to}`
  if (!hasWater) return `Stir ${sugar} sugar into ${infusion}, no water`
  if (values.syrupG === null) return `Stir ${sugar} sugar and ${water} water into ${infusion}`
  return `Add ${sugar} sugar in ${water} water${to} (${format.weigh(values.syrupG.value)} of syrup, cooled)`
}

/** First lines: the answer. */
export const headlines = {
  makes: (values: Made, format: Format) => `You get ${made(values, format)}.`,

  syrup: (
    values: Made & {
      readonly sugarG: Measured
      readonly waterMl: Measured
      /** Null where the water does not dissolve the sugar, so that no syrup can be made first. */
      readonly syrupG: Measured | null
      /** What of the infusion to use; null for all of it. */
      readonly infusionMl: Measured | null
    },
    format: Format,
  ) => {
    const infusion = values.infusionMl === null ? '' : `${format.pour(values.infusionMl.value)} of `
    const [sugar, water] = [format.weigh(values.sugarG.value), format.pour(values.waterMl.value)]
    return `${addition(values, sugar, water, `${infusion}the infusion`, format)}: ${made(values, format)}.`
  },

  styles: (
    values: { readonly infusionMl: Measured; readonly abvPercent: Measured; readonly count: number },
    format: Format,
  ) => {
    const ways = values.count === 1 ? 'One way' : `${values.count === 2 ? 'Two' : 'Three'} ways`
    return `${ways} to finish your ${format.volume(values.infusionMl)} of infusion at ${format.strength(values.abvPercent)}:`
  },

  dilute: (values: Made & { readonly waterMl: Measured }, format: Format) =>
    values.waterMl.value === 0
      ? `Add nothing: it is ${made(values, format)}.`
      : `Add ${format.pour(values.waterMl.value)} water: ${made(values, format)}.`,

  adjust: (
    values: Made & { readonly spiritMl: Measured; readonly waterMl: Measured; readonly sugarG: Measured },
    format: Format,
  ) => {
    const parts = [
      ...some(values.sugarG, `${format.weigh(values.sugarG.value)} sugar`),
      ...some(values.waterMl, `${format.pour(values.waterMl.value)} water`),
      ...some(values.spiritMl, `${format.pour(values.spiritMl.value)} spirit`),
    ]
    return parts.length === 0
      ? `Add nothing: it is there already, ${made(values, format)}.`
      : `Add ${listed(parts)}: ${made(values, format)}.`
  },
}
