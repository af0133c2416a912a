import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Happening } from '../../../core/jar/entry/entry.ts'
import { vesselFit } from '../../../core/jar/state/vessel-fit.ts'
import { isFreezer, isInFreezer, placeOf, vesselMl } from '../../../core/jar/state/where-it-stands.ts'
import { agenda } from '../../../core/jar/tasks/agenda.ts'
import { runs, SEED } from '../../runs.ts'
import { spirit } from '../recipe-plan/wishes.ts'
import { DAY_MS, entriesOf, ml, plant, START_MS, started, storyFrom, strained, sweetened } from './jars.ts'

const noted = (where: string | null, vessel: string | null = null): Happening => ({
  kind: 'noted',
  note: null,
  where,
  vessel,
})

describe('where a jar stands', () => {
  it.each(['freezer', 'in the freezer', 'Deep-freezer in the garage', 'congelatore', 'the deep freeze'])(
    'is a freezer: %s',
    (place) => expect(isFreezer(place)).toBe(true),
  )

  it.each([
    'cellar',
    'fridge',
    'next to the freezer',
    'on top of the freezer',
    'out of the freezer',
    'sopra il congelatore',
  ])('is none: %s', (place) => expect(isFreezer(place)).toBe(false))

  it('is what was noted last', () => {
    const story = [started(), noted('freezer'), noted(null, '2 l jar')]
    expect([placeOf(storyFrom(...story)), isInFreezer(storyFrom(...story))]).toEqual(['freezer', true])
    expect(isInFreezer(storyFrom(...story, noted('cellar')))).toBe(false)
    expect(placeOf(storyFrom(started()))).toBeNull()
  })

  it('asks for nothing more', () => {
    const settings = { zone: 'UTC', atMinutes: 540, shake: 'daily', pausedUntil: null } as const
    const tasks = (...more: readonly Happening[]) => {
      const { today, coming } = agenda(entriesOf(started(), strained(), ...more), settings, START_MS + 9 * DAY_MS)
      return [...today, ...coming].map(({ kind }) => kind)
    }
    expect(tasks(noted('freezer'))).toEqual(tasks())
  })
})

describe('what a vessel holds', () => {
  it.each([
    ['2 l jar', 2000],
    ['a 1.5 litre clip-top jar', 1500],
    ['demijohn, 5 l', 5000],
    ['70 cl bottle', 700],
    ['half a litre bottle', 500],
  ])('%s', (text, expected) => expect(vesselMl(text)).toBeCloseTo(expected, 6))

  it.each(['demijohn', '', 'the blue one', '3 jars', '500 g jar'])('is not told by %j', (text) =>
    expect(vesselMl(text)).toBeNull(),
  )

  it('never throws', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (text) => {
        const found = vesselMl(text)
        expect(found === null || found > 0).toBe(true)
      }),
      { seed: SEED, numRuns: runs(200, 5000) },
    )
  })
})

describe('how a vessel suits it', () => {
  // A litre of spirit and 500 g of fruit take 1.5 l: a gram takes a millilitre (estimated).
  const steeping = storyFrom(started({ spirits: [spirit(1000, 40)], plants: [plant('raspberry', 500)] }))
  const jar = storyFrom(started({ plants: [] }), strained({ measured: ml(1000) }), sweetened(0, 0))

  it.each([
    [1400, 'too_small'],
    [1550, 'brim'],
    [1600, 'fits'],
    [2000, 'fits'],
    [3100, 'empty'],
  ])('of %d ml: %s', (volumeMl, fit) => {
    const found = vesselFit(steeping, volumeMl)!
    expect([found.fit, found.betterMl]).toEqual([fit, 2000])
    expect(found.filledMl).toBeCloseTo(1500, 6)
  })

  it.each([
    [950, 'too_small'],
    [1040, 'brim'],
    [1060, 'fits'],
    [5000, 'fits'],
  ])('of %d ml, strained: %s', (volumeMl, fit) => expect(vesselFit(jar, volumeMl)!.fit).toBe(fit))

  it('counts what was layered in, and not what was lifted out', () => {
    const more: Happening = {
      kind: 'added',
      plants: [plant('plum', 200)],
      spirits: [spirit(300, 40)],
      waterG: { value: 0, plusMinus: 0 },
      sweetenings: [],
      as: 'layer',
    }
    const begun = started({ spirits: [spirit(1000, 40)], plants: [plant('raspberry', 500)] })
    expect(vesselFit(storyFrom(begun, more), 3000)!.filledMl).toBeCloseTo(2000, 6)
    const out: Happening = { kind: 'taken_out', plants: [{ id: 'plum', name: 'plum', massG: more.plants[0]!.massG }] }
    expect(vesselFit(storyFrom(begun, more, out), 3000)!.filledMl).toBeCloseTo(1800, 6)
  })
})
