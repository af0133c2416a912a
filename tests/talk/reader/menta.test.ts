import { describe, expect, it } from 'vitest'
import { talker } from './told.ts'

describe('menta is a plant, of which the kind is asked', () => {
  it.each([
    ['quanta menta metto in un litro di alcol?', 'botanical'],
    ['menta e 700 ml di alcol a 50%', 'plan'],
    ['15 foglie di menta in mezzo litro di vodka', 'plan'],
  ])('%s', async (text, path) => {
    const one = talker()
    const told = await one.say(text)
    expect(told.code).toBe('ambiguous')
    expect((await one.say('spearmint')).call).toMatchObject({
      path,
      options: { of: expect.stringMatching(/spearmint/) },
    })
  })
})
