import { freezesAtC, freezingPlusMinusC } from '../../liquid/freezing.ts'
import { densityGPerMl, type Liquid, liquidFrom } from '../../liquid/liquid.ts'
import {
  abvOfKnownSugar,
  type DensityAt,
  type GaugedLiquid,
  gaugeByTwoInstruments,
  sugarOfBoiledGPerL,
} from '../../liquid/measure/gauge.ts'
import { densityFromStemKgPerM3 } from '../../liquid/measure/stem.ts'
import { exactly, type Measured } from '../../quantity/measured/measured.ts'
import type { StemScale } from '../../quantity/quantities.ts'
import { propagate, type Values } from '../propagate.ts'

/** What a hydrometer showed; `atC` null where no temperature was said. */
export interface StemRead {
  readonly value: Measured
  readonly scale: StemScale
  readonly atC: number | null
}

/** How a finished liqueur was measured. */
export type Gauging =
  | {
      readonly method: 'two_instruments'
      readonly brix: { readonly value: Measured; readonly atC: number | null }
      readonly hydrometer: StemRead
    }
  | { readonly method: 'boiled'; readonly before: StemRead; readonly after: StemRead }
  | { readonly method: 'known_sugar'; readonly hydrometer: StemRead; readonly sugarGPerL: Measured }

export type GaugingMethod = Gauging['method']

/** What a measured liqueur is, however much of it there is. */
export interface GaugedOutcome {
  readonly abvPercent: Measured
  readonly sugarGPerL: Measured
  readonly densityGPerMl: Measured
  readonly freezesAtC: Measured
}

/**
 * The least ± of a strength that two instruments or boiling give, % vol. A regression of density and refraction reached it on
 * real drinks (thesis abstract, mountainscholar.org 986220de); our own formulas were never tested on measured liqueurs.
 */
const METHOD_PERCENT = 2
/** The same of the sugar: 1 Brix is 10 g in a kilogram. */
const METHOD_BRIX = 1

/** From this sugar on, g/L, a known one bears the whole `METHOD_PERCENT`; without sugar the density is exact by definition. */
const FULL_ERROR_G_PER_L = 250

/** mL/g: the apparent volume of sugar that fits 15–50 % vol best is 0.005 above that in water, see `modelVolumePlusMinus`. */
const SUGAR_ROOM: Measured = { value: 0, plusMinus: 0.005 }
/** Filled up to the same mark again, as a share. Common practice, no source. */
const FILLED: Measured = { value: 1, plusMinus: 0.01 }
/** Alcohol that boiling left, % vol: 200 ml at 15 % vol boiled down to 80 leave none, a hasty pan half of one. Estimated. */
const LEFT_PERCENT: Measured = { value: 0, plusMinus: 0.5 }
/** What 1 % vol of alcohol takes off the density of sugar water, kg/m³. Derived from `volumeMl`. */
const LIGHTER_KG_PER_M3 = 1.4
/** How well the liquid's temperature is known where it was said, and where 20 °C is believed, K. Common practice. */
const SAID_K = 0.5
const BELIEVED_K = 2

const tempOf = (atC: number | null): Measured => ({
  value: atC ?? 20,
  plusMinus: atC === null ? BELIEVED_K : SAID_K,
})

const inputsOf = (gauging: Gauging, extractGPerL: Measured) => {
  const own = { room: SUGAR_ROOM, filled: FILLED, left: LEFT_PERCENT }
  const stem = ({ value, scale, atC }: StemRead) => ({ value, scale, tempC: tempOf(atC) })
  switch (gauging.method) {
    case 'two_instruments':
      return {
        method: gauging.method,
        extractGPerL,
        brix: { value: gauging.brix.value, tempC: tempOf(gauging.brix.atC) },
        hydrometer: stem(gauging.hydrometer),
      }
    case 'boiled':
      return { method: gauging.method, extractGPerL, ...own, before: stem(gauging.before), after: stem(gauging.after) }
    case 'known_sugar':
      return {
        method: gauging.method,
        extractGPerL,
        room: SUGAR_ROOM,
        hydrometer: stem(gauging.hydrometer),
        sugarGPerL: gauging.sugarGPerL,
      }
  }
}

