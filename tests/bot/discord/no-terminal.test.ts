import { describe, expect, it } from 'vitest'
import type { Command } from '../../../bot/chat/command.ts'
import { help } from '../../../bot/chat/run/help.ts'
import { registrationOf } from '../../../bot/discord/connect/registration.ts'
import { speechIn } from '../../../bot/discord/show/language-for-discord.ts'
import { toMessages } from '../../../bot/discord/show/to-messages.ts'
import { en } from '../../../bot/text/en/index.ts'
import { commands } from '../test-desk.ts'
import { TERMINAL_WORDS } from './terminal-words.ts'

/** What only a terminal is told, by its key; each says it after a value that Discord never gives. */
const TERMINAL_ALONE: Readonly<Record<string, string>> = {
  'notes.jars_set_aside': 'with the name of a file',
  'problems.file_not_found': 'files come along in Discord',
  'problems.file_unreadable': 'files come along in Discord',
  'problems.no_token': 'of the settings of whoever runs me',
  'problems.no_line': 'of the line that starts me',
  'problems.bad_argument': 'of the line that starts me',
  'problems.bad_flag': 'of the line that starts me',
  'problems.bad_instant': 'of the line that starts me',
  'problems.bad_zone': 'of the settings of whoever runs me',
  'problems.bad_api': 'of the settings of whoever runs me',
  'problems.bad_guild': 'of the settings of whoever runs me',
  'problems.bad_width': 'of the settings of whoever runs me',
}

/** The words between quotes in a sentence's source. */
const wordsIn = (sentence: unknown): string =>
  typeof sentence === 'function'
    ? [...String(sentence).matchAll(/"(?:[^"\\]|\\.)*"|'(?:[^'\\]|\\.)*'|`(?:[^`\\]|\\.)*`/g)]
        .map(([text]) => text.replaceAll(/\$\{[^}]*\}/g, ' '))
        .join('\n')
    : String(sentence)

/** Every sentence within, by its key. */
const within = (texts: unknown, key: string): readonly (readonly [string, string])[] =>
  typeof texts === 'object' && texts !== null
    ? Object.entries(texts).flatMap(([name, inner]) => within(inner, `${key}.${name}`))
    : [[key, wordsIn(texts)]]

const { sentences, discord, calls, suggestions, registration } = en
const forms = [en.tastingForm, en.strainingForm, en.sweeteningForm, en.bottlingForm, en.makeForm, en.retypeForm]

const said = [
  ...Object.entries(sentences).flatMap(([group, texts]) => within(texts, group)),
  ...within({ ...en.problems, ...en.problemsInDiscord }, 'problems'),
  ...within({ discord, calls, suggestions, forms, choices: registration.choices }, 'said'),
]

describe('no word of a terminal', () => {
  it('stands in a sentence that can be shown in Discord', () => {
    expect(said.length).toBeGreaterThan(500)
    const found = said.filter(([, text]) => TERMINAL_WORDS.test(text))
    expect(found.filter(([key]) => !(key in TERMINAL_ALONE))).toEqual([])
    expect(found.map(([key]) => key).toSorted()).toEqual(Object.keys(TERMINAL_ALONE).toSorted())
  })

  it('stands in the list of commands', () => {
    const texts = within(registrationOf(commands, en), 'registered').map(([, text]) => text)
    expect(texts.filter((text) => TERMINAL_WORDS.test(text))).toEqual([])
  })

  it.each(['', ...commands.map(({ path }) => path)])('stands in the help page of /%s', (path) => {
    const page = help(`/help ${path}`, commands as readonly Command[], { commands: en.commands, about: en.help.about })
    const rendering = { owner: '123456789012345678', isPrivate: true, pings: false, ids: new Map(), mostMessages: 5 }
    expect(JSON.stringify(toMessages(page!, rendering, speechIn(en, 'UTC')))).not.toMatch(TERMINAL_WORDS)
  })
})
