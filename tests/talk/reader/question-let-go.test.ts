import { expect, it } from 'vitest'
import { talkerFor } from './told.ts'

const CHILLI = '50 g chilli in 1 l vodka'

const after = async (question: string, text: string) => (await talkerFor({ after: question, shelf: 'lemon' })).say(text)

it.each([
  ['what’s on?', '/jar list'],
  ['cosa c’è da fare?', '/jar list'],
  ['shook the lemon', '/jar shake lemon'],
  ['ho scosso il limone', '/jar shake lemon'],
  ['no reminders for two weeks', '/reminders pause-until:in 2 weeks'],
])('answers a sentence that is a call of its own, whatever was asked: %s', async (text, line) => {
  expect((await after(CHILLI, text)).read).toBe(line)
})

it('takes no thanks for the name of a plant', async () => {
  expect((await after(CHILLI, 'thanks')).read).toBeNull()
})

it('has let the question go after that', async () => {
  const one = await talkerFor({ after: CHILLI, shelf: 'lemon' })
  await one.say('what’s on?')
  expect((await one.say('fresh')).read ?? '').not.toMatch(/^\/plan of:.*fresh/)
})

it.each([
  [CHILLI, 'fresh', '/plan of:50 g fresh chilli spirit:1 l vodka 40%'],
  [CHILLI, 'it’s dried', '/plan of:50 g dried chilli spirit:1 l vodka 40%'],
  [CHILLI, 'fresh chilli', '/plan of:50 g fresh chilli spirit:1 l vodka 40%'],
  ['50 g peperoncino in 1 l vodka', 'fresco', '/plan of:50 g fresco peperoncino spirit:1 l vodka 40%'],
  ['50 g walnuts in 1 l vodka', 'green', '/plan of:50 g green walnuts spirit:1 l vodka 40%'],
  ['/plan of:10 lemons', 'a litre of 95', '/plan of:10 lemons spirit:1 litre 95%'],
])('keeps the amount of what was asked about: %s, %s', async (question, text, line) => {
  expect((await after(question, text)).read).toBe(line)
})

it.each([
  ['shook it', 'show me the ginger', '/jar show ginger'],
  ['tasted it, lovely', 'gave a bottle of the ginger to Jo', /^\/bottles ginger given:1|^-$/],
  ['shook it', 'the ginger', '/jar shake ginger'],
])('looks at another jar where a deed asked which: %s, %s', async (question, text, line) => {
  const one = await talkerFor({ after: question, shelf: 'lemon_ginger' })
  const read = (await one.say(text)).read ?? '-'
  if (typeof line === 'string') expect(read).toBe(line)
  else expect(read).toMatch(line)
})

it.each([
  ['50 g chilli in 1 l vodka', 'and 3 cloves', 'fresh', '50 g fresh chilli + 3 cloves'],
  [
    '10 lemons and 2 cinnamon sticks in 1 l vodka',
    'and a vanilla pod',
    'Ceylon',
    '2 ceylon cinnamon sticks + vanilla pod',
  ],
  ['2 cinnamon sticks in 1 l vodka', 'plus 4 oranges', 'Ceylon', '2 ceylon cinnamon sticks + 4 oranges'],
])('keeps what was asked of one plant when another is told: %s, %s', async (question, more, answer, plants) => {
  const one = await talkerFor({ after: question })
  await one.say(more)
  expect((await one.say(answer)).read).toContain(plants)
})

it.each(['its gone brown', 'it smells of vinegar', 'è andato a male, puzza'])(
  'takes what has gone wrong for no plant: %s',
  async (text) => {
    const one = await talkerFor({ after: 'added a bit of cinnamon', shelf: 'lemon' })
    expect((await one.say(text)).read ?? '').not.toMatch(/^\/jar add/)
  },
)
