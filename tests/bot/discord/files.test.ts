import ICAL from 'ical.js'
import { describe, expect, it } from 'vitest'
import type { DrawnFile } from '../../../bot/chat/draw-files.ts'
import { withoutAttempt } from '../../../bot/commands/notebook-file/attempts.ts'
import { openAttachment } from '../../../bot/discord/receive/open-attachment.ts'
import type { MessagePayload } from '../../../bot/discord/show/message-payload.ts'
import { withFiles } from '../../../bot/discord/show/with-files.ts'
import { en } from '../../../bot/text/en/index.ts'
import { commands } from '../test-desk.ts'
import { gate, instead, until } from './connected.ts'
import { checkPayload } from './fake/check-payload.ts'
import { showProblem } from './fake/problem.ts'
import { buttonsOf } from './fake/shown-text.ts'
import { messagesOf, speech } from './rendering.ts'
import { bot, fake, onStage, restart } from './stage.ts'

const LEMON = { name: 'lemon', of: '10 lemons', spirit: '1 l 95%', 'to-strength': '30%', 'to-sweetness': '250 g/L' }

describe('files of answers', () => {
  onStage()

  const given = (text: string, name = 'larderbell.json') => ({
    name,
    mime: 'application/json',
    bytes: new TextEncoder().encode(text),
  })

  it('come with the answer, in private, after it was promised', async () => {
    await fake.slash('jar start', LEMON)
    const answer = await fake.slash('calendar', {})
    expect(answer).toMatchObject({ isPrivate: true, wasDeferred: true })
    expect(answer.text).toContain('A calendar with')
    expect(answer.files.map(({ name }) => name)).toEqual(['larderbell.ics'])
    const parsed = new ICAL.Component(ICAL.parse(new TextDecoder().decode(answer.files[0]!.bytes)))
    expect(parsed.getAllSubcomponents('vevent').length).toBeGreaterThan(5)
  })

  it.each([
    { isPublic: false, who: 'their asker' },
    { isPublic: true, who: 'all' },
  ])('are promised to $who before they are drawn', async ({ isPublic }) => {
    const { opened, open } = gate()
    const mix = commands.find(({ path }) => path === 'mix')!
    const draw = async () => {
      await opened
      return new Uint8Array([1])
    }
    const alt = { group: 'files', key: 'calendar_file', values: { count: 1 } } as const
    const files = [{ name: 'larderbell.ics', mime: 'text/calendar', alt, draw }]
    const visible = isPublic ? ({ visibility: 'public' } as const) : {}
    await restart({
      commands: instead('mix', async (input, context) => ({ ...(await mix.run(input, context)), files, ...visible })),
    })
    const asked = fake.slash('mix', { spirit: '1 l', strength: '95%', water: '1 l' })
    await until(() => fake.requests('callback').length > 0)
    open()
    const answer = await asked
    expect(answer).toMatchObject({ wasDeferred: true, isPrivate: !isPublic, followUps: [] })
    expect(answer.calls.map(({ route }) => route)).toEqual(['callback', 'editAnswer'])
    expect(answer.files).toHaveLength(1)
  })

  it('are several where a command makes several, with no button that shows them to everybody', async () => {
    await fake.slash('jar start', LEMON)
    const answer = await fake.slash('notebook', { export: 'csv' })
    expect(answer.files.map(({ name }) => name)).toEqual(['larderbell-batches.csv', 'larderbell-entries.csv'])
    for (const { message } of [answer, await fake.slash('calendar', {}), await fake.slash('forget', {})]) {
      expect(buttonsOf(message!.json).map(({ label }) => label)).not.toContain(en.discord.showEverybody())
    }
  })

  it('are taken in again by another person, but not half a file', async () => {
    await fake.slash('jar start', LEMON)
    const exported = await fake.slash('notebook', { export: 'json' })
    const text = new TextDecoder().decode(exported.files[0]!.bytes)
    const before = (await bot.store.read(fake.user.id)).jars
    await bot.store.remove(fake.user.id)
    const refused = await fake.slash('notebook', { import: given(text.slice(0, -9)) })
    expect(refused.text).toContain('Nothing was changed')
    const taken = await fake.slash('notebook', { import: given(text) })
    expect(taken.text).toContain('1 jar added')
    const { jars } = await bot.store.read(fake.user.id)
    const told = (all: typeof jars) => all.map(({ id, entries }) => ({ id, entries: entries.map(withoutAttempt) }))
    expect(before[0]!.entries[0]!.attempt).toMatch(/^\d{17,20}$/)
    expect(jars.map(({ id, entries }) => ({ id, entries }))).toEqual(told(before))
  })

  it('are not even fetched where they are too big', async () => {
    const answer = await fake.slash('notebook', { import: given('x'.repeat(10_000_001)) })
    expect(answer.text).toContain('is too big: I can read files up to 10 MB')
    expect((await bot.store.read(fake.user.id)).jars).toEqual([])
  })
})

