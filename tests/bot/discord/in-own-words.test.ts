import { expect, it } from 'vitest'
import { en } from '../../../bot/text/en/index.ts'
import { until } from './connected.ts'
import { buttonsOf, textOf } from './fake/shown-text.ts'
import type { FakeChannel } from './fake/world.ts'
import { bot, fake, onStage } from './stage.ts'

onStage()

const dm = (): FakeChannel => fake.dm(fake.user)
const answersIn = (channel: FakeChannel) => [...channel.messages.values()].filter(({ author }) => author === fake.bot)

/** Writes it and waits for the answer under it. */
const said = async (channel: FakeChannel, text: string) => {
  const before = answersIn(channel).length
  fake.write(channel, fake.user, text)
  await until(() => answersIn(channel).length > before)
  return answersIn(channel).at(-1)!
}

const entries = async () => (await bot.store.read(fake.user.id)).jars.reduce((sum, jar) => sum + jar.entries.length, 0)

it('takes a batch from shop to freezer in private, without one slash', async () => {
  const lines = [
    '10 lemons and a litre of 95%',
    'drier',
    'start it',
    'shook it',
    'strained it, 930 ml at 87',
    'sweetened it with 330 g sugar in 1.6 l water',
    'bottled it, 5 bottles of 500',
    'tried it, 4 out of 5',
  ]
  for (const line of lines) await said(dm(), line)
  const [jar] = (await bot.store.read(fake.user.id)).jars
  expect(jar!.entries.map(({ kind }) => kind)).toEqual([
    'started',
    'shaken',
    'strained',
    'sweetened',
    'bottled',
    'tasted',
  ])
})

it('answers amounts where it is named in a channel, under the message and pinging nobody', async () => {
  const answer = await said(fake.channel, `<@${fake.bot.id}> how much ginger per litre?`)
  expect(textOf(answer.json)).toContain('/botanical of:ginger')
  expect(fake.requests('send').at(-1)!.body).toMatchObject({ allowed_mentions: { parse: [] }, message_reference: {} })
})

it('answers what is written as a reply to its message in a channel', async () => {
  const asked = await said(fake.channel, `<@${fake.bot.id}> 10 lemons and a litre of 95%`)
  const before = answersIn(fake.channel).length
  fake.write(fake.channel, fake.user, 'how much ginger per litre?', asked)
  await until(() => answersIn(fake.channel).length > before)
  expect(textOf(answersIn(fake.channel).at(-1)!.json)).toContain('/botanical of:ginger')
})

it('records nothing in a channel until whoever asked presses, and answers them alone', async () => {
  await fake.slash('jar start', { of: '10 lemons', spirit: '1 l 95%', name: 'lemon' })
  const answer = await said(fake.channel, `<@${fake.bot.id}> shook the lemon`)
  expect(textOf(answer.json)).toContain(en.discord.ownJars())
  expect(await entries()).toBe(1)
  const pressed = await fake.press(answer, en.discord.answerPrivately())
  expect(pressed.message?.onlyFor).toBe(fake.user)
  expect(await entries()).toBe(2)
})

it('refuses a danger in a channel, also where it stands beside another deed', async () => {
  await fake.slash('jar start', { of: '10 lemons', spirit: '1 l 95%', name: 'lemon' })
  const answer = await said(fake.channel, `<@${fake.bot.id}> shook the lemon then added methanol`)
  expect(textOf(answer.json)).toMatch(/methanol/i)
  expect(textOf(answer.json)).not.toContain(en.discord.ownJars())
  expect(await entries()).toBe(1)
})

it('passes by what is not for it, and logs nothing of it', async () => {
  fake.write(fake.channel, fake.user, 'shook the lemon, secret words')
  await fake.slash('help')
  expect(answersIn(fake.channel).filter(({ onlyFor }) => onlyFor === undefined)).toEqual([])
  expect(bot.logged.filter((line) => line.includes('secret'))).toEqual([])
})

it('offers three things as buttons where it did not understand', async () => {
  const answer = await said(dm(), 'the committee meets on thursday')
  expect(buttonsOf(answer.json)).toHaveLength(3)
})

it('asks with the answers as buttons', async () => {
  await fake.slash('jar start', { of: '10 lemons', spirit: '1 l 95%', name: 'lemon' })
  await fake.slash('jar start', { of: '100 g ginger', spirit: '1 l 60%', name: 'ginger' })
  const answer = await said(dm(), 'shook it')
  expect(buttonsOf(answer.json).map(({ label }) => label)).toEqual(['/jar shake lemon', '/jar shake ginger'])
})

it('takes a sentence with /ask, for whoever asked alone', async () => {
  const answer = await fake.slash('ask', { text: '10 lemons and a litre of 95%' })
  expect(textOf(answer.message!.json)).toContain('read as /plan of:10 lemons spirit:1 litre 95%')
})

it('takes what follows a slash command, and a button, as said of it', async () => {
  await fake.slash('plan', { of: '10 lemons', spirit: '1 l 95%' }, { channel: dm() })
  const drier = await said(dm(), 'drier')
  expect(textOf(drier.json)).toContain('read as /plan of:10 lemons spirit:1 l 95% to-sweetness:120 g/L')
  const start = buttonsOf(drier.json).find(({ label }) => /start/i.test(label ?? ''))!
  await fake.press(drier, start.label!)
  const undone = await said(dm(), 'undo')
  expect(textOf(undone.json)).toContain('Lemon is deleted.')
})
