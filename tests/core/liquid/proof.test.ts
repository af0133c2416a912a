import { expect, test } from 'vitest'
import { ethanolWaterDensityKgPerM3, massFractionFromAbv } from '../../../core/liquid/ethanol-water.ts'
import { massG, spirit, waterG } from '../../../core/liquid/liquid.ts'
import { massFromWeightInAirG, weightInAirFromMassG } from '../../../core/liquid/measure/weight-in-air.ts'
import { abvPercentFromUsProof, US_PROOF_TEMP_C, usProofFromAbvPercent } from '../../../core/liquid/proof.ts'

const spiritOfProof = (usProof: number, volumeMl: number) =>
  spirit({ volumeMl, abvPercent: abvPercentFromUsProof(usProof) })

/** Water in volumes at 60 °F that brings 100 volumes at 60 °F from one proof to another. */
const waterToAdd = (fromProof: number, toProof: number): number => {
  const massFraction = (proof: number) => massFractionFromAbv(proof / 2, US_PROOF_TEMP_C)
  const [p, wanted] = [massFraction(fromProof), massFraction(toProof)]
  const spiritG = 100 * ethanolWaterDensityKgPerM3(p, US_PROOF_TEMP_C)
  return (spiritG * (p / wanted - 1)) / ethanolWaterDensityKgPerM3(0, US_PROOF_TEMP_C)
}

test('112 to 100 proof takes 12.42 gallons to 100 (27 CFR 30.66, within the printed digit and 0.01 for the table)', () => {
  expect(Math.abs(waterToAdd(112, 100) - 12.42)).toBeLessThanOrEqual(0.015)
})

test('191 to 188 proof takes 1.84 gallons to 100 (27 CFR 30.66, whose arithmetic cuts 95.5/94 to 1.01: 0.044 less)', () => {
  const cutTo = Math.floor((95.5 / 94) * 100) / 100
  const lostByCutting = (95.5 / 94 - cutTo) * 7.36
  expect(Math.abs(waterToAdd(191, 188) - lostByCutting - 1.84)).toBeLessThanOrEqual(0.01)
})

test('1000 lb of 200 proof takes 82.03 lb of water to 190 proof (27 CFR 30.64, weights in air, within 0.07)', () => {
  // The printed result divides two table values, each off by up to 0.00003 proof gallons to a pound (see ttb-table-4).
  const gPerMl = (p: number) => ethanolWaterDensityKgPerM3(p, US_PROOF_TEMP_C) / 1000
  const wanted = massFractionFromAbv(95, US_PROOF_TEMP_C)
  const ethanolMass = massFromWeightInAirG(1000, gPerMl(1))
  const dilutedWeight = weightInAirFromMassG(ethanolMass / wanted, gPerMl(wanted))
  expect(Math.abs(dilutedWeight - 1000 - 82.03)).toBeLessThanOrEqual(0.07)
})

test('the ends are the same on both scales, the middle is not', () => {
  expect(abvPercentFromUsProof(0)).toBe(0)
  expect(abvPercentFromUsProof(200)).toBeCloseTo(100, 9)
  expect(abvPercentFromUsProof(100)).not.toBe(50)
  expect(waterG(spiritOfProof(200, 1000)) / massG(spiritOfProof(200, 1000))).toBeLessThan(1e-9)
})

test.each([0, 20, 80, 100, 151, 191, 200])('proof %d comes back', (usProof) => {
  expect(usProofFromAbvPercent(abvPercentFromUsProof(usProof))).toBeCloseTo(usProof, 9)
})

test.each([-1, 200.1, Number.NaN])('proof %d is refused', (usProof) => {
  expect(() => abvPercentFromUsProof(usProof)).toThrow('proof_out_of_range')
})