describe('an attachment', () => {
  const file = { id: '1', name: 'a.json', size: 3, url: 'https://cdn.discordapp.com/a' }
  const opened = (more: Partial<typeof file>, api: string | null = null) =>
    openAttachment([{ ...file, ...more }], api)('1', 100)

  it.each([
    'http://cdn.discordapp.com/a',
    'https://cdn.discordapp.com.example.org/a',
    'https://cdn.discordapp.com:8443/a',
    'https://example.org/a',
    'http://127.0.0.1:1/a',
    'file:///etc/passwd',
    'no address',
  ])('is not fetched from %s', async (url) => {
    await expect(opened({ url })).rejects.toMatchObject({ problem: 'file_not_fetched' })
  })

  it('is only one that came along', async () => {
    await expect(openAttachment([file], null)('2', 100)).rejects.toMatchObject({ problem: 'no_files_here' })
  })
})

describe('files in a message', () => {
  const drawn = (more: Partial<DrawnFile>): DrawnFile => ({
    name: 'a.ics',
    mime: 'text/calendar',
    alt: 'A calendar',
    bytes: Uint8Array.of(1),
    ...more,
  })

  const base = () =>
    messagesOf({
      ok: false,
      path: null,
      kitchen: 'metric',
      error: { code: 'not_found', problem: 'no_jars', values: {} },
    })

  const valid = (messages: Awaited<ReturnType<typeof base>>) => {
    for (const { files = [], withoutFiles: _, ...data } of messages) {
      const uploads = files.map((each, index) => ({ index: String(index), ...each }))
      const found = checkPayload('POST', '/interactions/1/token/callback', { type: 4, data }, uploads as never)
      expect(found.map(showProblem)).toEqual([])
    }
  }

  it('are shown where they are pictures, with what they show, and offered where not', async () => {
    const messages = withFiles(
      await base(),
      [drawn({}), drawn({ name: 'b.png', mime: 'image/png', alt: 'A jar' })],
      speech,
    )
    const text = JSON.stringify(messages[0]!.components)
    expect(text).toContain('{"type":13,"file":{"url":"attachment://a.ics"}}')
    expect(text).toContain('{"type":12,"items":[{"media":{"url":"attachment://b.png"},"description":"A jar"}]}')
    expect(messages[0]!.attachments).toEqual([
      { id: '0', filename: 'a.ics', description: 'A calendar' },
      { id: '1', filename: 'b.png', description: 'A jar' },
    ])
  })

  it('that couldn’t be made or are too big are told', async () => {
    const big = drawn({ name: 'big.png', bytes: new Uint8Array(10 * 1024 * 1024 + 1) })
    const messages = withFiles(await base(), [drawn({ bytes: null }), big], speech)
    const text = JSON.stringify(messages)
    expect(text).toContain('The file a.ics couldn’t be made')
    expect(text).toContain('The file big.png is too big for Discord')
    expect(messages[0]!.files).toBeUndefined()
    valid(messages)
  })

  it('say in their place that they didn’t get through, beside what failed before', async () => {
    const [{ withoutFiles, ...message }] = withFiles(
      await base(),
      [drawn({}), drawn({ name: 'b.png', bytes: null })],
      speech,
    ) as [MessagePayload]
    expect(message.files).toHaveLength(1)
    const text = JSON.stringify(withoutFiles)
    expect(text).toContain('The file a.ics didn’t get through to Discord')
    expect(text).toContain('The file b.png couldn’t be made')
    expect(text).not.toContain('attachment://')
    valid([withoutFiles!])
  })

  it('leave a message alone that has none, and take another where it is full', async () => {
    const messages = await base()
    expect(withFiles(messages, [], speech)).toBe(messages)
    const [first] = messages
    const full = { ...first!, components: Array.from({ length: 40 }, () => first!.components[0]!) }
    const parted = withFiles([full], [drawn({})], speech)
    expect(parted).toHaveLength(2)
    expect(parted[1]!.files).toHaveLength(1)
  })
})
