import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import fc from 'fast-check'
import { expect, it } from 'vitest'
import { duties } from '../../../core/jar/tasks/duties.ts'
import { dutySettings } from '../../../store/due.ts'
import { runs, SEED } from '../../runs.ts'
import { startChild } from '../../store/child.ts'
import { inFolder } from '../../store/in-folder.ts'
import { storeIn } from '../../store/some-store.ts'
import { PEOPLE } from './kill-people.ts'
import { at, MINUTE_MS, ZONE } from './people.ts'

const PROGRAM = fileURLToPath(new URL('kill-child.ts', import.meta.url))
const KILLS = runs(10, 150)
const NONCE_MS = 5 * MINUTE_MS

interface Message {
  readonly nudgeId: string
  readonly userId: string
  readonly nowMs: number
  readonly mayHaveBeenSeen: boolean
  readonly duties: readonly { readonly jar: string; readonly duty: string; readonly day: string }[]
}

/** What somebody saw: a message with an id that came within five minutes is dropped by whoever receives it. */
const seenIn = (folder: string): readonly Message[] => {
  const path = join(folder, 'inbox.txt')
  const lines = existsSync(path)
    ? readFileSync(path, 'utf8')
        .split('\n')
        .filter((line) => line !== '')
    : []
  const lastMs = new Map<string, number>()
  return lines.flatMap((line) => {
    const message: Message = JSON.parse(line)
    const before = lastMs.get(message.nudgeId)
    if (before !== undefined && message.nowMs - before < NONCE_MS) return []
    lastMs.set(message.nudgeId, message.nowMs)
    return [message]
  })
}

const keysOf = (messages: readonly Message[]): readonly string[] =>
  messages.flatMap(({ userId, duties }) => duties.map(({ jar, duty, day }) => `${userId} ${jar} ${duty}.${day}`))

const lastNumber = (lines: readonly string[], begin: string): number =>
  Number(lines.findLast((line) => line.startsWith(begin))?.slice(begin.length) ?? 0)

/** Lines to wait for, then for one of a kind, how long after it to kill, and how long it stays dead. */
const moments = (seed: number) =>
  fc.sample(
    fc.tuple(
      fc.integer({ min: 5, max: 300 }),
      fc.constantFrom('sending', 'sent', 'ack', ''),
      fc.constantFrom(0, 0, 1, 3, 10, 60),
      fc.nat(6 * 60),
    ),
    { seed, numRuns: KILLS },
  )

/** Lives through the kills; answers with the time of the last. */
async function liveWithKills(folder: string, history: string, seed: number): Promise<number> {
  let nowMs = at('2026-12-01', '20:00')
  for (const [lines, kind, spins, downMinutes] of moments(seed)) {
    const child = startChild(PROGRAM, [folder, String(nowMs), history])
    await child.heard(lines)
    while (!child.lines.at(-1)?.startsWith(kind)) await child.heard(child.lines.length + 1)
    for (let spin = 0; spin < spins; spin++) await new Promise(setImmediate)
    await child.kill()
    const store = storeIn(join(folder, 'data'))
    for (const userId of PEOPLE) {
      const { jars } = await store.read(userId)
      const entries = jars.reduce((sum, jar) => sum + jar.entries.length, 0)
      expect(entries, 'an acknowledged event is lost').toBeGreaterThanOrEqual(lastNumber(child.lines, `ack ${userId} `))
    }
    await store.close()
    nowMs = lastNumber(child.lines, 'now ') + downMinutes * MINUTE_MS
  }
  // A quiet hour at the end, so that everything is said and recorded.
  const child = startChild(PROGRAM, [folder, String(nowMs), history])
  while (lastNumber(child.lines, 'now ') < nowMs + 6 * 60 * MINUTE_MS) await child.heard(child.lines.length + 1)
  await child.kill()
  return lastNumber(child.lines, 'now ')
}

/** Everything that was due is marked, what is marked was seen, and no file is torn. */
async function expectWhole(folder: string, endMs: number): Promise<void> {
  const seen = new Set(keysOf(seenIn(folder)))
  const logged: string[] = []
  const store = storeIn(join(folder, 'data'), { log: (text) => logged.push(text) })
  let due = 0
  for (const userId of PEOPLE) {
    const { jars, settings } = await store.read(userId)
    for (const { id, entries, told } of jars) {
      for (const key of told) expect(seen, 'marked, but never said').toContain(`${userId} ${id} ${key}`)
      for (const { key } of duties(entries, dutySettings(settings, ZONE), endMs - 60 * MINUTE_MS)) {
        expect(told, 'due, but not marked').toContain(key)
        due++
      }
    }
  }
  expect(due).toBeGreaterThan(10)
  expect(logged).toEqual([])
  expect(await store.inspect()).toMatchObject({ people: PEOPLE.length, unreadable: 0, setAside: 0 })
  await store.close()
}

it(
  `says everything, and nothing twice, killed ${KILLS} times where the history can be read`,
  { timeout: 600_000 },
  () =>
    inFolder(async (folder) => {
      const endMs = await liveWithKills(folder, 'readable', SEED)
      const keys = keysOf(seenIn(folder))
      const twice = keys.filter((key, index) => keys.indexOf(key) !== index)
      expect(twice).toEqual([])
      await expectWhole(folder, endMs)
    }),
)

it(`says everything, twice only with a word of it, killed ${KILLS} times where it cannot`, { timeout: 600_000 }, () =>
  inFolder(async (folder) => {
    const endMs = await liveWithKills(folder, 'hidden', SEED + 1)
    const seen = new Set<string>()
    for (const message of seenIn(folder)) {
      const again = keysOf([message]).filter((key) => seen.has(key))
      if (!message.mayHaveBeenSeen) expect(again).toEqual([])
      for (const key of keysOf([message])) seen.add(key)
    }
    await expectWhole(folder, endMs)
  }),
)
