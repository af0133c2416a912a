import fc from 'fast-check'
import { expect, test } from 'vitest'
import {
  abvPercent,
  densityGPerMl,
  extractG,
  type Liquid,
  liquidFrom,
  mix,
  part,
  sugarG,
  volumeMl,
  water,
} from '../../../core/liquid/liquid.ts'
import { brixByRefraction } from '../../../core/liquid/measure/refraction.ts'
import { isJuice, materialIds, materialOf, sugarsShare } from '../../../core/quantity/materials.ts'
import { exactly } from '../../../core/quantity/measured/measured.ts'
import { REFRACTOMETER_PLUS_MINUS_BRIX, stemPlusMinus } from '../../../core/quantity/measured/precision.ts'
import { type GaugedOutcome, type Gauging, gauged } from '../../../core/recipe/solve/gauged.ts'
import { gramOf } from '../../../core/recipe/sweetening.ts'
import { runs, SEED } from '../../runs.ts'

/**
 * How much lower a refractometer made for sucrose reads in glucose and fructose, as a share: 1.3634 and 1.3635 against 1.3639 at 20 % by
 * mass, where 0.00155 is 1 Brix (CRC Handbook, 102nd ed., "Concentrative Properties of Aqueous Solutions").
 */
const HEXOSE_BRIX_SHARE = 0.00045 / 0.00155 / 20
/** How much lighter than sucrose they are there: the mean of +0.06 % and −0.12 %. */
const HEXOSE_LIGHTER_SHARE = 0.0003

const kgPerM3 = (liquid: Liquid, lighterShare: number): number => 1000 * densityGPerMl(liquid) * (1 - lighterShare)

const stem = (densityKgPerM3: number) =>
  ({
    value: { value: densityKgPerM3 / 1000, plusMinus: stemPlusMinus.g_per_ml },
    scale: 'g_per_ml',
    atC: 20,
  }) as const

const withoutAlcohol = (liquid: Liquid): Liquid => {
  const rest = mix(part(liquid, 1), { ...water(0), ethanolG: -liquid.ethanolG })
  // Filled up again to the mark.
  let filledG = 0
  for (let round = 0; round < 50; round++) filledG += volumeMl(liquid) - volumeMl(mix(rest, water(filledG)))
  return mix(rest, water(filledG))
}

const made = fc.record({
  material: fc.constantFrom(...materialIds.filter((id) => !isJuice(id))),
  percent: fc.double({ min: 15, max: 40, noNaN: true }),
  gPerL: fc.double({ min: 60, max: 350, noNaN: true }),
})

test('a liqueur of any sweetening, gauged by any method, comes back within the ± of the method', () => {
  let tried = 0
  fc.assert(
    fc.property(made, ({ material, percent, gPerL }) => {
      const sweet = part(gramOf(material), gPerL / sugarsShare(material))
      const spirit = liquidFrom({ volumeMl: 1000, abvPercent: percent, sugarGPerL: 0 })
      const liqueur = mix(spirit, sweet)
      const litres = volumeMl(liqueur) / 1000
      const { per100G } = materialOf(material)
      const hexoses = per100G.glucoseAndFructose / (100 * sugarsShare(material))
      const lighter = (hexoses * HEXOSE_LIGHTER_SHARE * gPerL) / 220
      // All that is dissolved is what instruments see.
      const solids = (sugarG(liqueur) + extractG(liqueur)) / litres
      const brix = brixByRefraction(liqueur)
      const seen = stem(kgPerM3(liqueur, lighter))
      const gaugings: readonly Gauging[] = [
        {
          method: 'two_instruments',
          brix: {
            value: { value: brix * (1 - hexoses * HEXOSE_BRIX_SHARE), plusMinus: REFRACTOMETER_PLUS_MINUS_BRIX },
            atC: 20,
          },
          hydrometer: seen,
        },
        { method: 'boiled', before: seen, after: stem(kgPerM3(withoutAlcohol(liqueur), lighter)) },
        { method: 'known_sugar', hydrometer: seen, sugarGPerL: exactly(solids) },
      ]
      for (const gauging of gaugings) {
        const found: GaugedOutcome = gauged(gauging)
        const off = Math.abs(found.abvPercent.value - abvPercent(liqueur))
        expect(off, `${gauging.method} of ${material}: strength`).toBeLessThanOrEqual(found.abvPercent.plusMinus)
        const sweetness = Math.abs(found.sugarGPerL.value - solids)
        expect(sweetness, `${gauging.method} of ${material}: sugar`).toBeLessThanOrEqual(
          found.sugarGPerL.plusMinus + 1e-9,
        )
        tried += 1
      }
    }),
    { seed: SEED, numRuns: runs(150, 2000) },
  )
  expect(tried).toBeGreaterThanOrEqual(450)
})
