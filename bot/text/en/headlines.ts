import type { FreezerState } from '../../../core/liquid/freezer.ts'
import type { Measured } from '../../../core/quantity/measured.ts'
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

/** First lines: the answer. */
export const headlines = {
  makes: (values: Made, format: Format) => `You get ${made(values, format)}.`,

  syrup: (
    values: Made & {
      readonly sugarG: Measured
      readonly waterMl: Measured
      readonly syrupG: Measured
      /** What of the infusion to use; null for all of it. */
      readonly infusionMl: Measured | null
    },
    format: Format,
  ) => {
    const from = values.infusionMl === null ? '' : ` to ${format.pour(values.infusionMl.value)} of the infusion`
    const [sugar, water] = [format.weigh(values.sugarG.value), format.pour(values.waterMl.value)]
    const weight = format.weigh(values.syrupG.value)
    const what =
      values.sugarG.value === 0 && values.waterMl.value === 0
        ? 'Add nothing, it is there already'
        : values.sugarG.value === 0
          ? `Add ${water} water${from}`
          : values.waterMl.value === 0
            ? `Stir ${sugar} sugar into ${values.infusionMl === null ? 'the infusion' : from.slice(4)}, no water`
            : `Add ${sugar} sugar in ${water} water${from} (${weight} of syrup, cooled)`
    return `${what}: ${made(values, format)}.`
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
