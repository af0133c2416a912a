import { afterEach, expect, it } from 'vitest'
import { APART_MS } from '../../../bot/discord/rest/send-pace.ts'
import { runs } from '../../runs.ts'
import { type FakeDiscord, startFake } from './fake/fake-discord.ts'
import type { FakeChannel, FakeUser } from './fake/world.ts'
import { inChannel, keep, lemonJar, messagesIn, reminding } from './reminding.ts'

let fake: FakeDiscord

afterEach(async () => {
  await fake.stop()
  expect(fake.faults()).toEqual([])
})

/** Discord's own limits in a time that runs faster, and the pace of the bot with it; of channels faster still. */
const FASTER = 2.5
const LIMITS = { perBucket: 5, bucketMs: 50, perBot: 50, botMs: 1000 / FASTER }
/** discord.js counts real seconds; the pace under test is ours. */
const REST = { globalRequestsPerSecond: 1e6 }

const PEOPLE = runs(60, 1000)
const PATIENCE_MS = 120_000
/** As many as are spoken to at once may overtake one another. */
const LANES = 16

/** The later in the list, the later it fell due: by nine, in the nine hours before. */
const minutesOf = (index: number): number => 9 * 60 - Math.floor(((PEOPLE - 1 - index) * 9 * 60) / PEOPLE)

const crowd = async (channelOf: (index: number) => FakeChannel | null) => {
  fake = await startFake({ rateLimits: LIMITS })
  const here = reminding(fake, { apartMs: APART_MS / FASTER, rest: REST })
  const people: FakeUser[] = []
  for (let index = 0; index < PEOPLE; index++) {
    const user = fake.newUser(`finch ${index}`)
    fake.join(fake.guild, user)
    people.push(user)
    const channel = channelOf(index)
    const settings = { atMinutes: minutesOf(index), ...(channel === null ? {} : inChannel(channel)) }
    await keep(here.store, fake, { user, jars: [lemonJar(fake)], settings })
  }
  return { here, people }
}

it(
  `sends ${PEOPLE} that are due at once without one 429 and in order, to direct messages`,
  async () => {
    const { here, people } = await crowd(() => null)
    await here.tick()
    const counts = people.map((user) => messagesIn(fake.dm(user)).length)
    expect(counts).toEqual(people.map(() => 1))
    expect([fake.rateLimited(), fake.requests('send').length]).toEqual([0, PEOPLE])
    const place = new Map(people.map((user, index) => [fake.dm(user).id, index]))
    for (const [index, { params }] of fake.requests('send').entries()) {
      expect(Math.abs(minutesOf(index) - minutesOf(place.get(params.channel!)!))).toBeLessThanOrEqual(
        (LANES * 9 * 60) / PEOPLE + 1,
      )
    }
  },
  PATIENCE_MS,
)

it(
  `sends ${PEOPLE} that are due at once without one 429 and in order, to three channels`,
  async () => {
    const channels: FakeChannel[] = []
    const { here, people } = await crowd((index) => {
      if (channels.length === 0) channels.push(...[0, 1, 2].map((each) => fake.newChannel(fake.guild, `shelf ${each}`)))
      return channels[index % channels.length]!
    })
    await here.tick()
    expect([fake.rateLimited(), fake.requests('send').length]).toEqual([0, PEOPLE])
    for (const [index, channel] of channels.entries()) {
      const named = messagesIn(channel).map(({ json }) => json.mentions[0]!.id)
      const mine = people.filter((_, each) => each % channels.length === index).map(({ id }) => id)
      expect(named.toSorted()).toEqual(mine.toSorted())
      const due = named.map((id) => minutesOf(people.findIndex((user) => user.id === id)))
      expect(due).toEqual(due.toSorted((one, other) => one - other))
    }
  },
  PATIENCE_MS,
)
