import { type ChildProcess, execFileSync, spawn } from 'node:child_process'
import { appendFile, copyFile, readFile } from 'node:fs/promises'
import { join } from 'node:path'
import { PermissionFlagsBits } from 'discord.js'
import { afterEach, beforeEach, expect, it, vi } from 'vitest'
import { parseLine } from '../../../bot/chat/grammar/grammar.ts'
import { commands } from '../../../bot/commands/index.ts'
import { addDays } from '../../../core/quantity/time/calendar-day.ts'
import { dayAt, instantAt } from '../../../core/quantity/time/zone.ts'
import { openStore } from '../../../store/open/open-store.ts'
import { inFolder } from '../../store/in-folder.ts'
import { clockAhead } from './clock-ahead.ts'
import { type FakeDiscord, startFake } from './fake/fake-discord.ts'
import { buttonsOf, textOf } from './fake/shown-text.ts'
import type { Right } from './fake/world.ts'

const root = join(import.meta.dirname, '..', '..', '..')
const PATIENCE_MS = 30_000

const readme = await readFile(join(root, 'README.md'), 'utf8')
const { scripts } = JSON.parse(await readFile(join(root, 'package.json'), 'utf8'))
const section = `\n${readme}`.split('\n## In Discord\n')[1]?.split('\n## ')[0] ?? ''

