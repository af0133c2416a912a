import { expect, test } from 'vitest'
import { abvPercentAt20, strengthPercentFromReading } from '../../../../core/liquid/measure/hydrometer.ts'
import { US_PROOF_TEMP_C } from '../../../../core/liquid/proof.ts'
import { compare, misprintsOf, readTable } from '../../../published/table.ts'

const at60F = (readingPercent: number, tempF: number): number =>
  strengthPercentFromReading({ readingPercent, tempC: (tempF - 32) / 1.8, scaleC: US_PROOF_TEMP_C })

const dick = readTable('glass-hydrometer')
test(`true strength from a glass hydrometer (${dick.source})`, () => {
  const { off, rms, compared } = compare(dick, 2, ([reading, tempF]) => at60F(reading!, tempF!))
  expect(off).toEqual(misprintsOf(dick, 2))
  expect(rms).toBeLessThanOrEqual(0.1)
  expect(compared).toBe(153)
})

const ttb = readTable('ttb-table-1')
test(`true proof from a hydrometer (${ttb.source})`, () => {
  const { off } = compare(ttb, 2, ([proof, tempF]) => 2 * at60F(proof! / 2, tempF!))
  expect(off).toEqual([])
})

test.each([
  [80.32, 68.36, 76.6],
  [192.82, 72.15, 190.0],
])('%d proof read at %d °F is %d (27 CFR 30.23, worked example, half of the last digit)', (proof, tempF, trueProof) => {
  expect(Math.abs(2 * at60F(proof / 2, tempF) - trueProof)).toBeLessThanOrEqual(0.05)
})

test.each([0, 12.5, 40, 96, 100])('at its own temperature the stem is right: %d %% vol', (percent) => {
  expect(abvPercentAt20(percent, 20)).toBeCloseTo(percent, 9)
})

test('warm spirit reads too strong, cold spirit too weak', () => {
  expect(abvPercentAt20(40, 28)).toBeLessThan(37.5)
  expect(abvPercentAt20(40, 12)).toBeGreaterThan(42.5)
})

test('the ends are met within the error of a reading and refused beyond', () => {
  expect(abvPercentAt20(-0.3, 20)).toBe(0)
  expect(abvPercentAt20(100.3, 20)).toBe(100)
  expect(() => abvPercentAt20(-1.5, 20)).toThrow('reading_out_of_scale')
  expect(() => abvPercentAt20(101.5, 20)).toThrow('reading_out_of_scale')
  expect(() => abvPercentAt20(Number.NaN, 20)).toThrow('reading_out_of_scale')
  expect(() => abvPercentAt20(40, 41)).toThrow('temperature_out_of_range')
})
