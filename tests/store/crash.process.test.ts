import { readdir, readFile } from 'node:fs/promises'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import fc from 'fast-check'
import { expect, it } from 'vitest'
import { runs, SEED } from '../runs.ts'
import { startChild } from './child.ts'
import { inFolder } from './in-folder.ts'
import { jarOf, personWith, userId } from './some-people.ts'
import { personIn, restoreCopy, storeIn } from './some-store.ts'
import { stampHolds } from './stamps.ts'

const PROGRAM = fileURLToPath(new URL('crash-child.ts', import.meta.url))
const PEOPLE = [0, 1, 2]

const KILLS = runs(5, 300)

/** How many acknowledgements to wait for, and how much of a millisecond's time later to kill. */
const moments = fc.sample(fc.tuple(fc.integer({ min: 1, max: 30 }), fc.nat(400)), { seed: SEED, numRuns: KILLS })

const lastAcknowledged = (lines: readonly string[], index: number): number =>
  Math.max(0, ...lines.filter((line) => line.startsWith(`${index} `)).map((line) => Number(line.split(' ')[1])))

it(`keeps every acknowledged change when its process is killed, ${KILLS} times`, { timeout: 600_000 }, () =>
  inFolder(async (folder) => {
    const before = new Map<number, number>()
    for (const [lines, spins] of moments) {
      const child = startChild(PROGRAM, [folder])
      await child.heard(lines)
      for (let spin = 0; spin < spins; spin++) await new Promise(setImmediate)
      await child.kill()
      expect(child.lines.length).toBeGreaterThanOrEqual(lines)

      const logged: string[] = []
      const store = storeIn(folder, { log: (text) => logged.push(text) })
      const due: string[] = []
      for (const index of PEOPLE) {
        const { nudges } = await store.read(userId(index))
        const numbers = new Set(nudges.map(({ nextMs }) => nextMs))
        const [number = 0] = numbers
        // All of one write; not before what was acknowledged, and not more than the one write that was under way after it.
        expect(numbers.size).toBeLessThanOrEqual(1)
        const acknowledged = Math.max(before.get(index) ?? 0, lastAcknowledged(child.lines, index))
        expect([acknowledged, acknowledged + 1]).toContain(number)
        before.set(index, number)
        if (number > 0) due.push(userId(index))
        if (number > 0)
          expect(stampHolds(await readFile(join(folder, 'users', `${userId(index)}.json`), 'utf8'))).toBe(true)
      }
      // The dead process holds nothing, and what it left half done goes.
      await store.update('local', (person) => person)
      const names = (await readdir(join(folder, 'users'))).sort()
      // By the stamps, which are of the same write as what they stand before.
      expect([...(await store.claimDue(Math.max(0, ...before.values()), 9, 1))].sort()).toEqual(due)
      expect(await store.claimDue(0, 9, 1)).toEqual([])
      expect(names).toEqual([...PEOPLE.map((index) => `${userId(index)}.json`), 'local.json'])
      expect(logged).toEqual([])
      await store.close()
    }
  }),
)

const LOSSES = fileURLToPath(new URL('loss-child.ts', import.meta.url))

it(`keeps the last full copy when a start that begins anew is killed, ${KILLS} times`, { timeout: 600_000 }, () =>
  inFolder(async (folder) => {
    const who = userId(7)
    const full = personWith({ jars: [jarOf('k7f2a', 40)] })
    const before = storeIn(folder)
    await before.update(who, () => full)
    await before.nightly()
    await before.close()
    const day = '2026-11-25'
    const copy = join(folder, 'copies', day, `${who}.json`)
    for (const [lines, spins] of moments) {
      const child = startChild(LOSSES, [folder, who, day])
      await child.heard(lines)
      for (let spin = 0; spin < spins; spin++) await new Promise(setImmediate)
      await child.kill()
      expect(child.lines.length).toBeGreaterThanOrEqual(lines)
      expect(personIn(await readFile(copy, 'utf8')).jars).toEqual(full.jars)
      const store = storeIn(folder)
      const now = await store.read(who)
      // Whole or begun anew, and then told so; never torn, and never without a way back.
      if (now.jars.length === 0) expect(now.setAside).toMatchObject({ day })
      else expect(now).toEqual(full)
      await store.nightly()
      await store.close()
      await restoreCopy({ folder, nowMs: Date.UTC(2027, 0, 1) }, who, day)
    }
    const last = storeIn(folder)
    expect(await last.read(who)).toEqual(full)
    await last.close()
  }),
)