/** The numbered lines, and what stands in them to be typed, in order. */
const steps = [...section.matchAll(/^(\d+)\. (.+)$/gm)].map(([, number, text = '']) => ({
  number: Number(number),
  text,
  typed: [...text.matchAll(/`([^`]+)`/g)].map(([, typed = '']) => typed),
}))
const typedIn = (number: number): readonly string[] => steps.find((step) => step.number === number)?.typed ?? []

/** What the link of line 7 lets the bot do. */
const link = new URL(typedIn(7)[0] ?? 'https://none.example')
const granted = BigInt(link.searchParams.get('permissions') ?? 0)

let fake: FakeDiscord
const children: ChildProcess[] = []

/** What the npm script `name` starts, in a folder that holds nothing but a `.env`. */
const run = (name: string, folder: string, { aheadMs = 0 } = {}) => {
  const [program, script = '', ...argv] = (
    ({ ...scripts, doctor: 'node bot/start.cjs doctor' } as Record<string, string>)[name] as string
  ).split(' ')
  expect(program).toBe('node')
  const settings = Object.entries(process.env).filter(([key]) => !/^(?:DISCORD|LARDERBELL)_|^NO_COLOR$/.test(key))
  const child = spawn(process.execPath, [...clockAhead(aheadMs), join(root, script), ...argv], {
    cwd: folder,
    env: { ...Object.fromEntries(settings), DISCORD_API: fake.api },
  })
  children.push(child)
  let said = ''
  for (const stream of [child.stdout, child.stderr]) {
    stream.on('data', (chunk) => {
      said += chunk
    })
  }
  const gone = new Promise<number | null>((resolve) => child.on('close', resolve))
  return {
    gone,
    said: () => said,
    says: (text: string) => vi.waitFor(() => expect(said).toContain(text), { timeout: PATIENCE_MS }),
    stop: async (): Promise<number | null> => {
      child.kill('SIGTERM')
      return gone
    },
  }
}

const slash = (line: string) => {
  const call = parseLine(line, commands)
  return fake.slash(call.path, { ...call.options }, { patienceMs: PATIENCE_MS })
}

beforeEach(async () => {
  fake = await startFake({ nowMs: Date.now })
})

afterEach(async () => {
  for (const child of children.splice(0)) child.kill('SIGKILL')
  await fake.stop()
  expect(fake.faults()).toEqual([])
})

it('the README has ten lines, and a link that grants what is needed and nothing else', () => {
  expect(steps.map(({ number }) => number)).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9, 10])
  expect(link.origin + link.pathname).toBe('https://discord.com/oauth2/authorize')
  expect(link.searchParams.get('scope')?.split(' ').sort()).toEqual(['applications.commands', 'bot'])
  const { ViewChannel, SendMessages, SendMessagesInThreads, ReadMessageHistory } = PermissionFlagsBits
  expect(granted).toBe(ViewChannel | SendMessages | SendMessagesInThreads | ReadMessageHistory)
})

it('leads from nothing to the first reminder', { timeout: 6 * PATIENCE_MS }, () =>
  inFolder(async (folder) => {
    // 4 and 5: `npm ci` is what made this test run.
    expect(typedIn(4)[0]).toBe('npm ci')
    await copyFile(join(root, '.env.example'), join(folder, '.env.example'))
    execFileSync('/bin/sh', ['-c', typedIn(4)[1]!], { cwd: folder })
    const [file, token, zone] = typedIn(5)
    await appendFile(join(folder, file!), `${token}${fake.token}\n${zone}\n`)

    // 6
    expect(typedIn(6)).toEqual(['npm start'])
    const [, greeting = ''] = /“(.+?) …”/.exec(steps[5]!.text) ?? []
    const bot = run('start', folder)
    await bot.says(greeting)
    await vi.waitFor(() => expect(fake.commands().length).toBeGreaterThan(10), { timeout: PATIENCE_MS })

    // 7: nothing in the channel but what the link grants.
    const rights: readonly Right[] = ['ViewChannel', 'SendMessages', 'ReadMessageHistory', 'AttachFiles', 'EmbedLinks']
    fake.deny(fake.channel, ...rights.filter((right) => (granted & PermissionFlagsBits[right]) === 0n))
    expect(fake.channel.denied).toEqual(new Set(['AttachFiles', 'EmbedLinks']))

    // 8 and 9
    const [, shown = ''] = /\*(.+?)\*/.exec(steps[7]!.text) ?? []
    const started = await slash(typedIn(8)[0]!)
    expect(started).toMatchObject({ isPrivate: true, text: expect.stringMatching(/^\*\*Lemon is started/) })
    expect((await fake.press(started.message, shown)).isPrivate).toBe(false)
    const [, here = '', elsewhere = ''] = /\*(.+?)\*.+?\*(.+?)\*/.exec(steps[8]!.text) ?? []
    expect((await fake.press(started.message, elsewhere)).text).toContain('private')
    expect((await fake.press(started.message, here)).text).toContain('this channel')
    expect([fake.channel, fake.dm(fake.user)].map(({ messages }) => messages.size)).toEqual([2, 1])
    expect(await bot.stop()).toBe(0)

    // 10, a night later.
    const zoneName = zone!.split('=')[1]!
    const nine = instantAt(zoneName, addDays(dayAt(zoneName, Date.now()), 1), 9 * 60)
    const aheadMs = nine + 1000 - Date.now()
    fake.clock.advance(aheadMs)
    const before = new Set(fake.channel.messages.keys())
    const next = run('start', folder, { aheadMs })
    const nudges = () => [...fake.channel.messages.values()].filter(({ json }) => !before.has(json.id))
    await vi.waitFor(() => expect(nudges()).toHaveLength(1), { timeout: PATIENCE_MS })
    const [nudge] = nudges()
    expect(textOf(nudge!.json)).toMatch(/lemon/)
    const [, done = ''] = /press \*(.+?)\*/.exec(steps[9]!.text) ?? []
    expect(buttonsOf(nudge!.json).map(({ label }) => label)).toContain(done)
    await fake.press(nudge, done, { patienceMs: PATIENCE_MS })
    const doctor = run('doctor', folder, { aheadMs })
    expect(await doctor.gone, doctor.said()).toBe(0)
    expect(doctor.said()).toMatch(/^Reminders are running\.\n[\s\S]* 1 running, 1 in all\n[\s\S]*Last sent +\d/)
    expect(await next.stop()).toBe(0)
    for (const said of [bot.said(), next.said(), doctor.said()]) expect(said).not.toContain(fake.token)

    const store = openStore({ folder: join(folder, 'data'), assumedZone: zoneName, nowMs: Date.now, log: () => {} })
    const { jars } = await store.read(fake.user.id)
    expect(jars[0]?.entries.map(({ kind }) => kind)).toEqual(['started', 'shaken'])
    await store.close()
  }),
)
