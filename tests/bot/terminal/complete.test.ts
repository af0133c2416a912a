import { expect, it } from 'vitest'
import { complete } from '../../../bot/terminal/chat/complete.ts'
import { commands } from '../test-desk.ts'

it.each([
  ['/settings units:', ['units:metric', 'units:us', 'units:imperial', 'units:as typed'], 'units:'],
  ['/jar taste lemon rating:4', ['rating:4'], 'rating:4'],
  ['/reminders shake:d', ['shake:daily'], 'shake:d'],
  ['/jar taste lemon note:4', [], 'note:4'],
  ['/plan __proto__:', [], '__proto__:'],
])('offers the words that an option takes after %j', (line, hits, part) => {
  expect(complete(line, commands)).toEqual([hits, part])
})

it.each([
  ['/jar strain qui', ['quince']],
  ['/jar shake jar:qui', ['jar:quince']],
  ['/plan of:lem', ['of:lemon', 'of:lemon peel']],
  ['/plan of:10 lem', ['lemon', 'lemon peel']],
  ['10 lemons and some ging', ['ginger']],
  ['strained the qui', ['quince']],
])('offers the jars and plants that may be meant after %j', (line, hits) => {
  expect(complete(line, commands, { jars: ['quince', 'sloe'] })[0]).toEqual(expect.arrayContaining(hits))
})
