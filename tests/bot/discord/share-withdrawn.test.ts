import { describe, expect, it } from 'vitest'
import { shareRef } from '../../../bot/calls/share-ref.ts'
import { en } from '../../../bot/text/en/index.ts'
import { buttonsOf, textOf } from './fake/shown-text.ts'
import { acts, friend, LEMON, NAME, onSharingStage } from './sharing.ts'
import { bot, fake } from './stage.ts'

onSharingStage()

describe('a share that is none any more', () => {
  it('says so in its message once withdrawn, and answers with a sentence', async () => {
    const shown = await acts.share()
    const asked = await acts.pressMake(shown)
    const { id } = await acts.shareOf()
    bot.pass(3000)
    expect((await fake.slash('share', { withdraw: id }, { user: friend })).text).toContain(`“${id}”`)
    expect((await fake.slash('share', { withdraw: `#${id.toUpperCase()}` })).text).toContain(
      'is no longer shared. Its message says so. Anyone who kept its code can still make it.',
    )
    expect(textOf(shown.message!.json)).toBe(en.discord.withdrawn())
    expect(buttonsOf(shown.message!.json)).toEqual([])
    expect(shown.message!.json.attachments).toEqual([])
    const late = await fake.press(
      shown.message,
      { customId: `1|0|/share make:${shareRef({ owner: fake.user.id, shareId: id })}` },
      { user: friend },
    )
    expect(late).toMatchObject({ isPrivate: true })
    expect(late.text).toContain('no longer shares it')
    expect((await fake.submit(asked, { spirit: '1 l 95%' }, { user: friend })).text).toContain('no longer shares it')
    expect((await fake.slash('share', { withdraw: id })).text).toContain('was withdrawn before')
  })

  it('says what it could not change: a message that is gone, or in a place where I am not', async () => {
    const gone = await acts.share()
    gone.message!.channel.messages.delete(gone.message!.json.id)
    expect((await fake.slash('share', { withdraw: (await acts.shareOf()).id })).text).toContain(
      'Its message is already gone.',
    )
    const far = fake.newGuild('Another society', { hasBot: false })
    const channel = fake.newChannel(far, 'shelf')
    fake.join(far, fake.user)
    const there = await fake.slash('share', { jar: NAME }, { channel, install: 'user' })
    expect(there.isPrivate).toBe(false)
    expect((await fake.slash('share', { withdraw: (await acts.shareOf(1)).id })).text).toContain('delete it yourself')
    const short = fake.newChannel(fake.guild, 'short-lived')
    await fake.slash('share', { jar: NAME }, { channel: short })
    fake.removeChannel(short)
    const { text } = await fake.slash('share', { withdraw: (await acts.shareOf(2)).id })
    expect(text).toContain('Its message is already gone.')
  })

  it('is taken back with all else that is forgotten', async () => {
    const shown = await acts.share()
    const asked = await fake.slash('forget')
    expect(asked.text).toContain('1 share')
    const forgotten = await fake.slash('forget', { confirm: 'yes' })
    expect(forgotten.text).toContain('One post of yours now says')
    expect(forgotten.text).toContain('What others posted')
    expect(textOf(shown.message!.json)).toContain('A batch was shared here')
    expect((await acts.owner()).shares).toEqual([])
    const customId = `1|0|/share make:${BigInt(fake.user.id).toString(36)}.zzzzzzzz`
    const late = await fake.press(shown.message, { customId }, { user: friend })
    expect(late).toMatchObject({ isPrivate: true })
    expect(late.text).toContain('no longer shared')
  })

  it('runs nothing else for anybody', async () => {
    const shown = await acts.share()
    const [jar] = (await acts.owner()).jars
    for (const line of [`/jar discard #${jar!.id}`, '/forget confirm:yes', '!show', '/share', '/share make:x.y']) {
      const answer = await fake.press(shown.message, { customId: `1|0|${line}` }, { user: friend })
      expect(answer).toMatchObject({ isPrivate: true, text: en.calls.unknownButton() })
    }
  })
})

describe('the shelf', () => {
  it('goes with the list of jars, told in words for who cannot see it', async () => {
    expect((await fake.slash('jar list')).files).toEqual([])
    await fake.slash('jar start', { ...LEMON, name: NAME })
    const listed = await fake.slash('jar list')
    expect(listed).toMatchObject({ isPrivate: true, wasDeferred: true })
    expect(listed.files.map(({ name }) => name)).toEqual(['larderbell-shelf.png'])
    const gallery = listed.message!.json.components![1] as unknown as {
      readonly type: number
      readonly items: readonly { readonly description: string }[]
    }
    expect(gallery).toMatchObject({ type: 12, items: [{ description: expect.stringContaining(NAME) }] })
    const shown = await fake.press(listed.message, en.discord.showEverybody())
    expect(shown.message!.json.components!.map(({ type }) => type)).toEqual([17, 12])
    expect((await fake.slash('jar list', { picture: 'no' })).files).toEqual([])
  })

  it('has tags and labels beside it', async () => {
    await fake.slash('jar start', { ...LEMON, name: NAME })
    for (const command of ['jar tag', 'jar label']) {
      const { files, isPrivate } = await fake.slash(command, { jar: NAME })
      expect([files.length, isPrivate]).toEqual([1, true])
    }
  })
})
