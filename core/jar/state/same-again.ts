import type { IsoDay } from '../../quantity/time/calendar-day.ts'
import { sugarsInG } from '../../recipe/sweetening.ts'
import type { Filtered, HappeningEntry } from '../entry/entry.ts'
import type { JarState } from './jar-state.ts'
import type { SweetenedWith } from './planned-syrup.ts'

/** The entry of that day that filtered to the same amount: hardly meant twice. */
export const sameFiltering = (
  { happened }: JarState,
  on: IsoDay,
  { measured, isRacked = false, fining }: Pick<Filtered, 'measured' | 'isRacked' | 'fining'>,
): HappeningEntry | undefined =>
  happened.find(
    (entry) =>
      entry.kind === 'filtered' &&
      entry.day === on &&
      entry.measured?.amount.value === measured?.amount.value &&
      (entry.isRacked ?? false) === isRacked &&
      entry.fining === fining,
  )

/** The entry of that day that sweetened with the very same amounts: hardly meant twice. */
export const sameSweetening = (
  { happened }: JarState,
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
