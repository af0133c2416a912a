import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { NOBODY, type Share } from '../../store/person.ts'
import { migrate } from '../../store/schema/migrations.ts'
import { SCHEMA_IS_TYPE } from '../../store/schema/person-schema.ts'
import { KNOWN_VERSION, readStored, type Stored } from '../../store/schema/read-stored.ts'
import type { Same } from '../../store/schema/same.ts'
import { ENTRY_KINDS, NEWER_KINDS } from '../core/jar/entry-kinds.ts'
import { runs, SEED } from '../runs.ts'
import { anyPerson } from './any-person.ts'
import { jarOf, nudgeAt, personWith } from './some-people.ts'

const kept = (version: number): string => readFileSync(new URL(`version-${version}.json`, import.meta.url), 'utf8')

const [FIRST, THIRD, FOURTH] = [kept(1), kept(3), kept(4)]

const kindsIn = (read: Stored): readonly string[] =>
  read.kind === 'person'
    ? [...new Set(read.person.jars.flatMap((jar) => jar.entries.map(({ kind }) => kind)))].sort()
    : []

it.each([
  ['1', FIRST],
  ['2', kept(2)],
  ['3', THIRD],
])('reads the file of version %s', (version, text) => {
  const { jars: _, setAside, ...before } = JSON.parse(text)
  const read = readStored(text)
  const file = 'local.unreadable-2026-10-30T08-00-00-000Z.json'
  expect(read).toMatchObject({
    kind: 'person',
    person: { ...before, version: KNOWN_VERSION, setAside: version === '1' ? { file, day: null } : setAside },
  })
  expect(kindsIn(read)).toEqual(ENTRY_KINDS)
})

it('reads the file of version 1 with nothing set aside', () => {
  const none = readStored(JSON.stringify({ ...JSON.parse(FIRST), setAside: null }))
  expect(none).toMatchObject({ kind: 'person', person: { setAside: null } })
})

it('makes fields of what was typed in version 3', () => {
  const read = readStored(THIRD)
  const { check: _c, due: _d, sentNudges: _, ...without } = JSON.parse(FOURTH)
  // What version 3 did not know.
  delete without.settings.freezerC
  for (const jar of without.jars) {
    jar.entries = jar.entries.filter(({ kind }: { readonly kind: string }) => kind !== 'measured')
  }
  expect(read).toEqual({ kind: 'person', person: { ...without, version: KNOWN_VERSION } })
  expect(read.kind === 'person' && read.person.jars[0]!.toldMs).toEqual([0, 1794643200000])
  expect(read.kind === 'person' && read.person.jars[0]!.entries.map(({ attempt }) => attempt)).toContain(
    '1311111111111111111',
  )
})

const LATER = [4, 5, 6, 7, 8]

it.each(LATER)('reads the file of version %s as it was written, but for its check and its stamp', (version) => {
  const text = kept(version)
  const { check, due, ...written } = JSON.parse(text)
  const person = { ...written, version: KNOWN_VERSION }
  expect([check, due]).toEqual([expect.any(String), expect.objectContaining({ nextMs: expect.any(Number) })])
  const read = readStored(text)
  expect(read).toEqual({ kind: 'person', person })
  expect(read.kind === 'person' && read.person.sentNudges?.map(({ jars }) => jars[0]!.seq)).toEqual([2])
})

it('has a kept file in which everything happened that can happen to a jar', () => {
  expect(kindsIn(readStored(kept(7)))).toEqual([...ENTRY_KINDS, ...NEWER_KINDS, 'measured'].sort())
})

it('reads whatever the types let us write', () => {
  fc.assert(
    fc.property(anyPerson, (person) => {
      expect(readStored(JSON.stringify(person))).toEqual({ kind: 'person', person })
    }),
    { seed: SEED, numRuns: runs(200, 5000) },
  )
})

const SHARE: Share = {
  id: '3m8qv0zt',
  jarId: 'k7f2a',
  code: '11NCHSTJ8P501JQH0JNHC00VV9SW4H50HFEB52FV6M',
  postedIn: { channelId: '123456789012345678', messageId: '123456789012345679' },
  withdrawn: false,
  made: 2,
}

const sample = (change: (person: Record<string, unknown>) => void): string => {
  const person = JSON.parse(
    JSON.stringify(personWith({ jars: [jarOf('k7f2a', 2)], nudges: [nudgeAt(5)], shares: [SHARE] })),
  )
  change(person)
  return JSON.stringify(person)
}

