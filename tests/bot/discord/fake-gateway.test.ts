import { Events, GatewayIntentBits } from 'discord.js'
import { afterEach, beforeEach, expect, it, vi } from 'vitest'
import { type BareClient, bareClient } from './fake/bare-client.ts'
import { type FakeDiscord, startFake } from './fake/fake-discord.ts'

let fake: FakeDiscord
let bare: BareClient

beforeEach(async () => {
  fake = await startFake()
  bare = bareClient(fake)
})

afterEach(async () => {
  await bare.client.destroy()
  await fake.stop()
  expect(fake.faults()).toEqual([])
})

const heard = (): string[] => {
  const texts: string[] = []
  bare.client.on(Events.MessageCreate, (message) => texts.push(message.id))
  return texts
}

it('replays what was missed to a client that resumes after a torn connection', async () => {
  const texts = heard()
  await bare.ready()
  const first = fake.write(fake.channel, fake.user, 'before')
  await vi.waitFor(() => expect(texts).toEqual([first.json.id]), 3000)
  fake.gateway.close()
  await vi.waitFor(() => expect(fake.gateway.sessions()).toMatchObject([{ isConnected: false }]), 3000)
  const missed = [fake.write(fake.channel, fake.user, 'one'), fake.write(fake.channel, fake.user, 'two')]
  await vi.waitFor(() => expect(texts).toEqual([first, ...missed].map(({ json }) => json.id)), 3000)
  expect(fake.gateway.counts).toMatchObject({ identifies: 1, resumes: 1, connections: 2 })
})

it('begins a new session after one that is invalid, and resumes after 4009 or when told to', async () => {
  // discord.js leaves 5 s between two identifies, as Discord asks; not here.
  bare = bareClient(fake, { ws: { buildIdentifyThrottler: async () => ({ waitForIdentify: async () => undefined }) } })
  await bare.ready()
  fake.gateway.close(4009)
  await vi.waitFor(() => expect(fake.gateway.counts).toMatchObject({ identifies: 1, resumes: 1 }), 3000)
  await vi.waitFor(() => expect(bare.client.isReady()).toBe(true), 3000)
  const resumed = new Promise((resolve) => bare.client.once(Events.ShardResume, resolve))
  fake.gateway.reconnect()
  await vi.waitFor(() => expect(fake.gateway.counts).toMatchObject({ identifies: 1, resumes: 2 }), 3000)
  // discord.js fails where a session ends before it has read that it was resumed.
  await resumed
  fake.gateway.invalidate(false)
  await vi.waitFor(() => expect(fake.gateway.counts.identifies).toBe(2), 3000)
  const texts = heard()
  const { json } = fake.write(fake.channel, fake.user, 'after')
  await vi.waitFor(() => expect(texts).toEqual([json.id]), 3000)
})

it('acknowledges heartbeats', async () => {
  await fake.stop()
  // Not shorter: a client that is not acknowledged within it takes the connection for dead.
  fake = await startFake({ heartbeatMs: 400 })
  bare = bareClient(fake)
  await bare.ready()
  await vi.waitFor(() => expect(bare.client.ws.ping).toBeGreaterThanOrEqual(0), 3000)
  expect(fake.gateway.counts.heartbeats).toBeGreaterThan(0)
})

it('rejects a login that is closed with 4004, or with a token of somebody else', async () => {
  fake.gateway.closeOnIdentify(4004)
  await expect(bare.ready()).rejects.toThrow('Authentication failed')
  fake.gateway.closeOnIdentify(undefined)
  bare = bareClient(fake)
  await expect(bare.ready('another')).rejects.toThrow('An invalid token was provided')
})

it('refuses intents that an application has to be granted', async () => {
  bare = bareClient(fake, { intents: [GatewayIntentBits.Guilds, GatewayIntentBits.MessageContent] })
  await expect(bare.ready()).rejects.toThrow('disallowed intents')
})

it('rejects a login when the handshake is refused', async () => {
  fake.gateway.refuse(502)
  await expect(bare.ready()).rejects.toThrow('502')
})

it('sends a press to the client that has logged in after another has left', async () => {
  await bare.ready()
  await bare.client.destroy()
  await vi.waitFor(() => expect(fake.gateway.sessions()).toEqual([]), 3000)
  await expect(fake.slash('mix', {}, { isOld: true })).rejects.toThrow('no bot is connected')
  bare = bareClient(fake)
  await bare.ready()
  bare.answer(async (interaction) => interaction.isRepliable() && interaction.reply('again'))
  expect((await fake.slash('mix', { anything: 1 }, { isOld: true })).text).toBe('again')
})

it('says what has come when nothing answers', async () => {
  await bare.ready()
  bare.answer(async (interaction) => interaction.isRepliable() && interaction.deferReply())
  const waiting = fake.slash('mix', {}, { isOld: true, patienceMs: 600 })
  await expect(waiting).rejects.toThrow('/mix: not answered within 600 ms; came: callback (type 5) 204')
})

it('leaves nothing open when both are stopped', async () => {
  const open = (): readonly string[] =>
    process
      .getActiveResourcesInfo()
      .filter((name) => /TCP|Timeout/.test(name))
      .sort()
  await fake.stop()
  await vi.waitFor(() => expect(open().filter((name) => name.startsWith('TCPSocket'))).toEqual([]), 3000)
  const before = open()
  fake = await startFake()
  bare = bareClient(fake)
  await bare.ready()
  expect(open()).not.toEqual(before)
  await bare.client.destroy()
  await fake.stop()
  await vi.waitFor(() => expect(open().filter((name) => name.startsWith('TCP'))).toEqual([]), 3000)
})
