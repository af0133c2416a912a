import { describe, expect, it } from 'vitest'
import { talker, talkerFor } from './told.ts'

const PLAN = '9 limes and a litre of 95%'

describe('whether it freezes', () => {
  it.each(['will it freeze', 'does the lime liqueur go solid in the freezer', 'si congela?'])(
    'stands in the plan: %s',
    async (said) => {
      const one = talker()
      await one.say(PLAN)
      expect((await one.say(said)).read).toBe('/plan of:9 limes spirit:1 litre 95%')
    },
  )

  it.each(['will the lemon freeze', 'does it freeze solid', 'il limone si congela?'])(
    'follows of a finished jar from its strength and sugar: %s',
    async (said) => {
      const one = await talkerFor({ after: null, shelf: 'lemon_sweetened' })
      await one.say('show the lemon')
      const told = await one.say(said)
      expect(told.call).toMatchObject({ path: 'jar show', options: { jar: 'lemon' } })
      expect(told.data).toMatchObject({ freezer: { state: expect.stringMatching(/^(?:should_pour|pours|slush)$/) } })
      expect(told.recorded).toBe(0)
    },
  )

  it('is told in general of what still steeps, and where there is neither', async () => {
    expect((await (await talkerFor({ after: null, shelf: 'lemon' })).say('will the lemon freeze')).data.entry).toBe(
      'freezes',
    )
    expect((await talker().say('does limoncello freeze')).command).not.toBe('blend')
  })
})

it.each(['glasses for 30 people', 'enough for thirty guests, one small glass each', 'un bicchierino per 30 persone'])(
  'makes the plan as much as people drink, and takes them for no strength: %s',
  async (said) => {
    const one = talker()
    await one.say(PLAN)
    expect((await one.say(said)).call?.options).toEqual({ of: 'limes', strength: '95%', bottles: '3 x 500 ml' })
  },
)

it.each(['it’s really too sweet', 'really far too sweet'])('takes how much for no doubt: %s', async (said) => {
  const one = await talkerFor({ after: null, shelf: 'lemon_sweetened' })
  await one.say('show the lemon')
  expect((await one.say(said)).command).toBe('trouble')
})

it('says yes to vodka behind a plan, and which sugar', async () => {
  const one = talker()
  await one.say(PLAN)
  expect((await one.say('is 40% vodka strong enough?')).data.entry).toBe('low_strength_peel')
  expect((await one.say('what’s the best sugar?')).data.entry).toBe('icing_sugar')
  expect((await one.say('start it')).command).toBe('jar start')
})

it('prices a bottle of a jar', async () => {
  const one = await talkerFor({ after: null, shelf: 'lemon' })
  expect((await one.say('what does a bottle of the lemon cost')).read).toBe('/cost lemon')
})

it.each(['make it again but better', 'can we do that once more', 'rifallo ma meglio stavolta'])(
  'makes the batch of a jar that was shown once more, though it steeps: %s',
  async (said) => {
    const one = await talkerFor({ after: null, shelf: 'lemon' })
    await one.say('show the lemon')
    expect(await one.say(said)).toMatchObject({ read: '/again lemon', recorded: 0 })
  },
)
