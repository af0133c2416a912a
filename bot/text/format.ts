import type { Measured } from '../../core/quantity/measured.ts'

/** Numbers in a language's and a kitchen's habits; no digit that the ± cannot carry. */
export interface Format {
  /** A bare number with its decimals, in the language's decimal sign. */
  number(value: number, decimals: number): string
  /** A bare number with every digit that was typed (at most `maxDecimals`, default 3). */
  plain(value: number, maxDecimals?: number): string
  /** `1.56 l`, `750 ml`; in a US kitchen `6 ½ cups (1.56 l)`. */
  volume(volumeMl: Measured): string
  /** `560 g`, `2.12 kg`; in a US kitchen `1 lb 4 oz (560 g)`. */
  mass(massG: Measured): string
  /** An amount to measure out, to what a jug can do. */
  pour(volumeMl: number): string
  /** An amount to weigh out, to what a scale can do. */
  weigh(massG: number): string
  /** `30.2 % vol`, without zeros at the end; in a US kitchen `30.2 % vol (60 proof)`. */
  strength(abvPercent: Measured): string
  /** `250 g/L` */
  sweetness(sugarGPerL: Measured): string
  /** `−18 °C`, in a US kitchen `0 °F (−18 °C)`. */
  temperature(tempC: Measured): string
  /** The half interval alone, one digit or two: `0.9 % vol`. */
  give: {
    volume(volumeMl: Measured): string
    mass(massG: Measured): string
    strength(abvPercent: Measured): string
    sweetness(sugarGPerL: Measured): string
    temperature(tempC: Measured): string
  }
}
