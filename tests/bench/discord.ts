import { linkSync, mkdirSync, mkdtempSync, readdirSync, rmSync } from 'node:fs'
import { loadavg, tmpdir } from 'node:os'
import { join } from 'node:path'
import { setTimeout as sleep } from 'node:timers/promises'
import { commands } from '../../bot/commands/index.ts'
import { registrationOf } from '../../bot/discord/registration.ts'
import { en } from '../../bot/text/en/index.ts'
import { type FakeDiscord, startFake } from '../bot/discord/fake/fake-discord.ts'
import { act, ask } from './discord-acts.ts'
import { type Measured, startMeasured } from './discord-process.ts'
import { NOW_MS, writeMakers } from './store-people.ts'

type Row = [label: string, value: string, goal?: string]

const PEOPLE = 100_000
const ASKERS = 200
const INTERACTIONS = 1000
const LONG_RUN = 100_000
const STEP = 20_000
const AT_ONCE = 16
/** What is remembered of pace is forgotten after a minute at most, in two looks. */
const FORGET_MS = 130_000

const root = join(import.meta.dirname, '..', '..')
const aheadMs = NOW_MS - Date.now()
const newFake = () => startFake({ nowMs: () => Date.now() + aheadMs })

const writes = (turn: number): boolean => turn % 5 === 2

const nth = (sorted: readonly number[], part: number): number => sorted[Math.ceil(part * sorted.length) - 1]!

const shown = (times: readonly number[]): string => {
  const sorted = times.toSorted((one, other) => one - other)
  return `${[0.5, 0.99, 1].map((part) => nth(sorted, part).toFixed(1)).join(' / ')} ms`
}

/** In groups of so many at once; how long each waited for its first answer. */
async function askAll(fake: FakeDiscord, count: number, together: number, from = 0): Promise<readonly number[]> {
  const times: number[] = []
  for (let first = 0; first < count; first += together) {
    const group = Array.from({ length: Math.min(together, count - first) }, (_, index) => from + first + index)
    const answers = await Promise.all(group.map((turn) => ask(fake, turn, Math.floor(turn / 5) % ASKERS)))
    times.push(...answers.map(({ firstAnswerMs }) => firstAnswerMs))
    fake.forget()
  }
  return times
}

/** The folder with its nightly copies made already, as on any day but the first. */
function writeFolder(folder: string): void {
  writeMakers(folder, PEOPLE)
  const [users, copies] = [join(folder, 'users'), join(folder, 'copies', new Date(NOW_MS).toISOString().slice(0, 10))]
  mkdirSync(copies, { recursive: true })
  for (const name of readdirSync(users)) linkSync(join(users, name), join(copies, name))
}

interface Side {
  readonly fake: FakeDiscord
  readonly bot: Measured
}

/** What a process works for one interaction, which a busy machine makes no longer. */
async function cpuOf({ bot }: Side, count: number, work: () => Promise<unknown>): Promise<string> {
  const before = (await bot.used()).cpuMs
  await work()
  return `${(((await bot.used()).cpuMs - before) / count).toFixed(2)} ms`
}

/** The bot and the constant, turn by turn, so that both meet the same machine. */
async function speedRows(ours: Side, bare: Side): Promise<Row[]> {
  const [our, their, written]: [number[], number[], number[]] = [[], [], []]
  await askAll(bare.fake, 50, 1)
  for (let turn = 0; turn < INTERACTIONS; turn++) {
    const person = Math.floor(turn / 5) % ASKERS
    const { firstAnswerMs } = await ask(ours.fake, turn, person)
    our.push(firstAnswerMs)
    if (writes(turn)) written.push(firstAnswerMs)
    their.push((await act(bare.fake, turn, person)).firstAnswerMs)
  }
  const together: (readonly number[])[] = []
  const cpu = ({ fake, bot }: Side) =>
    cpuOf({ fake, bot }, INTERACTIONS, async () => together.push(await askAll(fake, INTERACTIONS, AT_ONCE)))
  const [ourCpu, theirCpu] = [await cpu(ours), await cpu(bare)]
  const who = `${ASKERS} people among ${PEOPLE.toLocaleString('en-US')}`
  return [
    [`${INTERACTIONS} interactions of ${who}, one at a time`, shown(our), 'p99 below 100 ms'],
    ['  those that write', shown(written)],
    ['  a bare discord.js handler that answers a constant', shown(their)],
    [`${INTERACTIONS} interactions, ${AT_ONCE} at a time`, shown(together[0]!)],
    ['  bare', shown(together[1]!)],
    ['processor time for one of these', ourCpu],
    ['  bare', theirCpu],
  ]
}

