import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Happening, JarEntry } from '../../../core/jar/entry/entry.ts'
import { heldIn } from '../../../core/jar/limits/limits-passed.ts'
import { liftedOut, plantsInside } from '../../../core/jar/pour/lifted-out.ts'
import { pourApart } from '../../../core/jar/pour/pour-apart.ts'
import { pourTogether } from '../../../core/jar/pour/pour-together.ts'
import { pouredWith } from '../../../core/jar/pour/poured-with.ts'
import { shareMeant } from '../../../core/jar/pour/share-meant.ts'
import { undo } from '../../../core/jar/record/record.ts'
import { contentsOf } from '../../../core/jar/state/contents.ts'
import { jarStateOf } from '../../../core/jar/state/jar-state.ts'
import { exactly } from '../../../core/quantity/measured/measured.ts'
import { runs, SEED } from '../../runs.ts'
import { BOTTLED } from './diary.ts'
import { entriesOf, META, ml, on, plant, started, strained, sweetened } from './jars.ts'
import { expectSameGrams, gramsOf, liquidsIn } from './liquids.ts'

const AMENDED = { ...META, zone: 'UTC' }
const NOW = on(30)

const gramsIn = (entries: readonly JarEntry[]): readonly number[] => gramsOf(liquidsIn(entries).liquid)

const both = (one: readonly number[], other: readonly number[]) => one.map((grams, index) => grams + other[index]!)

/** A jar with this story, each step a day after the other. */
const jar = (name: string, ...story: readonly Happening[]) => ({
  id: name.padEnd(5, '0').slice(0, 5),
  entries: entriesOf(started({ name, plants: [plant('lemon_peel', 110), plant('clove', 1)] }), ...story),
})

const HONEY = [{ material: 'honey', massG: exactly(500) }] as const

const STORIES: readonly (readonly Happening[])[] = [
  [],
  [strained()],
  [strained({ measured: ml(870) })],
  [strained({ measured: ml(870) }), sweetened(900, 450)],
  [strained({ measured: ml(870) }), { kind: 'sweetened', waterG: exactly(900), sweetenings: HONEY }],
]
const stories = fc.constantFrom(...STORIES)
const shares = fc.double({ min: 0.01, max: 0.99, noNaN: true }).map((value) => ({ value, plusMinus: 0.01 }))

describe('a jar poured apart', () => {
  it('leaves the grams that there were, in two jars', () => {
    fc.assert(
      fc.property(stories, shares, (story, share) => {
        const whole = jar('lemon', ...story)
        const { rest, portion } = pourApart(whole, { share, into: 'half' }, NOW, META)
        expectSameGrams(both(gramsIn(rest.entries), gramsIn(portion.entries)), gramsIn(whole.entries))
      }),
      { seed: SEED, numRuns: runs(30, 2000) },
    )
  })

  it('is as strong and as sweet in both, and as near to every limit', () => {
    const whole = jar('lemon', strained(), sweetened(900, 450))
    const { rest, portion } = pourApart(whole, { share: { value: 0.25, plusMinus: 0 }, into: 'half' }, NOW, META)
    const [all, one, other] = [whole.entries, rest.entries, portion.entries].map((entries) => jarStateOf(entries)!)
    const perMl = (state: typeof all) => {
      const { weighed, spiritMl, finishedMl } = heldIn(state!)
      return weighed.flatMap(({ massG }) => [massG / spiritMl, massG / finishedMl!])
    }
    expectSameGrams(perMl(one), perMl(all))
    expectSameGrams(perMl(other), perMl(all))
    expect(contentsOf(one!).outcome.abvPercent.value).toBeCloseTo(contentsOf(all!).outcome.abvPercent.value, 9)
    expect(other!.name).toBe('half')
    expect(other!.strained).not.toBeNull()
  })

  it('steeps on in both: what is put into one is in that one', () => {
    const { rest, portion } = pourApart(jar('lemon'), { share: { value: 0.5, plusMinus: 0 }, into: 'half' }, NOW, META)
    expect(heldIn(jarStateOf(portion.entries)!).spiritMl).toBeCloseTo(500, 6)
    expect(heldIn(jarStateOf(rest.entries)!).weighed.map(({ massG }) => massG)).toEqual([55, 0.5])
  })

  it('cannot be all of it, nor out of bottles', () => {
    expect(() => pourApart(jar('lemon'), { share: exactly(1), into: 'half' }, NOW, META)).toThrow('split_all')
    const bottled = jar('lemon', strained(), sweetened(900, 450), BOTTLED)
    expect(() => pourApart(bottled, { share: exactly(0.5), into: 'half' }, NOW, META)).toThrow('cannot_follow')
  })

  it('is whole again when it is undone, and the new jar is gone', () => {
    const whole = jar('lemon', strained())
    const { rest, portion } = pourApart(whole, { share: exactly(0.5), into: 'half' }, NOW, META)
    expect(jarStateOf(undo(rest.entries, AMENDED).entries)).toEqual(jarStateOf(whole.entries))
    expect(jarStateOf(undo(portion.entries, AMENDED).entries)).toBeNull()
  })
})

