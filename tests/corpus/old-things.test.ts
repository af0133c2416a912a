import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { openFile } from '../../bot/terminal/files/open-file.ts'
import { openStore } from '../../store/open/open-store.ts'
import { NOBODY, type Person } from '../../store/person.ts'
import type { Store } from '../../store/store.ts'
import { newAsker } from '../bot/asker.ts'
import { type Connected, connecting } from '../bot/discord/connected.ts'
import type { Answer } from '../bot/discord/fake/answer.ts'
import { type ComponentNode, walk } from '../bot/discord/fake/component-node.ts'
import { type FakeDiscord, startFake } from '../bot/discord/fake/fake-discord.ts'
import { idFor } from '../bot/discord/stand-in/kept-world.ts'
import { testDesk } from '../bot/test-desk.ts'
import { differences } from './differences.ts'

// A person of the third version, with fourteen jars, kept lines, kept forms and shares; the buttons that stood below their
// answers; codes and an export of that time. What they give was recorded then (LARDERBELL_RETELL=1 records it anew): what is
// entered, data, keys and forms, no wording. New fields may come along.

const OLD = join(import.meta.dirname, 'old')
const SAID = join(OLD, 'said.json')
const OWNER = '661836653619787508'
const NOW_MS = Date.UTC(2026, 10, 25, 9)
const isRetelling = process.env.LARDERBELL_RETELL !== undefined

const read = (path: string) => JSON.parse(readFileSync(path, 'utf8'))

const presses: readonly string[] = read(join(OLD, 'presses.json'))

const LINES = [
  '/jar list',
  '/notebook',
  '/notebook compare:lemon + basil',
  '/reminders',
  '/settings',
  ...[
    'lemon',
    'walnut',
    'basil',
    'two spirits',
    'berry',
    'feijoa',
    'dried orange peel',
    'green tea',
    'from a code',
  ].map((name) => `/jar show ${name}`),
  '/jar show a very long name',
  '/jar show thrown away',
  '/jar show basil 2',
  '/jar show lemon once more',
  '/syrup jar:walnut',
  '/syrup jar:two spirits',
  '/again lemon spirit:500 ml 70%',
  '/again a very long name for the winter fair',
  '/again from a code spirit:1 l 60%',
  '/jar correct lemon entry:1 of:12 lemons',
  '/jar correct two spirits spirit:800 ml 75.5% + 375 ml 40%',
  '/jar undo feijoa',
  '/jar strain berry measured:1.1 l',
  '/plan from:11M4QTHJ0001MYJ0JNHC00VV9QPCBAHF5DGB80V3',
  '/plan from:11NCHSTJ8P501JQH0JNHC00VV9SW4H50HFEB52FV6N spirit:700 ml 70%',
  `/notebook import:${join('tests', 'corpus', 'files', 'three-jars.json')}`,
]

/** What a change enters, jar by jar. */
const entered = (before: Person, after: Person): readonly string[] =>
  after.jars.flatMap(({ id, entries }) => {
    const old = before.jars.find((jar) => jar.id === id)?.entries.length ?? 0
    return entries.slice(old).map(({ kind }) => `${id} ${kind}`)
  })

/** Keeps one person, who is as before once the changes are asked for. */
const forgettingStore = (person: Person) => {
  const changes: string[] = []
  let now = person
  const personOf = (userId: string): Person => (userId === OWNER ? now : NOBODY)
  const store: Store = {
    read: async (userId) => personOf(userId),
    update: async (userId, change) => {
      const before = personOf(userId)
      const after = change(before)
      if (after === null) return before
      changes.push(...entered(before, after))
      for (const [name, value] of Object.entries(after.settings))
        if (before.settings[name as keyof Person['settings']] !== value)
          changes.push(`settings ${name} ${JSON.stringify(value)}`)
      if (after.shares.length !== before.shares.length) changes.push(`${after.shares.length} shares`)
      if (userId === OWNER) now = after
      return after
    },
    remove: async () => {
      changes.push('removed')
      return { jars: 0, entries: 0, copies: 0 }
    },
    claimDue: async () => [],
    close: async () => undefined,
  }
  const forget = (): readonly string[] => {
    now = person
    return changes.splice(0)
  }
  return { store, forget }
}

const folder = mkdtempSync(join(tmpdir(), 'larderbell-old-'))
let people: ReturnType<typeof forgettingStore>
let fake: FakeDiscord
let bot: Connected

beforeAll(async () => {
  cpSync(join(OLD, 'users'), join(folder, 'users'), { recursive: true })
  const log: string[] = []
  const stored = openStore({ folder, assumedZone: 'UTC', nowMs: () => NOW_MS, log: (text) => log.push(text) })
  people = forgettingStore(await stored.read(OWNER))
  await stored.close()
  expect(log).toEqual([])
  fake = await startFake({ idFor })
  bot = connecting(fake, { store: people.store })
  await bot.ready()
})

afterAll(async () => {
  await bot.end()
  await fake.stop()
  rmSync(folder, { recursive: true })
})

const fieldsOf = ({ modal }: Answer) =>
  walk((modal?.components ?? []) as readonly ComponentNode[]).flatMap(({ custom_id, value = '' }) =>
    custom_id === undefined ? [] : [[custom_id, value]],
  )

/** The first numbers in the first line of an answer. */
const figures = (text: string): string => (text.split('\n')[0]!.match(/\d+/g) ?? []).slice(0, 3).join(' ')

/** So that nobody presses too often a minute. */
const PAUSE_MS = 5000

const pressed = async (customId: string): Promise<unknown> => {
  bot.pass(PAUSE_MS)
  fake.clock.advance(PAUSE_MS)
  const { message } = await fake.slash('serving', { pour: '30 ml', strength: '30%' })
  people.forget()
  const answer = await fake.press(message, { customId })
  return { enters: people.forget(), form: fieldsOf(answer), figures: answer.modal ? '' : figures(answer.text) }
}

/** Words, the ± of models and the freezing point may become better; what was kept is read as it was. */
const REWORKED = /^(?:text|message|freezes.*|.*PlusMinus)$/

const withoutReworked = (value: unknown): unknown =>
  JSON.parse(JSON.stringify(value, (key, inner) => (REWORKED.test(key) ? undefined : inner)))

const told = async (line: string): Promise<unknown> => {
  const asker = { ...newAsker(), userId: OWNER, store: people.store, openFile }
  people.forget()
  const said = withoutReworked(await testDesk({ nowMs: NOW_MS, asker }).jsonOf(line))
  return { said, enters: people.forget() }
}

const allTold = async (asked: readonly string[], tell: (what: string) => Promise<unknown>) => {
  const all: Record<string, unknown> = {}
  for (const one of asked) all[one] = await tell(one)
  return all
}

const expectAsRecorded = (all: Readonly<Record<string, unknown>>, what: 'presses' | 'lines'): void => {
  if (isRetelling) {
    let said = {}
    try {
      said = read(SAID)
    } catch {}
    writeFileSync(SAID, `${JSON.stringify({ ...said, [what]: all }, null, 1)}\n`)
  }
  const lost = differences(read(SAID)[what], all).filter(({ before }) => before !== undefined)
  expect(lost).toEqual([])
}

it('old buttons do what they did, kept lines and kept forms among them', async () => {
  expectAsRecorded(await allTold(presses, pressed), 'presses')
  expect(fake.faults()).toEqual([])
})

it('old jars, codes and exports give what they gave', async () => {
  expectAsRecorded(await allTold(LINES, told), 'lines')
})
