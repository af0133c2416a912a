import { readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { help } from '../bot/chat/run/help.ts'
import { en } from '../bot/text/en/index.ts'
import { catalogue } from '../core/botanical/catalogue/catalogue.ts'
import { dayNumber } from '../core/quantity/time/day-number.ts'
import { newAsker } from './bot/asker.ts'
import { NOW_MS, somebody } from './bot/offered/corpus.ts'
import { deskOf } from './bot/offered/offers.ts'
import { commands, testDesk } from './bot/test-desk.ts'

const ROOT = join(import.meta.dirname, '..')
const FILES = [
  'README.md',
  'bot/README.md',
  'bot/discord/README.md',
  'core/README.md',
  'store/README.md',
  'DEVELOPERS.md',
] as const

const MOST_BYTES = 10_240

/** Writes the answers in them anew, to be read before they are kept. */
const isRetelling = process.env.LARDERBELL_RETELL !== undefined

const textOf = (file: string): string => readFileSync(join(ROOT, file), 'utf8')

/** The day of what stands before any day is said. */
const FIRST_DAY = '2026-11-25'
const DAY_MS = 86_400_000
const NINE_MS = 9 * 3_600_000

interface Shown {
  readonly line: string
  readonly reply: string
  readonly nowMs: number
}

/** What is typed and answered in a file, each on the day that was said last: `**20 September.**`, or `**20 September**`. */
function shownIn(file: string): readonly Shown[] {
  let day = FIRST_DAY
  return [
    ...textOf(file).matchAll(/\*\*(\d{1,2} [A-Z][a-z]+)\.?\*\*|```\nlarderbell> (.+)\n\n([\s\S]*?)\n```/g),
  ].flatMap(([, said, line, reply]) => {
    if (said !== undefined) day = new Date(Date.parse(`${said} 2026 UTC`)).toISOString().slice(0, 10)
    return line === undefined || reply === undefined ? [] : [{ line, reply, nowMs: dayNumber(day) * DAY_MS + NINE_MS }]
  })
}

describe.each(FILES)('%s', (file) => {
  const shown = shownIn(file)
  const asker = newAsker()

  it.each(shown)('shows what $line answers', async ({ line, reply, nowMs }) => {
    const text = await testDesk({ nowMs, width: 80, asker }).firstOf(line)
    if (isRetelling)
      writeFileSync(
        join(ROOT, file),
        textOf(file).replace(`larderbell> ${line}\n\n${reply}\n`, () => `larderbell> ${line}\n\n${text}\n`),
      )
    expect(text).toBe(reply)
  })

  /** Between backticks: a whole call, or the name of a command. */
  const typed = [...textOf(file).matchAll(/`(\/[a-z][^`\n]*)`/g)]
    .map(([, line = '']) => line)
    .filter((line) => !/[A-Z]{2}|…|\/[a-z]+\/|<|:$|^\/quit$/.test(line))

  it('names lines that run', async () => {
    const person = await somebody({ kind: 'console' })
    const faults: string[] = []
    for (const line of new Set(typed)) {
      if (help(line.replace(/^\//, '/help '), commands, { commands: en.commands, about: en.help.about })?.ok === true)
        continue
      if (
        /^\/(?:help|jar)(?: |$)/.test(line) &&
        help(line, commands, { commands: en.commands, about: en.help.about })?.ok === true
      )
        continue
      const desk = await deskOf({ person, nowMs: NOW_MS, place: { kind: 'console' }, zone: 'UTC' })
      const outcome = await desk.run(line)
      // What only its maker knows, or a jar of another day, is no fault of the line.
      if (outcome.ok || ['wrong_stage', 'missing_option', 'not_found'].includes(outcome.error.code)) continue
      if (outcome.error.problem === 'jar_name_taken') continue
      faults.push(`${line}: ${outcome.error.problem}`)
    }
    expect(faults).toEqual([])
  })

  it('points at files that are there', () => {
    const links = [...textOf(file).matchAll(/\]\((?!https?:)([^)#]+)(?:#[^)]*)?\)/g)].map(([, path = '']) => path)
    for (const path of links) expect(() => readFileSync(join(ROOT, file, '..', path)), path).not.toThrow()
  })
})

describe('the README', () => {
  it('is short', () => {
    expect(Buffer.byteLength(textOf('README.md'))).toBeLessThanOrEqual(MOST_BYTES)
    expect(shownIn('README.md').length).toBeGreaterThanOrEqual(7)
  })

  it('has no semicolon outside code', () => {
    expect(textOf('README.md').replace(/```[\s\S]*?```|`[^`]*`/g, '')).not.toContain(';')
  })
})

it('is said how many plants are known', () => {
  expect(textOf('bot/README.md')).toContain(`the ${catalogue.length} plants it knows`)
  expect(textOf('core/README.md')).toContain(`| ${catalogue.length} plants |`)
})
