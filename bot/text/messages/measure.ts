import type { Measured } from '../../../core/quantity/measured/measured.ts'
import type { Plain } from './plain.ts'

export interface GaugedLiqueur {
  readonly abvPercent: Measured
  readonly sugarGPerL: Measured
}

export interface MeasureMessages {
  headlines: Plain<'measure_boil' | 'measure_ways'> & {
    gauged: GaugedLiqueur
    measure_by_recipe: GaugedLiqueur & { readonly name: string; readonly isMeasured: boolean }
  }
  sure: {
    gauged_two_instruments: GaugedLiqueur
    gauged_boiled: GaugedLiqueur
    gauged_known_sugar: GaugedLiqueur
    measure_off_by: GaugedLiqueur
  }
  notes: Plain<
    | 'measure_doubtful'
    | 'measure_both'
    | 'measure_brix_warm'
    | 'measure_floats'
    | 'measure_boiled_so'
    | 'measure_simmer'
    | 'measure_fill_up'
    | 'measure_scale'
    | 'measure_weighing_no_help'
  > & {
    measure_if_weighed: GaugedLiqueur
    measure_surprising: { readonly name: string; readonly abvPercent: Measured }
  }
  actions: Plain<'measure_read_again' | 'measure_two' | 'measure_boiling' | 'measure_sugar' | 'measure_recipe'>
  cautions: Plain<'measure_boil'>
}

declare module '../language.ts' {
  interface MessagesByFeature {
    readonly measure: MeasureMessages
  }
}
