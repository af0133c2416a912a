import { describe, expect, it } from 'vitest'
import { talkerFor } from './told.ts'

describe('that it is to be done, before what was asked is answered', () => {
  it.each([
    ['2 cinnamon sticks in 700 ml rum', 'start it', 'ceylon', /^\/plan of:.*ceylon.* spirit:700 ml rum 40%$/],
    ['2 cinnamon sticks in 700 ml rum', 'yes', 'cassia', /^\/plan of:.*cassia.* spirit:700 ml rum 40%$/],
    ['15 g chillies in a litre of gin', 'ok start it then', 'dried', /^\/plan of:15 g dried chillies /],
    ['15 g chillies in a litre of gin', 'let’s go', 'fresh', /^\/plan of:15 g fresh chillies /],
    ['15 g chillies in a litre of gin', 'va bene, inizialo', 'fresh', /^\/plan of:15 g fresh chillies /],
    ['9 limes', 'start it', 'a litre of 95%', /^\/plan of:9 limes spirit:1 litre 95%$/],
  ])('keeps the question open: %s, %s, %s', async (said, ahead, answer, read) => {
    const one = await talkerFor({ after: null })
    const asked = await one.say(said)
    for (const again of [ahead, ahead]) {
      const held = await one.say(again)
      expect(held).toMatchObject({ code: asked.code, recorded: 0 })
    }
    expect((await one.say(answer)).read).toMatch(read)
  })
})
