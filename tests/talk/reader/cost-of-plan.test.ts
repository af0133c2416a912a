import { describe, expect, it } from 'vitest'
import { talkerFor } from './told.ts'

const PLAN = '/plan of:6 oranges spirit:750 ml 151 proof'

describe('after a plan, with a jar that runs', () => {
  it.each([
    ['what does that cost', undefined],
    ['what would it come to with vodka $24 a handle', 'vodka $24/handle'],
    ['how much would that cost if vodka is $24 a handle and sugar $3 for 4 lb', 'vodka $24/handle + sugar $3/4 lb'],
    ['so what does that cost with 151 proof $30 a handle', 'spirit 151 proof $30/handle'],
    ['and what does that cost if the 151 is $30 a handle', 'spirit 151 proof $30/handle'],
    ['cost with oranges $1 each', 'oranges $1 each'],
    ['quanto costa con l’alcol a 18 euro al litro', 'alcol 18 euro/litro'],
    ['what does a bottle cost me', undefined],
  ])('%s: the plan', async (text, prices) => {
    const one = await talkerFor({ after: null, shelf: 'lemon' })
    await one.say(PLAN)
    const told = await one.say(text)
    expect(told).toMatchObject({ command: 'cost', code: null, recorded: 0 })
    expect(told.call?.options.plan).toBeDefined()
    expect(told.call?.options.prices).toBe(prices)
  })

  it('takes more prices for the same plan', async () => {
    const one = await talkerFor({ after: null, shelf: 'lemon' })
    await one.say(PLAN)
    const first = await one.say('what does that cost with vodka $24 a handle')
    const more = await one.say('and oranges $1 each')
    expect(more.call?.options).toEqual({ plan: first.call?.options.plan, prices: 'oranges $1 each' })
  })

  it.each(['what does the lemon cost me', 'how much did the lemon cost'])('%s: the jar', async (text) => {
    const one = await talkerFor({ after: null, shelf: 'lemon' })
    await one.say(PLAN)
    expect((await one.say(text)).read).toBe('/cost lemon')
  })

  it('means the jar that was spoken of since', async () => {
    const one = await talkerFor({ after: null, shelf: 'lemon' })
    await one.say(PLAN)
    await one.say('shook the lemon')
    expect((await one.say('what does it cost me')).read).toBe('/cost lemon')
  })

  it('keeps a price that is only told, and changes no plan by it', async () => {
    const one = await talkerFor({ after: null, shelf: 'lemon' })
    await one.say(PLAN)
    expect((await one.say('gin is $18 a bottle')).read).toBe('/cost prices:gin $18/750 ml')
  })
})
