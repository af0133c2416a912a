import { expect, it, test } from 'vitest'
import { lineOf } from '../../../bot/calls/write-line.ts'
import { talker } from './told.ts'

test.each([
  ["what's ripe now", '/botanical month:now'],
  ['what can i pick in september', '/botanical month:september'],
  ["what's good to pick in march", '/botanical month:march'],
  ["cosa c'è di stagione a giugno", '/botanical month:giugno'],
  ["che frutta c'è adesso", '/botanical month:now'],
  ['what could we make for the fair', '/botanical month:now'],
  ['when are quinces ripe', '/botanical of:quinces'],
  ['any suggestions for 3 kg of apples', '/plan of:3 kg apples spirit:5 l 40%'],
  ['glut of gooseberries, ideas?', '/plan of:gooseberries spirit:1 l 40%'],
])('%s is %s', async (text, line) => {
  expect((await talker().say(text)).read).toBe(line)
})

// Common practice, no source: sloes and persimmons in November in the north, strawberries in the south.
it('tells what is ripe where somebody lives, with lines that plan it', async () => {
  const north = talker()
  const told = await north.say("what's ripe now")
  expect(told.data).toMatchObject({
    month: 11,
    hemisphere: 'north',
    ripe: expect.arrayContaining(['sloe', 'persimmon']),
  })
  const south = talker()
  await south.say('/settings zone:Pacific/Auckland')
  const there = await south.say('/botanical month:now')
  expect(there.data).toMatchObject({ hemisphere: 'south', ripe: expect.arrayContaining(['strawberry']) })
})

it('offers plans that run, in every month', async () => {
  for (let month = 1; month <= 12; month++) {
    const { outcome } = await talker().hear(`/botanical month:${month}`)
    const lines = outcome.ok && 'reply' in outcome ? outcome.reply.actions.map(({ call }) => lineOf(call)) : []
    expect(lines.length).toBeGreaterThan(0)
    for (const line of lines) expect({ line, code: (await talker().say(line)).code }).toEqual({ line, code: null })
  }
})
