import { loadavg } from 'node:os'
import { join } from 'node:path'
import { commands } from '../../bot/commands/index.ts'
import { registrationOf } from '../../bot/discord/connect/registration.ts'
import { en } from '../../bot/text/en/index.ts'
import type { FakeDiscord } from '../bot/discord/fake/fake-discord.ts'
import { act, ask } from './discord-acts.ts'
import { type Begin, PEOPLE, root, type Side, withBot } from './discord-bot.ts'

type Row = [label: string, value: string, goal?: string]

const ASKERS = 200
const INTERACTIONS = 1000
const AT_ONCE = 16

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

/** A discord.js client that answers a constant, beside ours. */
async function beginBare(begin: Begin): Promise<Side> {
  const child = ['--import', 'tsx', join(import.meta.dirname, 'discord-bare-child.ts')]
  const bare = await begin(({ token, api }) => ({ argv: [...child, token, api], cwd: root, settings: {} }))
  await fetch(`${bare.fake.api}/v10/applications/${bare.fake.applicationId}/commands`, {
    method: 'PUT',
    headers: { authorization: `Bot ${bare.fake.token}`, 'content-type': 'application/json' },
    body: JSON.stringify(registrationOf(commands, en)),
  })
  return bare
}

/**
 * From an interaction that leaves the gateway to the first request about it that has arrived, all on loopback; nothing is
 * subtracted. Times are median / 99th percentile / longest.
 */
export const benchDiscord = (): Promise<{ name: string; rows: Row[] }> =>
  withBot(async (ours, begin) => {
    const early = shown(await askAll(ours.fake, INTERACTIONS, 1))
    await ours.bot.idle()
    const rows: Row[] = [
      ...(await speedRows(ours, await beginBare(begin))),
      [`${INTERACTIONS} interactions from the moment it connects, while everybody’s jars are read`, early],
    ]
    return { name: `Discord, median / 99th percentile / longest (load ${loadavg()[0]!.toFixed(1)} at the end)`, rows }
  })
