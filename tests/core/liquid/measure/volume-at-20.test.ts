import { expect, test } from 'vitest'
import { ethanolWaterDensityKgPerM3, massFractionFromAbv } from '../../../../core/liquid/ethanol-water.ts'
import { volumeMlAt20 } from '../../../../core/liquid/measure/volume-at-20.ts'
import { abvPercentFromUsProof, US_PROOF_TEMP_C } from '../../../../core/liquid/proof.ts'
import { compare, readTable } from '../../../published/table.ts'

const ttb = readTable('ttb-table-7')
test(`volume of spirit from one temperature to another (${ttb.source})`, () => {
  const { off } = compare(ttb, 2, ([proof, tempF]) => {
    const spirit = { abvPercent: abvPercentFromUsProof(proof!) }
    const tempC = (tempF! - 32) / 1.8
    // The table's factor leads to 60 °F and leaves the vessel out, so the glass of both readings is taken out again.
    const glass = (t: number) => 1 + 25e-6 * (t - 20)
    const from = volumeMlAt20(1, spirit, tempC) / glass(tempC)
    return from / (volumeMlAt20(1, spirit, US_PROOF_TEMP_C) / glass(US_PROOF_TEMP_C))
  })
  expect(off).toEqual([])
})

test('mass is kept between the reading and 20 °C', () => {
  const p = massFractionFromAbv(45)
  const massG = 930 * (1 + 25e-6 * 8) * ethanolWaterDensityKgPerM3(p, 28)
  expect(volumeMlAt20(930, { abvPercent: 45 }, 28) * ethanolWaterDensityKgPerM3(p, 20)).toBeCloseTo(massG, 6)
})

test('at 20 °C a volume is what was read; warm liquid, sweet or not, is less at 20 °C', () => {
  expect(volumeMlAt20(700, { abvPercent: 30, sugarGPerL: 250 }, 20)).toBeCloseTo(700, 9)
  expect(volumeMlAt20(700, { abvPercent: 30, sugarGPerL: 250 }, 30)).toBeLessThan(700)
  expect(volumeMlAt20(700, { abvPercent: 30, sugarGPerL: 250 }, 10)).toBeGreaterThan(700)
})

test('sugar narrows the range of temperatures', () => {
  expect(volumeMlAt20(700, { abvPercent: 40 }, -18)).toBeGreaterThan(700)
  expect(() => volumeMlAt20(700, { abvPercent: 30, sugarGPerL: 250 }, -18)).toThrow('temperature_out_of_range')
})
