import type { PlannedFill } from '../../../core/recipe/plan/planned-fill.ts'
import type { Format } from '../format.ts'
import { countWord, plural } from './phrases.ts'
import { vesselText } from './words.ts'

/** From this part of a bottle on there is some over. */
const A_BIT = 0.1

/** `five 500 ml bottles and a bit`. */
function fillsText(volumeMl: number, bottleMl: number, format: Format): string {
  const count = Math.floor(volumeMl / bottleMl)
  const size = vesselText(bottleMl, format)
  if (count === 0) return `not quite one ${size} bottle`
  const over = volumeMl / bottleMl - count > A_BIT ? ' and a bit' : ''
  return `${countWord(count)} ${size} ${plural(count, 'bottle')}${over}`
}

/** `five of the six 500 ml bottles you planned`, `just about the six bottles you planned`. */
export function plannedFillText({ filled, planned, sizeMl, isNearly }: PlannedFill, format: Format): string {
  const size = sizeMl === null ? '' : `${vesselText(sizeMl, format)} `
  if (planned === 1)
    return isNearly ? `just about the ${size}bottle you planned` : `not quite the ${size}bottle you planned`
  const all = `the ${countWord(planned)} ${size}bottles you planned`
  if (isNearly) return `just about ${all}`
  return `${filled === 0 ? 'none' : countWord(filled)} of ${all}`
}

/** How many bottles a drink fills, of those that were planned where it falls short of them. */
export const bottlesMade = (volumeMl: number, bottleMl: number, short: PlannedFill | null, format: Format): string =>
  short === null ? fillsText(volumeMl, bottleMl, format) : plannedFillText(short, format)
