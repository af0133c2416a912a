import type { Measured } from '../../../core/quantity/measured/measured.ts'
import type { Plain } from './plain.ts'

export interface GaugedLiqueur {
  readonly abvPercent: Measured
  readonly sugarGPerL: Measured
}

export interface MeasureMessages {
  headlines: Plain<'measure_boil' | 'measure_ways'> & {
    gauged: GaugedLiqueur
  }
  sure: {
    gauged_two_instruments: GaugedLiqueur
    gauged_boiled: GaugedLiqueur
    gauged_known_sugar: GaugedLiqueur
  }
  notes: Plain<
    | 'measure_both'
    | 'measure_brix_warm'
    | 'measure_floats'
    | 'measure_boiled_so'
    | 'measure_simmer'
    | 'measure_fill_up'
    | 'measure_scale'
  >
  actions: Plain<'measure_read_again' | 'measure_two' | 'measure_boiling' | 'measure_sugar' | 'measure_recipe'>
  cautions: Plain<'measure_boil'>
}
