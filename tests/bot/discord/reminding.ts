import type { RESTOptions } from 'discord.js'
import { expect } from 'vitest'
import { discordSurface } from '../../../bot/discord/nudges/nudge-surface.ts'
import { closedPlaces } from '../../../bot/reminders/closed-places.ts'
import type { Surface } from '../../../bot/reminders/delivery.ts'
import { tick } from '../../../bot/reminders/tick.ts'
import { en } from '../../../bot/text/en/index.ts'
import type { Spoken } from '../../../bot/text/language.ts'
import type { Happening } from '../../../core/jar/entry/entry.ts'
import { memoryStore } from '../../../store/memory/memory-store.ts'
import type { Jar, Person, Settings } from '../../../store/person.ts'
import type { Planned } from '../../core/jar/jars.ts'
import { happened, jarOf, personWith } from '../reminders/people.ts'
import { commands } from '../test-desk.ts'
import { bareClient } from './fake/bare-client.ts'
import type { FakeDiscord } from './fake/fake-discord.ts'
import type { FakeChannel, FakeMessage, FakeUser } from './fake/world.ts'

export const MINUTE_MS = 60_000

interface Setting {
  readonly store?: ReturnType<typeof memoryStore>
  readonly rest?: Partial<RESTOptions>
  readonly apartMs?: number
  readonly languageOf?: Spoken['languageOf']
}

/** Nothing but reminders, sent with discord.js's own REST to a fake Discord, by the fake's clock. */
export const reminding = (fake: FakeDiscord, setting: Setting = {}) => {
  const { store = memoryStore('UTC'), rest, apartMs = 0, languageOf } = setting
  const { client } = bareClient(fake, { rest: { api: fake.api, retries: 1, timeout: 2000, offset: 1, ...rest } })
  client.rest.setToken(fake.token)
  const logged: string[] = []
  const log = (text: string): void => {
    logged.push(text)
  }
  const now = fake.clock.nowMs
  const spoken: Spoken = { language: en, ...(languageOf !== undefined && { languageOf }) }
  const shared = { store, commands, ...spoken, assumedZone: 'UTC', log, now }
  const closed = closedPlaces()
  const surface: Surface = discordSurface({ ...shared, rest: client.rest, botUserId: fake.bot.id, apartMs })
  const pass = () => tick({ ...shared, surface, closed, nowMs: now() })
  return {
    store,
    surface,
    closed,
    logged,
    tick: pass,
    /** A tick after so many minutes. */
    later: async (minutes: number) => {
      fake.clock.advance(minutes * MINUTE_MS)
      await pass()
    },
    person: (user: FakeUser = fake.user): Promise<Person> => store.read(user.id),
  }
}

/** Started the evening before, so that it is to be shaken now: at nine. */
export const lemonJar = (fake: FakeDiscord, name = 'lemon', plan: Partial<Planned> = {}): Jar =>
  jarOf({ name, startedMs: fake.clock.nowMs() - 15 * 60 * MINUTE_MS, plan, more: { plants: [] } })

interface Keeper {
  readonly user?: FakeUser
  readonly jars?: readonly Jar[]
  readonly settings?: Partial<Settings>
}

type Store = ReturnType<typeof memoryStore>

/** Somebody who has jars. */
export const keep = (store: Store, fake: FakeDiscord, { user = fake.user, jars, settings = {} }: Keeper = {}) =>
  store.update(user.id, () => personWith(jars ?? [lemonJar(fake)], { zone: 'UTC', ...settings }))

export const record = (store: Store, fake: FakeDiscord, jarId: string, happening: Happening, user = fake.user) =>
  store.update(user.id, (person) => happened(person, jarId, fake.clock.nowMs(), happening))

export const inChannel = ({ id: channelId }: FakeChannel): Partial<Settings> => ({
  place: { kind: 'channel', channelId },
})

export const messagesIn = ({ messages }: FakeChannel): readonly FakeMessage[] => [...messages.values()]

/** Until something is so, two seconds at most. */
export const wait = async (isSo: () => boolean): Promise<void> => {
  for (let tries = 0; !isSo() && tries < 400; tries++) await new Promise((done) => setTimeout(done, 5))
  expect(isSo()).toBe(true)
}
