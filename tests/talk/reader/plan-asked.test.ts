import { describe, expect, it } from 'vitest'
import { talkerFor } from './told.ts'

const OF_PLAN = [
  'how many bottles will it make',
  'how much does it make?',
  'how long will it take',
  'how long does the whole thing take',
  'when’s it ready',
  'when will it be ready?',
  'when can we drink it',
  'quando sarà pronto?',
  'quante bottiglie vengono?',
]

const OF_LIST = [
  'what do I need to buy?',
  'what’s on the shopping list',
  'what do we need to get',
  'cosa devo comprare?',
]

describe('behind a plan', () => {
  it.each(OF_PLAN)('%s is of it', async (said) => {
    const one = await talkerFor({ after: null })
    await one.say('10 lemons and a litre of 95%')
    expect((await one.say(said)).call?.path).toBe('plan')
    await one.say('shopping list')
    expect((await one.say(said)).call).toMatchObject({ path: 'plan', options: { of: '10 lemons' } })
  })

  it.each(OF_LIST)('%s is its list', async (said) => {
    const one = await talkerFor({ after: null })
    await one.say('500 g sloes and 70 cl gin')
    expect((await one.say(said)).call).toMatchObject({ path: 'shopping', options: { plans: expect.anything() } })
  })
})

describe('where a jar runs', () => {
  it.each(OF_PLAN)('%s is of that jar', async (said) => {
    const one = await talkerFor({ after: null, shelf: 'lemon' })
    expect((await one.say(said)).call).toMatchObject({ path: 'jar show', options: { jar: 'lemon' } })
  })

  it.each(OF_LIST)('%s is what it still takes', async (said) => {
    const one = await talkerFor({ after: null, shelf: 'lemon' })
    expect((await one.say(said)).call).toEqual({ path: 'shopping', options: {} })
  })
})
