import { readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, it } from 'vitest'
import { until } from './connected.ts'
import { buttonsOf, textOf } from './fake/shown-text.ts'
import { bot, fake, onStage } from './stage.ts'

const FOLDER = join(import.meta.dirname, 'stories')
const isRetelling = process.env.LARDERBELL_RETELL !== undefined
const DAY_MS = 24 * 60 * 60_000

const QUIET_MS = 150

const pause = (ms: number): Promise<void> => new Promise((resolve) => setTimeout(resolve, ms))

onStage()

/** A talk in private messages told anew: of the text what was written (`> line`), the days between (`+ 2 days`) and remarks are read. */
async function told(text: string): Promise<string> {
  const dm = fake.dm(fake.user)
  const answers = () => [...dm.messages.values()].filter(({ author }) => author === fake.bot)
  const lines: string[] = []
  for (const typed of text.split('\n')) {
    const line = /^> (.*)/.exec(typed)?.[1]
    const days = /^\+ (\d+) days$/.exec(typed)?.[1]
    if (days !== undefined) {
      bot.pass(Number(days) * DAY_MS)
      lines.push(typed)
    } else if (line !== undefined) {
      const before = answers().length
      fake.write(dm, fake.user, line)
      await until(() => answers().length > before)
      // Two deeds are answered by two messages, one after the other.
      for (let seen = 0; seen !== answers().length; await pause(QUIET_MS)) seen = answers().length
      const said = answers().slice(before)
      const shown = said.map(({ json }) => {
        const labels = buttonsOf(json).map(({ label }) => `[${label}]`)
        return [textOf(json), labels.join(' ')].filter((part) => part !== '').join('\n')
      })
      lines.push([`> ${line}`, ...shown].join('\n'))
    } else if (typed.startsWith('#')) lines.push(typed)
  }
  return `${lines.join('\n\n')}\n`
}

const stories = readdirSync(FOLDER).filter((name) => name.endsWith('.txt'))

it.each(stories)('%s is answered in private as it stands in, without one slash', async (name) => {
  const path = join(FOLDER, name)
  const kept = readFileSync(path, 'utf8')
  const now = await told(kept)
  if (isRetelling) writeFileSync(path, now)
  expect(now).toBe(readFileSync(path, 'utf8'))
  expect(kept).not.toMatch(/^> \//m)
  const { jars } = await bot.store.read(fake.user.id)
  expect(jars.every(({ entries }) => entries.some(({ kind }) => kind === 'bottled'))).toBe(true)
})
