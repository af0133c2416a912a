import { describe, expect, it } from 'vitest'
import type { Command } from '../../../bot/chat/command.ts'
import { PictureError } from '../../../bot/picture/render/picture-error.ts'
import { en } from '../../../bot/text/en/index.ts'
import { commands } from '../test-desk.ts'
import { gate, impatient, instead, until } from './connected.ts'
import { buttonsOf } from './fake/shown-text.ts'
import { acts, friend, LEMON, MAKE, NAME, onSharingStage } from './sharing.ts'
import { bot, fake, restart } from './stage.ts'

onSharingStage()

const PICTURE = Buffer.from([0x89, 0x50, 0x4e, 0x47])

describe('/share', () => {
  it('posts a card for everybody, with a picture, a line of text and a button', async () => {
    const shown = await acts.share()
    expect(shown).toMatchObject({ isPrivate: false, wasDeferred: true })
    const { json } = shown.message!
    expect(shown.files.map(({ name }) => name)).toEqual(['larderbell-batch.png'])
    expect(Buffer.from(shown.files[0]!.bytes).subarray(0, 4)).toEqual(PICTURE)
    expect(json.components!.map(({ type }) => type)).toEqual([17, 12, 1])
    const gallery = json.components![1] as unknown as { readonly items: readonly { readonly description: string }[] }
    expect(gallery.items[0]!.description).toContain(NAME)
    expect(shown.text.split('\n')[0]).toBe(
      '**Secret-cellar lemon: a liqueur of lemon peel, aiming for about 30\u00a0% with 250\u00a0g/L of sugar.**',
    )
    const { code, id, postedIn } = await acts.shareOf()
    expect(shown.text).toContain(code)
    expect(postedIn).toEqual({ channelId: fake.channel.id, messageId: json.id })
    const ref = `${BigInt(fake.user.id).toString(36)}.${id}`
    expect(buttonsOf(json)).toMatchObject([{ label: MAKE, customId: `1|0|/share make:${ref}` }])
    expect(JSON.stringify(json)).not.toContain('my private remark')
    expect((shown.calls.at(-1)!.body as { allowed_mentions: unknown }).allowed_mentions).toEqual({ parse: [] })
  })

  it.each(['@everyone **x** <@123456789012345678>', '|| `</share:1> [a](https://example.org)', '梅酒 👩‍👩‍👧‍👦 plum'])(
    'shows a jar called %j as it is typed, and pings nobody',
    async (name) => {
      const shown = await acts.share(name)
      expect(shown.isPrivate).toBe(false)
      expect(shown.text).not.toMatch(/(?<!\\)@everyone|(?<!\\)<@|\u202e/)
      expect(shown.text.replaceAll('\\', '')).toContain(name.replaceAll('\u202e', '').slice(0, 8))
    },
  )

  it('says what is wrong in private, and shares nothing then', async () => {
    for (const options of [{ jar: 'walnut' }, { jar: 'a', withdraw: 'b' }, { spirit: '1 l' }, { make: 'lemon' }]) {
      expect(await fake.slash('share', options)).toMatchObject({ isPrivate: true })
    }
    expect((await acts.owner()).shares).toEqual([])
  })

  it('comes under what was promised to its asker before it was known to be for all', async () => {
    await fake.slash('jar start', { ...LEMON, name: NAME })
    const { opened, open } = gate()
    const share = commands.find(({ path }) => path === 'share')!
    const slow = instead('share', async (input, context) => {
      await opened
      return share.run(input, context)
    })
    await restart({ after: impatient, commands: slow })
    const before = fake.requests('callback').length
    const asked = fake.slash('share', { jar: NAME }, { until: ({ followUps }) => followUps.length > 0 })
    await until(() => fake.requests('callback').length > before)
    open()
    const shown = await asked
    expect(shown).toMatchObject({ isPrivate: true, text: en.discord.posted() })
    const [posted] = shown.followUps
    expect(posted!.onlyFor).toBeUndefined()
    expect(buttonsOf(posted!.json).map(({ label }) => label)).toEqual([MAKE])
    expect((await acts.shareOf()).postedIn).toEqual({ channelId: fake.channel.id, messageId: posted!.json.id })
  })

  it('is text alone, for everybody, where the picture cannot be drawn', async () => {
    await fake.slash('jar start', { ...LEMON, name: NAME })
    const run: Command['run'] = async (input, context) => {
      const reply = await commands.find(({ path }) => path === 'share')!.run(input, context)
      const files = reply.files!.map((file) => ({
        ...file,
        draw: () => Promise.reject(new PictureError('no_font', null)),
      }))
      return { ...reply, files }
    }
    await restart({ commands: instead('share', run) })
    const shown = await fake.slash('share', { jar: NAME })
    expect(shown).toMatchObject({ isPrivate: false, files: [] })
    expect(shown.text).toContain(en.discord.fileFailed({ name: 'larderbell-batch.png', why: 'not_made' }))
    expect(buttonsOf(shown.message!.json).map(({ label }) => label)).toEqual([MAKE])
    expect((await acts.shareOf()).postedIn).not.toBeNull()
    bot.logged.splice(0)
  })

  it('lists what is mine, in private', async () => {
    await acts.share()
    const mine = await fake.slash('share')
    expect(mine.isPrivate).toBe(true)
    expect(mine.text).not.toContain((await acts.shareOf()).id)
    expect(mine.text).toContain('secret-cellar lemon')
    expect(mine.text).toContain(`shared <t:1795597200:f> in <#${fake.channel.id}>`)
    expect(mine.text).toContain('Nobody else has started a jar')
    expect((await fake.slash('share', {}, { user: friend })).text).toContain('You’re not sharing anything yet')
    const { choices } = await fake.autocomplete('share', { withdraw: 'sec' }, 'withdraw')
    expect(choices).toEqual([
      { name: `${NAME}, 25 November 2026 (${(await acts.shareOf()).id})`, value: (await acts.shareOf()).id },
    ])
    const withdrawn = await fake.press(mine.message, `Withdraw ${NAME}`)
    expect(withdrawn.text).toContain('is no longer shared. Its message says so.')
    expect((await acts.shareOf()).withdrawn).toBe(true)
  })
})
