import { ButtonStyle, MessageFlags, SlashCommandBuilder } from 'discord.js'
import { afterEach, beforeEach, expect, it } from 'vitest'
import { type BareClient, bareClient } from './fake/bare-client.ts'
import { type FakeDiscord, startFake } from './fake/fake-discord.ts'

let fake: FakeDiscord
let bare: BareClient

const V2 = MessageFlags.IsComponentsV2
const text = (content: string) => ({ type: 10, content })
const row = (label: string, customId: string) => ({
  type: 1,
  components: [{ type: 2, style: ButtonStyle.Primary, label, customId }],
})

beforeEach(async () => {
  fake = await startFake()
  bare = bareClient(fake)
  await bare.ready()
  const jar = new SlashCommandBuilder()
    .setName('jar')
    .setDescription('Jars')
    .addSubcommand((sub) =>
      sub
        .setName('photo')
        .setDescription('Photo')
        .addAttachmentOption((option) => option.setName('file').setDescription('File')),
    )
  await bare.client.application!.commands.set([jar])
})

afterEach(async () => {
  await bare.client.destroy()
  await fake.stop()
})

const problems = (): readonly string[] => fake.faults().flatMap((fault) => fault.problems)

it('keeps the flag of components for good, and says when an edit forgets it', async () => {
  bare.answer(async (interaction) => {
    if (!interaction.isChatInputCommand()) return
    await interaction.reply({ components: [text('one')], flags: V2 })
    await interaction.editReply({ components: [text('two')], flags: V2 })
    await interaction.editReply({ content: 'three' }).catch(() => undefined)
    await interaction.editReply({ components: [text('four')] }).catch(() => undefined)
  })
  const answer = await fake.slash('jar photo', {}, { until: ({ calls }) => calls.length === 4 })
  expect(answer.text).toBe('two')
  expect(problems()).toEqual([
    'content: cannot be used with IS_COMPONENTS_V2',
    'components: needs the flag IS_COMPONENTS_V2',
  ])
})

it('takes the first follow-up for the answer that was promised, as private as it was promised', async () => {
  bare.answer(async (interaction) => {
    if (!interaction.isChatInputCommand()) return
    await interaction.deferReply({ flags: MessageFlags.Ephemeral })
    await interaction.followUp('first')
  })
  const answer = await fake.slash('jar photo')
  expect(answer).toMatchObject({ text: 'first', isPrivate: true, followUps: [] })
  expect(fake.channel.messages.size).toBe(0)
  await expect(fake.press(answer.message, 'x', { user: fake.newUser('sorrel') })).rejects.toThrow('only its owner')
  expect(problems()).toEqual([])
})

it('takes five follow-ups where the app is installed to a person only', async () => {
  const codes: number[] = []
  bare.answer(async (interaction) => {
    if (!interaction.isChatInputCommand()) return
    await interaction.reply('one')
    for (const more of [1, 2, 3, 4, 5, 6]) await interaction.followUp(`${more}`).catch(({ code }) => codes.push(code))
  })
  const until = ({ calls }: { readonly calls: readonly unknown[] }) => calls.length === 7
  const answer = await fake.slash('jar photo', {}, { install: 'user', until })
  expect(answer.followUps).toHaveLength(5)
  expect(codes).toEqual([40094])
  expect(problems()).toEqual([])
})

it('refuses a callback that the kind of interaction does not take, and a route that is not known', async () => {
  bare.answer(async (interaction) => {
    if (!interaction.isChatInputCommand()) return
    const path = `/interactions/${interaction.id}/${interaction.token}/callback` as const
    await bare.client.rest.post(path, { body: { type: 6 }, auth: false }).catch(() => undefined)
    await bare.client.rest.post(path, { body: { type: 8, data: { choices: [] } }, auth: false }).catch(() => undefined)
    await bare.client.rest.get('/guilds/1/emojis').catch(() => undefined)
    await interaction.reply('at last')
  })
  expect((await fake.slash('jar photo')).text).toBe('at last')
  expect(problems()).toEqual([
    'type: an interaction of kind 2 takes no callback of type 6',
    'type: an interaction of kind 2 takes no callback of type 8',
    '(body): GET /guilds/1/emojis is not a route that is checked',
  ])
})

