import { expect, it } from 'vitest'
import { en } from '../../../bot/text/en/index.ts'
import { bot, fake, onStage } from './stage.ts'

onStage()

const START = en.sentences.actions.start_jar()
const UNDO = en.sentences.actions.jar_undo()

const plan = () =>
  fake.slash('plan', { of: '8 lemons', spirit: '0.7 l 95%', 'to-strength': '30%', 'to-sweetness': '250 g/L' })
const jarsOf = async () => (await bot.store.read(fake.user.id)).jars

it('begins the jar again that was taken back a moment ago, as often as that is done', async () => {
  const planned = await plan()
  for (const _round of [1, 2, 3]) {
    const started = await fake.press(planned.message, START)
    expect(started.text).toContain('Started.')
    expect((await fake.press(started.message, UNDO)).text).not.toBe(en.calls.twice())
  }
  expect(await jarsOf()).toHaveLength(3)
})

it('takes a press for another one after a command, a form or somebody’s choice came between', async () => {
  const planned = await plan()
  await fake.press(planned.message, START)
  const [{ id } = { id: '' }] = await jarsOf()
  const between = [
    () => fake.slash('jar list'),
    async () => fake.submit(await fake.slash('jar taste', { jar: `#${id}` }), { rating: '4' }),
    () => fake.press(planned.message, en.discord.showEverybody()),
  ]
  for (const act of between) {
    await act()
    expect((await fake.press(planned.message, START)).text).not.toBe(en.calls.twice())
    expect((await fake.press(planned.message, START)).text).toBe(en.calls.twice())
  }
})

it('takes two presses for one where what came between failed, only opened a form or was somebody else’s', async () => {
  const planned = await plan()
  await fake.press(planned.message, START)
  const [{ id } = { id: '' }] = await jarsOf()
  const between = [
    () => fake.slash('jar shake', { jar: 'walnut' }),
    () => fake.slash('jar taste', { jar: `#${id}` }),
    () => fake.slash('help', {}, { user: fake.newUser('sorrel') }),
  ]
  for (const act of between) {
    await act()
    expect((await fake.press(planned.message, START)).text).toBe(en.calls.twice())
  }
})
