import { materialOf } from '../../../core/quantity/materials.ts'
import { liquidOf, type Portion } from '../../../core/recipe/portion.ts'
import { valuesOf } from '../../../core/recipe/propagate.ts'
import { isSyrup, type Syrup } from '../../../core/recipe/solve/syrup.ts'
import type { Message } from '../../text/words.ts'
import { caution, neatAnd } from './outcome-reply.ts'

/** What has to be said of the liquids and of the sugar, worst first. */
export function syrupCautions(
  syrup: Syrup,
  infusion: Portion,
  freezerC: number | null,
): readonly Message<'cautions'>[] {
  const { sweetener, sugarG, waterG, dissolvesG } = syrup
  return [
    ...neatAnd(syrup.outcome, syrup.sugarStays, [liquidOf(valuesOf(infusion))], { freezerC, isSyrup: isSyrup(syrup) }),
    ...(waterG.value === 0 && sugarG.value > 0 && !materialOf(sweetener).isSyrup ? [caution('sugar_alone')] : []),
    ...(waterG.value > 0 && dissolvesG !== null
      ? [{ group: 'cautions', key: 'syrup_too_thick', values: { dissolvesG } } as const]
      : []),
  ]
}
