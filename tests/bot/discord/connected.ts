import type { Command } from '../../../bot/chat/command.ts'
import { type ConnectionDesk, connect } from '../../../bot/discord/connect/connect.ts'
import type { StartTimer } from '../../../bot/discord/rest/timeout.ts'
import { after as realAfter } from '../../../bot/discord/rest/timeout.ts'
import { closedPlaces } from '../../../bot/reminders/closed-places.ts'
import { newTalkMemory } from '../../../bot/talk/memory/remembered.ts'
import { en } from '../../../bot/text/en/index.ts'
import { memoryStore } from '../../../store/memory/memory-store.ts'
import type { Store } from '../../../store/store.ts'
import { commands } from '../test-desk.ts'
import type { FakeDiscord } from './fake/fake-discord.ts'

export interface Setting
  extends Partial<
    Pick<
      ConnectionDesk,
      'token' | 'api' | 'guildId' | 'commands' | 'remind' | 'closed' | 'doubts' | 'replies' | 'languageOf'
    >
  > {
  readonly store?: Store
  readonly after?: StartTimer
}

/** Wednesday, 25 November 2026, nine in the morning, as the fake has it. */
const START_MS = Date.UTC(2026, 10, 25, 9)

/** The bot as `npm start` connects it, to a fake Discord, with a clock that is set by hand. */
export const connecting = (fake: FakeDiscord, setting: Setting = {}) => {
  const logged: string[] = []
  const ended = new AbortController()
  const { store = memoryStore('UTC'), remind = async () => async () => undefined } = setting
  let nowMs = START_MS
  let isReady = (): void => undefined
  const ready = new Promise<void>((resolve) => {
    isReady = resolve
  })
  const code = connect({
    token: fake.token,
    api: fake.api,
    guildId: null,
    commands,
    language: en,
    assumedZone: 'UTC',
    now: () => nowMs,
    closed: closedPlaces(),
    talk: newTalkMemory(),
    after: realAfter,
    log: (text) => logged.push(text),
    ended: ended.signal,
    sending: { retries: 1, timeout: 2000, offset: 5 },
    ...setting,
    store,
    remind: async (client, heardMs) => {
      isReady()
      return remind(client, heardMs)
    },
  })
  return {
    store,
    logged,
    code,
    /** Resolves when everything is there. */
    ready: () => Promise.race([ready, code]),
    pass: (ms: number) => {
      nowMs += ms
    },
    end: () => {
      ended.abort()
      return code
    },
  }
}

export type Connected = ReturnType<typeof connecting>

/** What is done once, from outside. */
export const gate = () => {
  let open = (): void => undefined
  const opened = new Promise<void>((resolve) => {
    open = resolve
  })
  return { open: () => open(), opened }
}

export const until = async (isSo: () => boolean): Promise<void> => {
  while (!isSo()) await new Promise((resolve) => setTimeout(resolve, 5))
}

/** Answers are promised at once, as if the work had taken long. */
export const impatient = (ms: number, act: () => void) => realAfter(ms === 1200 ? 0 : ms / 100, act)

export const instead = (path: string, run: Command['run']): readonly Command[] =>
  commands.map((command) => (command.path === path ? { ...command, run } : command))
