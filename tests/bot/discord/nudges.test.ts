import { describe, expect, it } from 'vitest'
import { decodeCustomId } from '../../../bot/discord/buttons/custom-id.ts'
import { buttonsOf, textOf } from './fake/shown-text.ts'
import type { FakeChannel } from './fake/world.ts'
import { inChannel, keep, lemonJar, messagesIn, reminding } from './reminding.ts'
import { fake, onFake } from './stage.ts'

onFake()

const SEEN = 'You may have seen this already'

describe('a nudge', () => {
  it('goes to direct messages, pings its owner and offers what answers it', async () => {
    const here = reminding(fake)
    await keep(here.store, fake)
    await here.tick()
    const [message, ...more] = messagesIn(fake.dm(fake.user))
    expect(more).toEqual([])
    expect(textOf(message!.json)).toMatch(/Shake lemon\./)
    expect(textOf(message!.json)).toContain(`<@${fake.user.id}>`)
    expect(message!.json.mentions.map(({ id }) => id)).toEqual([fake.user.id])
    const buttons = buttonsOf(message!.json)
    expect(buttons.map(({ label }) => label)).toEqual(['Shaken', 'Later today', 'Tomorrow', 'Show jar', 'Reminders…'])
    const ids = buttons.map(({ customId }) => decodeCustomId(customId!)!)
    expect(new Set(ids.map(({ nudgeId }) => nudgeId)).size).toBe(1)
    expect(ids.map(({ owner }) => owner)).toEqual(buttons.map(() => fake.user.id))
    expect(ids.map(({ line }) => line)).toEqual([
      '/jar shake #lemon',
      '/jar later #lemon until:later today',
      '/jar later #lemon until:tomorrow',
      '/jar show #lemon',
      '/reminders',
    ])
    expect(fake.requests('send')[0]!.body).toMatchObject({
      nonce: ids[0]!.nudgeId,
      enforce_nonce: true,
      allowed_mentions: { parse: [], users: [fake.user.id] },
    })
    const person = await here.person()
    expect([person.nudges, person.jars[0]!.told]).toEqual([[], ['shake.2026-11-25']])
  })

  it('pings only its own owner where several are reminded in one channel', async () => {
    const here = reminding(fake)
    const other = fake.newUser('finch')
    fake.join(fake.guild, other)
    for (const user of [fake.user, other]) await keep(here.store, fake, { user, settings: inChannel(fake.channel) })
    await here.tick()
    const pinged = messagesIn(fake.channel).map(({ json }) => json.mentions.map(({ id }) => id))
    expect(pinged.toSorted()).toEqual([[fake.user.id], [other.id]].toSorted())
  })

  it('says names as they were typed, and nothing in them does anything', async () => {
    const here = reminding(fake)
    const name = '@everyone **x** <@1>'
    await keep(here.store, fake, {
      jars: [{ ...lemonJar(fake, name), id: 'k7f2a' }],
      settings: inChannel(fake.channel),
    })
    await here.tick()
    const [message] = messagesIn(fake.channel)
    expect(message!.json.mentions.map(({ id }) => id)).toEqual([fake.user.id])
    expect(textOf(message!.json)).toContain('\\@everyone \\*\\*x\\*\\* \\<\\@1\\>')
  })

  it('is looked at, or put off with all others, where several jars ask', async () => {
    const here = reminding(fake)
    await keep(here.store, fake, { jars: [lemonJar(fake), lemonJar(fake, 'ginger')] })
    await here.tick()
    const [message] = messagesIn(fake.dm(fake.user))
    const lines = buttonsOf(message!.json).map(({ customId }) => decodeCustomId(customId!)!.line)
    expect(lines).toEqual([
      '/jar shake all',
      '/jar later all until:later today',
      '/jar later all until:tomorrow',
      '/jar list',
      '/reminders',
    ])
  })
})

const places: readonly (readonly [string, () => FakeChannel])[] = [
  ['direct messages', () => fake.dm(fake.user)],
  ['a channel', () => fake.channel],
]

