import { describe, expect, it, test } from 'vitest'
import { newTalkMemory } from '../../../bot/talk/memory/remembered.ts'
import { newAsker } from '../asker.ts'
import { testDesk } from '../test-desk.ts'
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

  it('tells one currency by the name it was typed with first', async () => {
    const desk = await lemonDesk({ ...newAsker(), talk: newTalkMemory() })
    await desk.textOf('500 g sloes and 70 cl gin')
    const pounds = await desk.textOf('how much does it cost if gin is £18 a bottle and sugar is 2 quid a kilo')
    expect(pounds).toMatch(/Making sloes costs £18\.\d\d,/)
    expect(pounds).not.toMatch(/\d\.\d\d.quid/)
    const mixed = await desk.textOf('what does it cost with gin at £18 a bottle and sugar at 2 euros a kilo')
    expect(mixed).toMatch(/£18\.00 and 0\.\d\d.euros/)
    expect(mixed).toContain('Two currencies don’t add up')
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

// A bottle of spirit is 750 ml in the United States (27 CFR 5.203), and usually 700 ml in Europe (common practice).
describe('a bottle of spirit whose size nobody says', () => {
  const usDesk = async () => {
    const desk = testDesk({ nowMs: Date.UTC(2026, 10, 30, 9), asker: { ...newAsker(), talk: newTalkMemory() } })
    await desk.textOf('/jar start plum of:2 lb plums spirit:1 quart 80 proof')
    return desk
  }

  test.each([
    ['rum is 24 a bottle', '/cost prices:rum 24/750 ml'],
    ['I paid $19 for a bottle of brandy', '/cost prices:brandy $19/750 ml'],
    ['3 limes and a bottle of 151 rum', '/plan of:3 limes spirit:750 ml rum 151 proof'],
    ['a bottle of gin and 3 lemons', '/plan of:3 lemons spirit:750 ml gin 40%'],
  ])('is one of its kitchen where cups are poured: “%s”', async (sentence, line) => {
    expect((await (await usDesk()).textOf(sentence)).split('\n')[0]).toBe(`read as ${line}`)
  })

  test.each([
    ['rum is 24 a bottle', '/cost prices:rum 24/700 ml'],
    ['rum is $24 a bottle', '/cost prices:rum $24/750 ml'],
    ['a bottle of gin and 300 g damsons', '/plan of:300 g damsons spirit:700 ml gin 40%'],
    ['a bottle of gin and 2 lb damsons', '/plan of:2 lb damsons spirit:700 ml gin 40%'],
    ['a bottle of 90 proof gin and 1 lb damsons', '/plan of:1 lb damsons spirit:750 ml gin 90 proof'],
  ])('is what the sentence tells elsewhere: “%s”', async (sentence, line) => {
    expect((await (await lemonDesk()).textOf(sentence)).split('\n')[0]).toBe(`read as ${line}`)
  })

  it('and what it comes to is told by the fluid ounce there', async () => {
    const desk = await usDesk()
    await desk.textOf('/cost prices:plums $2/lb + spirit 40% $20/bottle + sugar $1/lb + bottles $2 each')
    expect(await desk.textOf('/cost plum')).toMatch(/\$\d+\.\d\d a 12 fl oz bottle and \$\d\.\d\d a fluid ounce\./)
  })
})
