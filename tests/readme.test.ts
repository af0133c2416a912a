import { readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { playSeason } from '../bot/demo/play-demo.ts'
import { noPause } from '../bot/demo/tour.ts'
import { seasonText } from '../bot/text/en/demo.ts'
import { en } from '../bot/text/en/index.ts'
import { catalogue } from '../core/botanical/catalogue/catalogue.ts'
import { memoryStore } from '../store/memory/memory-store.ts'
import { commands, testDesk } from './bot/test-desk.ts'

const PATH = join(import.meta.dirname, '..', 'README.md')
const README = readFileSync(PATH, 'utf8')
/** Writes the answers in it anew, to be read before they are kept. */
const isRetelling = process.env.LARDERBELL_RETELL !== undefined
const shown = [...README.matchAll(/```\nlarderbell> (.+)\n\n([\s\S]*?)\n```/g)].map(([, line = '', reply = '']) => ({
  line,
  reply,
}))

test('the README shows replies', () => {
  expect(shown.length).toBeGreaterThanOrEqual(2)
})

test('the README says how many plants are known', () => {
  expect(README).toContain(`the ${catalogue.length} plants it knows`)
  expect(README).toContain(`| ${catalogue.length} plants |`)
})

// The day that the README's dates count from.
const { firstOf } = testDesk({ nowMs: Date.UTC(2026, 10, 25, 9), width: 80 })

test.each(shown)('the README shows what $line answers', async ({ line, reply }) => {
  const text = await firstOf(line)
  if (isRetelling)
    writeFileSync(
      PATH,
      readFileSync(PATH, 'utf8').replace(`${line}\n\n${reply}\n`, () => `${line}\n\n${text}\n`),
    )
  expect(text).toBe(reply)
})

test('the README shows how the season begins', async () => {
  const beginning = /```\n(── [\s\S]*?)…\n```/.exec(README)?.[1] ?? ''
  let printed = ''
  const stop = new AbortController()
  await playSeason({
    season: seasonText,
    store: memoryStore(seasonText.zone),
    commands,
    language: en,
    screen: { width: 80, colour: false },
    log: () => {},
    saveFile: null,
    out: (text) => {
      printed += text
      if (printed.length > beginning.length) stop.abort()
    },
    isHeard: () => true,
    nextDay: noPause,
    ended: stop.signal,
  })
  expect(beginning.length).toBeGreaterThan(500)
  if (isRetelling) {
    const ending = printed.indexOf('\n', beginning.length - 80) + 1
    writeFileSync(
      PATH,
      readFileSync(PATH, 'utf8').replace(beginning, () => printed.slice(0, ending)),
    )
  }
  expect(printed.slice(0, beginning.length)).toBe(beginning)
})
