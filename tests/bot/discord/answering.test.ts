import { expect, it } from 'vitest'
import type { Command } from '../../../bot/chat/command.ts'
import { en } from '../../../bot/text/en/index.ts'
import { memoryStore } from '../../../store/memory/memory-store.ts'
import type { Store } from '../../../store/store.ts'
import { MADE } from '../said.ts'
import { commands } from '../test-desk.ts'
import { gate, impatient, instead, until } from './connected.ts'
import { fake, onFake, readied } from './stage.ts'

onFake()

const { connection } = en
const MIX = { spirit: '1 l', strength: '95%', water: '1 l' }
const LEMON = { name: 'lemon', of: '10 lemons', spirit: '1 l 95%', 'to-strength': '30%', 'to-sweetness': '250 g/L' }

it('promises an answer that takes long, and gives it', async () => {
  const { opened, open } = gate()
  const mix = commands.find(({ path }) => path === 'mix')!
  const bot = await readied({
    after: impatient,
    commands: instead('mix', async (input, context) => {
      await opened
      return mix.run(input, context)
    }),
  })
  const asked = fake.slash('mix', MIX)
  await until(() => fake.requests('callback').length > 0)
  open()
  const answer = await asked
  expect(answer).toMatchObject({ wasDeferred: true, isPrivate: true })
  expect(answer.text).toMatch(MADE)
  expect(answer.calls.map(({ route }) => route)).toEqual(['callback', 'editAnswer'])
  await bot.end()
})

it('gets through faults of Discord, and answers once', async () => {
  const bot = await readied({ after: impatient })
  for (const outage of [
    { status: 500 },
    { status: 502, isProcessed: true },
    { closes: true },
    { closes: true, isProcessed: true },
  ]) {
    fake.outage('callback', outage)
    const answer = await fake.slash('mix', MIX)
    expect(answer.text).toMatch(MADE)
    expect(answer.followUps).toEqual([])
  }
  expect(bot.logged.filter((line) => /\n/.test(line))).toEqual([])
  await bot.end()
})

it('keeps its promise through faults of Discord', async () => {
  const { opened, open } = gate()
  const mix = commands.find(({ path }) => path === 'mix')!
  const slow: Command['run'] = async (input, context) => {
    await opened
    return mix.run(input, context)
  }
  const bot = await readied({ after: impatient, commands: instead('mix', slow) })
  fake.outage('editAnswer', { status: 500 }, { times: 3 })
  fake.outage('editAnswer', { closes: true })
  const asked = fake.slash('mix', MIX)
  await until(() => fake.requests('callback').length > 0)
  open()
  expect((await asked).text).toMatch(MADE)
  await bot.end()
})

it('goes on after an interaction that is too old, unknown or malformed', async () => {
  const bot = await readied()
  const late = fake.slash('jar start', LEMON, { until: ({ calls }) => calls.some(({ status }) => status === 404) })
  fake.clock.advance(3001)
  expect((await late).calls).toMatchObject([{ status: 404 }])
  await until(() => bot.logged.includes('/jar start: answered too late'))
  // It was recorded all the same.
  expect((await bot.store.read(fake.user.id)).jars).toHaveLength(1)
  const gone = fake.slash('mix', MIX, { until: ({ calls }) => calls.length > 0 })
  fake.outage('callback', { status: 401 })
  await gone
  expect((await fake.slash('mix', MIX)).text).toMatch(MADE)
  await bot.end()
})

it('excuses itself where Discord does not take what it says', async () => {
  const bot = await readied()
  fake.outage('callback', { status: 400, code: 50035 })
  expect((await fake.slash('mix', MIX)).text).toBe(en.problems.internal())
  expect(bot.logged.at(-1)).toMatch(/^\/mix: DiscordAPIError\[50035\]/)
  await bot.end()
})

it('finishes what is being written when it is stopped, and takes nothing new', async () => {
  const { opened, open } = gate()
  const memory = memoryStore('UTC')
  let isWriting = false
  const store: Store = {
    ...memory,
    update: async (userId, change) => {
      isWriting = true
      await opened
      return memory.update(userId, change)
    },
  }
  let hasStopped = false
  const remind = async () => async () => {
    hasStopped = true
  }
  const bot = await readied({ store, remind })
  const starting = fake.slash('jar start', LEMON)
  await until(() => isWriting)
  const ended = bot.end()
  await until(() => bot.logged.includes(connection.stopping()))
  const sorrel = fake.newUser('sorrel')
  expect((await fake.slash('mix', MIX, { user: sorrel })).text).toBe(en.calls.stopping())
  expect((await fake.autocomplete('jar show', { jar: '' }, 'jar', { user: sorrel })).choices).toEqual([])
  open()
  expect((await starting).text).toContain('started')
  expect(await ended).toBe(0)
  expect(hasStopped).toBe(true)
  expect((await memory.read(fake.user.id)).jars).toHaveLength(1)
  expect(fake.gateway.sessions()).toEqual([])
})

it('never logs a token, a name or a note', async () => {
  const broken = instead('mix', async () => {
    throw new Error(`secret ${fake.token}`)
  })
  const bot = await readied({ commands: broken })
  await fake.slash('mix', { spirit: '1 l', strength: '95%' })
  await fake.slash('jar start', { ...LEMON, name: 'hidden name' })
  await fake.slash('jar taste', { jar: 'hidden name', note: 'hidden note' })
  await bot.end()
  expect(bot.logged.join('\n')).toContain('/mix: Error')
  expect(bot.logged.join('\n')).not.toMatch(/secret|hidden|MTAx/)
})
