import { expect, it } from 'vitest'
import { talker } from './told.ts'

it('goes on a step each time it is to be drier, down to no sugar, and then says that it is as dry as it goes', async () => {
  const one = talker()
  await one.say('10 lemons and a litre of 95% sweetness 20 g/l')
  const wished = async (text: string) => (await one.say(text)).call?.options['to-sweetness']
  expect(await wished('make it drier')).toBe('10 g/L')
  expect(await wished('make it drier')).toBe('0 g/L')
  expect(await one.say('make it drier')).toMatchObject({ data: { said: 'talk_driest' }, code: null })
  expect(await one.say('less sweet and stronger')).toMatchObject({ command: 'plan', code: null })
  expect(await wished('sweeter')).toBe('120 g/L')
})

it('says so of fruit that has sugar of its own, too', async () => {
  const one = talker()
  await one.say('700 g cherries and a litre of vodka, no sugar')
  expect(await one.say('drier')).toMatchObject({ data: { said: 'talk_driest' } })
})