const at = (path: string, value: unknown) => (person: Record<string, unknown>) => {
  const names = path.split('.')
  const last = names.pop()!
  let part: Record<string, unknown> = person
  for (const name of names) part = part[name] as Record<string, unknown>
  if (value === undefined) delete part[last]
  else part[last] = value
}

describe('what was not written by us', () => {
  it.each([
    ['', 'not a JSON object'],
    ['{"version":1,', 'not a JSON object'],
    ['null', 'not a JSON object'],
    ['[]', 'not a JSON object'],
    ['"text"', 'not a JSON object'],
    ['{}', 'version'],
    ['{"version":"1"}', 'version'],
    ['{"version":0}', 'version'],
    ['{"version":1.5}', 'version'],
    ['{"version":1}', 'settings'],
  ])('%j', (text, where) => expect(readStored(text)).toEqual({ kind: 'unreadable', where }))

  it.each([
    ['settings.zone', 'Europe/Atlantis'],
    ['settings.zone', '+02:00'],
    ['settings.atMinutes', 1440],
    ['settings.shake', 'hourly'],
    ['settings.pausedUntil', '2026-02-30'],
    ['jars.0.id', '../..'],
    ['jars.0.entries.0.atMs', 1e300],
    ['jars.0.entries.0.atMs', null],
    ['jars.0.entries.0.day', '2026-13-01'],
    ['jars.0.entries.0.zone', ''],
    ['jars.0.entries.0.kind', 'drunk'],
    ['jars.0.entries.0.seq', 0],
    ['jars.0.entries.0.name', undefined],
    ['jars.0.entries.0.spirits.0.amount.value', '1000'],
    ['jars.0.entries.0.spirits.0.amount.plusMinus', -1],
    ['jars.0.entries.0.spirits.0.atC', 1e6],
    ['jars.0.entries.0.bottles.0.volumeMl', -500],
    ['jars.0.entries.0.sweetenings', [{ material: 'sawdust', massG: { value: 1, plusMinus: 1 } }]],
    ['jars.0.told.0', 7],
    ['nudges.0.nextMs', '5'],
    ['nudges.0.state', 'sent'],
    ['shares.0.id', '../../xx'],
    ['shares.0.code', 'lemon'],
    ['shares.0.postedIn', { channelId: '1', messageId: '2' }],
    ['shares.0.made', -1],
    ['setAside', undefined],
    ['setAside', 'local.unreadable-2026-11-25T10-30-00-000Z.json'],
    ['setAside', { file: 'local.unreadable-2026-11-25T10-30-00-000Z.json' }],
    ['jars.0.entries.0.attempt', ''],
    ['jars.0.entries.0.attempt', '../..'],
    ['jars.0.entries.0.attempt', null],
    ['surplus', 1],
    ['jars.0.entries.0.surplus', 1],
  ])('%s: %j', (path, value) => {
    expect(readStored(sample(() => {}))).toMatchObject({ kind: 'person' })
    expect(readStored(sample(at(path, value)))).toMatchObject({ kind: 'unreadable' })
  })

  it('a key that would change what an object is', () => {
    const text = JSON.stringify(NOBODY).replace('"jars"', '"__proto__":{"polluted":true},"jars"')
    expect(readStored(text)).toMatchObject({ kind: 'unreadable' })
    expect('polluted' in {}).toBe(false)
  })
})

it('leaves a newer version alone', () => {
  expect(readStored('{"version":9,"anything":true}')).toEqual({ kind: 'newer', version: 9 })
  expect(KNOWN_VERSION).toBe(8)
})

it('migrates step by step from any version', () => {
  const steps = [2, 3, 4].map((version) => (older: Readonly<Record<string, unknown>>) => ({
    version,
    from: [older.from, older.version].flat(),
  }))
  expect(migrate({ version: 1, from: [] }, 1, steps)).toEqual({ version: 4, from: [1, 2, 3] })
  expect(migrate({ version: 3, from: [] }, 3, steps)).toEqual({ version: 4, from: [3] })
  expect(migrate({ version: 4, from: [] }, 4, steps)).toEqual({ version: 4, from: [] })
})

it('tells two types apart where schema and type could come apart', () => {
  const verdicts: [
    Same<{ readonly a: readonly string[] }, { a: string[] }>,
    Same<{ a: 1 } & { b: 2 }, { a: 1; b: 2 }>,
    Same<{ a: 1 }, { a: 1; b?: 2 }>,
    Same<{ a: 1 }, { a: 1 | null }>,
    Same<{ a: [{ b: 1 }] }, { a: [{ b: 1; c: 2 }] }>,
  ] = [true, true, false, false, false]
  expect(verdicts).toHaveLength(5)
  expect(SCHEMA_IS_TYPE).toBe(true)
})
