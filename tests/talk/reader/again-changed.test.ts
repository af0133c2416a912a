import { describe, expect, it } from 'vitest'
import { talkerFor } from './told.ts'

/** The lemons of the shelf are ten, in a litre of 95 %. */
const WISHES = [
  ['again, but six bottles', 'again', { bottles: '6' }],
  ['Like last time, but for 8 bottles please', 'again', { bottles: '8' }],
  ['un’altra volta, ma sei bottiglie', 'again', { bottles: '6' }],
  ['same again but with limes', 'plan', { of: '10 limes', spirit: '1 l 95%' }],
  ['lo stesso, ma con le arance', 'plan', { of: '10 arance' }],
  ['same again but with 3 cloves as well', 'plan', { of: '10 lemons + 3 cloves' }],
  ['again but less sweet', 'again', { 'to-sweetness': 'dry' }],
  ['one more batch, sweeter', 'again', { 'to-sweetness': 'rich' }],
  ['same again but at 28%', 'again', { 'to-strength': '28%' }],
  ['like last time, double', 'again', { spirit: '2 l 95%' }],
  ['same as last time but half', 'again', { spirit: '0.5 l 95%' }],
  ['again but with a litre of vodka', 'again', { spirit: '1 litre vodka 40%' }],
  // A mass, or a count, of what is in it; the rest stays as it was.
  ['make the lemon again, but with 14 lemons', 'again', { jar: 'lemon', of: '14 lemons' }],
  ['the lemon again using 80 g', 'again', { jar: 'lemon', of: '80 g' }],
  ['lemon again with 6 lemons and 700 ml of vodka', 'again', { of: '6 lemons', spirit: '700 ml vodka 40%' }],
  ['do the lemon again with a litre of 50%', 'again', { jar: 'lemon', spirit: '1 litre 50%' }],
  ['do the lemon again with 4 bottles', 'again', { jar: 'lemon', bottles: '4' }],
  ['do the lemon again with oranges', 'plan', { of: '10 oranges', spirit: '1 l 95%' }],
  ['do the lemon again with honey', 'again', { jar: 'lemon', sugar: 'honey' }],
] as const

describe('the batch that was made, with a change', () => {
  it.each(WISHES)('%s', async (said, command, options) => {
    const one = await talkerFor({ after: null, shelf: 'lemon_bottled' })
    const { call, recorded } = await one.say(said)
    expect(call?.path).toBe(command)
    expect(call?.options).toMatchObject(options)
    expect(recorded).toBe(0)
  })

  it('is of the plan that was worked out last', async () => {
    const one = await talkerFor({ after: null, shelf: 'lemon_bottled' })
    await one.say('a kilo of raspberries and 2 l of vodka')
    expect((await one.say('again but drier')).call).toMatchObject({
      path: 'plan',
      options: { of: '1 kilo raspberries' },
    })
  })
})

it.each(['do it again', 'let’s make that again', 'can we do this once more please', 'rifallo'])(
  'plans the jar that was spoken of once more: %s',
  async (text) => {
    const one = await talkerFor({ after: '/jar show lemon', shelf: 'lemon_bottled' })
    expect(await one.say(text)).toMatchObject({ read: '/again lemon', recorded: 0 })
  },
)
