import { northernMonth } from '../../quantity/time/hemisphere.ts'
import type { Botanical } from '../botanical.ts'
import { catalogue } from '../catalogue/catalogue.ts'

/** Fresh plants that are ripe in a month, 1 to 12; those that are there all year are not among them. Common practice, no source. */
export function ripeIn(month: number, isSouth: boolean): readonly Botanical[] {
  const north = northernMonth(month, isSouth)
  return catalogue.filter(({ form, monthsNorth }) => form.state === 'fresh' && monthsNorth?.includes(north) === true)
}
