import { expect, test } from 'vitest'
import { findRoot } from '../../../core/liquid/root.ts'

test.each([
  ['a line', (x: number) => x - 0.3, 0.3],
  ['a cube, flat at its root', (x: number) => (x - 0.3) ** 3, 0.3],
  ['a step', (x: number) => (x < 0.3 ? -1 : 1), 0.3],
  ['a steep exponential', (x: number) => Math.exp(40 * x) - Math.exp(12), 0.3],
  ['a root at the end', (x: number) => x, 0],
])('%s', (_name, f, root) => {
  expect(findRoot({ f, low: 0, high: 1, tolerance: 1e-12 })).toBeCloseTo(root, 11)
})

test('one sign over the bracket is a fault, not an answer', () => {
  expect(() => findRoot({ f: (x) => x + 1, low: 0, high: 1, tolerance: 1e-9 })).toThrow('no_sign_change')
  expect(() => findRoot({ f: () => Number.NaN, low: 0, high: 1, tolerance: 1e-9 })).toThrow('no_sign_change')
})

test('a falling function and a bracket given the other way round', () => {
  expect(findRoot({ f: (x) => 2 - x * x, low: 0, high: 2, tolerance: 1e-14 })).toBeCloseTo(Math.SQRT2, 13)
  expect(findRoot({ f: (x) => 2 - x * x, low: 2, high: 0, tolerance: 1e-14 })).toBeCloseTo(Math.SQRT2, 13)
})
