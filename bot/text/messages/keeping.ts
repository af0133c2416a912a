import type { Trust } from '../../../core/botanical/evidence/trust.ts'
import type { ShelfLife } from '../../../core/botanical/limits/shelf-life.ts'
import type { StockOf } from '../../../core/jar/state/bottle-stock.ts'
import type { Measured } from '../../../core/quantity/measured/measured.ts'
import type { IsoDay } from '../../../core/quantity/time/calendar-day.ts'
import type { Call } from '../../calls/call.ts'
import type { Plain } from './plain.ts'

export interface KeepingMessages {
  headlines: {
    /** Bottles that are neither given away nor opened, of so many jars. */
    bottles_shelf: { readonly count: number; readonly jars: number }
    /** Of what surely keeps; `until`: where the day is known from which it counts. */
    keeping_best: { readonly months: number; readonly until: IsoDay | null }
    /** It keeps, and nobody has said how long it is at its best. */
    /** `line`: the same with a strength. */
    keeping_not_known: { readonly abvPercent: Measured | null; readonly line: Call }
    keeping_fridge: { readonly abvPercent: Measured }
    keeping_not: { readonly abvPercent: Measured }
  }
  notes: Plain<'keeping_red' | 'keeping_sugar' | 'keeping_weak' | 'keeping_cream'> & {
    keeping_say_more: { readonly line: Call }
    bottles_stock: {
      readonly name: string
      readonly stock: readonly StockOf[]
      readonly bestUntil: IsoDay | null
      /** That day has passed, and there are bottles left. */
      readonly isPast: boolean
    }
    keeping_opened: { readonly fromMonths: number; readonly toMonths: number }
    /** Which plant decides, where there are several. */
    keeping_decides: { readonly id: string }
    keeping_safe: { readonly abvPercent: Measured }
    keeping_evidence: Pick<ShelfLife, 'source'> & { readonly trust: Trust }
    keeping_units: { readonly units: number; readonly abvPercent: Measured; readonly sugarGPerL: Measured }
  }
  actions: Plain<'bottles_all_gone' | 'bottles_label'>
  cautions: Plain<'keeping_low_acid'>
}

declare module '../language.ts' {
  interface MessagesByFeature {
    readonly keeping: KeepingMessages
  }
}
