import { expect, it } from 'vitest'
import { en } from '../../../bot/text/en/index.ts'
import { testDesk } from '../test-desk.ts'
import { until } from './connected.ts'
import { bot, fake, onStage } from './stage.ts'

onStage()

const sent = () => fake.requests('send').map(({ path }) => path)

it('says hello in the first channel where it may, once, with a line that is a plan', async () => {
  const guild = fake.newGuild('seed swap', {
    channels: [
      ['rules', ['SendMessages']],
      ['hidden', ['ViewChannel']],
      ['shed', []],
      ['plots', []],
    ],
  })
  await until(() => sent().length > 0)
  const shed = fake.channelsOf(guild).find(({ name }) => name === 'shed')!
  expect(sent()).toEqual([expect.stringContaining(shed.id)])
  const [message] = [...shed.messages.values()]
  expect(message!.json.content).toBe(en.discord.hello())
  const line = /Type: (\/.+)$/.exec(en.discord.hello())![1]!
  expect((await testDesk().run(line)).ok).toBe(true)
})

it('says nothing where it may not write, and nothing to a server that it was in before', async () => {
  fake.newGuild('quiet', { channels: [['rules', ['SendMessages']]] })
  fake.newGuild('without the bot', { hasBot: false, channels: [['shed', []]] })
  await fake.slash('help')
  expect(sent()).toEqual([])
  expect(bot.logged.filter((line) => line.includes('greeting'))).toEqual([])
})
