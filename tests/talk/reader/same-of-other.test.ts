import { expect, it } from 'vitest'
import { talkerFor } from './told.ts'

it.each([
  ['shook the ginger', 'and the lemon', '/jar shake lemon'],
  ['shook the ginger', 'the lemon too', '/jar shake lemon'],
  ['shook the ginger', 'same for the lemon', '/jar shake lemon'],
  ['agitato lo zenzero', 'e anche il limone', '/jar shake lemon'],
  ['strained the lemon', 'and the ginger', '/jar strain ginger'],
])('%s, %s: the same of that jar', async (before, text, read) => {
  const one = await talkerFor({ after: null, shelf: 'lemon_ginger' })
  await one.say(before)
  expect(await one.say(text)).toMatchObject({ read, code: null, recorded: 1 })
})

it.each(['and the lemon?', 'not the lemon', 'and the lemon tomorrow', 'and 3 lemons'])(
  'writes nothing down by %s',
  async (text) => {
    const one = await talkerFor({ after: null, shelf: 'lemon_ginger' })
    await one.say('shook the ginger')
    expect(await one.say(text)).toMatchObject({ recorded: 0 })
  },
)

it('carries no amount from one jar to another', async () => {
  const one = await talkerFor({ after: null, shelf: 'lemon_ginger' })
  await one.say('strained the lemon, 930 ml')
  expect(await one.say('and the ginger')).toMatchObject({ recorded: 0 })
})

it('shows the other jar, too', async () => {
  const one = await talkerFor({ after: null, shelf: 'lemon_ginger' })
  await one.say('/jar show ginger')
  expect(await one.say('and the lemon?')).toMatchObject({ read: '/jar show lemon', recorded: 0 })
})
