import { describe, expect, it } from 'vitest'
import { talker } from './told.ts'

describe('pieces of peel that are named behind it', () => {
  it.each([
    ['5 lemon peel strips and half a litre of vodka', '5 strips of lemon peel'],
    ['3 wide orange zest twists in 700 ml of gin', '3 wide twists of orange zest'],
    ['two grapefruit peel ribbons and a litre of rum', '2 ribbons of grapefruit peel'],
    ['6 lime rind shavings with half a litre of vodka', '6 shavings of lime rind'],
    ['4 strips of orange peel and half a litre of vodka', '4 strips of orange peel'],
  ])('%s: are no whole fruit', async (text, of) => {
    expect((await talker().say(text)).call).toMatchObject({ path: 'plan', options: { of } })
  })

  it.each(['10 lemons and a litre of 95%', 'the peel of 4 oranges and half a litre of vodka'])(
    '%s: is of whole fruit',
    async (text) => {
      expect((await talker().say(text)).data.botanicals).toMatchObject([{ count: expect.any(Number) }])
    },
  )
})
