import { describe, expect, it } from 'vitest'
import { talker, talkerFor } from './told.ts'

const PLANS = ['/plan of:8 oranges spirit:700 ml 60%', '/plan of:500 g damsons spirit:1 l gin 40%']

async function planned() {
  const one = talker()
  for (const line of PLANS) await one.say(line)
  return one
}

describe('after two plans', () => {
  it.each([
    'shopping list for both',
    'what do I buy for all of them',
    'shopping list for the lot',
    'lista della spesa per tutte e due',
  ])('%s is of both', async (text) => {
    const { data, code } = await (await planned()).say(text)
    expect(code).toBeNull()
    expect(data.batches).toMatchObject([
      { plantId: expect.stringMatching(/^orange/) },
      { plantId: expect.stringMatching(/^plum/) },
    ])
  })

  it('takes a batch that was changed as it is now, once', async () => {
    const one = await planned()
    await one.say('drier')
    const { data } = await one.say('shopping list for both')
    expect(data.batches).toHaveLength(2)
  })

  it.each(['what do I still need to buy', 'what else do I need to buy'])('%s is of the last', async (text) => {
    const { data } = await (await planned()).say(text)
    expect(data.batches).toEqual([expect.objectContaining({ plantId: 'plum' })])
  })

  it('remembers what is at hand from line to line', async () => {
    const one = await planned()
    await one.say('shopping list for both')
    expect((await one.say('I’ve already got 400 g of sugar')).read).toMatch(/ have:400 g sugar$/)
    expect((await one.say('and I have 200 g honey')).read).toMatch(/ have:400 g sugar \+ 200 g honey$/)
    expect((await one.say('so what do I still need to buy')).read).toMatch(/ have:400 g sugar \+ 200 g honey$/)
  })
})

it('is of the jars where some are running', async () => {
  const one = await talkerFor({ after: null, shelf: 'lemon_ginger' })
  for (const line of PLANS) await one.say(line)
  expect((await one.say('shopping list for both')).read).toBe('/shopping')
})
