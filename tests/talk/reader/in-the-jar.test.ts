import { describe, expect, it } from 'vitest'
import { talker } from './told.ts'

const PLAN = '/plan of:30 green walnuts spirit:1 l 95%'

const planned = async () => {
  const one = talker()
  expect(await one.say(PLAN)).toMatchObject({ code: null })
  return one
}

describe('what was planned is in the jar, and sugar with it', () => {
  it.each(['it’s in the jar now, with 400 g of sugar', 'ok it is in the jar with 400 g sugar'])('%s', async (text) => {
    const told = await (await planned()).say(text)
    expect(told).toMatchObject({ command: 'jar start', code: null, recorded: 1 })
    expect(told.call?.options).toMatchObject({ of: '30 green walnuts', spirit: '1 l 95%', sugar: '400 g' })
  })

  it.each(['is it in the jar now, with 400 g of sugar?', 'it isn’t in the jar with 400 g sugar', '400 g of sugar'])(
    'but not: %s',
    async (text) => {
      expect((await (await planned()).say(text)).recorded).toBe(0)
    },
  )
})