type Inputs = Values<ReturnType<typeof inputsOf>>
type Stem = Extract<Inputs, { readonly method: 'known_sugar' }>['hydrometer']

/** The density of the liquid, as our model would have it where sugar takes so much more room. */
const densityAt = (stem: Stem, moreRoomMlPerL = 0): DensityAt => ({
  densityKgPerM3: densityFromStemKgPerM3(stem) * (1 + moreRoomMlPerL / 1000),
  tempC: stem.tempC,
})

/** Instruments tell sugar and extract together. */
function solve(inputs: Inputs): { readonly abvPercent: number; readonly sugarGPerL: number } {
  const { extractGPerL } = inputs
  switch (inputs.method) {
    case 'two_instruments':
      return less(
        gaugeByTwoInstruments(inputs.brix.value, inputs.brix.tempC, densityAt(inputs.hydrometer)),
        extractGPerL,
      )
    case 'boiled': {
      const seen = densityAt(inputs.after)
      const left = { ...seen, densityKgPerM3: seen.densityKgPerM3 + inputs.left * LIGHTER_KG_PER_M3 }
      return less(known(inputs.before, sugarOfBoiledGPerL(left) * inputs.filled, inputs.room), extractGPerL)
    }
    case 'known_sugar':
      return less(known(inputs.hydrometer, inputs.sugarGPerL + extractGPerL, inputs.room), extractGPerL)
  }
}

const known = (stem: Stem, sugarGPerL: number, room: number) => ({
  abvPercent: abvOfKnownSugar(densityAt(stem, room * sugarGPerL), sugarGPerL),
  sugarGPerL,
})

/** The same, of which so much is extract. */
const less = ({ abvPercent, sugarGPerL }: GaugedLiquid, extractGPerL: number): GaugedLiquid => ({
  abvPercent,
  sugarGPerL: Math.max(0, sugarGPerL - extractGPerL),
})

const litreOf = (of: GaugedLiquid, extractGPerL: number): Liquid => liquidFrom({ volumeMl: 1000, ...of, extractGPerL })

function describe(of: GaugedLiquid, extractGPerL: number) {
  const litre = litreOf(of, extractGPerL)
  return { ...of, densityGPerMl: densityGPerMl(litre), freezesAtC: freezesAtC(litre) }
}

const widened = ({ value, plusMinus }: Measured, by: number): Measured => ({
  value,
  plusMinus: Math.hypot(plusMinus, by),
})

const atLeast = ({ value, plusMinus }: Measured, least: number): Measured => ({
  value,
  plusMinus: Math.max(plusMinus, least),
})

/**
 * Strength and sugar of a liqueur from what its instruments show, each with its ±: that of the readings, temperatures and
 * the kitchen carried through, and no less than the method is known to.
 * Error: ±2 % vol and ±1 Brix for two instruments, ±2 % vol at least for boiling; see the constants for their sources.
 * @param extractGPerL - what is dissolved beside sugar, where what went into it tells that
 * Throws `readings_do_not_fit`.
 */
export function gauged(gauging: Gauging, extractGPerL: Measured = exactly(0)): GaugedOutcome {
  const found = propagate(inputsOf(gauging, extractGPerL), (values) => describe(solve(values), values.extractGPerL))
  const { abvPercent, sugarGPerL, densityGPerMl, freezesAtC } = found
  const litre = litreOf({ abvPercent: abvPercent.value, sugarGPerL: sugarGPerL.value }, extractGPerL.value)
  const rest = { densityGPerMl, freezesAtC: widened(freezesAtC, freezingPlusMinusC(litre)) }
  if (gauging.method === 'known_sugar') {
    const share = Math.min(1, sugarGPerL.value / FULL_ERROR_G_PER_L)
    return { ...rest, abvPercent: atLeast(abvPercent, METHOD_PERCENT * share), sugarGPerL }
  }
  const leastGPerL = gauging.method === 'two_instruments' ? METHOD_BRIX * 10 * densityGPerMl.value : 0
  return {
    ...rest,
    abvPercent: atLeast(abvPercent, METHOD_PERCENT),
    sugarGPerL: atLeast(sugarGPerL, leastGPerL),
  }
}
