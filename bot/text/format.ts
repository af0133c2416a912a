import type { Material } from '../../core/quantity/material.ts'
import type { Measured } from '../../core/quantity/measured/measured.ts'
import type { CalendarDay } from '../../core/quantity/quantities.ts'
import type { Call } from '../calls/call.ts'
import type { Invocation } from '../calls/invocation.ts'
import type { Kitchen } from './messages/kitchen.ts'

/** Numbers in a language's and a kitchen's habits; no digit that the ± cannot carry. */
export interface Format {
  /** The same in another kitchen's habits, for one jar among others; left out: this one's. */
  in(kitchen: Kitchen | undefined): Format
  /** A bare number with its decimals, in the language's decimal sign. */
  number(value: number, decimals: number): string
  /** A bare number with every digit that was typed (at most `maxDecimals`, default 3). */
  plain(value: number, maxDecimals?: number): string
  /** `1.56 l`, `750 ml`; in a US kitchen `6 ½ cups (1.56 l)`, in an imperial one `2 imp pints + 15 fl oz (1.56 l)`. */
  volume(volumeMl: Measured): string
  /** `560 g`, `2.12 kg`; in a US or imperial kitchen `1 lb 4 oz (560 g)`. */
  mass(massG: Measured): string
  /** An amount to measure out, to what a jug can do. */
  pour(volumeMl: number): string
  /** An amount to weigh out, to what a scale can do. */
  weigh(massG: number): string
  /** `30.2 % vol`, without zeros at the end; in a US kitchen `30.2 % vol (60 proof)`, where proof was typed `60 proof (30.2 % vol)`. */
  strength(abvPercent: Measured): string
  /** `250 g/L`; in a US kitchen `8 ½ oz/quart`. */
  sweetness(sugarGPerL: Measured): string
  /** Strength and sweetness as they were wished or read, with every digit up to `maxDecimals` (default 3). */
  wished: {
    /** `37.5 %`; where proof was typed `75 proof`. */
    strength(abvPercent: number, maxDecimals?: number): string
    /** `250 g/L`; in a US kitchen `8 ½ oz/quart`. */
    sweetness(sugarGPerL: number, maxDecimals?: number): string
  }
  /** How much of something goes into a litre; into a quart where a kitchen pours and weighs by US measures. */
  dose: {
    /** `120 g`, in a US kitchen `4 oz`: so much for each of `each`. */
    mass(gPerL: number, maxDecimals?: number): string
    /** The same of what is poured, ml for a litre. */
    volume(mlPerL: number): string
    readonly each: 'litre' | 'quart'
    /** Of a litre that is. */
    readonly litres: number
  }
  /** So little that spoons tell it in a US kitchen, sugar too; exact elsewhere. */
  glass: {
    volume(volumeMl: number): string
    /** @param gPerMl - what a spoon of it weighs */
    sugar(massG: number, gPerMl: number): string
  }
  /** An example of ours, a line or an amount, as this kitchen would type it. */
  example(text: string): string
  vessel: {
    /** One that somebody has or fills, by its size: `500 ml`, `12 fl oz`. */
    bottle(volumeMl: number): string
    /** A jar to look for, as it is sold: `1.5 l`, in a US kitchen `half-gallon`. */
    jar(volumeMl: number): string
  }
  /** `−18 °C`, in a US kitchen `0 °F (−18 °C)`. */
  temperature(tempC: Measured): string
  /** `9 December 2026`, or the `words` that the sentence has for it; a surface may show a day in its reader's own way. */
  day(day: CalendarDay, words?: string): string
  /** The same of a time of day; `minutes` after midnight (0 to 1439) by the clocks of the person who is answered. */
  moment(day: CalendarDay, minutes: number, words: string): string
  /** What to type for a call; only in Discord with the name of every option. */
  call(call: Call | Invocation): string
  /** A channel of Discord; only there it has a name. */
  channel(id: string): string
  /** The half interval alone, with no finer digit than the value beside it is shown with: `0.9 % vol`. */
  give: {
    volume(volumeMl: Measured): string
    mass(massG: Measured): string
    strength(abvPercent: Measured): string
    sweetness(sugarGPerL: Measured): string
    temperature(tempC: Measured): string
  }
  /** Value and half interval side by side, the ± with no more decimals than its value: `30.0 % vol ± 1.2 % vol`. */
  spread: {
    volume(volumeMl: Measured): string
    mass(massG: Measured): string
    strength(abvPercent: Measured): string
    sweetness(sugarGPerL: Measured): string
  }
  /** As a cook says it, to what a jug, a kitchen scale and a label tell: `1.51 l`, `510 g`, `30 %`. */
  round: {
    volume(volumeMl: number): string
    /** The same where less would not do: what household measures round is rounded up. */
    atLeast(volumeMl: number): string
    mass(massG: number): string
    /** What sweetens, by the cup: `1 ¾ cups`; null where no cups are poured, or none tell it. */
    cups(massG: number, of: Pick<Material, 'pouredGPerMl' | 'pouredPlusMinusShare'>): string | null
    /** Whole percent; with a decimal where it is known so well, as on a label: `37.5 %`. */
    strength(abvPercent: Measured): string
    /** To 5 g/L, which is what a kitchen’s scale and jug make of a sweetness, under 5 to 1; in a US kitchen `8 ½ oz/quart`. */
    sweetness(sugarGPerL: number): string
    /** `−18 °C`, in a US kitchen `0 °F` alone. */
    temperature(tempC: number): string
    /** The same of a drink that is told whole; a US kitchen is told it in a word: `medium sweet`. */
    sweet(sugarGPerL: number): string
  }
}