async function memoryRows(fake: FakeDiscord, bot: Measured): Promise<Row[]> {
  const text = async (): Promise<string> => {
    const { rssMb, heapMb } = await bot.used()
    return `${rssMb.toFixed(0)} MB resident, ${heapMb.toFixed(1)} MB of heap in use`
  }
  const rows: Row[] = [['memory before', await text()]]
  let turn = 0
  while (turn < LONG_RUN) {
    const upTo = turn + STEP
    // What the fake keeps is dropped while nothing is open.
    while (turn < upTo) {
      const until = Math.min(upTo, turn + 1000)
      await Promise.all(
        Array.from({ length: AT_ONCE }, async () => {
          while (turn < until) await ask(fake, turn, (turn++ * 7) % PEOPLE)
        }),
      )
      fake.forget()
    }
    rows.push([`  after ${turn.toLocaleString('en-US')} interactions`, await text()])
  }
  await sleep(FORGET_MS)
  rows.push([`  ${FORGET_MS / 1000} s later`, await text(), 'no growth'])
  return rows
}

/**
 * From an interaction that leaves the gateway to the first request about it that has arrived, all on loopback, the bot in
 * a process of its own as `npm start` starts it; nothing is subtracted. Times are median / 99th percentile / longest.
 */
export async function benchDiscord(): Promise<{ name: string; rows: Row[] }> {
  const folder = mkdtempSync(join(tmpdir(), 'larderbell-bench-'))
  const [ours, bare] = [await newFake(), await newFake()]
  const started: Measured[] = []
  try {
    writeFolder(folder)
    const settings = {
      LARDERBELL_DATA: folder,
      LARDERBELL_ZONE: 'Europe/Rome',
      DISCORD_TOKEN: ours.token,
      DISCORD_API: ours.api,
    }
    const bot = await startMeasured({ argv: [join(root, 'bot', 'start.cjs')], cwd: folder, settings, aheadMs })
    started.push(bot)
    const child = ['--import', 'tsx', join(import.meta.dirname, 'discord-bare-child.ts'), bare.token, bare.api]
    const constant = await startMeasured({ argv: child, cwd: root, settings: {}, aheadMs })
    started.push(constant)
    await fetch(`${bare.api}/v10/applications/${bare.applicationId}/commands`, {
      method: 'PUT',
      headers: { authorization: `Bot ${bare.token}`, 'content-type': 'application/json' },
      body: JSON.stringify(registrationOf(commands, en)),
    })
    while (ours.commands().length === 0) await sleep(10)
    const early = shown(await askAll(ours, INTERACTIONS, 1))
    await bot.idle()
    const rows = [
      ...(await speedRows({ fake: ours, bot }, { fake: bare, bot: constant })),
      [`${INTERACTIONS} interactions from the moment it connects, while everybody’s jars are read`, early] as Row,
      ...(await memoryRows(ours, bot)),
    ]
    const faults = [...ours.faults(), ...bare.faults()]
    if (faults.length > 0) throw new Error(JSON.stringify(faults[0]))
    return { name: `Discord, median / 99th percentile / longest (load ${loadavg()[0]!.toFixed(1)} at the end)`, rows }
  } finally {
    for (const one of started) await one.stop()
    await ours.stop()
    await bare.stop()
    rmSync(folder, { recursive: true, force: true })
  }
}
