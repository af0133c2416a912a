import { expect, test } from 'vitest'
import { ETHANOL_DENSITY_20C_G_PER_ML } from '../../../core/liquid/ethanol-water.ts'
import {
  densityGPerMl,
  ethanolG,
  type Liquid,
  liquidFrom,
  mix,
  part,
  spirit,
  sugar,
  sugarGPerL,
  volumeMl,
  water,
} from '../../../core/liquid/liquid.ts'
import { compare, readTable } from '../../published/table.ts'

const WATER_17_5C_G_PER_ML = 0.99871
const WATER_20C_G_PER_ML = 0.9982

const scheibler = readTable('scheibler')

/** A row as mass: its sugar, and solvent of the given strength for the rest of the measured weight of 100 mL. */
const rowLiquid = ([solventPercent, gravity, sugarG]: readonly number[]): Liquid => {
  const solventG = 100 * gravity! * WATER_17_5C_G_PER_ML - sugarG!
  const solvent = spirit({ volumeMl: 100, abvPercent: solventPercent! })
  const massPerMl = densityGPerMl(solvent)
  return mix(part(solvent, solventG / (100 * massPerMl)), sugar(sugarG!))
}

test(`density of saturated solutions (${scheibler.source})`, () => {
  const { off, compared } = compare(scheibler, 4, (row) => densityGPerMl(rowLiquid(row), 17.5))
  expect(off).toEqual([])
  expect(compared).toBe(10)
})

test('rms over the eight rows with sugar and spirit stays within 0.0025 g/mL', () => {
  const sweetened = { ...scheibler, rows: scheibler.rows.slice(1, 9) }
  expect(compare(sweetened, 4, (row) => densityGPerMl(rowLiquid(row), 17.5)).rms).toBeLessThanOrEqual(0.0025)
})

test(`finished strength of the rows (${scheibler.source})`, () => {
  expect(compare(scheibler, 3, (row) => ethanolG(rowLiquid(row)) / ETHANOL_DENSITY_20C_G_PER_ML).off).toEqual([])
})

test('curaçao: 37.12 % vol and 269.5 g/L has SG 1.052 (FAO/INFOODS Density Database 2.0; composition from memory)', () => {
  const liqueur = liquidFrom({ volumeMl: 1000, abvPercent: 37.12, sugarGPerL: 269.5 })
  expect(Math.abs(densityGPerMl(liqueur) / WATER_20C_G_PER_ML - 1.052)).toBeLessThanOrEqual(0.0042)
})

test('cherry brandy: 24.07 % vol has SG 1.093 between 310.5 and 326 g/L (FAO/INFOODS; composition from memory)', () => {
  const gravity = (sugarGPerL: number): number =>
    densityGPerMl(liquidFrom({ volumeMl: 1000, abvPercent: 24.07, sugarGPerL })) / WATER_20C_G_PER_ML
  expect(gravity(310.5)).toBeGreaterThan(1.093 - 0.0042)
  expect(gravity(310.5)).toBeLessThan(1.093)
  expect(gravity(326)).toBeGreaterThan(1.093)
  expect(gravity(326)).toBeLessThan(1.093 + 0.0042)
})

test('spirits of 40.17 % vol have SG 0.95 (FAO/INFOODS), half of the last digit', () => {
  const spirits = spirit({ volumeMl: 1000, abvPercent: 40.17 })
  expect(Math.abs(densityGPerMl(spirits) / WATER_20C_G_PER_ML - 0.95)).toBeLessThanOrEqual(0.005)
})

const frigerio = readTable('frigerio')
test(`old recipes fill their 100 litres (${frigerio.source})`, () => {
  const { off, compared } = compare(frigerio, 3, ([alcoholL, sugarKg, waterL]) => {
    const alcohol = spirit({ volumeMl: alcoholL! * 1000, abvPercent: 85 })
    return volumeMl(mix(alcohol, sugar(sugarKg! * 1000), water(waterL! * 1000 * WATER_20C_G_PER_ML))) / 1000
  })
  expect(off).toEqual([])
  expect(compared).toBe(7)
})

test('syrup of 190 sugar to 100 water has density 1.32 (A. Rossi, Manuale del liquorista, 1904, p. 285)', () => {
  expect(Math.abs(densityGPerMl(mix(sugar(190), water(100))) - 1.32)).toBeLessThanOrEqual(0.005)
})

test.each([
  [30, 250, 1.0572],
  [25, 100, 1.0067],
  [40, 150, 1.004],
])('%d %% vol and %d g/L weigh %d g/mL (the model computed apart in Python)', (percent, gPerL, densityPrinted) => {
  const liqueur = liquidFrom({ volumeMl: 1000, abvPercent: percent, sugarGPerL: gPerL })
  expect(Math.abs(densityGPerMl(liqueur) - densityPrinted)).toBeLessThanOrEqual(0.0001)
  expect(Math.abs(sugarGPerL(liqueur) - gPerL)).toBeLessThanOrEqual(1e-9)
})
