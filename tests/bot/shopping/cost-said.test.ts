import { describe, expect, it, test } from 'vitest'
import { newTalkMemory } from '../../../bot/talk/memory/remembered.ts'
import { newAsker } from '../asker.ts'
import { lemonDesk } from './lemon-desk.ts'

test.each([
  ['/cost prices:lemons 4', '“lemons 4”: for how much of it? For example: /cost prices:lemons 4/kg'],
  ['/cost prices:lemons', /lemons 4\.50\/kg$/],
  ['/cost jar:lemon plan:11NCHSTJ8P501JQH0JNHC00VV9QPCFH0HFWJ262TYX', /^Which one: .*one at a time\.$/],
  ['/cost nope', /no jar “nope”/],
])('%s asks one thing', async (line, said) => {
  expect((await (await lemonDesk()).refused(line)).message).toMatch(said)
})

describe('a sentence', () => {
  test.each([
    ['the lemons were 4 euro a kilo', '/cost prices:lemons 4 euro/kilo'],
    ['I paid 18 euro a litre for the 95% spirit', '/cost prices:95% spirit 18 euro/litre'],
    ['i limoni costavano 4 euro al chilo', '/cost prices:limoni 4 euro/chilo'],
    ['what does a bottle cost me?', '/cost lemon'],
    ['how much did the lemon cost me', '/cost lemon'],
    ['quanto mi costa una bottiglia?', '/cost lemon'],
    [
      'alcohol 24 a litre, lemons 30 cents each, sugar 1.20 a kilo, what per bottle',
      '/cost lemon prices:alcohol 24/litre + lemons 30 cents each + sugar 1.20/kilo',
    ],
  ])('“%s” is %s', async (sentence, line) => {
    expect((await (await lemonDesk()).textOf(sentence)).split('\n')[0]).toBe(`read as ${line}`)
  })

  it('about bottles after a price is no bottle of that price', async () => {
    const desk = await lemonDesk({ ...newAsker(), talk: newTalkMemory() })
    await desk.textOf('sugar is 1.20 a kilo')
    expect(await desk.textOf('what does a bottle cost me')).toMatch(/^read as \/cost lemon\n/)
  })

  test.each(['quanto costa il biglietto del treno', 'the price of diesel is shocking', 'convert 100 dollars to euros'])(
    '“%s” is nobody’s cost',
    async (sentence) => {
      expect(await (await lemonDesk()).textOf(sentence)).not.toMatch(/read as \/cost/)
    },
  )
})

it('takes a purée of the table at its price', async () => {
  const { data } = await (await lemonDesk()).ask('/cost prices:peach purée 6/l + dried chillies 20/kg')
  expect(data.prices).toHaveLength(2)
})
