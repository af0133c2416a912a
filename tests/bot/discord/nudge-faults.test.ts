import { REST } from 'discord.js'
import nock from 'nock'
import { expect, it } from 'vitest'
import { discordSurface, rejectsLongWaits } from '../../../bot/discord/nudges/nudge-surface.ts'
import type { Delivery } from '../../../bot/reminders/delivery.ts'
import { en } from '../../../bot/text/en/index.ts'
import { memoryStore } from '../../../store/memory/memory-store.ts'
import { NOBODY } from '../../../store/person.ts'
import { commands } from '../test-desk.ts'
import { fetchRequest } from './fake/fetch-request.ts'
import { withoutNetwork } from './no-network.ts'

const API = 'https://discord.com'
const OWNER = '1575073559347200001'
const DM = '1575073559347200002'

withoutNetwork()

const DELIVERY: Delivery = {
  nudgeId: 'abcdef0123456789abcdef01',
  userId: OWNER,
  place: { kind: 'private' },
  madeMs: 0,
  settings: NOBODY.settings,
  mayHaveBeenSeen: false,
  attempt: 1,
  reply: {
    headline: { group: 'headlines', key: 'jars_none', values: undefined },
    table: [],
    sure: [],
    notes: [],
    cautions: [],
    actions: [],
    data: {},
    kitchen: 'metric',
  },
}

const surface = () => {
  const rest = new REST({
    makeRequest: fetchRequest,
    retries: 0,
    timeout: 300,
    rejectOnRateLimit: rejectsLongWaits,
  }).setToken('MTAx.some.token')
  nock(API).post('/api/v10/users/@me/channels', { recipient_id: OWNER }).reply(200, { id: DM })
  const logged: string[] = []
  const shared = { store: memoryStore('UTC'), commands, language: en, assumedZone: 'UTC', now: () => 0 }
  const made = discordSurface({ ...shared, rest, botUserId: DM, apartMs: 0, log: (text) => logged.push(text) })
  return { made, logged }
}

const answer = (status: number, body: object, headers: Record<string, string> = {}) =>
  nock(API)
    .post(`/api/v10/channels/${DM}/messages`)
    .reply(status, body, { 'content-type': 'application/json', ...headers })

it.each([
  [403, 50001, 'impossible', 'missing access'],
  [403, 50007, 'impossible', 'closed messages'],
  [403, 50013, 'impossible', 'missing permissions'],
  [400, 50278, 'impossible', 'no server in common'],
  [400, 200000, 'impossible', 'what a server’s own filter blocks'],
  [404, 10003, 'failed', 'direct messages that are gone: to be opened anew'],
  [400, 50035, 'failed', 'a body that is not valid'],
  [401, 0, 'failed', 'a token that is no longer valid'],
])('%i with code %i is %s: %s', async (status, code, wanted) => {
  const { made, logged } = surface()
  answer(status, { code, message: 'so says Discord' })
  expect(await made.send(DELIVERY)).toBe(wanted)
  expect(logged.join()).not.toContain('some.token')
  expect(nock.isDone()).toBe(true)
})

it('does not wait for a limit that outlasts a send', async () => {
  const { made } = surface()
  answer(
    429,
    { message: 'slow', retry_after: 3600, global: false },
    { 'retry-after': '3600', 'x-ratelimit-scope': 'user' },
  )
  expect(await made.send(DELIVERY)).toBe('failed')
})

it('throws where nobody knows whether it was sent', async () => {
  const { made } = surface()
  nock(API).post(`/api/v10/channels/${DM}/messages`).delay(1000).reply(200, {})
  await expect(made.send(DELIVERY)).rejects.toThrow()
})

it('sends what the nonce makes unique', async () => {
  const { made } = surface()
  nock(API)
    .post(`/api/v10/channels/${DM}/messages`, (body) => body.nonce === DELIVERY.nudgeId && body.enforce_nonce === true)
    .reply(200, { id: '1' })
  expect(await made.send(DELIVERY)).toBe('sent')
})
