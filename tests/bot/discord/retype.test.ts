import { describe, expect, it } from 'vitest'
import { en } from '../../../bot/text/en/index.ts'
import type { Answer } from './fake/answer.ts'
import { buttonsOf } from './fake/shown-text.ts'
import { bot, fake, onStage } from './stage.ts'

onStage()

const AGAIN = en.discord.tryAgain()
const LEMON = { name: 'lemon', of: '10 lemons', spirit: '1 l 95%', 'to-strength': '30%', 'to-sweetness': '250 g/L' }

const person = () => bot.store.read(fake.user.id)
const labels = ({ message }: Answer) => buttonsOf(message!.json).map(({ label }) => label)

/** What stands in the one field of a form. */
const lineIn = ({ modal }: Answer): string => {
  const fields = modal!.components as readonly { component: { custom_id: string; value?: string } }[]
  expect(fields.map(({ component }) => component.custom_id)).toEqual(['line'])
  return fields[0]!.component.value ?? ''
}

const tryAgain = async (failed: Answer) => fake.press(failed.message, AGAIN)

describe('a slash command that failed', () => {
  it('opens again as a whole line, as often as it takes', async () => {
    const failed = await fake.slash('jar start', { ...LEMON, spirit: '1 l 95%', 'to-strength': 'a lot' })
    expect(labels(failed)).toEqual([AGAIN])
    let asked = await tryAgain(failed)
    expect(lineIn(asked)).toBe(
      '/jar start name:lemon of:10 lemons spirit:1 l 95% to-strength:a lot to-sweetness:250 g/L',
    )
    const second = await fake.submit(asked, { line: lineIn(asked).replace('a lot', 'a little') })
    expect(labels(second)).toEqual([AGAIN])
    asked = await tryAgain(second)
    expect(lineIn(asked)).toContain('to-strength:a little')
    const done = await fake.submit(asked, { line: lineIn(asked).replace('a little', '30%') })
    expect(labels(done)).not.toContain(AGAIN)
    expect((await person()).jars[0]!.entries).toMatchObject([{ kind: 'started', name: 'lemon' }])
  })

  it('writes nothing of a line that its button holds, and keeps a long one', async () => {
    const [short, long] = ['a lot', `a lot ${'and more '.repeat(15)}`.trim()]
    const failed = await fake.slash('mix', { spirit: short, strength: '40%' })
    expect((await person()).lines).toEqual([])
    expect(lineIn(await tryAgain(failed))).toBe(`/mix spirit:${short} strength:40%`)
    const longer = await fake.slash('mix', { spirit: long, strength: '40%' })
    expect((await person()).lines).toHaveLength(1)
    expect(lineIn(await tryAgain(longer))).toBe(`/mix spirit:${long} strength:40%`)
    await bot.store.update(fake.user.id, (now) => ({ ...now, lines: [] }))
    expect((await tryAgain(longer)).text).toBe(en.discord.tooOld({ path: 'mix' }))
  })

  it('keeps a note last and a value that looks like an option whole', async () => {
    const note = 'bright, still: sharp "a bit"'
    const failed = await fake.slash('jar taste', { note, jar: 'lemon: the second', rating: '4' })
    const asked = await tryAgain(failed)
    expect(lineIn(asked)).toMatch(/^\/jar taste jar:"lemon: the second" rating:4 note:/)
    await fake.slash('jar start', LEMON)
    const line = lineIn(asked).replace('"lemon: the second"', 'lemon').replace(' rating', '\nrating')
    await fake.submit(asked, { line })
    expect((await person()).jars[0]!.entries[1]).toMatchObject({ kind: 'tasted', rating: 4, note })
  })

  it('of another jar than was meant can be sent to it, and its own form is a press away', async () => {
    await fake.slash('jar start', LEMON)
    const failed = await fake.slash('jar strain', { jar: 'lemno' })
    const asked = await tryAgain(failed)
    const next = await fake.submit(asked, { line: '/jar strain jar:lemon' })
    expect([next.text, labels(next)]).toEqual([en.discord.formNext(), [en.discord.openForm()]])
    expect((await person()).jars[0]!.entries).toHaveLength(1)
    const form = await fake.press(next.message, en.discord.openForm())
    expect(form.modal).toMatchObject({ title: 'Straining: lemon' })
    await fake.submit(form, { measured: '920 ml' })
    expect((await person()).jars[0]!.entries[1]).toMatchObject({ kind: 'strained' })
  })

  it('says what is wrong with a line that names no command, and keeps it', async () => {
    const asked = await tryAgain(await fake.slash('mix', { spirit: 'a lot' }))
    const failed = await fake.submit(asked, { line: '/mxi spirit:1 l 95%' })
    expect(failed.text).toContain('mxi')
    expect(lineIn(await tryAgain(failed))).toBe('/mxi spirit:1 l 95%')
  })

  it('belongs to whoever typed it', async () => {
    const failed = await fake.slash('mix', { spirit: 'a lot' })
    const [{ customId = '' } = {}] = buttonsOf(failed.message!.json)
    const other = fake.newUser('sorrel')
    const shown = await fake.press((await fake.slash('jar list')).message, en.discord.showEverybody())
    expect((await fake.press(shown.message, { customId }, { user: other })).text).toBe(en.calls.notYours())
  })

  it('holds no file', async () => {
    const file = { name: 'notebook.json', mime: 'application/json', bytes: new TextEncoder().encode('{') }
    expect(labels(await fake.slash('notebook', { import: file }))).toEqual([])
  })
})
