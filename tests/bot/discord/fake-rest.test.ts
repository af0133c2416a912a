import { REST, type RESTPostAPIChannelMessageJSONBody, Routes } from 'discord.js'
import {
  ApplicationCommandResponseSchema,
  ErrorResponseSchema,
  GatewayBotResponseSchema,
  GuildChannelResponseSchema,
  GuildMemberResponseSchema,
  GuildResponseSchema,
  MessageResponseSchema,
  PrivateApplicationResponseSchema,
  PrivateChannelResponseSchema,
  UserPIIResponseSchema,
} from 'discord-api-spec/zod'
import { afterEach, beforeEach, expect, it } from 'vitest'
import type { ZodMiniType } from 'zod/mini'
import { checkSchema } from './fake/check-schema.ts'
import { type FakeDiscord, startFake } from './fake/fake-discord.ts'
import { showProblem } from './fake/problem.ts'

let fake: FakeDiscord
let rest: REST

beforeEach(async () => {
  fake = await startFake()
  rest = new REST({ api: fake.api, retries: 1, offset: 1, timeout: 500 }).setToken(fake.token)
})

afterEach(async () => {
  await fake.stop()
  expect(fake.faults()).toEqual([])
})

const nudge: RESTPostAPIChannelMessageJSONBody = { content: 'Shake the lemon jar', allowed_mentions: { parse: [] } }
const send = (channelId: string, body: RESTPostAPIChannelMessageJSONBody = nudge): Promise<unknown> =>
  rest.post(Routes.channelMessages(channelId), { body })
const texts = (): readonly string[] => [...fake.channel.messages.values()].map(({ json }) => json.content)

it('makes one message of two with the same nonce, for some minutes', async () => {
  const body = { ...nudge, nonce: 'n1', enforce_nonce: true }
  const first = await send(fake.channel.id, body)
  expect(await send(fake.channel.id, body)).toEqual(first)
  await send(fake.channel.id, { ...body, nonce: 'n2' })
  expect(texts()).toHaveLength(2)
  fake.clock.advance(6 * 60_000)
  await send(fake.channel.id, body)
  await send(fake.channel.id, { ...body, enforce_nonce: false })
  expect(texts()).toHaveLength(4)
})

it('sends, lists, changes and removes messages', async () => {
  const sent = (await send(fake.channel.id)) as { id: string }
  await send(fake.channel.id, { ...nudge, content: 'second' })
  const listed = (await rest.get(`${Routes.channelMessages(fake.channel.id)}?limit=1`)) as { content: string }[]
  expect(listed.map(({ content }) => content)).toEqual(['second'])
  await rest.patch(Routes.channelMessage(fake.channel.id, sent.id), { body: { ...nudge, content: 'done' } })
  expect(texts()).toEqual(['done', 'second'])
  await rest.delete(Routes.channelMessage(fake.channel.id, sent.id))
  expect(texts()).toEqual(['second'])
  const { json } = fake.write(fake.channel, fake.user, 'mine')
  const change = rest.patch(Routes.channelMessage(fake.channel.id, json.id), { body: nudge })
  await expect(change).rejects.toMatchObject({ code: 50005 })
})

it('takes files beside the payload', async () => {
  const body = { ...nudge, attachments: [{ id: '0', description: 'A card' }] }
  await rest.post(Routes.channelMessages(fake.channel.id), {
    body,
    files: [{ name: 'ö.png', data: Buffer.from([1, 2, 255]) }],
  })
  const [message] = [...fake.channel.messages.values()]
  expect([...message!.files[0]!.bytes]).toEqual([1, 2, 255])
  expect(message!.json.attachments).toMatchObject([{ filename: 'ö.png', description: 'A card', size: 3 }])
})

