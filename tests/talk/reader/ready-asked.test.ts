import { expect, it } from 'vitest'
import { talker, talkerFor } from './told.ts'

it.each([
  'ready for the 20th?',
  'will it be done for Christmas',
  'will the lemon be ready by the 24th',
  'can we drink it at new year',
  'sarà pronto per Natale?',
])('shows the jar that stands there: %s', async (text) => {
  const one = await talkerFor({ after: null, shelf: 'lemon' })
  const told = await one.say(text)
  expect(told).toMatchObject({ code: null, recorded: 0 })
  expect(told.read).toMatch(/^\/jar show lemon ready-by:/)
})

it.each([
  ['when’s the lemon ready', 'lemon'],
  ['when will the ginger be done?', 'ginger'],
  ['how long till the lemon’s ready', 'lemon'],
  ['so when’s the ginger ready to drink', 'ginger'],
  ['quando è pronto il limone', 'lemon'],
])('shows the jar that is named, whatever day it is: %s', async (text, jar) => {
  const one = await talkerFor({ after: null, shelf: 'lemon_ginger' })
  expect(await one.say(text)).toMatchObject({ read: `/jar show ${jar}`, code: null, recorded: 0 })
})

it('answers both halves of a question', async () => {
  const one = await talkerFor({ after: null, shelf: 'lemon_ginger' })
  const told = await one.say('what’s due and when’s the lemon ready')
  expect([told.read, ...told.also.map(({ read }) => read)]).toEqual(['/jar list', '/jar show lemon'])
})

it('asks which of two', async () => {
  const one = await talkerFor({ after: null, shelf: 'lemon_ginger' })
  one.wait(40)
  expect(await one.say('will it be done for Christmas')).toMatchObject({ code: 'question', recorded: 0 })
})

it.each([
  ['will a cherry one be done for midsummer', '/plan of:cherry spirit:1 l 40% ready-by:24 June'],
  ['will a lime one started now be ready by new years eve', '/plan of:lime spirit:1 l 95% ready-by:31 December'],
])('plans what is still to be begun: %s', async (text, read) => {
  const one = await talkerFor({ after: null, shelf: 'lemon' })
  expect(await one.say(text)).toMatchObject({ read, recorded: 0 })
})

it.each([
  ['1 kg peaches and a litre of 60%, on the sour side', '/plan of:1 kg peaches spirit:1 litre 60% to-sweetness:dry'],
  ['1 kg di pesche e un litro a 60%, belle dolci', '/plan of:1 kg di pesche spirit:1 litro 60% to-sweetness:rich'],
  ['9 arance, un litro di alcol 95, ben zuccherato', '/plan of:9 arance spirit:1 litro 95% to-sweetness:rich'],
])('reads how sweet it is to be: %s', async (text, read) => {
  expect((await talker().say(text)).read?.replace('kg di ', 'kg ')).toBe(read.replace('kg di ', 'kg '))
})
