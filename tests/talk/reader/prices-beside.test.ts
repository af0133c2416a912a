import { describe, expect, it } from 'vitest'
import { talker } from './told.ts'

describe('amounts of a batch that are told with what they cost', () => {
  it.each([
    ['9 oranges at 2 euros, a litre of 95% for 16', '9 oranges', '34.00'],
    ['9 oranges at €2 each and a litre of 95% at €16', '9 oranges', '34.00'],
    ['12 lemons at 1 euro each, a litre of 95% for 15', '12 lemons', '27.00'],
    ['1 kg of sloes at 5 euros a kilo, a litre of 40% gin for 20 euros', '1 kg sloes', '25.00'],
    ['8 limoni a 1 euro, un litro di alcol 95 a 15 euro', '8 limoni', '23.00'],
  ])('%s: it is planned, and costs %s', async (text, of, amount) => {
    const told = await talker().say(text)
    expect(told.call).toMatchObject({ path: 'plan', options: { of } })
    const [cost, another] = told.also
    expect(another).toBeUndefined()
    expect(cost).toMatchObject({ command: 'cost', data: { total: [{ amount }] } })
  })

  it.each([
    'lemons are 50 cents each',
    '95% is 14 euros a litre',
    'I pay 3 euros a kilo for lemons and 14 for a litre of 95%',
  ])('%s: only a price', async (text) => {
    const told = await talker().say(text)
    expect(told.also).toEqual([])
    expect(told.command).toBe('cost')
  })
})
