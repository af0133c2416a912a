import { expect, it } from 'vitest'
import { en } from '../../../bot/text/en/index.ts'
import { MADE } from '../said.ts'
import { connecting, until } from './connected.ts'
import { INTENT } from './fake/gateway.ts'
import { fake, onFake, readied } from './stage.ts'

onFake()

const { connection, registration } = en
const ALONE = { number: 1, of: 1 }
const MIX = { spirit: '1 l', strength: '95%', water: '1 l' }

it('connects with no privileged intent, and registers once', async () => {
  const bot = await readied()
  expect(fake.gateway.sessions()).toMatchObject([
    { intents: INTENT.guilds | INTENT.guildMessages | INTENT.directMessages },
  ])
  expect(bot.logged).toEqual([
    connection.connected({ name: fake.bot.name, id: fake.bot.id, servers: 1, of: 1 }),
    registration.registered({ count: fake.commands().length, guildId: null }),
  ])
  expect(await bot.end()).toBe(0)
  expect(bot.logged.slice(-2)).toEqual([connection.stopping(), connection.stopped()])
  const again = await readied()
  expect(again.logged.at(-1)).toBe(connection.unchanged())
  expect(fake.requests('setGlobalCommands')).toHaveLength(1)
  await again.end()
})

it('registers in one server where that is wanted', async () => {
  const bot = await readied({ guildId: fake.guild.id })
  expect(fake.commands(fake.guild.id).length).toBeGreaterThan(10)
  expect((await fake.slash('mix', MIX)).text).toMatch(MADE)
  await bot.end()
})

it('works where registering fails', async () => {
  await (await readied()).end()
  fake.outage('globalCommands', { status: 403, code: 50001 })
  const bot = await readied()
  const sentence = registration.faults.no_rights({ guildId: null })
  expect(bot.logged).toContain(connection.notRegistered({ sentence }))
  expect((await fake.slash('mix', MIX)).text).toMatch(MADE)
  await bot.end()
})

interface Failing {
  readonly why: string
  readonly fault: keyof typeof connection.faults
  readonly setting?: Parameters<typeof connecting>[1]
  readonly before?: () => void
}

const failing: readonly Failing[] = [
  { why: 'a token that Discord does not know', fault: 'wrong_token', setting: { token: 'MTAx.another.token' } },
  { why: 'a token that can be none', fault: 'wrong_token', setting: { token: 'two\nlines' } },
  { why: 'a failed authentication', fault: 'wrong_token', before: () => fake.gateway.closeOnIdentify(4004) },
  { why: 'refused intents', fault: 'refused', before: () => fake.gateway.closeOnIdentify(4014) },
  { why: 'no network', fault: 'no_network', setting: { api: 'http://127.0.0.1:9/api' } },
  { why: 'a gateway that is down', fault: 'server_fault', before: () => fake.gateway.refuse(502) },
  {
    why: 'a day of 5xx',
    fault: 'server_fault',
    before: () => fake.outage('gatewayBot', { status: 503 }, { times: 9 }),
  },
]

it.each(failing)('says in one sentence that it cannot connect: $why', async ({ fault, setting, before }) => {
  before?.()
  const bot = connecting(fake, setting)
  expect(await bot.code).toBe(1)
  expect(bot.logged).toEqual([connection.faults[fault]()])
})

it('ends while it is still connecting', async () => {
  fake.outage('gatewayBot', { delayMs: 200 })
  const bot = connecting(fake)
  expect(await bot.end()).toBe(0)
  expect(bot.logged).toEqual([connection.stopped()])
})

it('ends with a sentence when Discord ends the connection for good', async () => {
  const bot = await readied()
  fake.gateway.close(4004)
  expect(await bot.code).toBe(1)
  expect(bot.logged.at(-1)).toBe(connection.faults.lost())
})

it('answers after a drop what was asked meanwhile, and tells of it once', async () => {
  const bot = await readied()
  fake.gateway.close()
  await until(() => fake.gateway.sessions().every(({ isConnected }) => !isConnected))
  expect((await fake.slash('mix', MIX)).text).toMatch(MADE)
  await until(() => bot.logged.includes(connection.resumed(ALONE)))
  expect(bot.logged.filter((line) => line === connection.dropped(ALONE))).toHaveLength(1)
  expect(fake.gateway.counts).toMatchObject({ identifies: 1, resumes: 1 })
  await bot.end()
})
