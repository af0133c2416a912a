import { describe, expect, it } from 'vitest'
import type { Happening } from '../../../core/jar/entry/entry.ts'
import { expectFollows } from '../../../core/jar/record/check-sequence.ts'
import { believedSteps } from '../../../core/jar/state/believed-steps.ts'
import { contentsOf } from '../../../core/jar/state/contents.ts'
import { jarStateOf } from '../../../core/jar/state/jar-state.ts'
import { type Expected, judgeMeasurement } from '../../../core/jar/state/judge-measurement.ts'
import { exactly } from '../../../core/quantity/measured/measured.ts'
import { whiteSugar } from '../../../core/recipe/sweetening.ts'
import { refusal } from '../quantity/refusal.ts'
import { spirit } from '../recipe-plan/wishes.ts'
import { entriesOf, grams, ml, plant, started, strained, strength } from './jars.ts'

describe('measurements that surprise', () => {
  const unusual = (...happenings: readonly Happening[]) => expectFollows(entriesOf(...happenings)).map(({ key }) => key)

  // 110 g of zest, counted and so known to 40 %: 970 ml are expected, 39 ml of difference being the 95 % of all tools.
  it.each<readonly [measuredMl: number, isSurprising: boolean]>([
    [930, false],
    [1010, false],
    [890, true],
    [390, true],
  ])('%d ml where the tools explain some 40 ml: %s', (measuredMl, isSurprising) => {
    const zest = plant('lemon_peel', { value: 110, plusMinus: 44 })
    const keys = unusual(
      started({ plants: [zest], spirits: [{ ...spirit(1000, 95), amount: { value: 1000, plusMinus: 20 } }] }),
      strained({ measured: ml(measuredMl) }),
    )
    expect(keys).toEqual(isSurprising ? ['reading_surprising'] : [])
  })

  // Of a normal distribution 95 % lie within 1.96 deviations and 99.7 % within 2.94, half as far again.
  it.each([
    [39.26, 0.5, false],
    [39.24, 0.5, true],
    [38.51, 1, false],
    [38.49, 1, true],
  ])('%s ± %s %% vol of a spirit of 40 %% is surprising: %s', (value, plusMinus, isSurprising) => {
    const poured = { kind: 'in', spirits: [spirit(1000, 40)], waterG: exactly(0), sweetenings: [], plants: [] } as const
    const read = { kind: 'measured', abvPercent: { value, plusMinus }, sugarGPerL: exactly(0) } as const
    expect(judgeMeasurement('lemon', [poured, read]) !== null).toBe(isSurprising)
  })

  it('expects what the jar was known to hold, with the ± of its own reading', () => {
    const entries = entriesOf(started(), strained({ measured: ml(930), strength: strength(87) }))
    const known = contentsOf(jarStateOf(entries)!).outcome.abvPercent
    const read = { value: 28, plusMinus: 2 }
    const gauged = { kind: 'measured', method: 'two_instruments', abvPercent: read, sugarGPerL: exactly(180) } as const
    const unusual = expectFollows(entriesOf(started(), strained({ measured: ml(930), strength: strength(87) }), gauged))
    const { expected } = unusual.find(({ key }) => key === 'reading_surprising') as { readonly expected: Expected }
    expect(expected.abvPercent?.value).toBeCloseTo(known.value, 6)
    expect(expected.abvPercent?.plusMinus).toBeGreaterThan(0.3)
    expect(expected.abvPercent?.plusMinus).toBeLessThanOrEqual(known.plusMinus)
  })

  it('says what was expected, of the amount in the unit that was read', () => {
    const both = strained({ measured: grams(500), strength: strength(60) })
    const [{ expected } = { expected: null }] = expectFollows(entriesOf(started(), both)) as readonly {
      expected: Expected
    }[]
    expect(expected?.amount?.by).toBe('mass')
    expect(expected?.amount?.amount.value).toBeGreaterThan(700)
    expect(expected?.abvPercent?.value).toBeGreaterThan(80)
    const [weak] = expectFollows(entriesOf(started(), strained({ measured: ml(960), strength: strength(60) })))
    expect(weak).toMatchObject({ key: 'reading_surprising', expected: { amount: null } })
  })
})

