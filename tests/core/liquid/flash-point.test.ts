import { expect, test } from 'vitest'
import { abvFromMassFraction } from '../../../core/liquid/ethanol-water.ts'
import { flashPointC } from '../../../core/liquid/flash-point.ts'
import { mix, spirit, sugar } from '../../../core/liquid/liquid.ts'
import { compare, readTable } from '../../published/table.ts'

const ofVolume = (abvPercent: number) => spirit({ volumeMl: 1000, abvPercent })
const ofMass = (massPercent: number) => ofVolume(abvFromMassFraction(massPercent / 100))

const table = readTable('flash-points')
test(`flash points on both bases (${table.source})`, () => {
  expect(compare(table, 1, ([percent]) => flashPointC(ofMass(percent!))!.highC).off).toEqual([])
  expect(compare(table, 1, ([percent]) => flashPointC(ofVolume(percent!))!.lowC).off).toEqual([])
})

const converted = readTable('flash-points-converted')
test(`flash points and mass per cent (${converted.source})`, () => {
  expect(compare(converted, 2, ([percent]) => flashPointC(ofVolume(percent!))!.highC).off).toEqual([])
})

test('sugar does not count, and the lower one is never the higher', () => {
  const plain = flashPointC(ofVolume(40))!
  const sweetened = flashPointC(mix(ofVolume(40), sugar(300)))!
  expect(sweetened.lowC).toBeCloseTo(plain.lowC, 9)
  for (let percent = 5; percent <= 100; percent++) {
    const { lowC, highC } = flashPointC(ofVolume(percent))!
    expect(lowC).toBeLessThanOrEqual(highC)
  }
})

test('below 5 % vol there is no figure', () => {
  expect(flashPointC(ofVolume(4.9))).toBeNull()
  expect(flashPointC(ofVolume(5))!.highC).toBeGreaterThan(62)
})
