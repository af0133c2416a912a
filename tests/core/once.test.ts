import { expect, it } from 'vitest'
import { forLast, ofLate, ofTexts } from '../../core/once.ts'
import { propagate, valuesOf } from '../../core/recipe/propagate.ts'

it('keeps the answer of the last object alone', () => {
  let asked = 0
  const half = forLast(({ x }: { readonly x: number }) => {
    asked++
    return x / 2
  })
  const [four, six] = [{ x: 4 }, { x: 6 }]
  expect([half(four), half(four), half(six), half(four)]).toEqual([2, 2, 3, 2])
  expect(asked).toBe(3)
})

it('answers every number as the function itself does, however many there were', () => {
  let asked = 0
  const third = ofLate((x) => {
    asked++
    return x / 3
  })
  // Far more of them than are kept, so that many share a place.
  const numbers = Array.from({ length: 5000 }, (_, at) => at * 0.37 - 700)
  for (const x of [...numbers, ...numbers, 0, -0, Number.NaN]) expect(third(x)).toBe(x / 3)
  asked = 0
  expect([third(40), third(40), third(40)]).toEqual([40 / 3, 40 / 3, 40 / 3])
  expect(asked).toBeLessThanOrEqual(1)
})

it('moves a number of a list without changing what is kept of it', () => {
  const steps = [
    { amount: { value: 3, plusMinus: 0.5 }, of: [{ value: 2, plusMinus: 0 }] },
    { amount: { value: 5, plusMinus: 0.25 }, of: [] },
  ]
  const seen = new Set<object>()
  const sum = () =>
    propagate(steps, (values) => {
      for (const each of values) seen.add(each)
      return { sum: values.reduce((total, { amount, of }) => total + amount * (of[0] ?? 1), 0) }
    }).sum
  expect(sum()).toEqual({ value: 11, plusMinus: Math.hypot(1, 0.25) })
  const after = seen.size
  expect(sum()).toEqual({ value: 11, plusMinus: Math.hypot(1, 0.25) })
  // The very same values again: what was worked out of them is known.
  expect(seen.size).toBe(after)
  expect(valuesOf(steps)).toEqual([
    { amount: 3, of: [2] },
    { amount: 5, of: [] },
  ])
})

it('keeps what it made of a short text, and not for ever', () => {
  let asked = 0
  const length = ofTexts((text) => {
    asked++
    if (text === '') throw new RangeError('nothing')
    return text.length
  })
  expect([length('lemon'), length('lemon'), length('x'.repeat(500)), length('x'.repeat(500))]).toEqual([5, 5, 500, 500])
  expect(asked).toBe(3)
  for (const _ of [1, 2]) expect(() => length('')).toThrow('nothing')
  expect(asked).toBe(5)
  for (let count = 0; count < 1000; count++) length(`${count} lemons`)
  asked = 0
  expect(length('lemon')).toBe(5)
  expect(asked).toBe(1)
})
