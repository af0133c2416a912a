import type { Botanical } from '../../botanical/botanical.ts'
import type { Measured } from '../../quantity/measured/measured.ts'
import type { Plant } from '../steep.ts'
import { between } from './between.ts'

/** Half of the 95 % interval of what drained plants keep, as a share (DEVELOPERS.md, “Uncertainty”). */
const KEPT_SHARE = 0.3

/** A plant as a steep reckons with it: exchange over its range, what it keeps at the middle of its range ±30 %. */
export function plantOf(botanical: Botanical, massG: Measured): Plant {
  const { waterFraction, sugarsFraction, waterExchange, retainedMlPerG, bulky } = botanical
  const kept = between(retainedMlPerG.min, retainedMlPerG.max)
  return {
    massG,
    waterShare: waterFraction.value,
    sugarShare: sugarsFraction?.value ?? 0,
    exchangeShare: between(waterExchange.min, waterExchange.max),
    keptMlPerG: { value: kept.value, plusMinus: kept.value * KEPT_SHARE },
    bulky,
  }
}
