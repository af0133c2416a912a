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

it.each([
  [LEMONS, 'it was in fact 0.9 l, sorry', 'limoncello', 'spirit:0.9 l 95%'],
  [LEMONS, 'oh no, it was nine lemons', 'limoncello', 'of:9 lemons'],
  [LEMONS, 'oops, the alcohol was 90 percent', 'limoncello', 'spirit:1 l 90%'],
  [LEMONS, 'there should have been 3 lemons more', 'limoncello', 'of:13 lemons'],
  [LEMONS, 'dovevano essere 11 limoni', 'limoncello', 'of:11 lemons'],
])('puts right by words alone what was started just now: %s, %s', async (start, text, jar, amount) => {
  const told = await said([start], text)
  expect(told.read).toBe(`/jar correct ${jar} entry:1 ${amount}`)
  expect(told.recorded).toBe(1)
})

const SLOES = '/jar start sloe of:500 g sloes spirit:1 l gin 40%'

it.each([
  ['sorry, the limoncello had 12 lemons', '/jar correct limoncello entry:1 of:12 lemons'],
  ['the spirit in the limoncello was actually 90%', '/jar correct limoncello entry:1 spirit:1 l 90%'],
])('puts right the jar that is named, behind another start: %s', async (text, line) => {
  expect((await said([LEMONS, SLOES], text)).read).toBe(line)
})

it.each([
  'the spirit was 20 euros',
  'the jar was really 2 litres',
  'no, it was 12 days ago',
  'should it have been 12 lemons?',
])('corrects nothing of the start by what is told of something else: %s', async (text) => {
  expect((await said([LEMONS], text)).read ?? '').not.toMatch(/^\/jar correct/)
})

it.each([
  ['the spirit was really 50%', '/plan of:10 lemons spirit:1 l 50%'],
  ['there should have been 3 lemons more', '/plan of:13 lemons spirit:1 l 95%'],
])('changes the plan by what it should have been: %s', async (text, line) => {
  expect((await said(['/plan of:10 lemons spirit:1 l 95%'], text)).read).toBe(line)
})
