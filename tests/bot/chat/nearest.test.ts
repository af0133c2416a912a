import { expect, it } from 'vitest'
import { nearest } from '../../../bot/chat/grammar/nearest.ts'

const names = ['spirit', 'strength', 'to-strength', 'sweetness', 'to-sweetness', 'water', 'mix']

it.each<[typed: string, meant: string | null]>([
  ['spirt', 'spirit'],
  ['SPIRITS', 'spirit'],
  ['stregnth', 'strength'],
  ['imx', 'mix'],
  ['mi', 'mix'],
  ['wa', 'water'],
  ['to-', null],
  ['to-st', 'to-strength'],
  ['sugar', null],
  ['m', null],
  ['', null],
  ['x'.repeat(4000), null],
])('takes %s for %s', (typed, meant) => {
  expect(nearest(typed, names)).toBe(meant)
})
