import { beforeEach, describe, expect, it } from 'vitest'
import { en } from '../../../bot/text/en/index.ts'
import type { Answer } from './fake/answer.ts'
import { buttonsOf } from './fake/shown-text.ts'
import { fake, onStage } from './stage.ts'

onStage()

beforeEach(async () => {
  await fake.slash('jar start', { name: 'lemon', of: '10 lemons', spirit: '1 l 95%', 'to-strength': '30%' })
})

const SHOW = en.discord.showEverybody()

interface Gallery {
  readonly items: { description: string; media: { url: string } }[]
}

const galleriesOf = ({ message }: Answer): readonly Gallery[] =>
  message!.json.components!.filter(({ type }) => (type as number) === 12) as unknown as readonly Gallery[]

const press = (answer: Answer) => fake.press(answer.message, SHOW)

describe('Show everybody', () => {
  it('sends the picture anew, with what it shows for whoever cannot see it', async () => {
    const own = await fake.slash('jar tag', { jar: 'lemon' })
    const shown = await press(own)
    expect(shown).toMatchObject({ isPrivate: false, wasDeferred: true, text: own.text })
    expect(shown.files.map(({ name, mime }) => [name, mime])).toEqual([['larderbell-jar-tag.png', 'image/png']])
    expect(Buffer.from(shown.files[0]!.bytes).equals(Buffer.from(own.files[0]!.bytes))).toBe(true)
    const [[before], [after]] = [galleriesOf(own), galleriesOf(shown)]
    expect(after!.items[0]!.description).toBe(before!.items[0]!.description)
    expect(after!.items[0]!.media.url).not.toBe(before!.items[0]!.media.url)
    expect(shown.message!.json.attachments[0]!.description).toBe(before!.items[0]!.description)
    expect(buttonsOf(shown.message!.json)).toEqual([])
    const sent = shown.calls.at(-1)!.body as { allowed_mentions: unknown }
    expect(sent.allowed_mentions).toEqual({ parse: [] })
  })

  it.each(['gone', 'https://example.org/larderbell-jar-tag.png'])(
    'says so where the picture is not to be had from %s',
    async (where) => {
      const own = await fake.slash('jar tag', { jar: 'lemon' })
      const { media } = galleriesOf(own)[0]!.items[0]!
      media.url = where === 'gone' ? media.url.replace('larderbell', 'gone') : where
      const shown = await press(own)
      expect(shown).toMatchObject({ isPrivate: false, files: [] })
      expect(shown.text).toBe(`${own.text}\n${en.discord.picturesGone()}`)
      expect(galleriesOf(shown)).toEqual([])
    },
  )

  it('shows the text where Discord does not take the picture', async () => {
    const own = await fake.slash('jar tag', { jar: 'lemon' })
    fake.outage('editAnswer', { status: 413 })
    const shown = await press(own)
    expect(shown.text).toContain(en.discord.picturesGone())
  })

  it('leaves out what is said of its asker’s time zone, and nothing else', async () => {
    const by = { user: fake.newUser('sorrel') }
    const own = await fake.slash('jar start', { name: 'walnut', of: '20 green walnuts', spirit: '1 l 95%' }, by)
    const lines = own.text.split('\n')
    expect(lines.at(-1)).toContain('I’m using UTC time')
    expect((await fake.press(own.message, SHOW, by)).text).toBe(lines.slice(0, -1).join('\n'))
    const show = await fake.slash('jar show', { jar: 'walnut' }, by)
    expect((await fake.press(show.message, SHOW, by)).text).toBe(show.text)
  })

  it('pressed twice at once shows it once', async () => {
    const own = await fake.slash('jar tag', { jar: 'lemon' })
    const both = await Promise.all([press(own), press(own)])
    expect(both.filter(({ isPrivate }) => !isPrivate)).toHaveLength(1)
    expect(both.filter(({ text }) => text === en.calls.twice())).toHaveLength(1)
  })
})
