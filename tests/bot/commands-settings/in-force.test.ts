import { describe, expect, test } from 'vitest'
import { flat } from '../flat.ts'
import { testDesk } from '../test-desk.ts'

/** 25 November 2026, at noon. */
const nowMs = Date.UTC(2026, 10, 25, 12)

const settled = async (settings: string) => {
  const desk = testDesk({ nowMs })
  await desk.textOf(`/settings ${settings}`)
  const words = async (line: string) => flat(await desk.textOf(line))
  const noteKeys = async (line: string): Promise<readonly string[]> =>
    (await desk.jsonOf(line)).notes.map(({ key }: { readonly key: string }) => key)
  return { ...desk, words, noteKeys }
}

const MIX = '/mix spirit:1 l strength:95% water:750 ml sugar:500 g'

describe('units', () => {
  test.each([
    ['units:metric', '/mix spirit:4 cups strength:95% water:3 cups', /^Makes 1\.6\d l at \d+(\.\d)? %\./],
    ['units:us', MIX, /^Makes 8 ½ cups at 47%, .* Makes 8 ½ cups \(2\.01 l\)/],
    ['units:imperial', MIX, /^Makes 3 imp pints \+ 10 fl oz at 47 %,/],
  ])('%s: %s', async (settings, line, said) => {
    expect(await (await settled(settings)).words(line)).toMatch(said)
  })

  test('as typed: metric, US or imperial after what was typed', async () => {
    const { words } = await settled('units:as typed')
    expect(await words(MIX)).toMatch(/^Makes 2\.01 l /)
    expect(await words('/mix spirit:1 cup 95%')).toMatch(/^Makes 1 cup at 95%/)
    expect(await words('/mix spirit:1 imp pint 95%')).toMatch(/^Makes 1 imp pint at 95 %\./)
  })

  test('the same numbers whatever is said', async () => {
    const data = async (settings: string) => (await (await settled(settings)).jsonOf(MIX)).data
    expect(await data('units:imperial')).toEqual(await data('units:as typed'))
  })

  const REFUSED = '/plan of:30 g dried wormwood spirit:1 l 70%'
  const REFUSED_IN_CUPS = '/plan of:30 g dried wormwood spirit:4 cups 70%'
  test.each([
    ['units:us', REFUSED, /For 4 ¼ cups of /],
    ['units:imperial', REFUSED, /For 1 imp pint \+ 15 fl oz of /],
    ['units:metric', REFUSED_IN_CUPS, /For 950 ml /],
    ['units:as typed', REFUSED, /For 1 l of /],
    ['units:as typed', REFUSED_IN_CUPS, /For 4 cups of /],
  ])('problems too: %s, %s', async (settings, line, said) => {
    const { words, jsonOf } = await settled(settings)
    expect(await words(line)).toMatch(said)
    expect((await jsonOf(line)).error).toMatchObject({ code: 'over_ceiling', message: expect.stringMatching(said) })
  })
})

describe('country', () => {
  const POUR = '/serving pour:30 ml strength:30%'

  test('counts its standard drinks, and says that it was not named', async () => {
    const { jsonOf, words, noteKeys } = await settled('country:italia')
    expect((await jsonOf(POUR)).data.drinkGPerServing).toBe(12)
    expect(await words(POUR)).toContain('That’s for Italy, from your /settings.')
    expect((await jsonOf(`${POUR} country:uk`)).data.drinkGPerServing).toBe(8)
    expect(await noteKeys(`${POUR} country:uk`)).not.toContain('own_country')
    expect(await words('/settings')).toContain('Country Italy')
  })

  test.each([
    ['country:Kenya', 'I know no standard drink for Kenya, the country in your /settings, so I give grams only.'],
    ['country:Bahamas', 'I know no standard drink for the Bahamas'],
    ['country:Belgium', 'I have no standard drink on record for Belgium'],
    ['country:none', 'name a country: /serving '],
  ])('%s gives grams only, and says why', async (settings, said) => {
    const { jsonOf, words } = await settled(settings)
    expect((await jsonOf(POUR)).data.drinkGPerServing).toBeNull()
    expect(await words(POUR)).toContain(said)
  })

  test.each([
    ['country:Italy', /^eu_/, 'That’s for Italy, from your /settings: the law of the EU.'],
    ['country:US', /^us_/, 'That’s for the United States, from your /settings.'],
    ['country:England', /^uk_/, 'That’s for the United Kingdom, from your /settings.'],
  ])('%s decides whose law a label follows', async (settings, ids, said) => {
    const { jsonOf, words, noteKeys } = await settled(settings)
    const line = '/label strength:30% sweetness:250 g/L'
    for (const { id } of (await jsonOf(line)).data.categories) expect(id).toMatch(ids)
    expect(await words(line)).toContain(said)
    expect(await noteKeys(`${line} region:EU`)).not.toContain('own_region')
  })

  test('where no law is on record, both are looked at as ever', async () => {
    const { noteKeys } = await settled('country:Kenya')
    expect(await noteKeys('/label strength:30% sweetness:250 g/L')).toContain('both_regions')
  })

  test.each([
    ['country:US', '2027-02-07'],
    ['country:GB', '2027-07-02'],
  ])('%s decides what 2/7 is', async (settings, day) => {
    const { jsonOf } = await settled(settings)
    expect((await jsonOf('/plan of:8 lemons spirit:0.7 l 95% start:2/7')).data.dates.start).toBe(day)
  })

  test('without a country 2/7 is asked back', async () => {
    const { jsonOf } = await settled('units:metric')
    expect((await jsonOf('/plan of:8 lemons spirit:0.7 l 95% start:2/7')).error).toMatchObject({ code: 'ambiguous' })
  })
})

// Noon of the 25th by UTC is two in the morning of the 26th at Kiritimati, 14 hours ahead (IANA time zone database).
test('the zone decides what day it is', async () => {
  const start = async (settings: string) =>
    (await (await settled(settings)).jsonOf('/plan of:8 lemons spirit:0.7 l 95%')).data.dates.start
  expect(await start('zone:Kiritimati')).toBe('2026-11-26')
  expect(await start('zone:default')).toBe('2026-11-25')
  const { words } = await settled('zone:Kiritimati')
  expect(await words('/settings')).toContain('Pacific/Kiritimati, where it is 02:00 on Thursday 26 November 2026')
})
