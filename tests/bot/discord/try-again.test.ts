import { describe, expect, it } from 'vitest'
import { en } from '../../../bot/text/en/index.ts'
import { gate, impatient, until } from './connected.ts'
import type { Answer } from './fake/answer.ts'
import { buttonsOf, textOf } from './fake/shown-text.ts'
import { inChannel, keep, lemonJar, messagesIn, reminding, wait } from './reminding.ts'
import { acts, friend, onSharingStage } from './sharing.ts'
import { bot, fake, restart } from './stage.ts'

onSharingStage()

const LEMON = { name: 'lemon', of: '10 lemons', spirit: '1 l 95%', 'to-strength': '30%', 'to-sweetness': '250 g/L' }
const AGAIN = en.discord.tryAgain()

const person = () => bot.store.read(fake.user.id)
const entriesOf = async () => (await person()).jars[0]!.entries
const labels = ({ message }: Answer) => buttonsOf(message!.json).map(({ label }) => label)
const custom = (line: string) => ({ customId: `1|${BigInt(fake.user.id).toString(36)}|${line}` })

/** What stands in the fields of a form. */
const filledOf = ({ modal }: Answer): Record<string, string> => {
  const fields = (modal!.components as readonly { component: Record<string, unknown> }[]).map((each) => each.component)
  return Object.fromEntries(
    fields.flatMap(({ custom_id, value, options }) => {
      const chosen = (options as { value: string; default?: boolean }[] | undefined)?.find((each) => each.default)
      const standing = value ?? chosen?.value
      return standing === undefined ? [] : [[custom_id, standing]]
    }),
  )
}

describe('straining', () => {
  const strained = { kind: 'strained', measured: null, strength: null }

  it('asks what came out, from a command and from a button, and records it', async () => {
    await fake.slash('jar start', LEMON)
    const asked = await fake.slash('jar strain', { jar: 'lem' })
    expect(asked.modal).toMatchObject({ title: 'Straining: lemon' })
    expect(await entriesOf()).toHaveLength(1)
    const { id } = (await person()).jars[0]!
    const { message } = await fake.slash('jar show', { jar: 'lemon' })
    const pressed = await fake.press(message, custom(`/jar strain #${id}`))
    const noted = await fake.submit(pressed, { measured: '920 ml', strength: '78%' })
    expect(noted.isPrivate).toBe(true)
    expect((await entriesOf())[1]).toMatchObject({
      kind: 'strained',
      measured: { amount: { value: 920 } },
      strength: {},
    })
  })

  it('is recorded unmeasured where the form is sent empty', async () => {
    await fake.slash('jar start', LEMON)
    await fake.submit(await fake.slash('jar strain', { jar: 'lemon' }), {})
    expect((await entriesOf())[1]).toMatchObject(strained)
  })

  it('asks nothing where it is told, or where the jar cannot be strained', async () => {
    await fake.slash('jar start', LEMON)
    expect((await fake.slash('jar strain', { jar: 'lemon', measured: '920 ml' })).modal).toBeUndefined()
    const refused = await fake.slash('jar strain', { jar: 'lemon' })
    expect(refused.modal).toBeUndefined()
    expect(refused.text).toMatch(/^You strained lemon on /)
  })

  it('is not recorded where the form comes too late to be shown', async () => {
    await fake.slash('jar start', LEMON)
    const { opened, open } = gate()
    const { store } = bot
    const slow = { ...store, read: (userId: string) => opened.then(() => store.read(userId)) }
    await restart({ store: slow, after: impatient })
    const before = fake.requests('callback').length
    const asked = fake.slash('jar strain', { jar: 'lemon' })
    await until(() => fake.requests('callback').length > before)
    open()
    expect((await asked).text).toBe(en.calls.formLate())
    expect(await entriesOf()).toHaveLength(1)
  })

  it.each([[[]], [['banana', 'two bananas']]])('is said on the reminder that asked for it, after %j', async (wrong) => {
    const here = reminding(fake, { store: bot.store as never })
    const ripe = lemonJar(fake, 'lemon', { strainFrom: '2026-11-25', strainBy: '2026-11-29' })
    await keep(here.store, fake, { jars: [ripe], settings: { ...inChannel(fake.channel), shake: 'off' } })
    await here.tick()
    const [message] = messagesIn(fake.channel)
    let asked = await fake.press(message, 'Strained')
    expect([message!.edits, await entriesOf()]).toMatchObject([0, [{ kind: 'started' }]])
    for (const measured of wrong) {
      asked = await fake.press((await fake.submit(asked, { measured })).message, AGAIN)
    }
    expect(message!.edits).toBe(0)
    await fake.submit(asked, { measured: '' })
    await wait(() => message!.edits === 1)
    expect(textOf(message!.json)).toContain('✓ Lemon')
    expect(buttonsOf(message!.json).map(({ label }) => label)).toEqual(['Show jar', 'Reminders…'])
  })
})

