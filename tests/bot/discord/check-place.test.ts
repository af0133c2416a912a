import { describe, expect, it } from 'vitest'
import { placeCheck } from '../../../bot/discord/receive/check-place.ts'
import type { Right } from './fake/world.ts'
import { bot, fake, onStage } from './stage.ts'

onStage()

const placeKept = async () => (await bot.store.read(fake.user.id)).settings.place

describe('/reminders place:here', () => {
  it('takes a channel where nothing is missing', async () => {
    const answer = await fake.slash('reminders', { place: 'here' })
    expect(answer.text).toContain('this channel')
    expect(await placeKept()).toEqual({ kind: 'channel', channelId: fake.channel.id })
  })

  const rights: readonly (readonly [Right, string])[] = [
    ['ViewChannel', 'View Channel, Send Messages and Read Message History'],
    ['SendMessages', 'Send Messages'],
    ['ReadMessageHistory', 'Read Message History'],
  ]

  it.each(rights)('says that %s is missing, and changes nothing', async (right, named) => {
    fake.deny(fake.channel, right)
    const answer = await fake.slash('reminders', { place: 'here', time: '18:30' })
    expect(answer.text).toContain(`the permission ${named}.`)
    expect(answer.text).toContain('Nothing was changed')
    expect((await bot.store.read(fake.user.id)).settings).toMatchObject({ place: null, atMinutes: 540 })
  })

  it('needs no right that has nothing to do with it', async () => {
    fake.deny(fake.channel, 'AttachFiles', 'EmbedLinks')
    await fake.slash('reminders', { place: 'here' })
    expect(await placeKept()).not.toBeNull()
  })

  it('is refused where the app is only a person’s own', async () => {
    const foreign = fake.newChannel(fake.newGuild('the neighbours', { hasBot: false }), 'green')
    const group = fake.newGroup('the shed', fake.user)
    for (const channel of [foreign, group]) {
      const answer = await fake.slash('reminders', { place: 'here' }, { channel, install: 'user' })
      expect(answer.text).toContain('I’m not in this server myself')
      expect(answer.text).toContain('place:private')
    }
    expect(await placeKept()).toBeNull()
  })

  it('in direct messages is private', async () => {
    await fake.slash('reminders', { place: 'here' }, { channel: fake.dm(fake.user) })
    expect(await placeKept()).toEqual({ kind: 'private' })
  })
})

describe('/reminders place:private', () => {
  it('opens direct messages', async () => {
    await fake.slash('reminders', { place: 'private' })
    expect(fake.requests('openDm')).toHaveLength(1)
    expect(await placeKept()).toEqual({ kind: 'private' })
  })

  it('is refused where Discord does not open them', async () => {
    fake.outage('openDm', { status: 403, code: 50007 })
    const answer = await fake.slash('reminders', { place: 'private' })
    expect(answer.text).toContain('won’t let me write to you')
    expect(await placeKept()).toBeNull()
  })

  it('is taken on a day on which Discord does not answer', async () => {
    fake.outage('openDm', { status: 500 }, { times: 2 })
    await fake.slash('reminders', { place: 'private' })
    expect(await placeKept()).toEqual({ kind: 'private' })
  })
})

it('reads the bits as Discord documents them, in threads too, and an administrator’s', async () => {
  const facts = { userId: fake.user.id, channelType: 0, owners: { 0: '1' } }
  const lacking = (appPermissions: bigint | null, channelType = 0) =>
    placeCheck(
      { ...facts, appPermissions, channelType },
      { post: async () => ({}) },
    )({
      kind: 'channel',
      channelId: fake.channel.id,
    })
  // Discord's documentation, "Permissions": VIEW_CHANNEL 0x400, SEND_MESSAGES 0x800, READ_MESSAGE_HISTORY 0x10000,
  // SEND_MESSAGES_IN_THREADS 0x4000000000, ADMINISTRATOR 0x8.
  expect(await lacking(0x400n | 0x800n | 0x10000n)).toEqual([])
  expect(await lacking(0x8n)).toEqual([])
  expect(await lacking(0n)).toEqual(['view', 'write', 'history'])
  expect(await lacking(0x400n | 0x800n | 0x10000n, 11)).toEqual(['write'])
  expect(await lacking(0x400n | 0x4000000000n | 0x10000n, 11)).toEqual([])
  expect(await lacking(null)).toEqual([])
})
