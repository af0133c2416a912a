import { expect, test } from 'vitest'
import { talker, talkerFor } from './told.ts'

const planned = async (first: string, line: string) => {
  const one = talker()
  await one.say(first)
  return (await one.say(line)).call
}

const PLUMS = '800 g plums and 1 l of 60% spirit'

test.each([
  ['more plums please', '1000 g plums'],
  ['a lot more plums', '1200 g plums'],
  ['a bit more fruit', '880 g plums'],
  ['fewer plums', '600 g plums'],
  ['twice the fruit', '1600 g plums'],
  ['half the fruit', '400 g plums'],
  ['più prugne', '1000 g plums'],
  ['un po’ meno frutta', '720 g plums'],
])('%s: of what steeps %s, and the spirit stays', async (line, of) => {
  expect(await planned(PLUMS, line)).toMatchObject({ path: 'plan', options: { of, spirit: '1 l 60%' } })
})

test('of several plants the one that is named, else the first', async () => {
  const two = '800 g plums, 10 g ginger and 1 l of 60% spirit'
  expect((await planned(two, 'more ginger'))?.options.of).toBe('800 g plums + 13 g ginger')
  expect((await planned(two, 'less fruit'))?.options.of).toBe('600 g plums + 10 g ginger')
})

test('more of what sweetens it is no plant', async () => {
  const call = await planned(PLUMS, 'more sugar')
  expect(call?.options.of).toBe('800 g plums')
  expect(call?.options['to-sweetness']).toBeDefined()
})

const again = async (line: string, shelf: 'fair' | 'lemon_bottled' = 'fair') => {
  const { call, read, code, recorded, choices } = await (await talkerFor({ after: null, shelf })).say(line)
  return { call, read, code, recorded, choices }
}

test.each([
  ['make the raspberry again with more fruit', '750 g raspberries'],
  ['do the raspberry again, but fewer raspberries', '450 g raspberries'],
  ['make it again with a lot more raspberries', '900 g raspberries'],
  ['rifallo con più lamponi', '750 g raspberries'],
])('%s: again, with %s', async (line, of) => {
  expect((await again(line)).call).toMatchObject({ path: 'again', options: { jar: 'raspberry', of } })
})

test('more of a plant that no batch has is planned of none of them', async () => {
  expect(await again('again but with more cherries')).toMatchObject({ code: 'not_found', recorded: 0 })
})

test.each([
  ['it was too weak last time, make it stronger', 'to-strength', '35%'],
  ['too strong last year, redo it', 'to-strength', '25%'],
  ['the lemon came out too sweet, do another batch that is drier', 'to-sweetness', 'dry'],
  ['last time it was too sweet so make it again drier', 'to-sweetness', 'dry'],
  ['era troppo dolce l’altra volta, rifallo', 'to-sweetness', 'dry'],
  ['rifallo più forte', 'to-strength', '35%'],
  ['same again drier', 'to-sweetness', 'dry'],
])('%s: %s %s', async (line, option, text) => {
  expect((await again(line, 'lemon_bottled')).call).toMatchObject({
    path: 'again',
    options: { jar: 'lemon', [option]: text },
  })
})

test('of several that are through it is asked which, with the change in each', async () => {
  const one = await talkerFor({ after: null, shelf: 'fair' })
  one.wait(31)
  const { code, choices } = await one.say('too weak last time, make it stronger')
  expect(code).toBe('question')
  expect(choices).toEqual(['/again orange to-strength:36%', '/again raspberry to-strength:38%'])
})

test.each(['the raspberry is too weak', 'it was too sweet when I tried it last time'])(
  '%s tells of a drink, and wishes no other',
  async (line) => {
    expect((await again(line)).call?.path).not.toBe('again')
  },
)

test('redo with another amount is that amount', async () => {
  expect((await again('redo the lemon with 14 lemons')).call?.options).toEqual({ jar: 'lemon', of: '14 lemons' })
})
