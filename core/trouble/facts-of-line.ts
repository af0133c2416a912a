import type { Botanical } from '../botanical/botanical.ts'
import { inFreezer } from '../liquid/freezer.ts'
import { freezesAtC } from '../liquid/freezing.ts'
import { delleUnits, keepingOf, surelyDissolvedGPerL } from '../liquid/keeping.ts'
import { liquidFrom } from '../liquid/liquid.ts'
import { largestSweetnessGPerL, sugarState } from '../liquid/solubility.ts'
import { exactly, type Measured } from '../quantity/measured/measured.ts'
import { NOTHING_KNOWN, type TroubleFacts } from './facts.ts'
import { isInGroup, isTakenForOthers } from './plant-groups.ts'

/** What a line tells where no jar does; null where it does not. */
export interface ToldOfTrouble {
  readonly abvPercent: Measured | null
  readonly sugarGPerL: Measured | null
  readonly plants: readonly Botanical[] | null
  /** Days on the plants. */
  readonly days: number | null
  readonly freezerC: number
}

/** Of its strength: what it is now is all that it ever was, as far as anybody said. */
function ofStrength({ abvPercent, sugarGPerL, freezerC }: ToldOfTrouble): Partial<TroubleFacts> {
  if (abvPercent === null) return {}
  const of = { abvPercent, sugarGPerL: sugarGPerL ?? exactly(0) }
  const liquid = liquidFrom({ volumeMl: 1000, abvPercent: abvPercent.value, sugarGPerL: of.sugarGPerL.value })
  return {
    abvPercent,
    sugarGPerL,
    weakestPercent: abvPercent.value,
    keeping: keepingOf(of),
    delleUnits: delleUnits(abvPercent.value, surelyDissolvedGPerL(of)),
    largestGPerL: largestSweetnessGPerL(abvPercent.value),
    sugarState: sugarGPerL === null ? null : sugarState(liquid),
    inFreezer:
      sugarGPerL === null
        ? null
        : { state: inFreezer(liquid, freezerC).state, freezesAtC: freezesAtC(liquid), freezerC },
  }
}

/** What a line alone tells. */
export const factsOfLine = (told: ToldOfTrouble): TroubleFacts => {
  const { plants, days, sugarGPerL } = told
  const isSure = plants !== null && !plants.some(isTakenForOthers)
  const hasNoKernels = plants !== null && !plants.some((plant) => isInGroup(plant, 'kernels'))
  return {
    ...NOTHING_KNOWN,
    sugarGPerL,
    ...(sugarGPerL?.value === 0 && { isSweetened: false, hasSyrup: false }),
    ...ofStrength(told),
    plants:
      plants?.map((botanical) => ({ botanical, name: botanical.id, gPerL: null, pieceShare: null, days })) ?? null,
    steepedDays: days,
    signs: { ...(isSure && { sure: true }), ...(hasNoKernels && { stones: false }) },
  }
}
