import { describe, expect, it } from 'vitest'
import { talker, talkerFor } from './told.ts'

it.each([
  ['how do I measure the strength at home', 'no_hydrometer'],
  ['how do i mesure strenght at home', 'no_hydrometer'],
  ['how can i tell how strong it is', 'no_hydrometer'],
  ['come misuro la gradazione a casa', 'no_hydrometer'],
  ['how do i find out how strong my finished liqueur is', 'obscuration'],
  ['do I have to sweeten it', 'sweeteners'],
  ['do i hav to sweeten it?', 'sweeteners'],
  ['is it necessary to sweeten?', 'sweeteners'],
  ['do i need to add sugar', 'sweeteners'],
  ['devo per forza zuccherarlo', 'sweeteners'],
  ['can I make jam from the fruit', 'spent_fruit'],
  ['can i make jam out of the leftover cherries', 'spent_fruit'],
  ['are the boozy plums any good for chutney', 'spent_fruit'],
  ['posso fare la marmellata con la frutta', 'spent_fruit'],
])('%s', async (text, entry) => {
  expect(await talker().say(text)).toMatchObject({ command: 'handbook', data: { entry }, recorded: 0 })
})

it('tells nothing of jam of fruit that never was in spirit', async () => {
  expect(await talker().say('can I make strawberry jam from strawberries')).toMatchObject({ code: 'not_understood' })
})

describe('what has gone off, in few words', () => {
  it.each([
    'has it gone off?',
    'has it gon off',
    'is it off',
    'has it turned bad',
    'my plums have gone bad',
    'si è guastato?',
    'è andato a male?',
  ])('is asked what it looks like: %s', async (text) => {
    const one = await talkerFor({ after: null, shelf: 'lemon' })
    expect(await one.say(text)).toMatchObject({ call: { options: { symptom: 'mould' } }, code: null })
  })

  it.each(['is it off to a good start', 'is the oven off'])('is no more than that: %s', async (text) => {
    expect((await talker().say(text)).command).not.toBe('trouble')
  })
})

it.each([
  ['my cherries went brown', 'cherries'],
  ['le ciliegie sono diventate marroni', 'ciliegie'],
])('goes by the plant that is named, where no jar has it: %s', async (text, of) => {
  expect(await talker().say(text)).toMatchObject({
    call: { options: { symptom: 'turned brown', of } },
    code: null,
  })
})
