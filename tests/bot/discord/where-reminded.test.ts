import { describe, expect, it } from 'vitest'
import { en } from '../../../bot/text/en/index.ts'
import type { Answer } from './fake/answer.ts'
import { buttonsOf, textOf } from './fake/shown-text.ts'
import { messagesIn } from './reminding.ts'
import { bot, fake, onStage } from './stage.ts'

onStage()

const LEMON = { name: 'lemon', of: '10 lemons', spirit: '1 l 95%' }
const PRIVATE = 'Remind me in private'
const HERE = 'Remind me here'

const settings = async () => (await bot.store.read(fake.user.id)).settings
const labels = ({ message }: Answer) => buttonsOf(message!.json).map(({ label }) => label)
const alone = () => ({ channel: fake.dm(fake.user) })
const textsIn = (channel: typeof fake.channel) =>
  messagesIn(channel)
    .filter(({ onlyFor, author }) => onlyFor === undefined && author.isBot)
    .map(({ json }) => textOf(json))

describe('the first jar', () => {
  it('asks where to remind, and never again', async () => {
    const first = await fake.slash('jar start', LEMON)
    expect(labels(first)).toEqual(expect.arrayContaining([PRIVATE, HERE]))
    expect(first.text).toContain('in private or here?')
    const second = await fake.slash('jar start', { ...LEMON, name: 'quince' })
    expect(labels(second)).not.toContain(PRIVATE)
  })

  it('does not ask whoever has chosen', async () => {
    await fake.slash('reminders', { place: 'here' })
    expect(labels(await fake.slash('jar start', LEMON))).not.toContain(HERE)
  })

  it('offers no channel where it may not write, and no two places where there is one', async () => {
    fake.deny(fake.channel, 'SendMessages')
    const shut = await fake.slash('jar start', LEMON)
    expect([labels(shut).includes(PRIVATE), labels(shut).includes(HERE)]).toEqual([true, false])
    expect(shut.text).not.toContain('or here')
    const friend = fake.newUser('sorrel')
    const own = await fake.slash('jar start', LEMON, { user: friend, channel: fake.dm(friend) })
    expect([labels(own).includes(PRIVATE), labels(own).includes(HERE)]).toEqual([true, false])
    expect(own.text).toContain('remind you here, in private')
  })
})

describe('choosing', () => {
  it('here sends one real message there, by the bot’s own rights, and says so', async () => {
    const started = await fake.slash('jar start', LEMON)
    const chosen = await fake.press(started.message, HERE)
    expect(textsIn(fake.channel)).toEqual([`<@${fake.user.id}>\n${en.discord.proof()}`])
    expect(fake.requests('send')).toHaveLength(1)
    expect(await settings()).toMatchObject({ place: { kind: 'channel', channelId: fake.channel.id } })
    expect(chosen.text).toContain('this channel')
    expect(chosen.text).toContain('just sent you a message there')
  })

  it('in private sends it in private', async () => {
    const started = await fake.slash('jar start', LEMON)
    await fake.press(started.message, PRIVATE)
    expect(textsIn(fake.dm(fake.user))).toEqual([`<@${fake.user.id}>\n${en.discord.proof()}`])
    expect(await settings()).toMatchObject({ place: { kind: 'private' } })
  })

  it('private messages that are closed is refused at once, and shown by /reminders', async () => {
    const started = await fake.slash('jar start', LEMON)
    fake.user.hasClosedDms = true
    const chosen = await fake.press(started.message, PRIVATE)
    expect(chosen.text).toBe(en.discord.placeClosed({ lacking: ['messages'] }))
    expect(await settings()).toMatchObject({ place: null })
    expect((await fake.slash('reminders')).text).toContain('Discord blocked my last one')
    fake.user.hasClosedDms = false
    await fake.slash('reminders', { place: 'private' })
    expect((await fake.slash('reminders')).text).not.toContain('Discord blocked my last one')
  })

  it('a channel that takes no message after all is refused', async () => {
    fake.outage('send', { status: 403, code: 50013 })
    const refused = await fake.slash('reminders', { place: 'here', time: '18:30' })
    expect(refused.text).toBe(en.discord.placeClosed({ lacking: ['write'] }))
    expect(await settings()).toMatchObject({ place: null, atMinutes: 540 })
  })

  it('on a day on which Discord does not answer is taken, and not called proved', async () => {
    fake.outage('send', { status: 500 }, { times: 2 })
    const chosen = await fake.slash('reminders', { place: 'here' })
    expect(chosen.text).toContain('didn’t take my test message')
    expect(chosen.text).not.toContain('just sent')
    expect(await settings()).toMatchObject({ place: { kind: 'channel' } })
  })
})

describe('/reminders', () => {
  it('changes time, place and whether any come by a press', async () => {
    await fake.slash('jar start', LEMON)
    const shown = await fake.slash('reminders')
    expect(labels(shown)).toEqual([
      PRIVATE,
      HERE,
      'Time…',
      'Stop reminders',
      en.more.button(),
      en.discord.showEverybody(),
    ])
    const form = await fake.press(shown.message, 'Time…')
    const fields = form.modal!.components as readonly { component: { value?: string } }[]
    expect(fields[0]!.component.value).toBe('/reminders time:09:00')
    const timed = await fake.submit(form, { line: '/reminders time:18:30' })
    expect(timed.text).toContain('18:30')
    expect((await settings()).atMinutes).toBe(1110)
    const stopped = await fake.press(timed.message, 'Stop reminders')
    expect(stopped.text).toContain('I’ve stopped reminding you until you say so.')
    expect(stopped.text).not.toContain('2199')
    expect((await fake.slash('jar list')).text).not.toContain('2199')
    const again = await fake.press(stopped.message, 'Start them again')
    expect((await settings()).pausedUntil).toBe('2026-11-25')
    expect(labels(again)).toContain('Stop reminders')
  })

  it('knows no place that is elsewhere', async () => {
    const form = await fake.press((await fake.slash('reminders')).message, 'Time…')
    const refused = await fake.submit(form, { line: '/reminders place:console' })
    expect(refused.text).toBe('I can’t remind you at “console” from here. Here or private?')
  })

  it('offers nothing in private that is the same twice', async () => {
    expect(labels(await fake.slash('reminders', {}, alone()))).toEqual([
      PRIVATE,
      'Time…',
      'Stop reminders',
      en.more.button(),
    ])
  })
})