it('refuses what the bot may not do, with the code that Discord has for it', async () => {
  const refused = async (code: number, act: Promise<unknown>): Promise<void> =>
    await expect(act).rejects.toMatchObject({ code })
  fake.deny(fake.channel, 'SendMessages')
  await refused(50013, send(fake.channel.id))
  fake.deny(fake.channel, 'ViewChannel')
  await refused(50001, send(fake.channel.id))
  fake.deny(fake.channel, 'ReadMessageHistory')
  await send(fake.channel.id)
  expect(await rest.get(Routes.channelMessages(fake.channel.id))).toEqual([])
  fake.removeChannel(fake.channel)
  await refused(10003, send(fake.channel.id))
  const dm = (await rest.post(Routes.userChannels(), { body: { recipient_id: fake.user.id } })) as { id: string }
  await send(dm.id)
  fake.user.hasClosedDms = true
  await refused(50007, send(dm.id))
  fake.leave(fake.guild, fake.user)
  await refused(10007, rest.get(Routes.guildMember(fake.guild.id, fake.user.id)))
  fake.removeBot(fake.guild)
  await refused(50001, rest.get(Routes.guild(fake.guild.id)))
  await refused(10062, rest.post(Routes.interactionCallback('1', 'gone'), { body: { type: 5 }, auth: false }))
  rest.setToken('another')
  await expect(send(dm.id)).rejects.toMatchObject({ status: 401 })
})

it('goes wrong as planned: 429, 5xx, 403, closed sockets, delays', async () => {
  const { id } = fake.channel
  fake.outage('send', { status: 429, retryAfterS: 0.02 })
  await send(id)
  fake.outage('send', { status: 429, retryAfterS: 0.02, isGlobal: true })
  await send(id)
  fake.outage('send', { status: 500 })
  await send(id)
  expect(fake.requests('send').map(({ status }) => status)).toEqual([429, 200, 429, 200, 500, 200])
  const undo = fake.outage('*', { status: 502 }, { times: Number.POSITIVE_INFINITY })
  await expect(send(id)).rejects.toMatchObject({ status: 502 })
  undo()
  fake.outage('send', { status: 403, code: 50013 }, { when: (_, { channel }) => channel === id })
  await expect(send(id)).rejects.toMatchObject({ code: 50013 })
  expect(texts()).toHaveLength(3)
  fake.outage('send', { closes: true })
  await expect(send(id)).rejects.toThrow('other side closed')
  expect(texts()).toHaveLength(3)
  fake.outage('send', { closes: true, isProcessed: true })
  await expect(send(id)).rejects.toThrow('other side closed')
  expect(texts()).toHaveLength(4)
  fake.outage('send', { delayMs: 600 })
  await send(id)
  expect(fake.rateLimited()).toBe(0)
})

it('answers in the shapes that Discord publishes', async () => {
  const ask = async (path: string): Promise<unknown> =>
    (await fetch(`${fake.api}/v10${path}`, { headers: { authorization: `Bot ${fake.token}` } })).json()
  const command = { name: 'mix', description: 'Mix', type: 1 }
  await rest.put(Routes.applicationCommands(fake.applicationId), { body: [command] })
  const commands = (await ask(Routes.applicationCommands(fake.applicationId))) as unknown[]
  const message = await rest.post(Routes.channelMessages(fake.channel.id), {
    body: {
      flags: 1 << 15,
      allowed_mentions: { parse: [] },
      attachments: [{ id: '0' }],
      components: [
        {
          type: 17,
          components: [
            { type: 10, content: 'Lemon' },
            { type: 14 },
            { type: 12, items: [{ media: { url: 'attachment://card.png' } }] },
            {
              type: 9,
              components: [{ type: 10, content: 'Day 3' }],
              accessory: { type: 2, style: 1, label: 'Done', custom_id: 'd' },
            },
            { type: 1, components: [{ type: 3, custom_id: 's', options: [{ label: 'a', value: 'b' }] }] },
          ],
        },
      ],
    },
    files: [{ name: 'card.png', data: Buffer.from('x') }],
  })
  const cases: readonly [ZodMiniType, unknown][] = [
    [GatewayBotResponseSchema, await ask('/gateway/bot')],
    [UserPIIResponseSchema, await ask('/users/@me')],
    [PrivateApplicationResponseSchema, await ask('/oauth2/applications/@me')],
    [GuildResponseSchema, await ask(Routes.guild(fake.guild.id))],
    [GuildMemberResponseSchema, await ask(Routes.guildMember(fake.guild.id, fake.user.id))],
    [GuildChannelResponseSchema, await ask(Routes.channel(fake.channel.id))],
    [PrivateChannelResponseSchema, await rest.post(Routes.userChannels(), { body: { recipient_id: fake.user.id } })],
    [ErrorResponseSchema, await ask(Routes.channel('1'))],
    [ApplicationCommandResponseSchema, commands[0]],
    [MessageResponseSchema, message],
  ]
  for (const [schema, answer] of cases) expect(checkSchema(schema, answer).map(showProblem)).toEqual([])
})
