import { expect, it } from 'vitest'
import { talkerFor } from './told.ts'

const LEMONS = '/jar start limoncello of:10 lemons spirit:1 l 95% when:yesterday'
const WALNUTS = '/jar start nocino of:20 green walnuts spirit:1 l 95% when:yesterday'

const said = async (lines: readonly string[], text: string) => {
  const one = await talkerFor({ after: null, shelf: undefined })
  for (const line of lines) await one.say(line)
  return one.say(text)
}

it.each([
  [LEMONS, 'the amount of lemons yesterday was wrong, it was 9', 'limoncello', 'of:9 lemons'],
  [LEMONS, 'correct limoncello, 9 lemons not 10', 'limoncello', 'of:9 lemons'],
  [LEMONS, 'correggi limoncello, 9 limoni non 10', 'limoncello', 'of:9 limoni'],
  [LEMONS, 'ieri ho messo 9 limoni non 10', 'limoncello', 'of:9 limoni'],
  [LEMONS, 'it was 90 cl of spirit, not a litre', 'limoncello', 'spirit:90 cl 95%'],
  [LEMONS, 'ho messo 90 cl di alcol, non un litro', 'limoncello', 'spirit:90 cl 95%'],
  [LEMONS, 'yesterday I put in 11 lemons, not 10', 'limoncello', 'of:11 lemons'],
  [LEMONS, 'I miscounted, there were 9 lemons in the limoncello', 'limoncello', 'of:9 lemons'],
])('puts right what a jar was started with: %s, %s', async (start, text, jar, amount) => {
  const told = await said([start], text)
  expect(told.read).toBe(`/jar correct ${jar} entry:1 ${amount}`)
  expect(told.code).toBeNull()
})

it('asks which walnuts, and adds none', async () => {
  const told = await said([WALNUTS], 'ieri ho scritto male: il nocino aveva 22 noci')
  expect(told.read).toBe('/jar correct nocino entry:1 of:22 noci')
  expect(told.recorded).toBe(0)
})

it('asks first where another day than that of the start is told', async () => {
  const told = await said([LEMONS.replace('yesterday', '9 days ago')], 'ieri ho messo 9 limoni non 10')
  expect(told).toMatchObject({
    code: 'question',
    recorded: 0,
    choices: ['/jar correct limoncello entry:1 of:9 limoni'],
  })
})

it.each([
  ['9 lemons not 10', '/plan of:9 lemons spirit:1 l 95%'],
  ['no, it was 9 lemons not 10', '/plan of:9 lemons spirit:1 l 95%'],
])('changes the plan that was asked for last: %s', async (text, line) => {
  expect((await said([LEMONS, '/plan of:10 lemons spirit:1 l 95%'], text)).read).toBe(line)
})

it('still adds what is only told of as added', async () => {
  expect((await said([LEMONS], 'added 2 lemons to the limoncello')).read).toMatch(/^\/jar add limoncello of:2 lemons/)
})
