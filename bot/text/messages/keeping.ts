import type { Trust } from '../../../core/botanical/evidence/trust.ts'
import type { ShelfLife } from '../../../core/botanical/limits/shelf-life.ts'
import type { Measured } from '../../../core/quantity/measured/measured.ts'
import type { IsoDay } from '../../../core/quantity/time/calendar-day.ts'
import type { Plain } from './plain.ts'

export interface KeepingMessages {
  headlines: {
    /** Of what surely keeps; `until`: where the day is known from which it counts. */
    keeping_best: { readonly months: number; readonly until: IsoDay | null }
    /** It keeps, and nobody has said how long it is at its best. */
    keeping_not_known: { readonly abvPercent: Measured | null }
    keeping_fridge: { readonly abvPercent: Measured }
    keeping_not: { readonly abvPercent: Measured }
  }
  notes: Plain<'keeping_red' | 'keeping_cream' | 'keeping_say_more'> & {
    keeping_opened: { readonly fromMonths: number; readonly toMonths: number }
    /** Which plant decides, where there are several. */
    keeping_decides: { readonly id: string }
    keeping_safe: { readonly abvPercent: Measured }
    keeping_evidence: Pick<ShelfLife, 'source'> & { readonly trust: Trust }
    keeping_units: { readonly units: number; readonly abvPercent: Measured; readonly sugarGPerL: Measured }
  }
  cautions: Plain<'keeping_low_acid'>
}
