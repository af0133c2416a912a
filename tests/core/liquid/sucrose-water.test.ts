import { expect, test } from 'vitest'
import { apparentVolumeMlPerG, sucroseWaterDensityKgPerM3, sweetnessGPerL } from '../../../core/liquid/sucrose-water.ts'
import { compare, readTable } from '../../published/table.ts'

const crc = readTable('sucrose-crc')
test(`density at 20 °C (${crc.source})`, () => {
  const within = ([mass]: readonly number[]): number => {
    if (mass! <= 40) return 0.1
    if (mass! <= 60) return 0.25
    return mass! <= 80 ? 0.55 : 0.9
  }
  const { off } = compare(crc, 2, ([mass]) => sucroseWaterDensityKgPerM3(mass! / 100, 20), { tolerance: within })
  expect(off).toEqual([])
})

test(`grams in a litre at 20 °C (${crc.source})`, () => {
  const within = ([mass]: readonly number[]): number => (mass! <= 40 ? 0.1 : 0.8)
  const { off } = compare(crc, 1, ([mass]) => (mass! / 100) * sucroseWaterDensityKgPerM3(mass! / 100, 20), {
    tolerance: within,
  })
  expect(off).toEqual([])
})

const torun = readTable('sucrose-torun')
test(`density at 15 and 20 °C and grams in a litre (${torun.source})`, () => {
  expect(compare(torun, 1, ([mass]) => (mass! / 100) * sucroseWaterDensityKgPerM3(mass! / 100, 20)).off).toEqual([])
  expect(compare(torun, 2, ([mass]) => sucroseWaterDensityKgPerM3(mass! / 100, 15)).off).toEqual([])
  expect(compare(torun, 3, ([mass]) => sucroseWaterDensityKgPerM3(mass! / 100, 20)).off).toEqual([])
})

const gerlach = readTable('sucrose-gerlach')
test(`gravity at 17.5 °C (${gerlach.source})`, () => {
  const within = ([mass]: readonly number[]): number => {
    if (mass! <= 20) return 0.00011
    if (mass! <= 40) return 0.00031
    return mass! <= 60 ? 0.00045 : 0.0009
  }
  const gravity = ([mass]: readonly number[]): number =>
    sucroseWaterDensityKgPerM3(mass! / 100, 17.5) / sucroseWaterDensityKgPerM3(0, 17.5)
  expect(compare(gerlach, 1, gravity, { tolerance: within }).off).toEqual([])
})

const warm = readTable('sucrose-temperatures')
test.each([0, 10, 20, 30, 40])(`density at %i °C (${warm.source})`, (tempC) => {
  const { off } = compare(warm, 1 + tempC / 10, ([mass]) => sucroseWaterDensityKgPerM3(mass! / 100, tempC))
  expect(off).toEqual([])
})

const volumes = readTable('sucrose-apparent-volume')
test(`room a gram of sugar takes (${volumes.source})`, () => {
  expect(compare(volumes, 1, ([gPerL]) => apparentVolumeMlPerG(gPerL!)).off).toEqual([])
})

test('13.5 lb of sugar add a gallon (27 CFR 24.181, wine rule): 0.6182 mL/g, within 0.005', () => {
  expect(Math.abs(apparentVolumeMlPerG(200) - 3785.411784 / (13.5 * 453.59237))).toBeLessThanOrEqual(0.005)
})

test.each([-0.1, 1600, Number.NaN])('%d g/L is refused', (gPerL) => {
  expect(() => apparentVolumeMlPerG(gPerL)).toThrow('sweetness_out_of_range')
})
test.each([-1, 81])('%d °C is refused', (tempC) => {
  expect(() => sucroseWaterDensityKgPerM3(0.5, tempC)).toThrow('temperature_out_of_range')
})

test('sweetness of the least sugar that a number can be', () => {
  for (const sugarG of [Number.MIN_VALUE, 4.4e-323, 1e-300, 1e-30, 1e-12]) {
    const sweetness = sweetnessGPerL(100, sugarG)
    expect(sweetness).toBeGreaterThanOrEqual(0)
    expect(sweetness).toBeLessThanOrEqual(11 * sugarG + 1e-25)
  }
  expect(sweetnessGPerL(100, 1e-12)).toBeCloseTo(1e-11, 20)
})
