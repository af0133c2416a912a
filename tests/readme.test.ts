import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { commands } from '../bot/commands/index.ts'
import { answer, showText } from '../bot/console/answer.ts'
import { en } from '../bot/text/en/index.ts'
import { wordsOf } from '../bot/text/words-of.ts'

const README = readFileSync(join(import.meta.dirname, '..', 'README.md'), 'utf8')
const shown = [...README.matchAll(/```\nlarderbell> (.+)\n\n([\s\S]*?)\n```/g)].map(([, line = '', reply = '']) => ({
  line,
  reply,
}))

test('the README shows replies', () => {
  expect(shown.length).toBeGreaterThanOrEqual(2)
})

test.each(shown)('the README shows what $line answers', ({ line, reply }) => {
  const speech = { words: wordsOf(en), commands: en.commands, console: en.console }
  // The day that the README's dates count from.
  const dispatch = { commands, nowMs: Date.UTC(2026, 10, 25, 9), log: () => {} }
  expect(answer(line, dispatch, speech, showText({ width: 80, colour: false })).text).toBe(reply)
})
