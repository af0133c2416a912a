import { linkSync, mkdirSync, mkdtempSync, readdirSync, rmSync } from 'node:fs'
import { createRequire } from 'node:module'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { setTimeout as sleep } from 'node:timers/promises'
import { type FakeDiscord, startFake } from '../bot/discord/fake/fake-discord.ts'
import { type Measured, type Start, startMeasured } from './discord-process.ts'
import { NOW_MS, writeMakers } from './store-people.ts'

export const PEOPLE = 100_000

export const root = join(import.meta.dirname, '..', '..')
const aheadMs = NOW_MS - Date.now()

/** The stamps that a running bot believes. */
const { reminderRules } = createRequire(import.meta.url)('../../bot/reminder-rules.cjs') as { reminderRules(): string }

const newFake = () => startFake({ nowMs: () => Date.now() + aheadMs })

/** The folder with its nightly copies made already, as on any day but the first. */
function writeFolder(folder: string): void {
  writeMakers(folder, PEOPLE, reminderRules())
  const [users, copies] = [join(folder, 'users'), join(folder, 'copies', new Date(NOW_MS).toISOString().slice(0, 10))]
  mkdirSync(copies, { recursive: true })
  for (const name of readdirSync(users)) linkSync(join(users, name), join(copies, name))
}

export interface Side {
  readonly fake: FakeDiscord
  readonly bot: Measured
}

/** Starts one more bot, connected to a fake of its own. */
export type Begin = (start: (fake: FakeDiscord) => Omit<Start, 'aheadMs'>) => Promise<Side>

/** The bot as `npm start` starts it, in a process of its own, connected to a fake, with the folder of many people. */
export async function withBot<Result>(work: (ours: Side, begin: Begin) => Promise<Result>): Promise<Result> {
  const folder = mkdtempSync(join(tmpdir(), 'larderbell-bench-'))
  const sides: Side[] = []
  const begin: Begin = async (start) => {
    const fake = await newFake()
    const side = { fake, bot: await startMeasured({ ...start(fake), aheadMs }) }
    sides.push(side)
    return side
  }
  try {
    writeFolder(folder)
    const ours = await begin(({ token, api }) => ({
      argv: [join(root, 'bot', 'start.cjs')],
      cwd: folder,
      settings: {
        LARDERBELL_DATA: folder,
        LARDERBELL_ZONE: 'Europe/Rome',
        DISCORD_TOKEN: token,
        DISCORD_API: api,
      },
    }))
    while (ours.fake.commands().length === 0) await sleep(10)
    const result = await work(ours, begin)
    const [fault] = sides.flatMap(({ fake }) => fake.faults())
    if (fault !== undefined) throw new Error(JSON.stringify(fault))
    return result
  } finally {
    for (const { fake, bot } of sides) {
      await bot.stop()
      await fake.stop()
    }
    rmSync(folder, { recursive: true, force: true })
  }
}
