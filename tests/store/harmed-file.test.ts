import { readdir, readFile, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import fc from 'fast-check'
import { expect, it } from 'vitest'
import { personTexts } from '../../store/disk/person-text.ts'
import { runs, SEED } from '../runs.ts'
import { NOW_MS, ZONE } from './some-store.ts'
import { A, namedAt, PERSON, withFile } from './stamped-file.ts'
import { forged } from './stamps.ts'

/** Another byte, a byte more, a byte less, or the end cut off. */
const harm = fc.record({ kind: fc.constantFrom('other', 'more', 'less', 'cut'), at: fc.nat(), byte: fc.nat(255) })

const harmed = (bytes: Buffer, { kind, at, byte }: { kind: string; at: number; byte: number }): Buffer => {
  const place = at % bytes.length
  const put = Buffer.from([byte])
  if (kind === 'cut') return bytes.subarray(0, place)
  if (kind === 'less') return Buffer.concat([bytes.subarray(0, place), bytes.subarray(place + 1)])
  return Buffer.concat([bytes.subarray(0, place), put, bytes.subarray(kind === 'more' ? place : place + 1)])
}

it('reads a harmed file as if there were no stamps, wherever it is harmed', () => {
  const texts = personTexts({ rules: 'today', assumedZone: ZONE })
  const careful = personTexts({ rules: null, assumedZone: ZONE })
  const whole = Buffer.from(forged(String(texts.bytesOf(PERSON)), 5000))
  expect(texts.dueMsIn(whole, NOW_MS)).toBe(5000)
  fc.assert(
    fc.property(harm, (how) => {
      const bytes = harmed(whole, how)
      if (bytes.equals(whole)) return
      expect(texts.dueMsIn(bytes, NOW_MS)).toBe(careful.dueMsIn(bytes, NOW_MS))
    }),
    { seed: SEED, numRuns: runs(2000, 100_000) },
  )
  // The stamp itself is where it would hurt most.
  for (let place = 0; place < 160; place++) {
    for (const byte of [0x30, 0x39, 0x65, 0x2d, 0x20]) {
      const bytes = harmed(whole, { kind: 'other', at: place, byte })
      if (!bytes.equals(whole)) expect(texts.dueMsIn(bytes, NOW_MS)).toBe(careful.dueMsIn(bytes, NOW_MS))
    }
  }
})

it('sets aside at the first look what was cut short or broken in its middle, and tells', () =>
  withFile(PERSON, async (path, folder) => {
    const whole = await readFile(path)
    const at = whole.indexOf('"jars"')
    for (const broken of [whole.subarray(0, at), harmed(whole, { kind: 'other', at, byte: 0x7d })]) {
      await writeFile(path, broken)
      const logged: string[] = []
      expect(await namedAt(folder, 1e13, { log: (text) => logged.push(text) })).toEqual([])
      expect(logged).toEqual([expect.stringContaining(`${A} could not be read`)])
      expect((await readdir(join(folder, 'users'))).some((name) => name.includes('unreadable'))).toBe(true)
    }
  }))