describe.each(places)('in %s', (_, place) => {
  const begin = async () => {
    const here = reminding(fake)
    const channel = place()
    await keep(here.store, fake, { settings: channel.kind === 'dm' ? {} : inChannel(channel) })
    fake.write(channel, fake.user, 'good morning')
    const nudges = () => messagesIn(channel).filter(({ author }) => author.isBot)
    return { here, nudges, isTold: async () => (await here.person()).jars[0]!.told.length === 1 }
  }

  it('waits as long as a 429 asks, and comes once', async () => {
    fake.outage('send', { status: 429, retryAfterS: 0.05 })
    const { here, nudges, isTold } = await begin()
    await here.tick()
    expect([nudges().length, await isTold(), fake.requests('send').length]).toEqual([1, true, 2])
  })

  it.each([
    ['a 500 before anything was done', { status: 500 }, false],
    ['a 502 that is no JSON', { status: 502 }, false],
    ['a 500 after it was done', { status: 500, isProcessed: true }, true],
    ['a socket closed before anything was done', { closes: true }, false],
    ['a socket closed after it was done', { closes: true, isProcessed: true }, true],
  ])('comes once in spite of %s', async (_what, outage, isThere) => {
    // discord.js tries a 500 twice by itself, a closed socket once.
    fake.outage('send', outage, { times: 'closes' in outage ? 1 : 2 })
    const { here, nudges, isTold } = await begin()
    await here.tick()
    expect([nudges().length, await isTold()]).toEqual([isThere ? 1 : 0, false])
    await here.later(1)
    expect(nudges()).toHaveLength(isThere ? 1 : 0)
    const before = fake.requests('send').length
    await here.later(1)
    expect([nudges().length, await isTold()]).toEqual([1, true])
    // It was looked for; what was found is not even sent again.
    expect(fake.requests('messages')).toHaveLength(1)
    expect(fake.requests('send').length > before).toBe(!isThere)
    expect(textOf(nudges()[0]!.json)).not.toContain(SEEN)
  })

  it('comes once after a day on which Discord does not answer', async () => {
    const { here, nudges, isTold } = await begin()
    const back = fake.outage('*', { status: 503 }, { times: Number.POSITIVE_INFINITY })
    for (let hour = 0; hour < 22; hour++) await here.later(60)
    expect([nudges().length, await isTold()]).toEqual([0, false])
    // Growing pauses: an attempt, a look before the next, and discord.js's one more try of each.
    expect(fake.requests().length).toBeLessThan(24 * 8)
    back()
    await here.later(60)
    expect([nudges().length, await isTold()]).toEqual([1, true])
  })

  it('is found by another process after the one that sent it died', async () => {
    const { here, nudges, isTold } = await begin()
    fake.outage('send', { closes: true, isProcessed: true })
    await here.tick()
    fake.clock.advance(3 * 60_000)
    await reminding(fake, { store: here.store }).tick()
    expect([nudges().length, await isTold()]).toEqual([1, true])
  })
})

describe('where the history cannot be read', () => {
  const begin = async () => {
    const here = reminding(fake)
    await keep(here.store, fake, { settings: inChannel(fake.channel) })
    fake.write(fake.channel, fake.user, 'good morning')
    fake.deny(fake.channel, 'ReadMessageHistory')
    fake.outage('send', { closes: true, isProcessed: true })
    await here.tick()
    return here
  }

  it('Discord itself makes no second one soon after', async () => {
    const here = await begin()
    await here.later(2)
    expect(messagesIn(fake.channel).filter(({ author }) => author.isBot)).toHaveLength(1)
    expect((await here.person()).jars[0]!.told).toHaveLength(1)
  })

  it('says much later that it may have been seen', async () => {
    const here = await begin()
    await here.later(60)
    const nudges = messagesIn(fake.channel).filter(({ author }) => author.isBot)
    expect(nudges.map(({ json }) => textOf(json).includes(SEEN))).toEqual([false, true])
  })
})

it('is looked for far back, behind a hundred others', async () => {
  const here = reminding(fake)
  await keep(here.store, fake, { settings: inChannel(fake.channel) })
  fake.outage('send', { closes: true, isProcessed: true })
  await here.tick()
  for (let count = 0; count < 250; count++) fake.write(fake.channel, fake.user, `word ${count}`)
  await here.later(2)
  expect(messagesIn(fake.channel).filter(({ author }) => author.isBot)).toHaveLength(1)
  expect((await here.person()).jars[0]!.told).toHaveLength(1)
  expect(fake.requests('messages')).toHaveLength(3)
})
