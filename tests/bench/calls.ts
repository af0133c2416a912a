import { mkdtempSync, rmSync } from 'node:fs'
import { Session } from 'node:inspector/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { openStore } from '../../store/open/open-store.ts'
import { connecting } from '../bot/discord/connected.ts'
import { startFake } from '../bot/discord/fake/fake-discord.ts'

type Row = [label: string, value: string, goal?: string]

const START_MS = Date.UTC(2026, 10, 25, 9)
const BATCH = { of: '10 lemons', spirit: '1 l 95%', 'to-strength': '30%', 'to-sweetness': '250 g/L' }
const MEASURED = { measured: '920 ml', strength: '78%' }
const MOST_NAMED = 12

interface Counted {
  readonly file: string
  readonly functions: number
  readonly calls: number
}

const OURS = /\/((?:bot|core|store)\/[^?]+\.ts)/

/** Calls of the project's own functions, by file, since it was asked last. */
async function callsOf(session: Session): Promise<readonly Counted[]> {
  const { result } = await session.post('Profiler.takePreciseCoverage')
  return result.flatMap(({ url, functions }) => {
    const [, file] = OURS.exec(url) ?? []
    const counts = functions
      .filter(({ functionName }) => functionName !== '')
      .map(({ ranges }) => ranges[0]?.count ?? 0)
    const anonymous = functions
      .filter(({ functionName }) => functionName === '')
      .map(({ ranges }) => ranges[0]?.count ?? 0)
    const called = [...counts, ...anonymous].filter((count) => count > 0)
    if (file === undefined || called.length === 0) return []
    return [{ file, functions: called.length, calls: called.reduce((sum, count) => sum + count, 0) }]
  })
}

const shown = (counted: readonly Counted[], reads: number, writes: number): string => {
  const sum = (of: (each: Counted) => number) =>
    counted.reduce((all, each) => all + of(each), 0).toLocaleString('en-US')
  return `${sum(({ calls }) => calls)} calls of ${sum(({ functions }) => functions)} functions in ${counted.length} files; store: ${reads} reads, ${writes} updates`
}

/** What the bot's own code does for one act in Discord, counted by V8; the modules are loaded and a like act was done before. */
export async function benchCalls(): Promise<{ name: string; rows: Row[] }> {
  const folder = mkdtempSync(join(tmpdir(), 'larderbell-calls-'))
  const opened = openStore({ folder, assumedZone: 'UTC', nowMs: () => START_MS, log: console.error })
  let [reads, writes] = [0, 0]
  const store: typeof opened = {
    ...opened,
    read: (userId) => {
      reads += 1
      return opened.read(userId)
    },
    update: (userId, change) => {
      writes += 1
      return opened.update(userId, change)
    },
  }
  const fake = await startFake()
  const bot = connecting(fake, { store })
  await bot.ready()
  const session = new Session()
  session.connect()
  await session.post('Profiler.enable')
  await session.post('Profiler.startPreciseCoverage', { callCount: true, detailed: false })
  const counted = async (act: () => Promise<unknown>) => {
    await callsOf(session)
    ;[reads, writes] = [0, 0]
    await act()
    await new Promise((done) => setTimeout(done, 50))
    return { counted: await callsOf(session), reads, writes }
  }
  try {
    for (const name of ['lime', 'lemon']) await fake.slash('jar start', { name, ...BATCH })
    await fake.slash('jar strain', { jar: 'lime', ...MEASURED })
    const strain = await counted(() => fake.slash('jar strain', { jar: 'lemon', ...MEASURED }))
    await fake.slash('jar show', { jar: 'lime' })
    const show = await counted(() => fake.slash('jar show', { jar: 'lemon' }))
    await fake.slash('jar list')
    const list = await counted(() => fake.slash('jar list'))
    const most = strain.counted.toSorted((one, other) => other.calls - one.calls).slice(0, MOST_NAMED)
    return {
      name: 'What one act in Discord takes, as counted by V8',
      rows: [
        ['/jar strain', shown(strain.counted, strain.reads, strain.writes), 'below 100,000 calls'],
        ...most.map(({ file, calls }): Row => [`  ${file}`, calls.toLocaleString('en-US')]),
        ['/jar show', shown(show.counted, show.reads, show.writes)],
        ['/jar list', shown(list.counted, list.reads, list.writes)],
      ],
    }
  } finally {
    await bot.end()
    await fake.stop()
    await opened.close()
    rmSync(folder, { recursive: true, force: true })
  }
}
