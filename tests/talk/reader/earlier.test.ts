import { describe, expect, it } from 'vitest'
import { talker, talkerFor } from './told.ts'

const FIRST = '/plan of:8 oranges spirit:700 ml 60%'

async function changed() {
  const one = talker()
  await one.say(FIRST)
  await one.say('drier')
  await one.say('double')
  return one
}

describe('after changes', () => {
  it.each([
    'the first again',
    'no, the first one again',
    'the first one please',
    'go back to the first',
    'actually the original recipe',
    'torna alla prima versione',
    'il primo per favore',
  ])('%s is what they began with', async (text) => {
    expect(await (await changed()).say(text)).toMatchObject({ read: FIRST, code: null })
  })

  it.each(['back', 'as before', 'no, as it was before', 'the previous one', 'come prima', 'torna indietro'])(
    '%s is the one before',
    async (text) => {
      const read = `${FIRST} to-sweetness:120 g/L`
      expect(await (await changed()).say(text)).toMatchObject({ read, code: null })
    },
  )

  it('goes back step by step, and no further than the first', async () => {
    const one = await changed()
    await one.say('back')
    expect((await one.say('back')).read).toBe(FIRST)
    expect((await one.say('back')).read).toBe(FIRST)
  })

  it('begins with the batch that is spoken of', async () => {
    const one = talker()
    await one.say('/plan of:300 g sloes spirit:1 l gin 40%')
    await one.say(FIRST)
    await one.say('sweeter')
    expect((await one.say('the first one')).read).toBe(FIRST)
  })
})

it.each(['back', 'the first one again', 'as before'])('%s undoes nothing that was written down', async (text) => {
  const one = await talkerFor({ after: null, shelf: 'lemon_ginger' })
  await one.say('drier')
  expect((await one.say(text)).recorded).toBeGreaterThanOrEqual(0)
})

describe('what is named again', () => {
  it.each([
    ['the oranges again but double and less sweet', '/plan of:16 oranges spirit:1400 ml 60% to-sweetness:120 g/L'],
    ['oranges again, half as much', '/plan of:4 oranges spirit:350 ml 60%'],
    ['the oranges again', FIRST],
  ])('%s is of its own plan, not of the last', async (text, read) => {
    const one = talker()
    await one.say(FIRST)
    await one.say('/plan of:300 g sloes spirit:1 l gin 40%')
    expect(await one.say(text)).toMatchObject({ read, code: null })
  })

  it.each([
    ['the lemon again but double and less sweet', '/again lemon spirit:2 l 95% to-sweetness:dry'],
    ['double the lemon again', '/again lemon spirit:2 l 95%'],
    ['lemon again, half as much and stronger', '/again lemon spirit:0.5 l 95% to-strength:35%'],
    ['rifai il limone ma doppio e più dolce', '/again lemon spirit:2 l 95% to-sweetness:rich'],
  ])('%s is of its jar', async (text, read) => {
    const one = await talkerFor({ after: null, shelf: 'lemon_bottled' })
    expect(await one.say(text)).toMatchObject({ read, code: null })
  })

  it('is no deed and no trouble', async () => {
    const one = await talkerFor({ after: null, shelf: 'lemon_bottled' })
    expect((await one.say('the lemon is cloudy again')).command).toBe('trouble')
  })
})
