import fc from 'fast-check'
import { describe, expect, it, test } from 'vitest'
import { freeName, parseJarName, sameName } from '../../../core/jar/entry/jar-name.ts'
import { newJarId } from '../../../core/jar/entry/new-jar-id.ts'
import { parseRating } from '../../../core/jar/entry/parse-rating.ts'
import { record, undo } from '../../../core/jar/record/record.ts'
import { findJar, findWhole } from '../../../core/jar/state/find-jar.ts'
import { runs, SEED } from '../../runs.ts'
import { refusal, refusedValues } from '../quantity/refusal.ts'
import { entriesOf, META, on, started } from './jars.ts'

describe('names of jars', () => {
  test.each([
    'lemon',
    'Zia Pina’s walnut, 2026',
    'limone e zenzero',
    'λεμόνι',
    'лимон',
    '檸檬酒',
    'レモン',
    'لیمو‌ترش', // with a zero-width non-joiner, as Persian spells it
    'नींबू',
    'ליקר',
    '🍋👩‍🌾',
    'a:b',
    '12',
    'allspice',
  ])('takes “%s” as it is typed', (name) => {
    expect(parseJarName(name)).toBe(name)
    expect(parseJarName(`  ${name}\u00a0`)).toBe(name)
  })

  test.each([
    ['', 'empty'],
    ['  ', 'empty'],
    ['\u200d', 'empty'],
    ['\u0301', 'empty'],
    ['x'.repeat(41), 'too_long'],
    ['lemon\nbasil', 'control'],
    ['lemon\u2028basil', 'control'],
    ['lemon\u0007', 'control'],
    ['\u202enomel', 'control'],
    ['lemon\ud800', 'control'],
    ['ALL', 'all'],
    ['#lemon', 'begins'],
    ['/lemon', 'begins'],
    ['lemon:', 'colon'],
  ])('refuses %j: %s', (name, why) => {
    expect(refusal(() => parseJarName(name))).toBe('bad_value bad_jar_name')
    expect(refusedValues(() => parseJarName(name))).toMatchObject({ why })
  })

  it('counts 40 code points of the composed form', () => {
    expect(parseJarName('🍋'.repeat(40))).toBe('🍋'.repeat(40))
    expect(parseJarName('e\u0301'.repeat(40))).toBe('é'.repeat(40))
  })

  it('makes single spaces of many, of every kind', () => {
    expect(parseJarName('lemon \u3000 basil')).toBe('lemon basil')
  })

  it('keeps a name that it has made, and fails in no other way', () => {
    fc.assert(
      fc.property(fc.oneof(fc.string({ unit: 'binary' }), fc.string({ unit: 'grapheme' })), (text) => {
        let name: string
        try {
          name = parseJarName(text)
        } catch {
          expect(refusal(() => parseJarName(text))).toBe('bad_value bad_jar_name')
          return
        }
        expect(parseJarName(name)).toBe(name)
        expect(sameName(name, text.trim().replace(/\p{Zs}+/gu, ' '))).toBe(true)
      }),
      { seed: SEED, numRuns: runs(200, 20_000) },
    )
  })

  it('are the same whatever the capitals and the composition, not without their accents', () => {
    expect(sameName('Lemon', 'lEMON')).toBe(true)
    expect(sameName('é', 'E\u0301')).toBe(true)
    expect(sameName('ΣΑΣ', 'σας')).toBe(true)
    expect(sameName('pina', 'piña')).toBe(false)
  })

  it('free up by counting', () => {
    expect(freeName('lemon', ['basil'])).toBe('lemon')
    expect(freeName('lemon', ['Lemon'])).toBe('lemon 2')
    expect(freeName('lemon', ['lemon', 'LEMON 2'])).toBe('lemon 3')
    expect(freeName('lemon 2', ['lemon 2'])).toBe('lemon 3')
    expect(freeName('x'.repeat(40), ['x'.repeat(40)])).toBe(`${'x'.repeat(38)} 2`)
  })
})

