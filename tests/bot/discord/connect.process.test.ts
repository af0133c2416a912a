import { type ChildProcess, spawn } from 'node:child_process'
import { once } from 'node:events'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { setTimeout as sleep } from 'node:timers/promises'
import { afterEach, beforeEach, expect, it } from 'vitest'
import { en } from '../../../bot/text/en/index.ts'
import { storeIn } from '../../store/some-store.ts'
import { MADE } from '../said.ts'
import { until } from './connected.ts'
import { type FakeDiscord, startFake } from './fake/fake-discord.ts'

const root = join(import.meta.dirname, '..', '..', '..')
const { connection } = en
const ALONE = { number: 1, of: 1 }

let fake: FakeDiscord
let data: string
let running: ChildProcess | null = null

beforeEach(async () => {
  fake = await startFake()
  data = mkdtempSync(join(tmpdir(), 'larderbell-'))
})

afterEach(async () => {
  running?.kill('SIGKILL')
  await fake.stop()
  rmSync(data, { recursive: true })
  expect(fake.faults()).toEqual([])
})

/** The whole program, as npm starts it. Slow: what can be tested inside has its own tests. */
const start = (argv: readonly string[], settings: Record<string, string> = {}) => {
  const env = { ...process.env, LARDERBELL_DATA: data, DISCORD_TOKEN: fake.token, DISCORD_API: fake.api, ...settings }
  const child = spawn(process.execPath, ['bot/start.cjs', ...argv], {
    cwd: root,
    env,
    stdio: ['ignore', 'pipe', 'pipe'],
  })
  running = child
  const texts = { out: '', err: '' }
  child.stdout.on('data', (text) => {
    texts.out += text
  })
  child.stderr.on('data', (text) => {
    texts.err += text
  })
  const code = once(child, 'close').then(([status]) => status as number | null)
  return { child, texts, code }
}

it('connects, answers, survives what it cannot read, and ends with what was said on the disk', async () => {
  const { child, texts, code } = start([])
  await until(() => texts.err.includes('are registered'))
  fake.gateway.dispatch('INTERACTION_CREATE', { id: '1', type: 2, token: 'malformed' })
  const options = { name: 'lemon', of: '10 lemons', spirit: '1 l 95%' }
  const answer = await fake.slash('jar start', { ...options, 'to-strength': '30%', 'to-sweetness': '250 g/L' })
  expect(answer.text).toContain('started')
  const store = storeIn(data)
  const heardMs = async (): Promise<number> => {
    const status = (await store.inspect())?.status
    return status?.kind === 'status' ? (status.status.heardMs ?? 0) : 0
  }
  while ((await heardMs()) < Date.now() - 60_000) await sleep(20)
  child.kill('SIGTERM')
  expect(await code).toBe(0)
  expect(texts.err).toContain(connection.stopped())
  expect(texts.err).not.toContain(fake.token)
  expect(texts.err).not.toMatch(/lemon/)
  expect(await store.inspect()).toMatchObject({ people: 1, holder: null })
  expect((await store.read(fake.user.id)).jars).toMatchObject([{ entries: [{ kind: 'started', name: 'lemon' }] }])
})

it('does not connect where another works on the folder, and says which in one sentence', async () => {
  const first = start([])
  await until(() => first.texts.err.includes('are registered'))
  const connections = fake.gateway.counts.connections
  const second = start([])
  expect(await second.code).toBe(1)
  expect(second.texts.err).toBe(
    `Another Larderbell (process ${first.child.pid}) works on the jars in ${data}. Use that one, or stop it first. Nothing was changed.\n`,
  )
  expect(fake.gateway.counts.connections).toBe(connections)
  expect((await fake.slash('jar list', {})).text).not.toMatch(/process|another/i)
  first.child.kill('SIGTERM')
  expect(await first.code).toBe(0)
})

it('ends with 1 and one sentence where it cannot log in, though discord.js would go on trying', async () => {
  fake.gateway.refuse(502)
  const { texts, code } = start([])
  expect(await code).toBe(1)
  expect(texts.err).toBe(`${connection.faults.server_fault()}\n`)
})

it('ends while the connection is down', async () => {
  const { child, texts, code } = start([])
  await until(() => texts.err.includes('are registered'))
  fake.gateway.refuse(502)
  fake.gateway.close()
  await until(() => texts.err.includes(connection.dropped(ALONE)))
  child.kill('SIGTERM')
  expect(await code).toBe(0)
})

it('registers when it is told to, and asks without connecting', async () => {
  const registering = start(['register'])
  expect(await registering.code).toBe(0)
  expect(fake.commands().length).toBeGreaterThan(10)
  expect(fake.gateway.counts.connections).toBe(0)
  const asked = start(['ask', '/mix spirit:1 l strength:95% water:1 l'])
  expect(await asked.code).toBe(0)
  expect(asked.texts.out).toMatch(MADE)
  expect(fake.gateway.counts.connections).toBe(0)
  const without = start(['register'], { DISCORD_TOKEN: '' })
  expect(await without.code).toBe(2)
  expect(without.texts.err).toBe(`${en.problems.no_token()}\n`)
})
