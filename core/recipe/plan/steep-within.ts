import { checkCeilings, type Weighed } from '../../botanical/limits/ceilings.ts'
import { DomainError } from '../../domain-error.ts'
import { mix, volumeMl, water } from '../../liquid/liquid.ts'
import { liquidOf } from '../portion.ts'
import { valuesOf } from '../propagate.ts'
import { type Steep, type Steeping, steep } from '../steep.ts'

/** Of plants that drink up all of the spirit and pass a limit too, the limit is said: more spirit would not do. */
export function steepWithin(steeping: Steeping, weighed: readonly Weighed[]): Steep {
  try {
    return steep(steeping)
  } catch (error) {
    if (error instanceof DomainError && error.problem === 'plants_drink_all') {
      const { spirits, waterG } = valuesOf(steeping)
      checkCeilings(weighed, volumeMl(mix(...spirits.map(liquidOf), water(waterG))))
    }
    throw error
  }
}
