import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Happening, JarEntry } from '../../../core/jar/entry/entry.ts'
import { undo } from '../../../core/jar/record/record.ts'
import { contentsOf } from '../../../core/jar/state/contents.ts'
import { fruitGives } from '../../../core/jar/state/fruit-gives.ts'
import { allOf } from '../../../core/jar/state/in-fruit.ts'
import { jarStateOf } from '../../../core/jar/state/jar-state.ts'
import { agenda } from '../../../core/jar/tasks/agenda.ts'
import { duties } from '../../../core/jar/tasks/duties.ts'
import { ethanolG, type Liquid, mix, sugarG, volumeMl, waterG } from '../../../core/liquid/liquid.ts'
import { exactly } from '../../../core/quantity/measured/measured.ts'
import { whiteSugar } from '../../../core/recipe/sweetening.ts'
import { runs, SEED } from '../../runs.ts'
import { refusal } from '../quantity/refusal.ts'
import { settings } from './diary.ts'
import { DAY_MS, entriesOf, META, ml, START_MS, started, storyFrom, strained } from './jars.ts'
import { expectSameGrams, gramsOf, liquidsIn, SLOES, straining } from './liquids.ts'

const sugared = (sugarG: number): Happening => ({ kind: 'fruit_sugared', sweetenings: whiteSugar(exactly(sugarG)) })
const drawn = (measured: ReturnType<typeof ml> | null = null): Happening => ({
  kind: 'sweetened',
  waterG: exactly(0),
  sweetenings: [],
  ofFruit: { measured },
})

const liquidsOf = (...happened: readonly Happening[]) => liquidsIn(entriesOf(...happened))

const expectSame = (one: Liquid, other: Liquid): void => expectSameGrams(gramsOf(one), gramsOf(other))

const sugar = fc.integer({ min: 1, max: 600 })

describe('dry sugar on strained fruit', () => {
  it('makes and loses no gram, in the jar and in the fruit together', () => {
    fc.assert(
      fc.property(straining, sugar, sugar, (strainedSo, first, second) => {
        const story = [SLOES, strainedSo, sugared(first)]
        const [before, once] = [liquidsOf(...story), liquidsOf(...story, drawn())]
        expectSame(mix(once.liquid, allOf(once.inFruit)), mix(before.liquid, allOf(before.inFruit)))
        const again = liquidsOf(...story, drawn(), sugared(second), drawn())
        const whole = mix(before.liquid, allOf(before.inFruit))
        expect(sugarG(mix(again.liquid, allOf(again.inFruit)))).toBeCloseTo(sugarG(whole) + second, 6)
        expect(ethanolG(mix(again.liquid, allOf(again.inFruit)))).toBeCloseTo(ethanolG(whole), 6)
      }),
      { seed: SEED, numRuns: runs(60, 2000) },
    )
  })

  it('leaves the jar as it is until it is poured back', () => {
    expectSame(liquidsOf(SLOES, strained(), sugared(200)).liquid, liquidsOf(SLOES, strained()).liquid)
  })

  it('brings all its sugar but what stays, and spirit of the strength that the fruit had, weakened by its juice', () => {
    // By hand: what the plants soaked up, half of their juice and the sugar are mixed; half as much stays as they held.
    const before = liquidsOf(SLOES, strained(), sugared(200))
    const { soaked, juice } = before.inFruit
    const mixed = {
      ethanol: ethanolG(soaked),
      water: waterG(soaked) + 0.5 * waterG(juice),
      sugar: sugarG(soaked) + 0.5 * sugarG(juice) + 200,
    }
    const once = liquidsOf(SLOES, strained(), sugared(200), drawn())
    const stays = volumeMl(once.inFruit.soaked)
    expect(stays).toBeCloseTo(0.5 * volumeMl(soaked), 6)
    const share = volumeMl(once.drawn) / (volumeMl(once.drawn) + stays)
    expect(ethanolG(once.drawn)).toBeCloseTo(share * mixed.ethanol, 6)
    expect(waterG(once.drawn)).toBeCloseTo(share * mixed.water, 6)
    expect(sugarG(once.drawn)).toBeCloseTo(share * mixed.sugar, 6)
  })

  it('tells what it expects with a ± that admits how little is known', () => {
    const gives = fruitGives(storyFrom(SLOES, strained(), sugared(200)))!
    const { volumeMl: became } = contentsOf(storyFrom(SLOES, strained(), sugared(200), drawn())).outcome
    const was = contentsOf(storyFrom(SLOES, strained())).outcome.volumeMl
    expect(was.value + gives.volumeMl.value).toBeCloseTo(became.value, -1)
    expect(gives.volumeMl.plusMinus / gives.volumeMl.value).toBeGreaterThan(0.15)
    expect(fruitGives(storyFrom(SLOES, strained()))).toBeNull()
  })

  it('is measured where its maker measures it, and is no more than there can be', () => {
    expect(volumeMl(liquidsOf(SLOES, strained(), sugared(200), drawn(ml(180))).drawn)).toBeCloseTo(180, 6)
    expect(refusal(() => entriesOf(SLOES, strained(), sugared(200), drawn(ml(3000))))).toBe(
      'bad_value more_than_in_fruit',
    )
  })

  it('needs fruit that was strained, and comes back once', () => {
    expect(refusal(() => entriesOf(SLOES, sugared(200)))).toBe('wrong_stage cannot_follow')
    expect(refusal(() => entriesOf(started({ plants: [] }), strained(), sugared(200)))).toBe('wrong_stage no_fruit')
    expect(refusal(() => entriesOf(SLOES, strained(), drawn()))).toBe('wrong_stage fruit_not_sugared')
    expect(refusal(() => entriesOf(SLOES, strained(), sugared(200), drawn(), drawn()))).toBe(
      'wrong_stage fruit_not_sugared',
    )
  })

  it('is undone step by step', () => {
    const [one, two] = [entriesOf(SLOES, strained(), sugared(200)), entriesOf(SLOES, strained(), sugared(200), drawn())]
    expect(jarStateOf(undo(two, META).entries)).toEqual(jarStateOf(one))
    expect(jarStateOf(undo(one, META).entries)).toEqual(storyFrom(SLOES, strained()))
  })
})

describe('while the sugar draws', () => {
  const wanted = settings({ zone: 'UTC' })
  const planned: Happening = { ...SLOES, targets: { abvPercent: 25, sugarGPerL: 200 } }
  const entries = entriesOf(planned, strained(), sugared(150))
  const at = (day: number) => START_MS + day * DAY_MS

  it('asks for nothing for a week, then for pouring it back, twice at most', () => {
    expect(agenda(entries, wanted, at(8)).today.map(({ kind }) => kind)).toEqual([])
    expect(agenda(entries, wanted, at(9)).today.map(({ kind, state }) => [kind, state])).toEqual([['sweeten', 'due']])
    const asked = (told: readonly JarEntry[]) =>
      duties(told, wanted, at(100)).flatMap(({ kind, day }) => (kind === 'sweeten' ? [day] : []))
    expect(asked(entries)).toEqual(['2026-11-10', '2026-11-17'])
    expect(asked(entriesOf(planned, strained(), sugared(150), drawn()))).toEqual([])
  })

  it('asks for bottling only once it is back', () => {
    const kinds = (told: readonly JarEntry[]) => agenda(told, wanted, at(30)).today.map(({ kind }) => kind)
    expect(kinds(entries)).not.toContain('bottle')
    expect(kinds(entriesOf(planned, strained(), sugared(150), drawn()))).toContain('bottle')
  })
})
