import { describe, expect, it } from 'vitest'
import {
  isClose,
  isSameAmount,
  isSameJarAmount,
  isSameStrength,
  isSameSweetness,
  isSameTarget,
} from '../../../core/jar/state/compare-batches.ts'
import { exactly } from '../../../core/quantity/measured/measured.ts'

// Common practice, no source; the 2 % are those of a jug.
describe('batches are the same where nobody can tell', () => {
  it.each([
    [1000, 981, true],
    [1000, 980, true],
    [1000, 979, false],
    [979, 1000, false],
  ])('amounts within 2 %% of the larger: %s and %s', (one, other, isSame) => {
    expect(isSameAmount(exactly(one), exactly(other))).toBe(isSame)
  })

  it.each([
    [0, 1, true],
    [0, 1.01, false],
    [100, 102, true],
    [100, 102.1, false],
    [5, 6, true],
  ])('sugar or water in the jar within 1 g, or within 2 %%: %s and %s', (one, other, isSame) => {
    expect(isSameJarAmount(exactly(one), exactly(other))).toBe(isSame)
  })

  it.each([
    [30, 30.19, true],
    [30.25, 30.45, true],
    [30, 30.21, false],
    [30.21, 30, false],
  ])('strengths within 0.2 %% vol: %s and %s', (one, other, isSame) => {
    expect(isSameStrength(exactly(one), exactly(other))).toBe(isSame)
    const target = (abvPercent: number) => ({ abvPercent, sugarGPerL: 190 })
    expect(isSameTarget(target(one), target(other))).toBe(isSame)
  })

  it.each([
    [190, 192.9, true],
    [190, 193, true],
    [190, 193.1, false],
    [193.1, 190, false],
  ])('sweetnesses within 3 g/L: %s and %s', (one, other, isSame) => {
    expect(isSameSweetness(exactly(one), exactly(other))).toBe(isSame)
    const target = (sugarGPerL: number) => ({ abvPercent: 30, sugarGPerL })
    expect(isSameTarget(target(one), target(other))).toBe(isSame)
  })

  it('targets that were said of neither, not of one alone', () => {
    const target = { abvPercent: 30, sugarGPerL: 190 }
    expect(isSameTarget(null, null)).toBe(true)
    expect(isSameTarget(null, target)).toBe(false)
    expect(isSameTarget(target, null)).toBe(false)
  })
})

it('calls values close whose ± together are all of the difference', () => {
  const of = (value: number, plusMinus: number) => ({ value, plusMinus })
  expect(isClose(of(30, 3), of(35, 4))).toBe(true)
  expect(isClose(of(30, 3), of(35.01, 4))).toBe(false)
})