describe('measurements that cannot be', () => {
  it('more than all that went in', () => {
    // A litre of spirit, 122 g of water and 6 g of sugar in the peel: 1.11 l, less what mixing takes.
    expect(refusal(() => entriesOf(started(), strained({ measured: ml(1300) })))).toBe('bad_value more_than_went_in')
  })

  it('counts the water that was rinsed through', () => {
    const rinsed = strained({ measured: ml(1250), rinseWaterG: exactly(200) })
    expect(expectFollows(entriesOf(started(), rinsed)).map(({ key }) => key)).not.toContain('more_than_went_in')
    expect(refusal(() => entriesOf(started(), strained({ measured: ml(1250) })))).toBe('bad_value more_than_went_in')
  })

  it('more alcohol than went in, beyond the ± of the readings', () => {
    const half = started({ spirits: [spirit(1000, 50)], plants: [plant('lemon_peel', 300)] })
    // 500 ml of alcohol went in: 1100 ml at 50 %, as 47 % over what the peel gives off, would hold 550.
    const call = () => entriesOf(half, strained({ measured: ml(1100), strength: strength(47) }))
    expect(refusal(call)).toBe('bad_value stronger_than_went_in')
    // Where the jug is 10 % off, it may be.
    expect(entriesOf(half, strained({ measured: ml(1100, 110), strength: strength(47) }))).toHaveLength(2)
  })

  it('a strength above that of what was poured in, beyond its ±', () => {
    const strong = started({ spirits: [spirit(1000, 95)], plants: [plant('lemon_peel', 80)] })
    const read = (percent: number) => entriesOf(strong, strained({ measured: ml(900), strength: strength(percent) }))
    expect(refusal(() => read(96.5))).toBe('bad_value stronger_than_spirit')
    expect(read(95.4)).toHaveLength(2)
    // Put right for the plants' sugar, a reading does not rise above the spirit.
    expect(contentsOf(jarStateOf(read(95))!).outcome.abvPercent.value).toBeCloseTo(95, 6)
    // Of two spirits it is their mixture.
    const two = started({ spirits: [spirit(500, 95), spirit(500, 45)], plants: [plant('chamomile', 5)] })
    const call = () => entriesOf(two, strained({ measured: ml(600), strength: strength(75) }))
    expect(refusal(call)).toBe('bad_value stronger_than_spirit')
  })

  it('more after the filter than before', () => {
    const first = [started(), strained({ measured: ml(900) })] as const
    const call = () => entriesOf(...first, { kind: 'filtered', measured: ml(1000) })
    expect(refusal(call)).toBe('bad_value more_than_went_in')
    // Not measured before, more than expected is a surprise only.
    expect(entriesOf(started(), strained(), { kind: 'filtered', measured: ml(1000) })).toHaveLength(3)
  })
})

describe('a hydrometer over sugar', () => {
  const read = strained({ measured: ml(900), strength: strength(40) })

  it('is put right where the plants’ own sugar is little', () => {
    expect(entriesOf(started({ spirits: [spirit(1000, 50)] }), read)).toHaveLength(2)
  })

  // Estimated, no source: 20 g/L hide 2 to 7 % vol.
  it.each([
    [19.5, false],
    [21, true],
  ])('is refused from 20 g/L on where it stands for more than was poured: %s g in a litre', (sugarG, isRefused) => {
    const sweet = started({ plants: [], spirits: [spirit(1000, 50)], sweetenings: whiteSugar(exactly(sugarG)) })
    const make = () => entriesOf(sweet, strained({ measured: ml(1000), strength: strength(50) }))
    expect(isRefused ? refusal(make) : make().length).toBe(isRefused ? 'bad_value sweet_strength' : 2)
  })

  it('is refused where sugar went in with the plants', () => {
    const sweet = started({ spirits: [spirit(1000, 50)], sweetenings: whiteSugar(exactly(200)) })
    expect(refusal(() => entriesOf(sweet, read))).toBe('bad_value sweet_strength')
  })

  it('is taken where the plants’ own sugar is much, and explained by it', () => {
    const fruit = started({ spirits: [spirit(1000, 50)], plants: [plant('strawberry', 500)] })
    const happenings = [fruit, strained({ measured: ml(1200), strength: strength(35) })] as const
    expect(expectFollows(entriesOf(...happenings))).toEqual([])
    const { strength: source, outcome } = contentsOf(jarStateOf(entriesOf(...happenings))!)
    // 18 g of sugar and 9 g of extract in 1.4 l hide some 5 % vol.
    expect(outcome.abvPercent.value).toBeGreaterThan(36)
    expect(['estimated', 'measured']).toContain(source)
  })
})

// 700 ml of a labelled 40 % are known better than a hydrometer reads. Common practice, no source: a gram a litre hides nothing.
it.each([
  [0.6, 'taken'],
  [0.8, 'explained'],
])('a reading over %d g of sugar in 700 ml is %s', (sugarG, how) => {
  const entries = entriesOf(
    started({ spirits: [spirit(700, 40)], plants: [], sweetenings: whiteSugar(exactly(sugarG)) }),
    strained({ measured: ml(700), strength: strength(39.8) }),
  )
  const steps = believedSteps(jarStateOf(entries)!.happened)
  expect(steps.some(({ step }) => step.kind === 'strained' && step.strength !== null)).toBe(how === 'taken')
})
