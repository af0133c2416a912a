import type { Measured } from '../../../core/quantity/measured/measured.ts'
import type { Format } from '../format.ts'
import { listed } from './phrases.ts'

/** How far the numbers can be trusted. */
export const sure = {
  spread: (
    values: { readonly abvPercent: Measured; readonly sugarGPerL: Measured; readonly byVolume: boolean },
    format: Format,
  ) => {
    const parts = [
      ...(values.abvPercent.value > 0 ? [`±${format.give.strength(values.abvPercent)}`] : []),
      ...(values.sugarGPerL.value > 0 ? [`±${format.give.sweetness(values.sugarGPerL)}`] : []),
    ]
    return `Computed; right within ${listed(parts)} 19 times in 20 with a kitchen jug and scale${values.byVolume ? ', nearer if you weigh instead of measuring' : ''}.`
  },
}
