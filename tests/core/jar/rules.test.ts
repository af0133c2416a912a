import { describe, expect, it } from 'vitest'
import { fermentsNearer } from '../../../core/jar/limits/jar-keeping.ts'
import { contentsOf } from '../../../core/jar/state/contents.ts'
import { correctedReading, SAME_READING_PERCENT } from '../../../core/jar/state/corrected-reading.ts'
import { unbottledOf } from '../../../core/jar/state/jar-bottles.ts'
import type { JarState } from '../../../core/jar/state/jar-state.ts'
import { isFarFromExpected } from '../../../core/jar/state/judge-measurement.ts'
import { madeStronger, NOTICED_PERCENT } from '../../../core/jar/state/made-stronger.ts'
import { sameFiltering, sameSweetening } from '../../../core/jar/state/same-again.ts'
import { isSweetening, settlesFrom, wantsSyrup } from '../../../core/jar/state/syrup-wanted.ts'
import { strengthServedNeat } from '../../../core/jar/state/too-strong-neat.ts'
import { exactly } from '../../../core/quantity/measured/measured.ts'
import { spirit } from '../recipe-plan/wishes.ts'
import { BOTTLED } from './diary.ts'
import { added, ml, plant, started, storyFrom, strained, strength, sweetened } from './jars.ts'

const OPENED = { kind: 'opened' } as const
const FILTERED = { kind: 'filtered', measured: null } as const
const entryOf = (story: JarState, kind: string) => story.happened.find((entry) => entry.kind === kind)!

/** A jar of one spirit, planned to become something. */
const planned = (spiritPercent: number, abvPercent: number, sugarGPerL: number) =>
  started({ spirits: [spirit(1000, spiritPercent)], plan: { targets: { abvPercent, sugarGPerL } } })

describe('syrup is wanted', () => {
  // Common practice, no source: a spirit within 0.5 % vol of the target wants no water.
  it.each([
    [30, 30, 0, false],
    [30.5, 30, 0, false],
    [30.51, 30, 0, true],
    [30, 30, 1, true],
    [25, 30, 0, false],
  ])('of %s %% vol for %s %% vol and %s g/L: %s', (spiritPercent, abvPercent, sugarGPerL, isWanted) => {
    const story = storyFrom(planned(spiritPercent, abvPercent, sugarGPerL), strained())
    expect(wantsSyrup(story)).toBe(isWanted)
    expect(isSweetening(story)).toBe(isWanted)
    expect(settlesFrom(story)?.kind).toBe(isWanted ? undefined : 'strained')
  })

  it('by the strength that was read before that of the spirit; not known without a target', () => {
    expect(wantsSyrup(storyFrom(planned(95, 30, 0), strained({ strength: strength(30.4) })))).toBe(false)
    const untold = storyFrom(started(), strained())
    expect(wantsSyrup(untold)).toBeNull()
    expect(isSweetening(untold)).toBe(true)
    expect(isSweetening(storyFrom(started(), strained(), BOTTLED))).toBe(false)
  })
})

describe('a reading', () => {
  // Common practice, no source: a quarter of what was expected.
  it.each([
    [500, 400, false],
    [501, 400, true],
    [300, 400, false],
    [299, 400, true],
  ])('of %s ml where %s were expected is far off: %s', (read, expected, isFar) => {
    const { happened } = storyFrom(started(), strained({ measured: ml(800) }))
    const entry = { ...happened[1]!, measured: ml(read) } as (typeof happened)[number]
    const amount = { amount: exactly(expected), by: 'volume' as const }
    expect(isFarFromExpected(entry, { amount, abvPercent: null })).toBe(isFar)
    expect(isFarFromExpected(happened[0]!, { amount: null, abvPercent: null })).toBe(true)
  })

  it.each([
    [50, 40, false],
    [50.1, 40, true],
    [30, 40, false],
    [29.9, 40, true],
  ])('of %s %% vol where %s were expected is far off: %s', (read, expected, isFar) => {
    const { happened } = storyFrom(started(), strained({ measured: ml(800) }))
    const entry = { ...happened[1]!, strength: strength(read) } as (typeof happened)[number]
    expect(isFarFromExpected(entry, { amount: null, abvPercent: exactly(expected) })).toBe(isFar)
  })

  it('is explained from 0.2 % vol on, of what holds sugar', () => {
    // The sugar of the plants: more of them put the reading further right.
    const told = [20, 40, 60, 80, 100, 150, 200].map((massG) => {
      const story = storyFrom(
        started({ plants: [plant('strawberry', massG)] }),
        strained({ measured: ml(900), strength: strength(80) }),
      )
      const apart = contentsOf(story).outcome.abvPercent.value - 80
      return { apart, isTold: correctedReading(story) !== null }
    })
    expect(new Set(told.map(({ isTold }) => isTold)).size).toBe(2)
    for (const { apart, isTold } of told) expect(isTold).toBe(Math.abs(apart) >= SAME_READING_PERCENT)
    expect(SAME_READING_PERCENT).toBe(0.2)
  })
})

