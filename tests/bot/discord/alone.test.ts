import { describe, expect, it } from 'vitest'
import { en } from '../../../bot/text/en/index.ts'
import { impatient } from './connected.ts'
import type { Answer } from './fake/answer.ts'
import { buttonsOf } from './fake/shown-text.ts'
import { bot, fake, onStage, restart } from './stage.ts'

onStage()

const LEMON = { name: 'lemon', of: '10 lemons', spirit: '1 l 95%' }
const SHOW = en.discord.showEverybody()

const labels = ({ message }: Answer) => buttonsOf(message!.json).map(({ label }) => label)
const alone = () => ({ channel: fake.dm(fake.user) })

describe('in private messages with the bot', () => {
  it.each([
    ['an answer', 'plan', { of: '10 lemons', spirit: '1 l 95%' }],
    ['a refusal', 'mix', { spirit: 'a lot' }],
    ['a picture', 'jar label', { jar: 'lemon' }],
    ['the page of help', 'help', {}],
    ['an answer for all', 'share', { jar: 'lemon' }],
  ])('%s is an ordinary message, shown to nobody else', async (_, command, options) => {
    await fake.slash('jar start', LEMON, alone())
    const answer = await fake.slash(command, options, alone())
    expect(answer.isPrivate).toBe(false)
    expect(answer.followUps).toEqual([])
    expect(labels(answer)).not.toContain(SHOW)
    const { callback } = answer
    expect(Number(callback?.data?.flags ?? 0) & 64).toBe(0)
  })

  it('so is what comes of a button, a form and a slow answer', async () => {
    await fake.slash('jar start', LEMON, alone())
    const shown = await fake.slash('jar show', { jar: 'lemon' }, alone())
    const pressed = await fake.press(shown.message, { customId: '1|nobody' }, alone())
    const form = await fake.slash('jar strain', { jar: 'lemon' }, alone())
    const strained = await fake.submit(form, { measured: '920 ml' })
    const { store } = bot
    const late = (userId: string) => new Promise<void>((done) => setTimeout(done, 30)).then(() => store.read(userId))
    await restart({ store: { ...store, read: late }, after: impatient })
    const slow = await fake.slash('jar list', {}, alone())
    expect(slow.wasDeferred).toBe(true)
    for (const answer of [shown, pressed, strained, slow]) expect(answer.isPrivate).toBe(false)
  })
})

describe('where others read along', () => {
  it('only whoever asked sees the answer, in a group, between friends and in a channel', async () => {
    const friend = fake.newUser('sorrel')
    const places = [fake.newGroup('', friend, fake.user), fake.newGroup('shelf', friend, fake.user), fake.channel]
    for (const channel of places) {
      const answer = await fake.slash('plan', { of: '10 lemons', spirit: '1 l 95%' }, { channel })
      expect([answer.isPrivate, labels(answer).includes(SHOW)]).toEqual([true, true])
    }
  })
})