describe('jars poured together', () => {
  it('leave the grams that there were', () => {
    fc.assert(
      fc.property(stories, stories, shares, fc.boolean(), (one, other, share, isAll) => {
        fc.pre(one.length > 0)
        const [target, source] = [jar('lemon', ...one), jar('orange', ...other)]
        const poured = pourTogether({ target, source, share: isAll ? exactly(1) : share, into: null }, NOW, META)
        const after = both(gramsIn(poured.target.entries), gramsIn(poured.source.entries))
        expectSameGrams(after, both(gramsIn(target.entries), gramsIn(source.entries)))
      }),
      { seed: SEED, numRuns: runs(30, 2000) },
    )
  })

  it('bring their plants along, and are as near to a limit as their mixture', () => {
    const [target, source] = [jar('lemon', strained()), jar('orange', strained())]
    const poured = pourTogether({ target, source, share: exactly(1), into: 'citrus' }, NOW, META)
    const mixed = jarStateOf(poured.target.entries)!
    expect(mixed.name).toBe('citrus')
    const [before, after] = [heldIn(jarStateOf(target.entries)!), heldIn(mixed)]
    expect(after.spiritMl).toBeCloseTo(2 * before.spiritMl, 6)
    expect(after.weighed.map(({ massG }) => massG)).toEqual(before.weighed.map(({ massG }) => 2 * massG))
  })

  it('end the one that was poured out wholly, and bring it back when that is undone', () => {
    const [target, source] = [jar('lemon', strained()), jar('orange', strained())]
    const poured = pourTogether({ target, source, share: exactly(1), into: null }, NOW, META)
    expect(jarStateOf(poured.source.entries)!.ended?.kind).toBe('parted')
    for (const [after, before] of [
      [poured.source.entries, source.entries],
      [poured.target.entries, target.entries],
    ] as const) {
      expect(jarStateOf(undo(after, AMENDED).entries)).toEqual(jarStateOf(before))
    }
    const [first, second] = [
      { ...target, entries: poured.target.entries },
      { ...source, entries: poured.source.entries },
    ]
    expect(pouredWith(first, [first, second]).map(({ jar: { id }, isLast }) => [id, isLast])).toEqual([
      ['lemon', true],
      ['orang', true],
    ])
  })

  it('wait for the straining of the one that takes the other', () => {
    const pouring = { target: jar('lemon'), source: jar('orange', strained()), share: exactly(1), into: null }
    expect(() => pourTogether(pouring, NOW, META)).toThrow('cannot_follow')
  })
})

describe('how much is meant', () => {
  const story = jarStateOf(jar('lemon', strained({ measured: ml(1000) })).entries)!

  it('is a share of what is there, and all of it where that is nearly so', () => {
    expect(shareMeant(story, ml(250, 5)).value).toBeCloseTo(0.25, 9)
    expect(shareMeant(story, ml(250, 5)).plusMinus).toBeCloseTo(0.005, 9)
    expect(shareMeant(story, null)).toEqual(exactly(1))
    expect(shareMeant(story, ml(994)).value).toBeCloseTo(0.994, 9)
    expect(shareMeant(story, ml(996))).toEqual(exactly(1))
    expect(shareMeant(story, ml(1010))).toEqual(exactly(1))
  })

  it('is no more than there can be', () => {
    expect(() => shareMeant(story, ml(1200))).toThrow('pour_too_much')
  })
})

describe('plants lifted out', () => {
  it('are those that went in, by any of their names', () => {
    const story = jarStateOf(jar('lemon').entries)!
    expect(plantsInside(story).map(({ id }) => id)).toEqual(['lemon_peel', 'clove'])
    expect(liftedOut(story, 'the cloves').map(({ id }) => id)).toEqual(['clove'])
    expect(liftedOut(story, 'lemon peel and 3 cloves').map(({ id }) => id)).toEqual(['lemon_peel', 'clove'])
    expect(() => liftedOut(story, 'chilli')).toThrow('not_in_jar')
  })

  it('take along what they soak up, and are not in it any more', () => {
    const before = jar('lemon')
    const story = jarStateOf(before.entries)!
    const out = jar('lemon', { kind: 'taken_out', plants: liftedOut(story, 'lemon') })
    const [whole, less] = [before, out].map(({ entries }) => contentsOf(jarStateOf(entries)!).outcome)
    expect(less!.volumeMl.value).toBeLessThan(whole!.volumeMl.value - 30)
    expect(less!.abvPercent.value).toBeCloseTo(whole!.abvPercent.value, 9)
    expect(plantsInside(jarStateOf(out.entries)!).map(({ id }) => id)).toEqual(['clove'])
    // What came out with the peel does not come out a second time.
    const at = (entries: readonly JarEntry[]) => contentsOf(jarStateOf(entries)!).outcome.volumeMl.value
    const strainedLater = jar('lemon', { kind: 'taken_out', plants: liftedOut(story, 'lemon') }, strained())
    expect(at(strainedLater.entries)).toBeCloseTo(at(jar('lemon', strained()).entries), 6)
  })
})
