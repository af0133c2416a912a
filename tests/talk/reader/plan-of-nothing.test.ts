import { describe, expect, it } from 'vitest'
import { talkerFor } from './told.ts'

describe('a plan of what was never said', () => {
  it.each([
    ['plan that with 2 bottles of rum', '/plan of:10 lemons spirit:2 x 700 ml rum 40%'],
    ['make it with a litre of 95%', '/plan of:10 lemons spirit:1 litre 95%'],
    ['can you do the same with 700 ml of gin', '/plan of:10 lemons spirit:700 ml gin 40%'],
    ['fallo quello con un litro di vodka', '/plan of:10 limoni spirit:1 litro vodka 40%'],
  ])('%s: it is asked what goes in, with one line that runs', async (text, line) => {
    const one = await talkerFor({ after: null })
    const { code, choices, call } = await one.say(text)
    expect(code).toBe('question')
    expect(call?.options.spirit).toBe(/spirit:(.*)$/.exec(line)?.[1])
    expect(choices).toHaveLength(1)
    expect((await one.say(choices[0]!)).data).toMatchObject({ botanicals: [{ id: expect.any(String) }] })
  })

  it('is one of what was', async () => {
    const plan = '/plan of:10 lemons spirit:1 l 95%'
    expect((await (await talkerFor({ after: plan })).say('plan that with 2 bottles of rum')).call).toMatchObject({
      path: 'plan',
      options: { of: '10 lemons', spirit: '2 x 700 ml rum 40%' },
    })
  })
})
