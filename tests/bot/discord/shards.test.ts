import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { en } from '../../../bot/text/en/index.ts'
import { MADE } from '../said.ts'
import { type Connected, connecting, type Setting, until } from './connected.ts'
import { type FakeDiscord, startFake } from './fake/fake-discord.ts'
import { shardOf } from './fake/shard-of.ts'
import type { FakeChannel } from './fake/world.ts'

const { connection } = en
const MIX = { spirit: '1 l', strength: '95%', water: '1 l' }
const SECOND = { number: 2, of: 2 }

let fake: FakeDiscord
/** In a server of each of two shards. */
let channels: readonly [FakeChannel, FakeChannel]

/** A server that is told to this one of two shards: the millisecond of its id says so. */
const channelOn = (shardId: number): FakeChannel => {
  fake.clock.advance(1)
  const guild = fake.newGuild(`of shard ${shardId}`)
  return shardOf(guild.id, 2) === shardId ? fake.newChannel(guild, 'shelf') : channelOn(shardId)
}

beforeEach(async () => {
  // Not shorter: a client that is not acknowledged within it takes the connection for dead.
  fake = await startFake({ shards: 2, heartbeatMs: 400 })
  channels = [channelOn(0), channelOn(1)]
})

afterEach(async () => {
  await fake.stop()
  expect(fake.faults()).toEqual([])
})

const serversOn = (shardId: number): number => fake.guilds().filter(({ id }) => shardOf(id, 2) === shardId).length

const readied = async (setting: Setting = {}): Promise<Connected> => {
  const bot = connecting(fake, setting)
  await bot.ready()
  return bot
}

const answerOn = async (shardId: 0 | 1): Promise<void> => {
  const answer = await fake.slash('mix', MIX, { channel: channels[shardId] })
  expect(answer.text).toMatch(MADE)
  expect(answer.calls).toHaveLength(1)
}

it('takes as many connections as Discord asks for, and answers on each', async () => {
  const bot = await readied()
  await until(() => bot.logged.includes(connection.allConnected({ of: 2, servers: serversOn(0) + serversOn(1) })))
  expect(fake.gateway.sessions().map(({ shard }) => shard)).toEqual(
    expect.arrayContaining([
      [0, 2],
      [1, 2],
    ]),
  )
  await answerOn(0)
  await answerOn(1)
  const dm = fake.dm(fake.user)
  expect((await fake.slash('mix', MIX, { channel: dm })).text).toMatch(MADE)
  expect(await bot.end()).toBe(0)
})

it.each([0, 1] as const)('answers on its own connection while shard %i is never there', async (heldId) => {
  fake.gateway.hold(heldId)
  const bot = await readied()
  await answerOn(heldId === 0 ? 1 : 0)
  expect(fake.gateway.sessions()).toHaveLength(1)
  expect(bot.logged[0]).toBe(
    connection.connected({
      name: fake.bot.name,
      id: fake.bot.id,
      servers: serversOn(heldId === 0 ? 1 : 0),
      of: 2,
    }),
  )
  fake.gateway.free()
  await until(() => fake.gateway.sessions().length === 2)
  await answerOn(heldId)
  await bot.end()
})

it('answers everybody although Discord has trouble with one server, and in that one too', async () => {
  channels[0].guild!.isUnavailable = true
  const bot = await readied()
  await answerOn(1)
  await answerOn(0)
  expect((await fake.slash('mix', MIX)).text).toMatch(MADE)
  await bot.end()
})

it('goes on where Discord ends one connection for good, and ends with the last', async () => {
  const bot = await readied()
  await until(() => fake.gateway.sessions().length === 2)
  fake.gateway.close(4010, 1)
  await until(() => bot.logged.includes(connection.oneLost(SECOND)))
  await answerOn(0)
  fake.gateway.close(4004, 0)
  expect(await bot.code).toBe(1)
  expect(bot.logged.at(-1)).toBe(connection.faults.lost())
})

it.each([0, 1] as const)('works where shard %i cannot even begin', async (refusedId) => {
  fake.gateway.closeOnIdentify(4010, refusedId)
  const bot = await readied()
  await answerOn(refusedId === 0 ? 1 : 0)
  await until(() => bot.logged.includes(connection.oneLost({ number: refusedId + 1, of: 2 })))
  expect(await bot.end()).toBe(0)
})

it('says why where none can begin', async () => {
  fake.gateway.closeOnIdentify(4014)
  const bot = connecting(fake)
  expect(await bot.code).toBe(1)
  expect(bot.logged.at(-1)).toBe(connection.faults.refused())
})

it('tells which connection drops and is back', async () => {
  const bot = await readied()
  await until(() => fake.gateway.sessions().length === 2)
  fake.gateway.close(undefined, 1)
  await until(() => bot.logged.includes(connection.dropped(SECOND)))
  await answerOn(0)
  await until(() => bot.logged.includes(connection.resumed(SECOND)))
  await answerOn(1)
  await bot.end()
})

it('ends where it has outgrown its connections, and takes more at the next start', async () => {
  const bot = await readied()
  await until(() => fake.gateway.sessions().length === 2)
  fake.gateway.close(4011, 1)
  expect(await bot.code).toBe(1)
  expect(bot.logged.at(-1)).toBe(connection.faults.outgrown())
})

describe('the last time that Discord was heard of', () => {
  const hearing = async () => {
    let heardMs = (): number | null => null
    const remind: Setting['remind'] = async (_, heard) => {
      heardMs = heard
      return async () => undefined
    }
    const bot = await readied({ remind })
    const beaten = async () => {
      const { heartbeats } = fake.gateway.counts
      await until(() => fake.gateway.counts.heartbeats >= heartbeats + 4)
    }
    return { bot, heardMs: () => heardMs(), beaten }
  }

  it('is that of the connection it is longest ago with', async () => {
    const { bot, heardMs, beaten } = await hearing()
    await until(() => fake.gateway.sessions().length === 2)
    const startMs = heardMs()!
    await beaten()
    expect(heardMs()).toBe(startMs)
    bot.pass(60_000)
    await until(() => heardMs() === startMs + 60_000)
    fake.gateway.close(4010, 1)
    await until(() => bot.logged.includes(connection.oneLost(SECOND)))
    bot.pass(60_000)
    await beaten()
    expect(heardMs()).toBe(startMs + 60_000)
    await bot.end()
  })

  it('is before the start for one that is acknowledged but never there', async () => {
    fake.gateway.hold(1)
    const { bot, heardMs, beaten } = await hearing()
    const startMs = heardMs()!
    bot.pass(60_000)
    await beaten()
    expect(heardMs()).toBe(startMs)
    fake.gateway.free()
    await until(() => heardMs() === startMs + 60_000)
    await bot.end()
  })
})
