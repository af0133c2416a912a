import { describe, expect, it } from 'vitest'
import { contentsOf } from '../../../core/jar/state/contents.ts'
import { jarStateOf } from '../../../core/jar/state/jar-state.ts'
import { lastTime } from '../../../core/jar/state/last-time.ts'
import type { Targets } from '../../../core/recipe/targets.ts'
import { entriesOf, ml, on, started, storyFrom, strained, strength, sweetened } from './jars.ts'

/** Planned to be strained on its 21st to 41st day, strained so many days after the start. */
const strainedOn = (days: number) => {
  const plan = { strainFrom: on(20).day, strainBy: on(40).day }
  const [start, strain] = entriesOf(started({ plan }), strained())
  return lastTime(jarStateOf([start!, { ...strain!, ...on(days) }])!)
}

// Judgement, no source: a day, or 15 % of the days.
describe('a batch was strained off its days', () => {
  it.each([
    [16, true],
    [17, false],
    [30, false],
    [46, false],
    [47, true],
  ])('20 to 40 days planned, after %i: %s', (days, isDaysOff) => {
    expect(strainedOn(days)).toMatchObject({ plannedDays: { fromDays: 20, byDays: 40 }, wentDays: days, isDaysOff })
  })

  it('by a day never', () => {
    const plan = { strainFrom: on(2).day, strainBy: on(2).day }
    const [start, strain] = entriesOf(started({ plan }), strained())
    const after = (days: number) => lastTime(jarStateOf([start!, { ...strain!, ...on(days) }])!).isDaysOff
    expect([1, 2, 3, 4].map(after)).toEqual([false, false, false, true])
  })
})

/** Gauged well, so that a jug and a scale explain less than what is allowed for. */
const made = (sugarG: number, targets: Targets | null) =>
  storyFrom(
    started({ plan: { targets } }),
    strained({ measured: ml(950, 2), strength: strength(80, null, 0.1) }),
    sweetened(1000, sugarG),
  )

const isOff = (sugarG: number, off: (became: Targets) => Targets): boolean => {
  const { abvPercent, sugarGPerL } = contentsOf(made(sugarG, null)).outcome
  expect(abvPercent.plusMinus).toBeLessThan(1.2)
  expect(sugarGPerL.plusMinus).toBeLessThan(12)
  return lastTime(made(sugarG, off({ abvPercent: abvPercent.value, sugarGPerL: sugarGPerL.value }))).isMadeOff
}

// Judgement, no source: 1.5 % vol; 15 g/L or a tenth of it.
describe('a batch became something else than was planned', () => {
  it.each([
    [1.49, false],
    [1.51, true],
    [-1.49, false],
    [-1.51, true],
  ])('%d %% vol from it: %s', (percent, isMadeOff) => {
    expect(isOff(200, (of) => ({ ...of, abvPercent: of.abvPercent + percent }))).toBe(isMadeOff)
  })

  it.each([
    [14.9, false],
    [15.1, true],
    [-14.9, false],
    [-15.1, true],
  ])('%d g/L from it: %s', (gPerL, isMadeOff) => {
    expect(isOff(200, (of) => ({ ...of, sugarGPerL: of.sugarGPerL + gPerL }))).toBe(isMadeOff)
  })

  it.each([
    [0.099, false],
    [0.101, true],
  ])('%d of much sugar from it: %s', (share, isMadeOff) => {
    expect(isOff(700, (of) => ({ ...of, sugarGPerL: of.sugarGPerL / (1 - share) }))).toBe(isMadeOff)
    expect(isOff(700, (of) => ({ ...of, sugarGPerL: of.sugarGPerL / (1 + share) }))).toBe(isMadeOff)
  })
})
