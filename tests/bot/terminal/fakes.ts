import { Readable } from 'node:stream'
import type { Call } from '../../../bot/calls/call.ts'
import { lineOf } from '../../../bot/calls/write-line.ts'
import type { TerminalSession } from '../../../bot/terminal/chat/terminal-session.ts'
import type { TerminalLanguage } from '../../../bot/terminal/show/language-for-terminal.ts'
import { englishFormat } from '../../../bot/text/en/format.ts'
import { helpText } from '../../../bot/text/en/help.ts'
import { moreText } from '../../../bot/text/en/more.ts'
import { chatProblems } from '../../../bot/text/en/problems.ts'
import { consoleText } from '../../../bot/text/en/terminal.ts'
import type { Format } from '../../../bot/text/format.ts'
import type { Words } from '../../../bot/text/words.ts'
import { newAsker } from '../asker.ts'
import { fakeCommands } from '../chat/fakes.ts'
import { noFiles } from '../test-desk.ts'

interface FakeMessage {
  readonly key: string
  readonly values: { readonly text?: string } | undefined
}

/** Words that say a message's own text, or its key; the chat's problems in English. */
const fakeWords = {
  say: ({ key, values }: FakeMessage) => {
    if (key === 'fault') throw new TypeError('no such sentence')
    return values?.text ?? key
  },
  line: (call: Call) => lineOf(call),
  problem: (key: string, values: never) =>
    (chatProblems as Record<string, (values: never, format: Format) => string>)[key]?.(
      values,
      englishFormat('metric'),
    ) ?? key,
} as unknown as Words

const textOf = (path: string, options: Record<string, string> = {}) => ({
  summary: `About ${path}`,
  options,
  examples: [`/${path} 1 l strength:95%`],
})

export const fakeSpeech: TerminalLanguage = {
  words: fakeWords,
  dataWords: fakeWords,
  console: consoleText,
  more: moreText,
  help: helpText,
  commands: {
    ...Object.fromEntries(fakeCommands.map(({ path }) => [path, textOf(path)])),
    mix: textOf('mix', { spirit: 'How much spirit', strength: 'Its strength', water: 'How much water' }),
  },
}

/** A desk that keeps what it prints. */
export const fakeDesk = (input: string | readonly string[] = '', more: Partial<TerminalSession> = {}) => {
  const printed = { out: '', err: '', log: '' }
  const desk: TerminalSession = {
    commands: fakeCommands,
    asker: newAsker(),
    speech: fakeSpeech,
    speechIn: () => fakeSpeech,
    screen: { width: 80, colour: false },
    saveFile: noFiles,
    now: () => 0,
    log: (text) => {
      printed.log += text
    },
    out: (text) => {
      printed.out += text
    },
    err: (text) => {
      printed.err += text
    },
    isHeard: () => true,
    ended: new AbortController().signal,
    remind: async () => async () => {},
    input: Readable.from(typeof input === 'string' ? [input] : input),
    terminal: null,
    ...more,
  }
  return { desk, printed }
}
