import { expect, it } from 'vitest'
import { talker } from './told.ts'

// As makers type them; no source.
it.each([
  ['9 lemmons and a litre of 95', '/plan of:9 lemons spirit:1 litre 95%'],
  ['400 g of peeches in a litre of gin', '/plan of:400 g peaches spirit:1 litre gin 40%'],
  ['started six limmes in a litre of vodka', '/jar start of:6 limes spirit:1 litre vodka 40%'],
  ['7 limni e un litro di alcol 95', '/plan of:7 limoni spirit:1 litro 95%'],
])('reads a slip right behind a count or a mass as the fruit: %s', async (text, read) => {
  expect((await talker().say(text)).read).toBe(read)
})

it.each([
  '10 peech stones and a litre of gin',
  '20 laurells and a litre of gin',
  '3 perches and a litre of gin',
  'lemmons and a litre of 95',
])('plans nothing of what is no such slip: %s', async (text) => {
  const told = await talker().say(text)
  expect(told.command === 'plan' && told.code === null).toBe(false)
})
