import { expect, test } from 'vitest'
import {
  abvFromMassFraction,
  ETHANOL_DENSITY_20C_G_PER_ML,
  ethanolWaterDensityKgPerM3,
  massFractionFromAbv,
} from '../../../core/liquid/ethanol-water.ts'
import { weightInAirFromMassG } from '../../../core/liquid/measure/weight-in-air.ts'
import { US_PROOF_TEMP_C } from '../../../core/liquid/proof.ts'
import { compare, misprintsOf, readTable } from '../../published/table.ts'

const celsius = (tempF: number): number => (tempF - 32) / 1.8
const at60F = (percent: number): number => massFractionFromAbv(percent, US_PROOF_TEMP_C)
const density60F = (massFraction: number): number => ethanolWaterDensityKgPerM3(massFraction, US_PROOF_TEMP_C)
const ML_PER_GALLON = 3785.411784
const G_PER_POUND = 453.59237

/** What an instrument in air shows as specific gravity: weights of equal volumes, both at the same temperature. */
const gravityInAir = (massFraction: number, tempC: number): number => {
  const weight = (p: number) => {
    const gPerMl = ethanolWaterDensityKgPerM3(p, tempC) / 1000
    return weightInAirFromMassG(gPerMl, gPerMl)
  }
  return weight(massFraction) / weight(0)
}

const volumes = readTable('ttb-table-6')
test(`alcohol and water in 100 volumes of spirit (${volumes.source})`, () => {
  const alcohol = compare(volumes, 1, ([proof]) => {
    const p = at60F(proof! / 2)
    return (100 * p * density60F(p)) / density60F(1)
  })
  const water = compare(volumes, 2, ([proof]) => {
    const p = at60F(proof! / 2)
    return (100 * (1 - p) * density60F(p)) / density60F(0)
  })
  expect(alcohol.off).toEqual([])
  expect(water.off).toEqual([])
})

const perPound = readTable('ttb-table-4')
test(`gallons to a pound, weighed in air (${perPound.source})`, () => {
  const gallons = ([proof]: readonly number[]): number => {
    const gPerMl = density60F(at60F(proof! / 2)) / 1000
    return G_PER_POUND / weightInAirFromMassG(ML_PER_GALLON * gPerMl, gPerMl)
  }
  expect(compare(perPound, 1, gallons).off).toEqual([])
  expect(compare(perPound, 2, (row) => (gallons(row) * row[0]!) / 100).off).toEqual([])
})

const waterPerPound = readTable('ttb-water-per-pound')
test(`gallons to a pound of water (${waterPerPound.source})`, () => {
  const { off } = compare(waterPerPound, 1, ([tempF]) => {
    const gPerMl = ethanolWaterDensityKgPerM3(0, celsius(tempF!)) / 1000
    return G_PER_POUND / weightInAirFromMassG(ML_PER_GALLON * gPerMl, gPerMl)
  })
  expect(off).toEqual([])
})

const factors = readTable('ttb-table-7')
test(`factor from a volume at another temperature to 60 °F (${factors.source})`, () => {
  const { off } = compare(factors, 2, ([proof, tempF]) => {
    const p = at60F(proof! / 2)
    return ethanolWaterDensityKgPerM3(p, celsius(tempF!)) / density60F(p)
  })
  expect(off).toEqual([])
})

const usp = readTable('usp-alcoholometric')
test(`per cent by mass and gravities in air (${usp.source})`, () => {
  expect(compare(usp, 1, ([percent]) => 100 * at60F(percent!)).off).toEqual([])
  expect(compare(usp, 2, ([percent]) => gravityInAir(at60F(percent!), 25)).off).toEqual([])
  expect(compare(usp, 3, ([percent]) => gravityInAir(at60F(percent!), US_PROOF_TEMP_C)).off).toEqual([])
})

const nbs = readTable('nbs-density')
test.each([10, 15, 20, 25, 30, 35, 40])(`density at %i °C (${nbs.source})`, (tempC) => {
  const column = tempC / 5 - 1
  const { off, compared } = compare(nbs, column, ([mass]) => ethanolWaterDensityKgPerM3(mass! / 100, tempC) / 1000)
  expect(off).toEqual([])
  expect(compared).toBe(nbs.count)
})

const perry = readTable('perry-density')
test(`density at 20 °C (${perry.source})`, () => {
  const { off, compared } = compare(perry, 1, ([mass]) => ethanolWaterDensityKgPerM3(mass! / 100, 20) / 1000)
  expect(off).toEqual([])
  expect(compared).toBe(perry.count)
})

const dilution = readTable('dilution')
test(`water to dilute 100 volumes (${dilution.source})`, () => {
  const { off } = compare(
    dilution,
    2,
    ([from, to]) => {
      const [p, wanted] = [at60F(from!), at60F(to!)]
      return (100 * density60F(p) * (p / wanted - 1)) / density60F(0)
    },
    { relative: true },
  )
  expect(off).toEqual(misprintsOf(dilution, 2))
})

test('ethanol and water shrink: 100 L and 100 L give 192.75 L of 51.8 % vol (wein-plus glossary, within 0.2 L)', () => {
  const [ethanolKg, waterKg] = [100 * ETHANOL_DENSITY_20C_G_PER_ML, 99.820123]
  const p = ethanolKg / (ethanolKg + waterKg)
  const volumeL = ((ethanolKg + waterKg) / ethanolWaterDensityKgPerM3(p, 20)) * 1000
  expect(Math.abs(volumeL - 192.75)).toBeLessThanOrEqual(0.2)
  expect(Math.abs(abvFromMassFraction(p) - 51.8)).toBeLessThanOrEqual(0.05)
})

test('vodka of 40 % vol holds 33.4 g ethanol in 100 g (USDA SR28, 100 − 66.6 water, within 0.2)', () => {
  expect(Math.abs(100 * massFractionFromAbv(40) - 33.4)).toBeLessThanOrEqual(0.2)
})

test.each([
  [40, 948.05],
  [96, 807.42],
])('density at %d %% vol is %d kg/m³ (OIML R 22, computed apart, within 0.05)', (abvPercent, densityKgPerM3) => {
  const computed = ethanolWaterDensityKgPerM3(massFractionFromAbv(abvPercent), 20)
  expect(Math.abs(computed - densityKgPerM3)).toBeLessThanOrEqual(0.05)
})

test.each([
  [0, 20, 998.20123],
  [1, 20, 789.23912],
  [0.4, 20, 935.145],
  [0.5, 10, 921.5891],
  [0.5, 40, 897.4401],
])('ρ(%d, %d) is %d kg/m³ (OIML R 22, computed apart in Python)', (massFraction, tempC, densityKgPerM3) => {
  expect(Math.abs(ethanolWaterDensityKgPerM3(massFraction, tempC) - densityKgPerM3)).toBeLessThanOrEqual(0.0005)
})
