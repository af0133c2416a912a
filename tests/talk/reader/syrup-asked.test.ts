import { describe, expect, it } from 'vitest'
import { talkerFor } from './told.ts'

const ASKED = [
  'how much syrup for 28 %?',
  'syrup for 28%',
  'how much syrup do I need for 28 %',
  'quanto sciroppo per 28 %?',
]

describe.each(ASKED)('%s', (text) => {
  it('is of the jar that waits for its syrup', async () => {
    const one = await talkerFor({ after: '/jar strain lemon measured:930 ml strength:87%', shelf: 'lemon' })
    expect(await one.say(text)).toMatchObject({ read: '/syrup jar:lemon to-strength:28%', code: null, recorded: 0 })
  })

  it('is a change of what was worked out', async () => {
    const plan = '/plan of:10 lemons spirit:1 l 95%'
    const one = await talkerFor({ after: plan, shelf: 'lemon' })
    expect((await one.say(text)).read).toBe(`${plan} to-strength:28%`)
  })

  it('is one question where there is no jar', async () => {
    const one = await talkerFor({ after: null })
    const { code, choices } = await one.say(text)
    expect(code).toBe('question')
    expect(choices).toHaveLength(1)
    expect((await one.say(choices[0]!)).code).toBeNull()
  })
})

it('asks which of several jars', async () => {
  const one = await talkerFor({ after: null, shelf: 'lemon_ginger' })
  const { code, choices } = await one.say('how much syrup for 28% and 200 g/L?')
  expect(code).toBe('question')
  expect(choices.length).toBeGreaterThan(1)
  expect(choices[0]).toMatch(/^\/syrup jar:\S+ to-strength:28% to-sweetness:200 g\/L$/)
})

it.each(['how much syrup for 900 ml at 82%', 'how much syrup for the lemon', 'syrup of 28% sugar, is that sweet'])(
  'is not %s',
  async (text) => {
    const one = await talkerFor({ after: null, shelf: 'lemon_ginger' })
    expect((await one.say(text)).call?.options['to-strength']).toBeUndefined()
  },
)

describe('another strength of the spirit that was diluted', () => {
  it.each([
    ['dilute 1 l of 96 to 40', 'what if the spirit is 90', '/dilute spirit:1 l strength:90% to-strength:40%'],
    ['dilute 1 l of 96 to 40', 'and if the alcohol was 92 %?', '/dilute spirit:1 l strength:92% to-strength:40%'],
    ['/dilute spirit:1 l 96% to-strength:40%', 'what if the spirit is 90', '/dilute spirit:1 l 90% to-strength:40%'],
    ['/plan of:10 lemons spirit:1 l strength:95%', 'with gin instead', '/plan of:10 lemons spirit:1 l gin 40%'],
  ])('%s, then %s', async (after, text, read) => {
    expect(await (await talkerFor({ after })).say(text)).toMatchObject({ read, code: null })
  })
})
