import { describe, expect, it } from 'vitest'
import { talkerFor } from './told.ts'

const PLAN = '8 oranges and a litre of vodka'
const PLANNED = '/plan of:8 oranges spirit:1 litre vodka 40%'

/** Answers that take no such wish. */
const BETWEEN = ['how much ginger per litre?', 'how long does it keep?', 'does 30% freeze?', 'what’s on?']

describe.each(BETWEEN)('a wish behind “%s”', (between) => {
  it.each([
    ['a bit drier', `${PLANNED} to-sweetness:160 g/L`],
    ['sweeter please', `${PLANNED} to-sweetness:270 g/L`],
    ['più secco', `${PLANNED} to-sweetness:120 g/L`],
    ['stronger', `${PLANNED} to-strength:35%`],
    ['double', '/plan of:16 oranges spirit:2 litre vodka 40%'],
    ['il doppio', '/plan of:16 oranges spirit:2 litre vodka 40%'],
    ['with rum instead', '/plan of:8 oranges spirit:1 litre rum 40%'],
  ])('is of the plan before it: %s', async (text, read) => {
    const one = await talkerFor({ after: null, shelf: 'fair' })
    await one.say(PLAN)
    await one.say(between)
    expect(await one.say(text)).toMatchObject({ read, code: null, recorded: 0 })
  })
})

it('is of the syrup that was worked out last', async () => {
  const one = await talkerFor({ after: null, shelf: 'lemon_strained' })
  await one.say(PLAN)
  await one.say('how much sugar for the lemon')
  await one.say('what’s on?')
  expect((await one.say('drier')).read).toBe('/syrup jar:lemon to-sweetness:120 g/L')
})

it('starts nothing that other answers came after without asking', async () => {
  const one = await talkerFor({ after: null })
  await one.say(PLAN)
  await one.say('how much ginger per litre?')
  expect(await one.say('start it')).toMatchObject({ code: 'question', recorded: 0 })
  expect(await one.say('yes')).toMatchObject({ read: '/jar start of:8 oranges spirit:1 litre vodka 40%' })
})

describe('a wish with nothing said before', () => {
  it.each(['drier', 'sweeter please', 'a bit stronger', 'double', 'half', 'più secco', 'il doppio'])(
    '%s: asks for the recipe',
    async (text) => {
      const one = await talkerFor({ after: null })
      expect(await one.say(text)).toMatchObject({
        code: 'question',
        choices: ['/plan of:10 lemons spirit:1 l 95%'],
        recorded: 0,
      })
    },
  )

  it('is of the one jar that waits for its syrup', async () => {
    const one = await talkerFor({ after: null, shelf: 'fair' })
    one.wait(40)
    expect((await one.say('drier')).read).toBe('/syrup jar:lemon to-sweetness:120 g/L')
  })

  it('asks which of two', async () => {
    const one = await talkerFor({ after: null, shelf: 'lemon_ginger' })
    one.wait(40)
    expect((await one.say('sweeter')).choices).toEqual([
      '/syrup jar:lemon to-sweetness:270 g/L',
      '/syrup jar:ginger to-sweetness:270 g/L',
    ])
  })
})
