import { readFile, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import fc from 'fast-check'
import { expect, it } from 'vitest'
import { dueOf, personTexts } from '../../store/disk/person-text.ts'
import { nextDueMs } from '../../store/due.ts'
import { NOBODY } from '../../store/person.ts'
import { runs, SEED } from '../runs.ts'
import { anyPerson } from './any-person.ts'
import { jarOf, nudgeAt, personWith } from './some-people.ts'
import { NOW_MS, personIn, restoreCopy, storeIn, ZONE } from './some-store.ts'
import { A, namedAt, PERSON, withFile } from './stamped-file.ts'
import { forged, stampHolds } from './stamps.ts'

const DAY_MS = 86_400_000

it('starts by what the stamps say, without a look at the jars', () =>
  withFile(PERSON, async (path, folder) => {
    expect(await namedAt(folder, 99)).toEqual([])
    expect(await namedAt(folder, 100)).toEqual([A])
    await writeFile(path, forged(await readFile(path, 'utf8'), 5000))
    expect(await namedAt(folder, 4999)).toEqual([])
    expect(await namedAt(folder, 5000)).toEqual([A])
    await writeFile(path, forged(await readFile(path, 'utf8'), null))
    expect(await namedAt(folder, 1e13)).toEqual([])
  }))

it('believes no stamp under other rules, or none, or in another zone', () =>
  withFile(PERSON, async (path, folder) => {
    await writeFile(path, forged(await readFile(path, 'utf8'), 5000))
    expect(await namedAt(folder, 100, { rules: 'tomorrow' })).toEqual([A])
    expect(await namedAt(folder, 100, { rules: null })).toEqual([A])
    const bytes = await readFile(path)
    const read = (rules: string, assumedZone: string) => personTexts({ rules, assumedZone }).dueMsIn(bytes, NOW_MS)
    expect([read('today', ZONE), read('tomorrow', ZONE), read('today', 'UTC')]).toEqual([5000, 100, 100])
  }))

it.each(['tz', 'icu'] as const)('believes no stamp of another engine’s zones (%s)', (which) =>
  withFile(PERSON, async (path) => {
    const bytes = Buffer.from(forged(await readFile(path, 'utf8'), 5000))
    const read = () => personTexts({ rules: 'today', assumedZone: ZONE }).dueMsIn(bytes, NOW_MS)
    expect(read()).toBe(5000)
    const before = Object.getOwnPropertyDescriptor(process.versions, which)!
    Object.defineProperty(process, 'versions', { value: { ...process.versions, [which]: '2099z' } })
    expect([process.versions[which], before.value !== '2099z']).toEqual(['2099z', true])
    try {
      expect(read()).toBe(100)
    } finally {
      Object.defineProperty(process, 'versions', { value: { ...process.versions, [which]: before.value } })
    }
  }),
)

it('believes no stamp while something was said or entered by a clock that ran ahead', async () => {
  const told = { ...jarOf('k7f2a', 3), told: ['x'], toldMs: [NOW_MS + 3 * DAY_MS] }
  const entered = jarOf('k7f2a', 3, NOW_MS + DAY_MS)
  for (const jar of [told, entered]) {
    await withFile(personWith({ jars: [jar], nudges: [nudgeAt(100)] }), async (path, folder) => {
      await writeFile(path, forged(await readFile(path, 'utf8'), 5000))
      expect(await namedAt(folder, 100)).toEqual([A])
      expect(await namedAt(folder, 4999, { nowMs: () => NOW_MS + 2 * DAY_MS })).toEqual([])
    })
  }
})

it('says again on its day what a clock said ahead, although the stamp counts it as said', () => {
  const jar = jarOf('k7f2a', 3)
  const dueMs = nextDueMs(personWith({ jars: [jar] }), ZONE)!
  const key = `shake.${new Date(dueMs).toISOString().slice(0, 10)}`
  const ahead = { ...jar, told: [key], toldMs: [dueMs + 30 * DAY_MS] }
  const person = personWith({ jars: [ahead] })
  const texts = personTexts({ rules: 'today', assumedZone: ZONE })
  const bytes = texts.bytesOf(person)
  expect(texts.dueMsIn(bytes, dueMs + 30 * DAY_MS)).toBeGreaterThan(dueMs)
  expect(texts.dueMsIn(bytes, dueMs)).toBe(dueMs)
})

it('takes a file edited by hand as it now is, and stamps it at the next change', () =>
  withFile(PERSON, async (path, folder) => {
    const text = await readFile(path, 'utf8')
    await writeFile(path, text.replace('"nextMs":100}]', '"nextMs":70}]'))
    expect(stampHolds(await readFile(path, 'utf8'))).toBe(false)
    expect(await namedAt(folder, 69)).toEqual([])
    expect(await namedAt(folder, 70)).toEqual([A])
    const { check, due, ...bare } = JSON.parse(text)
    expect([check, due]).toEqual([expect.any(String), expect.any(Object)])
    await writeFile(path, JSON.stringify(bare, null, 2))
    expect(await namedAt(folder, 99)).toEqual([])
    const store = storeIn(folder)
    expect(await store.read(A)).toEqual(PERSON)
    await store.update(A, (person) => ({ ...person, nudges: [nudgeAt(30)] }))
    await store.close()
    expect(stampHolds(await readFile(path, 'utf8'))).toBe(true)
    expect(await namedAt(folder, 30)).toEqual([A])
  }))

it.each([1, 2, 3])('finds what is due in a file of version %d, which has no stamp', async (version) => {
  const file = await readFile(new URL(`version-${version}.json`, import.meta.url))
  const texts = personTexts({ rules: 'today', assumedZone: ZONE })
  expect(texts.dueMsIn(file, NOW_MS)).toBe(nextDueMs(personIn(String(file)), ZONE, NOW_MS)!)
})

it('goes on by a copy that was put back, by hand or by the doctor', () =>
  withFile(PERSON, async (path, folder) => {
    const store = storeIn(folder)
    await store.nightly()
    await store.update(A, () => personWith({ nudges: [nudgeAt(50)] }))
    await store.close()
    const copy = join(folder, 'copies', '2026-11-25', `${A}.json`)
    await writeFile(path, await readFile(copy))
    expect(await namedAt(folder, 99)).toEqual([])
    expect(await namedAt(folder, 100)).toEqual([A])
    const again = storeIn(folder)
    await again.update(A, () => personWith({ nudges: [nudgeAt(50)] }))
    await again.close()
    await restoreCopy({ folder, nowMs: NOW_MS }, A, '2026-11-25')
    expect(stampHolds(await readFile(path, 'utf8'))).toBe(true)
    expect(await namedAt(folder, 99)).toEqual([])
    expect(await namedAt(folder, 100)).toEqual([A])
  }))

it('says at every instant what the jars say, and reads back as it was, whoever it is', () => {
  const texts = personTexts({ rules: 'today', assumedZone: ZONE })
  fc.assert(
    fc.property(anyPerson, fc.integer({ min: 0, max: 4e12 }), (person, nowMs) => {
      const text = String(texts.bytesOf(person))
      expect(personIn(text)).toEqual(person)
      const dueMs = dueOf(person, ZONE, nowMs)
      expect(texts.dueMsOf(person, nowMs)).toBe(dueMs)
      expect(stampHolds(text)).toBe(dueOf(person, ZONE) !== undefined)
      expect(texts.dueMsIn(Buffer.from(text), nowMs)).toBe(dueMs)
    }),
    { seed: SEED, numRuns: runs(300, 10_000) },
  )
  expect(texts.dueMsIn(texts.bytesOf(NOBODY), NOW_MS)).toBeNull()
})