it('gives a file to an attachment option, lets choose, and changes a message that was deferred', async () => {
  bare.answer(async (interaction) => {
    if (interaction.isChatInputCommand()) {
      const file = interaction.options.getAttachment('file', true)
      const content = `${file.name}: ${await (await fetch(file.url)).text()}`
      const options = [{ label: 'Rome', value: 'Europe/Rome' }]
      await interaction.reply({
        content,
        components: [{ type: 1, components: [{ type: 3, customId: 'zone', options }] }],
      })
    }
    if (!interaction.isStringSelectMenu()) return
    await interaction.deferUpdate()
    await interaction.editReply({ content: interaction.values.join(), components: [row('Undo', 'undo')] })
  })
  const file = { name: 'note.txt', mime: 'text/plain', bytes: Buffer.from('sharp') }
  const answer = await fake.slash('jar photo', { file })
  expect(answer.text).toBe('note.txt: sharp')
  await expect(fake.choose(answer.message, 'zone', ['Mars/X'])).rejects.toThrow('no option')
  const chosen = await fake.choose(answer.message, 'zone', ['Europe/Rome'])
  expect(chosen.text).toBe('Europe/Rome')
  expect(chosen.message).toBe(answer.message)
  expect(answer.message!.edits).toBe(1)
  expect(problems()).toEqual([])
})

it('refuses a file that is not listed, and one that nobody would see', async () => {
  const path = `/channels/${fake.channel.id}/messages` as const
  const none = { allowed_mentions: { parse: [] } }
  const files = [{ name: 'a.png', data: Buffer.from('a') }]
  await bare.client.rest.post(path, { body: { content: 'x', ...none }, files }).catch(() => undefined)
  const body = { components: [text('x')], flags: V2, attachments: [{ id: '0' }], ...none }
  await bare.client.rest.post(path, { body, files }).catch(() => undefined)
  expect(problems()).toEqual(['attachments: the file a.png is not listed', 'attachments: a.png would not be shown'])
})

it('lets a changed message show a file that it keeps, and no other', async () => {
  const path = `/channels/${fake.channel.id}/messages` as const
  const picture = (name: string) => ({
    flags: V2,
    allowed_mentions: { parse: [] },
    components: [{ type: 12, items: [{ media: { url: `attachment://${name}` } }] }],
  })
  const files = [{ name: 'a.png', data: Buffer.from('a') }]
  const sent = await bare.client.rest.post(path, { body: { ...picture('a.png'), attachments: [{ id: '0' }] }, files })
  const { id } = sent as { readonly id: string }
  await bare.client.rest.patch(`${path}/${id}`, { body: picture('a.png') })
  expect(problems()).toEqual([])
  await bare.client.rest.patch(`${path}/${id}`, { body: picture('b.png') }).catch(() => undefined)
  await bare.client.rest
    .patch(`${path}/${id}`, { body: { ...picture('a.png'), attachments: [] } })
    .catch(() => undefined)
  expect(problems()).toEqual([
    'attachments: attachment://b.png was not sent',
    'attachments: attachment://a.png was not sent',
  ])
})

it('has the files that a change keeps, and no longer those that it leaves out', async () => {
  const path = `/channels/${fake.channel.id}/messages` as const
  const none = { allowed_mentions: { parse: [] } }
  const files = ['a.png', 'b.png'].map((name) => ({ name, data: Buffer.from(name) }))
  const body = { content: 'two', attachments: [{ id: '0' }, { id: '1' }], ...none }
  const { id } = (await bare.client.rest.post(path, { body, files })) as { readonly id: string }
  const message = fake.channel.messages.get(id)!
  const kept = () => message.files.map(({ name, bytes }) => [name, Buffer.from(bytes).toString()])
  const change = (more: Readonly<Record<string, unknown>>, sent: typeof files = []) =>
    bare.client.rest.patch(`${path}/${id}`, { body: { ...more, ...none }, files: sent })
  await change({ content: 'still two' })
  expect(kept()).toEqual(files.map(({ name }) => [name, name]))
  const attachments = [{ id: message.json.attachments[1]!.id }, { id: '0' }]
  await change({ attachments }, [{ name: 'c.png', data: Buffer.from('c') }])
  expect(kept()).toEqual([
    ['b.png', 'b.png'],
    ['c.png', 'c'],
  ])
  await change({ content: 'none', attachments: [] })
  expect(kept()).toEqual([])
  expect(problems()).toEqual([])
})
