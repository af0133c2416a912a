import {
  ButtonStyle,
  ContainerBuilder,
  type DiscordAPIError,
  MessageFlags,
  ModalBuilder,
  Routes,
  SlashCommandBuilder,
  TextInputBuilder,
  TextInputStyle,
} from 'discord.js'
import { InteractionCallbackResponseSchema, MessageResponseSchema } from 'discord-api-spec/zod'
import { afterEach, beforeEach, expect, it } from 'vitest'
import { type BareClient, bareClient } from './fake/bare-client.ts'
import { checkSchema } from './fake/check-schema.ts'
import { type FakeDiscord, startFake } from './fake/fake-discord.ts'
import { showProblem } from './fake/problem.ts'
import { buttonsOf } from './fake/shown-text.ts'

let fake: FakeDiscord
let bare: BareClient

const ready = async (): Promise<void> => {
  await bare.ready()
  await bare.client.application!.commands.set([mix])
}

const mix = new SlashCommandBuilder()
  .setName('mix')
  .setDescription('Mix')
  .addStringOption((option) => option.setName('spirit').setDescription('Spirit').setRequired(true))
  .addStringOption((option) => option.setName('jar').setDescription('Jar').setAutocomplete(true))

const row = (label: string, customId: string) => ({
  type: 1,
  components: [{ type: 2, style: ButtonStyle.Primary, label, customId }],
})

beforeEach(async () => {
  fake = await startFake()
  bare = bareClient(fake)
})

afterEach(async () => {
  await bare.client.destroy()
  await fake.stop()
  expect(fake.faults()).toEqual([])
  expect(bare.errors).toEqual([])
})

it('logs in, registers, and answers a slash command', async () => {
  bare.answer(async (interaction) => {
    if (!interaction.isChatInputCommand()) return
    await interaction.reply({ content: `of ${interaction.options.getString('spirit')}`, flags: MessageFlags.Ephemeral })
  })
  await ready()
  expect(bare.client.guilds.cache.get(fake.guild.id)?.name).toBe('Allotment society')
  expect(fake.gateway.counts).toMatchObject({ identifies: 1, resumes: 0 })
  const answer = await fake.slash('mix', { spirit: '1 l' })
  expect(answer).toMatchObject({ text: 'of 1 l', isPrivate: true, wasDeferred: false })
  expect(answer.firstAnswerMs).toBeGreaterThan(0)
  await expect(fake.slash('mix', {})).rejects.toThrow('needs spirit')
  await expect(fake.slash('mixx', {})).rejects.toThrow('not registered')
})

it('keeps a promised answer with a file, and counts what comes late', async () => {
  let isLate = false
  bare.answer(async (interaction) => {
    if (!interaction.isChatInputCommand()) return
    if (isLate) fake.clock.advance(3001)
    await interaction.deferReply()
    const container = new ContainerBuilder()
      .addTextDisplayComponents((text) => text.setContent('Lemon, 30 % vol'))
      .addMediaGalleryComponents((gallery) => gallery.addItems((item) => item.setURL('attachment://card.png')))
    const files = [{ attachment: Buffer.from('picture'), name: 'card.png', description: 'A card' }]
    await interaction.editReply({ components: [container], files, flags: MessageFlags.IsComponentsV2 })
    await interaction.followUp({ content: 'and more' })
  })
  await ready()
  const answer = await fake.slash('mix', { spirit: '1 l' }, { until: ({ followUps }) => followUps.length > 0 })
  expect(answer).toMatchObject({ text: 'Lemon, 30 % vol', wasDeferred: true, isPrivate: false })
  expect(Buffer.from(answer.files[0]!.bytes).toString()).toBe('picture')
  expect(await (await fetch(answer.message!.json.attachments[0]!.url)).text()).toBe('picture')
  expect(answer.followUps[0]!.json.content).toBe('and more')
  isLate = true
  const late = await fake.slash('mix', { spirit: '1 l' }, { until: ({ calls }) => calls.length > 0 })
  expect(late.calls).toMatchObject([{ route: 'callback', status: 404 }])
  expect(bare.errors.splice(0)).toMatchObject([{ code: 10062 }])
})

