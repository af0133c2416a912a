import { expect, it } from 'vitest'
import { talker } from './told.ts'

const kitchenOf = async (text: string) => {
  const { read, outcome } = await talker().hear(text)
  return { read, kitchen: outcome.ok && 'reply' in outcome ? outcome.reply.kitchen : null }
}

// As makers say it; no source.
it.each([
  '9 lemons and a litre of 95% in US cups',
  '9 lemons and a litre of 95% in cups please',
  'in cups please, 9 lemons and a litre of 95%',
  '9 lemons and a litre of 95%, all in ounces and cups',
  '9 lemons and a litre of 95% in american measures',
])('tells a plan in the measures that stand beside it: %s', async (text) => {
  const { read, kitchen } = await kitchenOf(text)
  expect(read).toBe('/plan of:9 lemons spirit:1 litre 95%')
  expect(JSON.stringify(kitchen)).toContain('us')
})

it('takes cups that something is measured in for no wish', async () => {
  const { read } = await kitchenOf('3 cups of raspberries in 2 cups of vodka')
  expect(read).toBe('/plan of:3 cups raspberries spirit:2 cups vodka 40%')
  expect((await talker().say('how much is 750 ml in cups')).command).toBe('talk')
})
