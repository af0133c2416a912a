import { afterAll, afterEach, beforeAll, expect, it } from 'vitest'
import { optionTextOf } from '../../../bot/calls/option.ts'
import { parseLine } from '../../../bot/chat/grammar/grammar.ts'
import { en } from '../../../bot/text/en/index.ts'
import type { Person } from '../../../store/person.ts'
import { MADE } from '../said.ts'
import { commands } from '../test-desk.ts'
import { type Connected, connecting } from './connected.ts'
import { type Answer, pagesOf } from './fake/answer.ts'
import { type FakeDiscord, startFake } from './fake/fake-discord.ts'
import { buttonsOf } from './fake/shown-text.ts'
import { speech } from './rendering.ts'
import { TERMINAL_WORDS } from './terminal-words.ts'

let fake: FakeDiscord
let bot: Connected

beforeAll(async () => {
  fake = await startFake()
  bot = connecting(fake)
  await bot.ready()
  bot.logged.splice(0)
})

let known = 0

afterEach(() => {
  const faults = fake.faults().slice(known)
  known += faults.length
  expect([faults, bot.logged.splice(0)]).toEqual([[], []])
})

afterAll(async () => {
  expect(await bot.end()).toBe(0)
  await fake.stop()
})

const DAY_MS = 24 * 3_600_000

const LEMON = '/jar start lemon of:10 lemons spirit:1 l 95% to-strength:30% to-sweetness:250 g/L'
const NOTHING: readonly string[] = []
const STARTED = [LEMON]
const STRAINED = [LEMON, '/jar strain lemon measured:920 ml strength:78%']
const SWEETENED = [...STRAINED, '/jar sweeten lemon water:750 ml sugar:560 g']
const GINGER = ['/jar start ginger of:30 g dried ginger spirit:1 l 60%', '/jar add ginger of:1 dried chilli']
const TWO = [
  ...STRAINED,
  '/jar start orange of:5 oranges spirit:1 l 95%',
  '/jar strain orange measured:900 ml strength:80%',
]
const RUMPOT = ['/jar start rumpot of:500 g strawberries spirit:1 l 54%']
const SLOE = ['/jar start sloe of:500 g sloes spirit:700 ml 40%', '/jar strain sloe measured:620 ml']
const DONE = [...SWEETENED, '/jar bottle lemon bottles:3 x 500 ml', '/jar open lemon', '/jar empty lemon']

/** What has to have happened before an example means something; of a command, or of one of its examples. */
const BEFORE: Readonly<Record<string, readonly string[]>> = {
  '/jar take-out': GINGER,
  '/jar combine': TWO,
  '/jar add rumpot': RUMPOT,
  '/jar sweeten sloe': SLOE,
  '/jar sweeten': STRAINED,
  '/jar filter': SWEETENED,
  '/jar bottle': SWEETENED,
  '/jar open': SWEETENED,
  '/jar empty': SWEETENED,
  '/jar start': NOTHING,
  '/jar correct lemon measured': STRAINED,
  '/jar correct lemon entry:3': SWEETENED,
  '/jar': STARTED,
  '/notebook compare': [...DONE, LEMON.replace('lemon', 'walnut')],
  '/again': DONE,
  '/calendar': STARTED,
  '/share lemon': STARTED,
}

const before = (line: string): readonly string[] =>
  Object.entries(BEFORE).find(([of]) => line.startsWith(of))?.[1] ?? NOTHING

/** A choice is sent as it was registered, whatever its case in a line. */
const chosen = (option: string, text: string): string => (option === 'region' ? text.toLowerCase() : text)

const send = (line: string, user = fake.newUser('maker')) => {
  const { path, options } = parseLine(line, commands)
  const typed = Object.fromEntries(Object.entries(options).map(([name, text]) => [name, chosen(name, text)]))
  return fake.slash(path, typed, { user })
}

const examples = Object.values(en.commands).flatMap((text) => text.examples)

const makers = new Map<readonly string[], Promise<Person>>()

const made = async (lines: readonly string[]): Promise<Person> => {
  const user = fake.newUser('maker')
  for (const line of lines) await send(line, user)
  bot.pass(DAY_MS)
  return bot.store.read(user.id)
}

/** Somebody new who has done all that, a day ago. */
const makerAfter = async (lines: readonly string[]) => {
  const person = await (makers.get(lines) ?? makers.set(lines, made(lines)).get(lines)!)
  const user = fake.newUser('maker')
  await bot.store.update(user.id, () => person)
  return user
}

it('has an example of every command', () => {
  const paths = examples.map((line) => parseLine(line, commands).path)
  expect([...new Set(paths)].sort()).toEqual(commands.map(({ path }) => path).sort())
})

/** Of a file that is sent along; those are tested where files are. */
const takesFile = (line: string): boolean => {
  const { path, options } = parseLine(line, commands)
  const { shape } = commands.find((command) => command.path === path)!.input
  return Object.keys(options).some((name) => optionTextOf((shape as Record<string, unknown>)[name]).isFile)
}

