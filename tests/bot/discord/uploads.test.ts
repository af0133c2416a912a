import { expect, it } from 'vitest'
import type { Command } from '../../../bot/chat/command.ts'
import { after, type StartTimer } from '../../../bot/discord/rest/timeout.ts'
import { en } from '../../../bot/text/en/index.ts'
import { MADE } from '../said.ts'
import { commands } from '../test-desk.ts'
import { gate, impatient, instead, type Setting, until } from './connected.ts'
import { buttonsOf } from './fake/shown-text.ts'
import { fake, onStage, restart } from './stage.ts'

const MIX = { spirit: '1 l', strength: '95%', water: '1 l' }
const NAME = 'larderbell.png'
const NOT_SENT = en.discord.fileFailed({ name: NAME, why: 'not_sent' })
const mix = commands.find(({ path }) => path === 'mix')!

const drawing =
  (visibility?: 'public'): Command['run'] =>
  async (input, context) => {
    const alt = { group: 'files', key: 'calendar_file', values: { count: 1 } } as const
    const files = [{ name: NAME, mime: 'image/png', alt, draw: async () => Uint8Array.of(1) }]
    return { ...(await mix.run(input, context)), files, ...(visibility && { visibility }) }
  }

/** Files have a second, everything else hardly any time. */
const soon: StartTimer = (ms, act) => (ms === 8000 ? after(1000, act) : impatient(ms, act))

const pictured = (visibility?: 'public'): Setting => ({
  after: soon,
  commands: instead('mix', drawing(visibility)),
})

onStage(() => pictured())

const hasFiles = ({ files }: { readonly files: readonly unknown[] }): boolean => files.length > 0

/** How an upload can fail, for good. */
const failing = [
  { status: 413, code: 40005 },
  { status: 403, code: 50013 },
  { status: 500 },
  { status: 429, retryAfterS: 60 },
  { closes: true },
  { closes: true, isProcessed: true },
] as const

it.each(failing)('that fail (%j) leave the text, and say that the picture is not there', async (outage) => {
  fake.outage('editAnswer', outage, { times: 20, when: hasFiles })
  const answer = await fake.slash('mix', MIX)
  expect(answer.text).toMatch(MADE)
  expect(answer.text).toContain(NOT_SENT)
  expect(answer).toMatchObject({ isPrivate: true, files: [], followUps: [] })
  expect(buttonsOf(answer.message!.json).map(({ label }) => label)).toContain(en.discord.showEverybody())
})

it('that take too long leave the text', async () => {
  fake.outage('editAnswer', { delayMs: 1500, closes: true }, { times: 20, when: hasFiles })
  const answer = await fake.slash('mix', MIX)
  expect(answer.text).toContain(NOT_SENT)
  expect(answer.files).toEqual([])
})

it('for all that fail leave the text, for all', async () => {
  await restart(pictured('public'))
  fake.outage('editAnswer', { status: 413, code: 40005 }, { when: hasFiles })
  const answer = await fake.slash('mix', MIX)
  expect(answer.text).toContain(NOT_SENT)
  expect(answer.isPrivate).toBe(false)
})

it('of an answer shown to everybody that fail leave its text', async () => {
  const answer = await fake.slash('mix', MIX)
  expect(answer.files).toHaveLength(1)
  fake.outage('editAnswer', { status: 500 }, { times: 20, when: hasFiles })
  const shown = await fake.press(answer.message!, en.discord.showEverybody())
  expect(shown.text).toMatch(MADE)
  expect(shown.text).toContain(en.discord.picturesGone())
  expect(shown).toMatchObject({ isPrivate: false, files: [] })
})

it('that come through are no longer said to fail', async () => {
  fake.outage('editAnswer', { closes: true }, { when: hasFiles })
  const answer = await fake.slash('mix', MIX)
  expect(answer.text).not.toContain(NOT_SENT)
  expect(answer.files).toHaveLength(1)
})

it('nobody waits for ever: an answer comes when Discord is well again after minutes', async () => {
  const { opened, open } = gate()
  await restart({
    after: impatient,
    commands: instead('mix', async (input, context) => {
      await opened
      return mix.run(input, context)
    }),
  })
  // Each try is two requests: five tries and 40 s of pauses, of which the tests wait a hundredth.
  fake.outage('editAnswer', { status: 500 }, { times: 10 })
  const asked = fake.slash('mix', MIX, { patienceMs: 5000 })
  await until(() => fake.requests('callback').length > 0)
  open()
  expect((await asked).text).toMatch(MADE)
})
