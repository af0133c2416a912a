import { describe, expect, it } from 'vitest'
import { parseLine } from '../../../bot/chat/grammar/grammar.ts'
import { help } from '../../../bot/chat/run/help.ts'
import { HELP_TOPICS } from '../../../bot/chat/run/help-page.ts'
import type { CommandText } from '../../../bot/text/command-text.ts'
import { cookName } from '../../../bot/text/en/cook-names.ts'
import { en } from '../../../bot/text/en/index.ts'
import { catalogue } from '../../../core/botanical/catalogue/catalogue.ts'
import { sampled } from '../../runs.ts'
import { newAsker } from '../asker.ts'
import { messagesOf } from '../discord/rendering.ts'
import { flat } from '../flat.ts'
import { commands, testDesk } from '../test-desk.ts'
import { budgets } from './budgets.ts'
import { drawnLines } from './discord-screens.ts'
import { tooLong } from './first-screens.ts'

const START_MS = Date.UTC(2026, 8, 1, 9)
const texts = { commands: en.commands, about: en.help.about }

const inDiscord = async (outcome: Parameters<typeof messagesOf>[0]): Promise<readonly string[]> =>
  (await messagesOf(outcome, { more: '!more' })).flatMap(drawnLines)

/** What somebody may look for who knows no command. */
const WORDS = ['filter', 'freezer', 'honey', 'sugar', 'label', 'undo', 'units', 'cups', 'strain', 'mistake', 'price']

const all: Readonly<Record<string, CommandText>> = en.commands
const PATHS = Object.keys(all)
const OPTIONS = [...new Set(Object.values(all).flatMap(({ options }) => Object.keys(options)))]
const ASKED = [...HELP_TOPICS, ...PATHS, ...OPTIONS, ...WORDS, ...texts.about().flatMap(({ words }) => words)]

describe('help', () => {
  it('takes no more lines than it may, of any topic, command, option or word', async () => {
    const lines = ['/help', '/jar', ...ASKED.map((word) => `/help ${word}`)]
    expect(await tooLong(lines, (columns) => budgets.help_of[columns])).toEqual([])
  })

  it('takes no more lines than it may on a phone in Discord', async () => {
    const over: string[] = []
    for (const word of ASKED) {
      const page = help(`/help ${word}`, commands, texts)!
      const lines = await inDiscord(page)
      if (lines.length > budgets.help_of[44]) over.push(`${word}: ${lines.length}\n${lines.join('\n')}`)
    }
    expect(over).toEqual([])
  })

  it.each([...new Set(ASKED)])('answers %s with a line that runs', async (word) => {
    const page = help(`/help ${word}`, commands, texts)
    expect(page?.ok, word).toBe(true)
    if (page?.ok !== true) return
    const lines = page.lines?.map(({ line }) => line) ?? page.entries.flatMap(({ examples }) => examples)
    expect(lines.length).toBeGreaterThan(0)
    for (const line of lines.filter((each) => each.startsWith('/'))) {
      const { path, options } = parseLine(line, commands)
      const command = commands.find((each) => each.path === path)!
      expect(command.input.safeParse(options).success, line).toBe(true)
    }
  })

  it('tells all of a command, of a topic and of every command to who asks for it', async () => {
    const { firstOf } = testDesk({ nowMs: START_MS })
    for (const path of PATHS) {
      const text = flat(await firstOf(`/help ${path} all`))
      for (const name of Object.keys(all[path]!.options)) expect(text, path).toContain(`${name}:`)
    }
    expect(await firstOf('/help jars all')).toContain('/jar undo')
    expect(await firstOf('/help jars')).toContain('The rest: /help jars all')
  })

  it('takes a slip for the word it is near to, and says so of a word that nobody knows', async () => {
    const { firstOf } = testDesk({ nowMs: START_MS })
    expect(await firstOf('/help hony')).toContain('sugar:honey')
    expect(await firstOf('/help xqzzw')).toMatch(/don’t know “xqzzw”.*\/plan/s)
  })
})

describe('cautions', () => {
  it('take no more lines than they may, of any plant', async () => {
    const lines = sampled(catalogue, 8).map(({ id }) => `/cautions of:${cookName(id)}`)
    expect(await tooLong(lines, (columns) => budgets.cautions[columns])).toEqual([])
  })

  it('take a few more of several plants', async () => {
    const { 80: wide, 44: narrow, more } = budgets.cautions
    const lines = ['/cautions of:8 lemons + 30 g ginger + 2 cloves', '/cautions of:sloes + wormwood + honey']
    const most = { 80: wide + 2 * more[80], 44: narrow + 2 * more[44] }
    expect(await tooLong(lines, (columns) => most[columns])).toEqual([])
  })

  it('take no more lines than they may on a phone in Discord', async () => {
    const over: string[] = []
    for (const { id } of sampled(catalogue, 10)) {
      const outcome = await testDesk({ nowMs: START_MS, asker: { ...newAsker(), place: { kind: 'private' } } }).run(
        `/cautions of:${cookName(id)}`,
      )
      const lines = await inDiscord(outcome)
      if (lines.length > budgets.cautions[44]) over.push(`${id}: ${lines.length}\n${lines.join('\n')}`)
    }
    expect(over).toEqual([])
  })

  it('begin with what the plant itself can do, and say first what kills in any jar', async () => {
    const text = await testDesk({ nowMs: START_MS, width: 400 }).firstOf('/cautions rhubarb')
    const [first, ...others] = text.split('\n').filter((line) => line.startsWith('!'))
    expect(first).toMatch(/leaf is poisonous/i)
    expect(others.join(' ')).toMatch(/can blind or kill.*flame.*child/is)
  })
})