it('leads from a button to a form to a changed message', async () => {
  bare.answer(async (interaction) => {
    if (interaction.isChatInputCommand())
      await interaction.reply({ content: 'Tasted?', components: [row('Note', 'note')] })
    if (interaction.isButton()) {
      const input = new TextInputBuilder().setCustomId('text').setStyle(TextInputStyle.Paragraph).setMaxLength(100)
      const form = new ModalBuilder().setCustomId('form').setTitle('A note')
      await interaction.showModal(
        form.addLabelComponents((label) => label.setLabel('Note').setTextInputComponent(input)),
      )
    }
    if (interaction.isModalSubmit() && interaction.isFromMessage())
      await interaction.update({ content: `Noted: ${interaction.fields.getTextInputValue('text')}`, components: [] })
  })
  await ready()
  const { message } = await fake.slash('mix', { spirit: '1 l' })
  expect(buttonsOf(message!.json)).toMatchObject([{ label: 'Note', customId: 'note' }])
  const form = await fake.press(message, 'Note')
  expect(form.modal).toMatchObject({ title: 'A note' })
  await expect(fake.submit(form, { text: 'x'.repeat(101) })).rejects.toThrow('too long')
  const noted = await fake.submit(form, { text: 'sharp, then round' })
  expect(noted.text).toBe('Noted: sharp, then round')
  expect(noted.message).toBe(message)
  expect(checkSchema(MessageResponseSchema, message!.json).map(showProblem)).toEqual([])
  await expect(fake.press(message, 'Note')).rejects.toThrow('no button')
})

it('offers completions, and says where an interaction comes from', async () => {
  const seen: unknown[] = []
  bare.answer(async (interaction) => {
    if (interaction.isAutocomplete())
      await interaction.respond([{ name: interaction.options.getFocused(), value: 'k7f2a' }])
    if (!interaction.isChatInputCommand()) return
    const { context, user, locale, appPermissions, authorizingIntegrationOwners: owners } = interaction
    seen.push([
      user.username,
      locale,
      context,
      owners.userId,
      appPermissions.has('SendMessages'),
      interaction.inCachedGuild(),
    ])
    await interaction.reply('ok')
  })
  await ready()
  expect((await fake.autocomplete('mix', { jar: 'lem' }, 'jar')).choices).toEqual([{ name: 'lem', value: 'k7f2a' }])
  const sorrel = fake.newUser('sorrel', 'it')
  await fake.slash('mix', { spirit: '1 l' }, { user: sorrel })
  await fake.slash('mix', { spirit: '1 l' }, { user: sorrel, channel: fake.dm(sorrel) })
  await fake.slash('mix', { spirit: '1 l' }, { user: sorrel, channel: fake.newGroup('two', sorrel, fake.user) })
  const elsewhere = fake.newGuild('elsewhere', { hasBot: false })
  await fake.slash('mix', { spirit: '1 l' }, { user: sorrel, channel: fake.newChannel(elsewhere, 'talk') })
  expect(seen).toEqual([
    ['sorrel', 'it', 0, null, true, true],
    ['sorrel', 'it', 1, null, true, false],
    ['sorrel', 'it', 2, sorrel.id, false, false],
    ['sorrel', 'it', 0, sorrel.id, false, false],
  ])
})

it('answers a second acknowledgement, and a webhook after a quarter of an hour, as Discord does', async () => {
  const codes: unknown[] = []
  bare.answer(async (interaction) => {
    if (!interaction.isChatInputCommand()) return
    const codeOf = ({ code }: DiscordAPIError): number => codes.push(code)
    const again = { body: { type: 5 }, auth: false }
    const path = Routes.interactionCallback(interaction.id, interaction.token)
    const body = { type: 4, data: { content: 'once', allowed_mentions: { parse: [] } } }
    const query = new URLSearchParams({ with_response: 'true' })
    const answer = await bare.client.rest.post(path, { body, auth: false, query })
    expect(checkSchema(InteractionCallbackResponseSchema, answer).map(showProblem)).toEqual([])
    await bare.client.rest.post(path, again).catch(codeOf)
    fake.clock.advance(15 * 60_000 + 1)
    const later = Routes.webhook(interaction.applicationId, interaction.token)
    await bare.client.rest.post(later, { body: body.data, auth: false }).catch(codeOf)
  })
  await ready()
  await fake.slash('mix', { spirit: '1 l' }, { until: ({ calls }) => calls.length === 3 })
  expect(codes).toEqual([40060, 50027])
})
