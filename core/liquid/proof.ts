import { DomainError } from '../domain-error.ts'
import { abvFromMassFraction, massFractionFromAbv } from './ethanol-water.ts'

/** 60 °F: the temperature at which US proof counts volumes. */
export const US_PROOF_TEMP_C = (60 - 32) / 1.8

/**
 * Strength in % vol at 20 °C of a spirit given in US proof, which is twice its % vol at 60 °F.
 * @param usProof - degrees of US proof, 0 to 200; outside, throws `proof_out_of_range`.
 * Error: that of the density formula, below 0.001 % vol; taking proof/2 as % vol instead is off by up to 0.08.
 * Source: 27 CFR 30.11 (proof, proof gallon); density by OIML R 22.
 */
export const abvPercentFromUsProof = (usProof: number): number => {
  if (!(usProof >= 0 && usProof <= 200)) {
    throw new DomainError('bad_value', 'proof_out_of_range', { usProof, highUsProof: 200 })
  }
  return abvFromMassFraction(massFractionFromAbv(usProof / 2, US_PROOF_TEMP_C))
}

/** US proof of a spirit given in % vol at 20 °C; the inverse of `abvPercentFromUsProof`. */
export const usProofFromAbvPercent = (abvPercent: number): number =>
  2 * abvFromMassFraction(massFractionFromAbv(abvPercent), US_PROOF_TEMP_C)
