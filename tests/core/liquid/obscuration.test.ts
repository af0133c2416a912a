import { expect, test } from 'vitest'
import { abvFromDensity, ethanolWaterDensityKgPerM3, massFractionFromAbv } from '../../../core/liquid/ethanol-water.ts'
import { US_PROOF_TEMP_C, usProofFromAbvPercent } from '../../../core/liquid/proof.ts'
import { apparentVolumeMlPerG } from '../../../core/liquid/sucrose-water.ts'

/** How far 1 g/L of sugar lowers what a hydrometer shows, in US proof, at 60 °F. */
const obscuredProof = (usProof: number): number => {
  const spirit = ethanolWaterDensityKgPerM3(massFractionFromAbv(usProof / 2, US_PROOF_TEMP_C), US_PROOF_TEMP_C)
  const sugarGPerL = 1
  const diluted = 1 - (sugarGPerL * apparentVolumeMlPerG(sugarGPerL)) / 1000
  const sweetened = spirit * diluted + sugarGPerL
  const trueProof = usProof * diluted
  return trueProof - usProofFromAbvPercent(abvFromDensity(sweetened, US_PROOF_TEMP_C))
}

test('0.1 g of solids in 100 mL lowers the reading by 0.4 proof at 80–100 proof on the mean (27 CFR 30.32(b), half of the last digit)', () => {
  const mean = (obscuredProof(80) + obscuredProof(90) + obscuredProof(100)) / 3
  expect(Math.abs(mean - 0.4)).toBeLessThanOrEqual(0.05)
})
