import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { NOBODY } from '../../../store/person.ts'
import { StorageError } from '../../../store/storage-error.ts'
import { runs, SEED } from '../../runs.ts'
import { newAsker } from '../asker.ts'
import { testDesk } from '../test-desk.ts'

/** 24 December 2026, a Thursday, at noon UTC. */
const nowMs = Date.UTC(2026, 11, 24, 12)
const desk = () => testDesk({ nowMs })

test('shows what is set, and what was assumed', async () => {
  const { textOf, jsonOf } = desk()
  expect(await textOf('/settings')).toMatchInlineSnapshot(`
    "These are your settings.

      Units      as you type them
      Country    none
      Time zone  UTC (assumed), where it is 12:00 on Thursday 24 December 2026
      Freezer    −18 °C (assumed)

    • I’ve assumed this time zone. To use a city near you: /settings zone:Rome
    • Tell me your country, for its emergency numbers, standard drinks, law and dates like 6/7:
      /settings country:Italy"
  `)
  expect((await jsonOf('/settings')).data).toEqual({
    units: null,
    country: null,
    freezerC: null,
    zone: 'UTC',
    zoneAssumed: true,
    localTime: '2026-12-24T12:00',
  })
})

test('keeps what is given, leaves the rest, and takes choices back', async () => {
  const { textOf, jsonOf, asker } = desk()
  const stored = async () => {
    const { units, country, zone } = (await asker.store.read('local')).settings
    return [units, country, zone]
  }
  expect(await textOf('/settings units:Imperial country:Scozia zone:new york')).toMatch(
    /^Noted: imperial units, country United Kingdom and time zone America\/New_York\.\n/,
  )
  expect(await stored()).toEqual(['imperial', 'GB', 'America/New_York'])
  expect((await jsonOf('/settings')).data).toEqual({
    units: 'imperial',
    country: 'GB',
    freezerC: null,
    zone: 'America/New_York',
    zoneAssumed: false,
    localTime: '2026-12-24T07:00',
  })
  await textOf('/settings us')
  expect(await stored()).toEqual(['us', 'GB', 'America/New_York'])
  expect(await textOf('/settings units:as typed country:none zone:default')).toMatch(
    /^Noted: units as typed, no country and no time zone of your own\./,
  )
  expect(await stored()).toEqual([null, null, null])
})

test('knows the person’s own freezer, and what pours in it', async () => {
  const { textOf, jsonOf, asker } = desk()
  const weak = '/mix spirit:1 l strength:36% water:10 ml'
  expect(await textOf(weak)).toContain('pours at −18 °C')
  expect(await textOf('/settings freezer:-22')).toMatch(/^Noted: freezer at −22 °C\.\n/)
  expect((await jsonOf('/settings')).data.freezerC).toBe(-22)
  expect(await textOf(weak)).toContain('goes slushy at −22 °C')
  expect(await textOf('/settings freezer:0 F')).toContain('freezer at −18 °C')
  expect((await asker.store.read('local')).settings.freezerC).toBeCloseTo(-160 / 9, 9)
  expect((await jsonOf('/settings freezer:-8')).error.code).toBe('ambiguous')
  expect((await jsonOf('/settings freezer:5 C')).error.code).toBe('bad_value')
  expect(await textOf('/settings freezer:none')).toContain('Noted: a usual freezer.')
  expect(await textOf(weak)).toContain('pours at −18 °C')
})

test('writes nothing where nothing changes', async () => {
  const { textOf, asker } = desk()
  await textOf('/settings units:us')
  const before = await asker.store.read('local')
  await textOf('/settings')
  await textOf('/settings units:us')
  expect(await asker.store.read('local')).toBe(before)
})

test('leaves everything else that is stored of a person', async () => {
  const { textOf, asker } = desk()
  await asker.store.update('local', (person) => ({
    ...person,
    settings: { ...person.settings, atMinutes: 420, shake: 'off' },
  }))
  await textOf('/settings units:us')
  expect((await asker.store.read('local')).settings).toMatchObject({ units: 'us', atMinutes: 420, shake: 'off' })
})

test.each<[line: string, option: string, said: string]>([
  ['country:Italy units:furlongs', 'units', 'I don’t know the units “furlongs”.'],
  ['units:us country:Itly', 'country', 'I don’t know the country “Itly”. Did you mean Italy?'],
  ['units:us country:Shangri-La-La', 'country', 'I don’t know the country “Shangri-La-La”. What are its two letters?'],
  ['units:us zone:+02:00', 'zone', '“+02:00” doesn’t change with summer time.'],
  ['units:us zone:GMT+1', 'zone', 'doesn’t change with summer time'],
  ['units:us zone:Romme', 'zone', 'I don’t know “Romme”. Did you mean Europe/Rome?'],
  ['units:us zone:BST', 'zone', 'I don’t know “BST”. Which big city is near you?'],
])('%s is refused in a sentence, and nothing of it is kept', async (options, option, said) => {
  const { jsonOf, textOf, asker, faults } = desk()
  expect((await jsonOf(`/settings ${options}`)).error).toMatchObject({ code: 'bad_value', option })
  expect(await textOf(`/settings ${options}`)).toContain(said)
  expect(await asker.store.read('local')).toBe(NOBODY)
  expect(faults()).toEqual([])
})

test('a store that cannot be read or written is said by /settings, and does not stop the arithmetic', async () => {
  const fail = async () => {
    throw new StorageError('disk_full', { path: 'users' })
  }
  const asker = newAsker()
  const { jsonOf } = testDesk({ asker: { ...asker, store: { ...asker.store, read: fail, update: fail } } })
  expect((await jsonOf('/settings')).error).toMatchObject({ code: 'storage' })
  expect((await jsonOf('/settings units:us')).error).toMatchObject({ code: 'storage' })
  expect((await jsonOf('/mix spirit:1 l strength:95% water:1 l')).data.volumeMl).toBeGreaterThan(1900)
})

describe('any text at all', () => {
  const piece = fc.oneof(
    fc.constantFrom(
      'units:',
      'country:',
      'zone:',
      'us',
      'Italy',
      'rome',
      'none',
      'default',
      ' ',
      '+02:00',
      '/',
      '__proto__',
      'NaN',
    ),
    fc.string({ unit: 'grapheme', maxLength: 8 }),
    fc.string({ unit: 'binary', maxLength: 8 }),
  )
  test('is answered or refused in a sentence, and what is stored stays readable', async () => {
    const { jsonOf, textOf, asker, faults } = desk()
    await fc.assert(
      fc.asyncProperty(fc.array(piece, { maxLength: 8 }), async (pieces) => {
        const line = `/settings ${pieces.join('')}`
        const { error } = await jsonOf(line)
        expect(error?.code).not.toBe('internal')
        expect((await textOf(line)).replace(/“[^”]*”/g, '“”')).not.toMatch(/undefined|NaN|null|\[object/)
        const { units, country, zone } = (await asker.store.read('local')).settings
        expect([null, 'metric', 'us', 'imperial']).toContain(units)
        expect(country ?? 'XX').toMatch(/^[A-Z]{2}$/)
        expect(() => new Intl.DateTimeFormat('en', { timeZone: zone ?? 'UTC' })).not.toThrow()
      }),
      { seed: SEED, numRuns: runs(60, 5000) },
    )
    expect(faults()).toEqual([])
  })
})