describe('a reminder to shake and to strain', () => {
  it('asks for no shaking of what is strained, and does again when that is taken back', async () => {
    const here = reminding(fake, { store: bot.store as never })
    const ripe = lemonJar(fake, 'lemon', { strainFrom: '2026-11-25', strainBy: '2026-11-29' })
    await keep(here.store, fake, { jars: [ripe], settings: inChannel(fake.channel) })
    await here.tick()
    const [message] = messagesIn(fake.channel)
    const shown = () => buttonsOf(message!.json).map(({ label }) => label)
    const before = shown()
    expect(before).toEqual(expect.arrayContaining(['Strained', 'Shaken']))
    const strained = await fake.submit(await fake.press(message, 'Strained'), { measured: '' })
    await wait(() => message!.edits === 1)
    expect(shown().filter((label) => ['Strained', 'Shaken'].includes(label))).toEqual([])
    await fake.press(strained.message, 'Undo')
    await wait(() => message!.edits === 2)
    expect(shown()).toEqual(before)
  })
})

describe('a form that failed', () => {
  it('opens again as it was filled in, as often as it takes', async () => {
    await fake.slash('jar start', LEMON)
    let asked = await fake.slash('jar strain', { jar: 'lemon' })
    for (const measured of ['banana', 'two bananas']) {
      const failed = await fake.submit(asked, { measured, strength: '78%' })
      expect(failed.text).toContain(measured)
      expect(labels(failed)).toEqual([AGAIN])
      asked = await fake.press(failed.message, AGAIN)
      expect(asked.modal).toMatchObject({ title: 'Straining: lemon' })
      expect(filledOf(asked)).toEqual({ measured, strength: '78%' })
    }
    const noted = await fake.submit(asked, { measured: '920 ml' })
    expect(labels(noted)).not.toContain(AGAIN)
    expect((await entriesOf())[1]).toMatchObject({ measured: { amount: { value: 920 } }, strength: {} })
  })

  it('keeps a note of several lines, and the rating', async () => {
    await fake.slash('jar start', LEMON)
    const { id } = (await person()).jars[0]!
    const asked = await fake.slash('jar taste', { jar: 'lemon' })
    await bot.store.update(fake.user.id, (now) => ({ ...now, jars: [] }))
    const note = 'bright | "still" sharp:\nnote:x \\ 柠檬'
    const failed = await fake.submit(asked, { rating: '4', note })
    await fake.slash('jar start', LEMON)
    await bot.store.update(fake.user.id, (now) => ({ ...now, jars: now.jars.map((jar) => ({ ...jar, id })) }))
    const again = await fake.press(failed.message, AGAIN)
    expect(filledOf(again)).toEqual({ rating: '4', note })
    await fake.submit(again, {})
    expect((await entriesOf())[1]).toMatchObject({ rating: 4, note })
  })

  it('of a batch to make too opens again', async () => {
    const shown = await acts.share()
    const failed = await acts.make(shown, { spirit: 'a lot', strength: '40%' })
    const again = await fake.press(failed.message, AGAIN, { user: friend })
    expect(filledOf(again)).toEqual({ spirit: 'a lot', strength: '40%' })
    const planned = await fake.submit(again, { spirit: '700 ml' }, { user: friend })
    expect(planned.text).toMatch(/Buy 3\s.*700\sml of 40\s%/)
  })

  it('is its owner’s alone, and says when it is kept no longer', async () => {
    await fake.slash('jar start', LEMON)
    const failed = await fake.submit(await fake.slash('jar strain', { jar: 'lemon' }), { measured: 'banana' })
    const [{ customId = '' } = {}] = buttonsOf(failed.message!.json)
    const other = await fake.slash('jar list')
    const stranger = fake.newUser('sorrel')
    const shown = await fake.press(other.message, en.discord.showEverybody())
    expect((await fake.press(shown.message, { customId }, { user: stranger })).text).toBe(en.calls.notYours())
    await bot.store.update(fake.user.id, (now) => ({ ...now, lines: [] }))
    const gone = await fake.press(failed.message, AGAIN)
    expect(gone.text).toBe(en.discord.tooOld({ path: 'jar strain' }))
  })

  it('has no such button where nothing else could be filled in', async () => {
    await fake.slash('jar start', LEMON)
    const asked = await fake.slash('jar strain', { jar: 'lemon' })
    await fake.slash('jar strain', { jar: 'lemon', measured: '920 ml' })
    expect(labels(await fake.submit(asked, { measured: '900 ml' }))).toEqual([])
  })
})

describe('a button pressed again at once', () => {
  it('opens its form again', async () => {
    await fake.slash('jar start', LEMON)
    const { id } = (await person()).jars[0]!
    const { message } = await fake.slash('jar show', { jar: 'lemon' })
    const press = () => fake.press(message, custom(`/jar taste #${id}`))
    for (const { modal } of [await press(), await press(), ...(await Promise.all([press(), press()]))]) {
      expect(modal).toBeDefined()
    }
  })

  it('is refused again for the same reason where it was refused', async () => {
    const { message } = await fake.slash('jar start', LEMON)
    for (let count = 0; count < 2; count++) {
      expect((await fake.press(message, custom('/jar shake #zzzzz'))).text).toContain('zzzzz')
    }
  })
})