/** Nobody else’s business. */
const CONFIDENTIAL = /^\/(?:forget|cost|calendar|notebook export:)/

it.each(examples.filter((line) => !takesFile(line)))('answers %s', async (line) => {
  const user = await makerAfter(before(line))
  const answer = await send(line, user)
  // What draws a file is promised first.
  const isPublic = line === '/share lemon'
  expect(answer).toMatchObject({ isPrivate: !isPublic, wasDeferred: answer.files.length > 0 })
  // An answer's first line stands out; a sentence about what was wrong does not.
  expect(answer.text).toMatch(/^\*\*.+\*\*/)
  expect(answer.text).not.toMatch(/undefined|null|NaN|\[object/)
  expect(answer.text).not.toMatch(TERMINAL_WORDS)
  const labels = buttonsOf(answer.message!.json).map(({ label }) => label)
  if (isPublic) expect(labels).toContain(en.sentences.actions.make_too())
  else expect(labels.includes(en.discord.showEverybody())).toBe(!CONFIDENTIAL.test(line))
})

it('helps with all commands, and with one', async () => {
  const first = await fake.slash('help')
  for (const { what } of en.help.first()) expect(first.text).toContain(what)
  const last = commands.at(-1)!.path
  const until = (answer: Answer) => pagesOf(answer).includes(`</${last}:`)
  const all = pagesOf(await fake.slash('help', { command: 'all' }, { until }))
  for (const { path } of commands) expect(all).toContain(`</${path}:`)
  const one = await fake.slash('help', { command: 'jar start' })
  expect(one.text).toContain('/jar start')
  expect(one.text).toContain('of:')
  expect((await fake.slash('help', { command: 'jar strat' })).text).toBe(
    speech.words.problem('unknown_command', { typed: 'jar strat', nearest: 'jar start' }, 'metric'),
  )
})

it('says a wrong value in a sentence, in private', async () => {
  const answer = await fake.slash('syrup', { infusion: '1,000 ml', strength: '90%' })
  expect(answer.isPrivate).toBe(true)
  expect(answer.text).toContain('1,000 ml')
})

it('completes what is typed: my jars, and nobody else’s', async () => {
  const user = fake.newUser('maker')
  await send(LEMON, user)
  const { choices } = await fake.autocomplete('jar show', { jar: 'lem' }, 'jar', { user })
  expect(choices).toEqual([{ name: 'lemon', value: expect.stringMatching(/^#\w{5}$/) }])
  const other = fake.newUser('somebody')
  expect((await fake.autocomplete('jar show', { jar: '' }, 'jar', { user: other })).choices).toEqual([])
  const shown = await fake.slash('jar show', { jar: String(choices[0]!.value) }, { user })
  expect(shown.text).toMatch(/^\*\*Next for lemon: /)
  const shownOther = await fake.slash('jar show', { jar: String(choices[0]!.value) }, { user: other })
  expect(shownOther.text).toBe(speech.words.problem('no_jars', {}, 'metric'))
})

it('takes commands of an older list with a sentence', async () => {
  const old = { isOld: true } as const
  const stir = speech.words.problem('unknown_command', { typed: 'stir', nearest: null }, 'metric')
  expect((await fake.slash('stir', {}, old)).text).toBe(stir)
  expect((await fake.slash('jar wobble', { jar: 'lemon' }, old)).text).toContain('jar wobble')
  expect((await fake.slash('jar', {}, old)).text).toContain('/plan')
  const option = await fake.slash('mix', { spirit: '1 l', strenth: '95%' }, old)
  expect(option.text).toContain('Did you mean strength:?')
  expect((await fake.slash('serving', { pour: 30, strength: '30%' }, old)).text).toContain('30')
  expect((await fake.slash('mix', { spirit: 'x'.repeat(6000) }, old)).text).toBe(en.problems.line_too_long())
})

it('knows where it was asked', async () => {
  const user = fake.newUser('maker')
  fake.join(fake.guild, user)
  const elsewhere = fake.newChannel(fake.newGuild('elsewhere', { hasBot: false }), 'talk')
  for (const channel of [fake.channel, fake.newGroup('two', user, fake.user), elsewhere]) {
    const answer = await fake.slash('mix', { spirit: '1 l', strength: '95%', water: '1 l' }, { user, channel })
    expect(answer.text).toMatch(MADE)
    expect(answer.isPrivate).toBe(true)
    const shown = await fake.press(answer.message, en.discord.showEverybody(), { user })
    expect(shown).toMatchObject({ text: answer.text, isPrivate: false })
  }
  const placed = async (channel: typeof fake.channel) => {
    await fake.slash('reminders', { place: 'here' }, { user, channel })
    return (await bot.store.read(user.id)).settings.place
  }
  expect(await placed(fake.channel)).toEqual({ kind: 'channel', channelId: fake.channel.id })
  expect(await placed(fake.dm(user))).toEqual({ kind: 'private' })
})