describe('finding a jar', () => {
  const jar = (id: string, name: string, endedAfter: number | null = null) => {
    const entries = entriesOf(started({ name }))
    const end = { kind: 'discarded' } as const
    return { id, entries: endedAfter === null ? entries : record(entries, end, on(endedAfter), META).entries }
  }
  const jars = [
    jar('aaaa1', 'lemon', 9),
    jar('aaaa2', 'Lemon', 12),
    jar('aaaa3', 'lemon basil'),
    jar('aaaa4', '檸檬'),
    jar('aaaa5', 'walnut'),
    jar('aaaa6', 'walnut', 3),
    jar('aaaa7', 'wormwood', 3),
  ]

  test.each([
    ['#aaaa1', 'aaaa1'],
    ['#AAAA1', 'aaaa1'],
    ['WALNUT', 'aaaa5'],
    [' walnut ', 'aaaa5'],
    ['lemon', 'aaaa2'], // both are done: the latest
    ['lem', 'aaaa3'], // only one that runs begins so
    ['lemon b', 'aaaa3'],
    ['檸', 'aaaa4'],
    ['wo', 'aaaa7'], // none that runs
    ['w', 'aaaa5'],
  ])('%j is %s', (typed, id) => {
    expect(findJar(typed, jars).id).toBe(id)
  })

  test.each([
    ['wlanut', 'walnut'],
    ['lemmon basil', 'lemon basil'],
    ['#zzzzz', null],
    ['gentian', null],
    ['', null],
    ['x'.repeat(10_000), null],
  ])('%.20j is none; nearest: %s', (typed, nearest) => {
    expect(refusal(() => findJar(typed, jars))).toBe('not_found no_such_jar')
    expect(refusedValues(() => findJar(typed, jars))).toMatchObject({ nearest })
  })

  it('does not choose between two that begin alike', () => {
    const two = [jar('aaaa1', 'lemon'), jar('aaaa2', 'lemon basil')]
    expect(findJar('lemon', two).id).toBe('aaaa1')
    expect(refusedValues(() => findJar('lem', two))).toMatchObject({ nearest: 'lemon' })
  })

  it('goes without accents where that leaves one name, for what takes away too', () => {
    const coffee = [jar('aaaa1', 'caffè'), jar('aaaa2', 'caffè 2')]
    expect(findJar('CAFFE', coffee).id).toBe('aaaa1')
    expect(findWhole('caffe', coffee).id).toBe('aaaa1')
    expect(refusal(() => findWhole('caf', coffee.slice(0, 1)))).toBe('not_found jar_begins_so')
    expect(findJar('caffe', [...coffee, jar('aaaa3', 'caffe')]).id).toBe('aaaa3')
    expect(refusal(() => findJar('caffe', [...coffee, jar('aaaa3', 'caffé')]))).toBe('not_found no_such_jar')
  })

  it('sees no jar whose start was taken back', () => {
    const gone = { id: 'aaaa1', entries: undo(jars[2]!.entries, META).entries }
    expect(refusal(() => findJar('#aaaa1', [gone]))).toBe('not_found no_jars')
    expect(refusal(() => findJar('lemon', []))).toBe('not_found no_jars')
  })
})

describe('ids', () => {
  it('are five letters or digits that are not misread, the same for the same seed, and never taken', () => {
    const taken: string[] = []
    for (let at = 0; at < 400; at++) {
      const id = newJarId('lemon 1793534400000', taken)
      expect(id).toMatch(/^[0-9a-hjkmnp-tv-z]{5}$/)
      expect(taken).not.toContain(id)
      taken.push(id)
    }
    expect(newJarId('lemon 1793534400000', [])).toBe(taken[0])
  })

  it('spread over all that there are: a thousand seeds seldom meet among 33 million', () => {
    const ids = new Set(Array.from({ length: 1000 }, (_, at) => newJarId(`lemon ${at}`, [])))
    expect(ids.size).toBeGreaterThan(997)
  })
})

describe('ratings', () => {
  test.each([
    ['4', 4],
    [' 1/5 ', 1],
    ['5 / 5', 5],
    ['3 of 5', 3],
    ['2 out of 5', 2],
    ['1 star', 1],
    ['4 Stars', 4],
    ['★★★', 3],
    ['⭐️⭐️', 2],
  ])('%s is %i', (text, rating) => {
    expect(parseRating(text)).toBe(rating)
  })

  test.each(['', '0', '6', '4.5', '-1', '4/10', 'good', '★★★★★★', '44', 'NaN'])('refuses %j', (text) => {
    expect(refusal(() => parseRating(text))).toBe('bad_value bad_rating')
  })
})
