import type { IsoDay } from '../../quantity/time/calendar-day.ts'
import { sugarsInG } from '../../recipe/sweetening.ts'
import type { HappeningEntry, ReadAmount } from '../entry/entry.ts'
import type { Story } from './jar-state.ts'
import type { SweetenedWith } from './planned-syrup.ts'

/** The entry of that day that filtered to the same amount: hardly meant twice. */
export const sameFiltering = (
  { happened }: Story,
  on: IsoDay,
  measured: ReadAmount | null,
): HappeningEntry | undefined =>
  happened.find(
    (entry) => entry.kind === 'filtered' && entry.day === on && entry.measured?.amount.value === measured?.amount.value,
  )

/** The entry of that day that sweetened with the very same amounts: hardly meant twice. */
export const sameSweetening = (
  { happened }: Story,
  on: IsoDay,
  { waterG, sugarG }: SweetenedWith,
): HappeningEntry | undefined =>
  happened.find(
    (entry) =>
      entry.kind === 'sweetened' &&
      entry.day === on &&
      entry.waterG.value === waterG.value &&
      sugarsInG(entry.sweetenings) === sugarG.value,
  )