describe('an addition', () => {
  it('makes a jar stronger or weaker from 0.1 % vol on', () => {
    const withAdded = (addedMl: number, percent: number) => {
      const story = storyFrom(started({ plants: [] }), added({ spirits: [spirit(addedMl, percent)] }))
      const before = contentsOf(storyFrom(started({ plants: [] }))).outcome.abvPercent.value
      const apart = contentsOf(story).outcome.abvPercent.value - before
      return { apart, is: madeStronger(story, 2) }
    }
    for (const addedMl of [1, 1.5, 2, 3, 4, 6]) {
      const { apart, is } = withAdded(addedMl, 40)
      expect(is).toBe(Math.abs(apart) < NOTICED_PERCENT ? null : false)
    }
    expect([1, 6].map((addedMl) => withAdded(addedMl, 40).is)).toEqual([null, false])
    expect(withAdded(500, 96).is).toBe(true)
    expect(NOTICED_PERCENT).toBe(0.1)
  })

  it('brings a jar nearer to fermenting, or not', () => {
    const water = (waterG: number) => added({ waterG: exactly(waterG) })
    const strong = storyFrom(started({ plants: [] }))
    const weak = storyFrom(started({ plants: [] }), water(8000))
    expect(fermentsNearer(strong, weak)).toBe(true)
    expect(fermentsNearer(weak, storyFrom(started({ plants: [] }), water(8001)))).toBe(true)
    expect(fermentsNearer(weak, weak)).toBe(false)
    expect(fermentsNearer(weak, storyFrom(started({ plants: [] }), water(7999)))).toBe(false)
    expect(fermentsNearer(strong, strong)).toBe(false)
  })
})

describe('bottles', () => {
  it('leave something, or hold more, beyond its ±', () => {
    const bottled = (value: number) => ({
      ...contentsOf(storyFrom(started(), strained())),
      bottledMl: 1000 - value,
      outcome: { ...contentsOf(storyFrom(started(), strained())).outcome, volumeMl: { value: 1000, plusMinus: 20 } },
    })
    expect(unbottledOf(bottled(20))).toBeNull()
    expect(unbottledOf(bottled(20.1))?.value).toBeCloseTo(20.1)
    expect(unbottledOf(bottled(-20))).toBeNull()
    expect(unbottledOf(bottled(-20.1))?.value).toBeCloseTo(-20.1)
  })

  it('are served neat once they are there, or the jar is open, and it has not ended', () => {
    const steeping = [started({ plants: [] }), strained()] as const
    expect(strengthServedNeat(storyFrom(...steeping))).toBeNull()
    expect(strengthServedNeat(storyFrom(...steeping, BOTTLED))?.value).toBeGreaterThan(60)
    expect(strengthServedNeat(storyFrom(...steeping, OPENED))?.value).toBeGreaterThan(60)
    expect(strengthServedNeat(storyFrom(...steeping, BOTTLED, { kind: 'emptied' }))).toBeNull()
    expect(strengthServedNeat(storyFrom(...steeping, sweetened(1500, 400), BOTTLED))).toBeNull()
  })
})

describe('the same is hardly meant twice', () => {
  const story = storyFrom(started(), strained(), sweetened(800, 400), FILTERED)
  const on = entryOf(story, 'sweetened').day

  it('of the same day and the same amounts', () => {
    const poured = (waterG: number, sugarG: number) => ({ waterG: exactly(waterG), sugarG: exactly(sugarG) })
    expect(sameSweetening(story, on, poured(800, 400))?.kind).toBe('sweetened')
    expect(sameSweetening(story, on, poured(801, 400))).toBeUndefined()
    expect(sameSweetening(story, on, poured(800, 401))).toBeUndefined()
    expect(sameSweetening(story, '2020-01-01', poured(800, 400))).toBeUndefined()
    expect(sameFiltering(story, entryOf(story, 'filtered').day, { measured: null })?.kind).toBe('filtered')
    expect(sameFiltering(story, entryOf(story, 'filtered').day, { measured: ml(700) })).toBeUndefined()
    expect(sameFiltering(story, '2020-01-01', { measured: null })).toBeUndefined()
  })
})
