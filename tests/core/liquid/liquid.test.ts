import { expect, test } from 'vitest'
import {
  abvPercent,
  densityGPerMl,
  liquidFrom,
  liquidFromMass,
  massG,
  NOTHING,
  spirit,
  sugar,
  sugarGPerL,
  sugarRoomMl,
  volumeMl,
  water,
} from '../../../core/liquid/liquid.ts'
import { modelVolumePlusMinus } from '../../../core/liquid/model-error.ts'

const litre = (abvPercent: number, sugarGPerL: number) => liquidFrom({ volumeMl: 1000, abvPercent, sugarGPerL })

test('nothing has no volume, strength or sweetness, and nothing is not a number', () => {
  expect([massG, volumeMl, abvPercent, sugarGPerL, sugarRoomMl].map((of) => of(NOTHING))).toEqual([0, 0, 0, 0, 0])
  expect(densityGPerMl(NOTHING)).toBeCloseTo(0.9982, 4)
})

test('dry sugar is as sweet as can be', () => {
  expect(sugarGPerL(sugar(100))).toBeCloseTo(1551.9, 1)
  expect(volumeMl(sugar(100))).toBeCloseTo(64.44, 2)
  expect(abvPercent(sugar(100))).toBe(0)
})

test('pure alcohol takes no sugar and no water', () => {
  expect(volumeMl(spirit({ volumeMl: 1000, abvPercent: 100 }))).toBeCloseTo(1000, 9)
  expect(() => litre(100, 1)).toThrow('no_room_for_water')
})

test.each([
  [80, 400],
  [1, 1552],
  [50, 900],
])('%d %% vol and %d g/L do not fit', (abvPercent, sugarGPerL) => {
  expect(() => litre(abvPercent, sugarGPerL)).toThrow(/no_room_for_water|sweetness_out_of_range/)
})

test.each([
  [() => litre(-1, 0), 'strength_out_of_range'],
  [() => litre(100.1, 0), 'strength_out_of_range'],
  [() => litre(Number.NaN, 0), 'strength_out_of_range'],
  [() => litre(30, -1), 'sweetness_out_of_range'],
  [() => litre(30, Number.NaN), 'sweetness_out_of_range'],
  [() => liquidFrom({ volumeMl: -1, abvPercent: 1, sugarGPerL: 0 }), 'negative_volume'],
  [() => liquidFromMass({ massG: -1, abvPercent: 1, sugarGPerL: 0 }), 'negative_mass'],
  [() => water(Number.NaN), 'negative_mass'],
  [() => sugar(Number.POSITIVE_INFINITY), 'negative_mass'],
])('%s: %s', (make, problem) => {
  expect(make).toThrow(problem)
})

test.each([
  [litre(40, 0), -21, -20],
  [litre(40, 0), 41, -20],
  [litre(30, 250), -1, 0],
  [litre(30, 250), 41, 0],
])('the model holds no further than its formulas: %o at %d °C, from %d °C', (liquid, tempC, lowC) => {
  const problem = expect.objectContaining({ problem: 'temperature_out_of_range', values: { tempC, lowC, highC: 40 } })
  expect(() => volumeMl(liquid, tempC)).toThrow(problem)
})

// The density is off by 2.4 kg/m³ rms (Scheibler 1872 and two analysed liqueurs, see the evidence), and 1.96 deviations are 95 %.
test.each([
  [0, 0],
  [125, 0.5],
  [250, 1],
  [400, 1],
])('the volume with %d g/L is known to %d times as well as its density', (sugarGPerL, share) => {
  const ofDensity = (1.96 * 2.4) / 1090
  expect(Math.abs(modelVolumePlusMinus(litre(25, sugarGPerL)) - share * ofDensity)).toBeLessThanOrEqual(0.00005)
})
