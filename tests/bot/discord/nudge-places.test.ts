import { describe, expect, it } from 'vitest'
import { MADE } from '../said.ts'
import { connecting } from './connected.ts'
import { textOf } from './fake/shown-text.ts'
import { inChannel, keep, lemonJar, messagesIn, reminding } from './reminding.ts'
import { fake, onFake } from './stage.ts'

onFake()

const sentTo = () => fake.requests('send').map(({ params }) => params.channel)

describe('a nudge whose channel does not take it goes to direct messages', () => {
  const lost: readonly (readonly [string, () => void])[] = [
    ['the channel is deleted', () => fake.removeChannel(fake.channel)],
    ['the bot may not see it', () => fake.deny(fake.channel, 'ViewChannel')],
    ['the bot may not write there', () => fake.deny(fake.channel, 'SendMessages')],
    ['the bot is out of the server', () => fake.removeBot(fake.guild)],
    ['the person has left the server', () => fake.leave(fake.guild, fake.user)],
  ]

  it.each(lost)('because %s', async (_, lose) => {
    const here = reminding(fake)
    await keep(here.store, fake, { settings: inChannel(fake.channel) })
    lose()
    await here.tick()
    expect(messagesIn(fake.channel)).toEqual([])
    expect(messagesIn(fake.dm(fake.user)).map(({ json }) => textOf(json))).toEqual([expect.stringContaining('Shake')])
    const person = await here.person()
    expect([person.nudges, person.jars[0]!.told]).toEqual([[], ['shake.2026-11-25']])
    // The choice stays: whoever comes back is reminded there again.
    expect(person.settings.place).toEqual({ kind: 'channel', channelId: fake.channel.id })
  })

  it('and says why, once, and /reminders says it too', async () => {
    const here = reminding(fake)
    await keep(here.store, fake, { settings: inChannel(fake.channel) })
    fake.deny(fake.channel, 'SendMessages')
    await here.tick()
    await here.later(24 * 60)
    const texts = messagesIn(fake.dm(fake.user)).map(({ json }) => textOf(json))
    expect(texts.map((text) => text.includes('I can no longer write in the channel you chose'))).toEqual([true, false])
    expect(texts[0]).toContain('/reminders place:here')
    const bot = connecting(fake, { store: here.store, closed: here.closed })
    await bot.ready()
    const CLOSED = 'but I can’t write there any more: they come in private messages to you'
    expect((await fake.slash('reminders')).text).toContain(`this channel, ${CLOSED}`)
    const channel = fake.newChannel(fake.guild, 'shed')
    const said = await fake.slash('reminders', {}, { channel })
    expect(said.text).toContain(`<#${fake.channel.id}>, ${CLOSED}`)
    await fake.slash('reminders', { place: 'here' }, { channel })
    expect((await fake.slash('reminders', {}, { channel })).text).not.toContain(CLOSED)
    expect(await bot.end()).toBe(0)
  })

  it('also where the app is only a person’s own, in a server or a group', async () => {
    const here = reminding(fake)
    const foreign = fake.newChannel(fake.newGuild('the neighbours', { hasBot: false }), 'green')
    const group = fake.newGroup('the shed', fake.user)
    for (const channel of [foreign, group]) {
      await keep(here.store, fake, { settings: inChannel(channel) })
      await here.later(1)
    }
    expect(messagesIn(fake.dm(fake.user))).toHaveLength(2)
    expect([...messagesIn(foreign), ...messagesIn(group)]).toEqual([])
  })

  it('and knocks once for all who chose that channel', async () => {
    const here = reminding(fake)
    const people = Array.from({ length: 12 }, (_, count) => fake.newUser(`finch ${count}`))
    for (const user of people) await keep(here.store, fake, { user, settings: inChannel(fake.channel) })
    fake.removeChannel(fake.channel)
    await here.tick()
    for (const user of people) expect(messagesIn(fake.dm(user))).toHaveLength(1)
    expect(fake.requests('channel')).toHaveLength(1)
    expect(sentTo()).not.toContain(fake.channel.id)
  })
})

describe('where no place takes a nudge', () => {
  it('it is tried in order, kept, and not tried again', async () => {
    const here = reminding(fake)
    await keep(here.store, fake, { settings: inChannel(fake.channel) })
    fake.deny(fake.channel, 'SendMessages')
    fake.user.hasClosedDms = true
    await here.tick()
    expect(sentTo()).toEqual([fake.channel.id, fake.dm(fake.user).id])
    expect((await here.person()).nudges).toMatchObject([{ state: 'kept', duties: [{ key: 'shake.2026-11-25' }] }])
    const before = fake.requests().length
    for (let count = 0; count < 20; count++) await here.later(60)
    expect(fake.requests()).toHaveLength(before)
    // With the next day comes one more try, which carries both.
    fake.user.hasClosedDms = false
    await here.later(4 * 60)
    expect(messagesIn(fake.dm(fake.user))).toHaveLength(1)
    expect((await here.person()).nudges).toEqual([])
  })

  it('it is shown with the next command, whichever that is, once', async () => {
    const here = reminding(fake)
    await keep(here.store, fake)
    fake.user.hasClosedDms = true
    await here.tick()
    const bot = connecting(fake, { store: here.store })
    await bot.ready()
    const options = { spirit: '1 l', strength: '95%', water: '750 ml' }
    const first = await fake.slash('mix', options)
    expect(first.text).toMatch(/couldn’t send: shake lemon/i)
    expect(first.text).toMatch(MADE)
    const again = await fake.slash('mix', options)
    expect(again.text).not.toContain('couldn’t send')
    const person = await here.person()
    expect([person.nudges, person.jars[0]!.told]).toEqual([[], ['shake.2026-11-25']])
    expect(await bot.end()).toBe(0)
  })

  it('a refused command leaves it for the next', async () => {
    const here = reminding(fake)
    await keep(here.store, fake)
    fake.user.hasClosedDms = true
    await here.tick()
    const bot = connecting(fake, { store: here.store })
    await bot.ready()
    const refused = await fake.slash('mix', { spirit: 'a lot' })
    expect(refused.text).not.toContain('couldn’t send')
    expect((await here.person()).nudges).toHaveLength(1)
    expect((await fake.slash('jar list')).text.match(/couldn’t send/g)).toHaveLength(1)
    expect(await bot.end()).toBe(0)
  })
})

it('opens direct messages once for many nudges, and anew by another process', async () => {
  const here = reminding(fake)
  await keep(here.store, fake, { jars: [lemonJar(fake)] })
  await here.tick()
  await here.later(24 * 60)
  expect(fake.requests('openDm')).toHaveLength(1)
  fake.clock.advance(24 * 60 * 60_000)
  await reminding(fake, { store: here.store }).tick()
  expect(fake.requests('openDm')).toHaveLength(2)
  expect(messagesIn(fake.dm(fake.user))).toHaveLength(3)
})

it('is tried again where opening direct messages fails, or takes the limit of another', async () => {
  const here = reminding(fake)
  await keep(here.store, fake)
  fake.outage('openDm', { status: 500 }, { times: 2 })
  await here.tick()
  expect((await here.person()).nudges).toMatchObject([{ state: 'waiting', attempts: 1 }])
  await here.later(1)
  expect(messagesIn(fake.dm(fake.user))).toHaveLength(1)
})

it('reaches nobody who sits at a terminal', async () => {
  const here = reminding(fake)
  expect(here.surface.placeOf('local', null)).toBeNull()
  expect(here.surface.placeOf(fake.user.id, { kind: 'console' })).toEqual({ kind: 'private' })
})
