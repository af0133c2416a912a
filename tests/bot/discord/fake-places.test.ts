import type { GuildTextBasedChannel, TextChannel } from 'discord.js'
import { afterEach, beforeEach, expect, it, vi } from 'vitest'
import { type BareClient, bareClient } from './fake/bare-client.ts'
import { type FakeDiscord, startFake } from './fake/fake-discord.ts'

let fake: FakeDiscord
let bare: BareClient

beforeEach(async () => {
  fake = await startFake()
  bare = bareClient(fake)
  await bare.ready()
})

afterEach(async () => {
  await bare.client.destroy()
  await fake.stop()
  expect(fake.faults()).toEqual([])
})

const shelf = (): TextChannel => bare.client.channels.cache.get(fake.channel.id) as TextChannel

it('takes a message of the client, and one of two with the same nonce', async () => {
  const first = await shelf().send({ content: 'Shake', nonce: 'k7f2a', enforceNonce: true })
  const second = await shelf().send({ content: 'Shake', nonce: 'k7f2a', enforceNonce: true })
  expect(second.id).toBe(first.id)
  expect(fake.channel.messages.size).toBe(1)
  await first.edit('Shaken')
  const read = await shelf().messages.fetch({ limit: 5 })
  expect(read.map(({ content, nonce }) => [content, nonce])).toEqual([['Shaken', 'k7f2a']])
})

it('names only whom the message may ping', async () => {
  const content = `<@${fake.user.id}> shake, <@${fake.bot.id}>`
  const { json } = fake.channel.messages.get(
    (await shelf().send({ content, allowedMentions: { users: [fake.user.id] } })).id,
  )!
  expect(json.mentions.map(({ id }) => id)).toEqual([fake.user.id])
})

it('tells the client what it may do in a channel, and that it is gone', async () => {
  const rights = (): readonly boolean[] =>
    (['ViewChannel', 'SendMessages', 'ReadMessageHistory'] as const).map(
      (right) => shelf().permissionsFor(bare.client.user!)?.has(right) ?? false,
    )
  expect(rights()).toEqual([true, true, true])
  fake.deny(fake.channel, 'SendMessages', 'ReadMessageHistory')
  await vi.waitFor(() => expect(rights()).toEqual([true, false, false]), 3000)
  await expect(shelf().send('x')).rejects.toMatchObject({ code: 50013 })
  fake.removeChannel(fake.channel)
  await vi.waitFor(() => expect(shelf()).toBeUndefined(), 3000)
  await expect(bare.client.channels.fetch(fake.channel.id)).rejects.toMatchObject({ code: 10003 })
})

it('tells the client of places that come and go', async () => {
  const other = fake.newGuild('Midwinter fair')
  const channel = fake.newChannel(other, 'stall')
  const known = (): GuildTextBasedChannel | undefined =>
    bare.client.channels.cache.get(channel.id) as GuildTextBasedChannel | undefined
  await vi.waitFor(() => expect(known()?.guild.name).toBe('Midwinter fair'), 3000)
  fake.removeBot(other)
  await vi.waitFor(() => expect(bare.client.guilds.cache.has(other.id)).toBe(false), 3000)
})

it('carries direct messages, unless they are closed', async () => {
  const { channelId } = await bare.client.users.send(fake.user.id, 'Shake')
  expect(fake.dm(fake.user).id).toBe(channelId)
  expect([...fake.dm(fake.user).messages.values()].map(({ json }) => json.content)).toEqual(['Shake'])
  fake.user.hasClosedDms = true
  await expect(bare.client.users.send(fake.user.id, 'Shake')).rejects.toMatchObject({ code: 50007 })
})

it('tries a 429 again, and gives up a 500 after its tries', async () => {
  fake.outage('send', { status: 429, retryAfterS: 0.02 })
  await shelf().send('one')
  fake.outage('send', { status: 500 }, { times: 2 })
  await expect(shelf().send('two')).rejects.toMatchObject({ status: 500 })
  expect(fake.requests('send').map(({ status }) => status)).toEqual([429, 200, 500, 500])
})
