import fc from 'fast-check'
import { expect, it } from 'vitest'
import { viewOf } from '../../../bot/commands/jar/known/view-of.ts'
import { openStore } from '../../../store/open/open-store.ts'
import { runs, SEED } from '../../runs.ts'
import { inFolder } from '../../store/in-folder.ts'
import { newAsker } from '../asker.ts'
import { testDesk } from '../test-desk.ts'
import { fittingLine, stepLine } from './random-jar-lines.ts'

const LINES = 10
const START_MS = Date.UTC(2026, 10, 1, 12)
const DAY_MS = 86_400_000

const START = '/jar start lemon of:8 lemons + 20 g ginger spirit:1 l 95% to-strength:30% to-sweetness:250 g/L'

/** Lines and by how many days the clock goes on before each; sometimes it is set back. */
const story = fc.array(
  fc.tuple(
    fc.oneof({ arbitrary: stepLine, weight: 2 }, { arbitrary: fittingLine, weight: 3 }),
    fc.oneof({ arbitrary: fc.integer({ min: 0, max: 20 }), weight: 9 }, { arbitrary: fc.constant(-3), weight: 1 }),
  ),
  { minLength: LINES, maxLength: LINES },
)

it('random steps of jars are recorded or refused in a sentence, and every file can be read again', async () => {
  let answered = 0
  await fc.assert(
    fc.asyncProperty(story, (lines) =>
      inFolder(async (folder) => {
        const open = () => openStore({ folder, assumedZone: 'UTC', nowMs: () => START_MS, log: expect.fail })
        const asker = { ...newAsker(), store: open() }
        let nowMs = START_MS
        for (const [line, days] of [[START, 0] as const, ...lines]) {
          nowMs += days * DAY_MS
          const desk = testDesk({ asker, nowMs, width: 80 })
          const before = await asker.store.read('local')
          const outcome = await desk.run(line)
          expect(desk.faults(), line).toEqual([])
          if (outcome.ok) answered++
          else expect(await asker.store.read('local'), line).toBe(before)
        }
        const { jars, settings, ...rest } = await asker.store.read('local')
        await asker.store.close()
        const again = open()
        expect(await again.read('local')).toEqual({ jars, settings, ...rest })
        await again.close()
        for (const jar of jars) viewOf(jar, { nowMs, settings, assumedZone: 'UTC' })
      }),
    ),
    { seed: SEED, numRuns: runs(130, 10_000) / LINES },
  )
  // A fuzz of which nothing is ever answered would show nothing.
  expect(answered).toBeGreaterThan((0.3 * runs(130, 10_000)) / 1)
})

it('what random steps say is wording without holes', async () => {
  await fc.assert(
    fc.asyncProperty(story, async (lines) => {
      const asker = newAsker()
      let nowMs = START_MS
      for (const [line, days] of [[START, 0] as const, ...lines]) {
        nowMs += days * DAY_MS
        const desk = testDesk({ asker, nowMs, width: 80 })
        const text = await desk.textOf(line)
        expect(desk.faults(), line).toEqual([])
        if (!line.includes('NaN')) expect(text, line).not.toMatch(/undefined|\bnull\b|NaN|\[object/)
      }
    }),
    { seed: SEED, numRuns: runs(10, 300) },
  )
})
