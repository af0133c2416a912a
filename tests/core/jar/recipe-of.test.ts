import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { DomainError } from '../../../core/domain-error.ts'
import type { Happening, JarEntry } from '../../../core/jar/entry/entry.ts'
import { record } from '../../../core/jar/record/record.ts'
import { contentsOf } from '../../../core/jar/state/contents.ts'
import { type JarState, jarStateOf } from '../../../core/jar/state/jar-state.ts'
import { recipeOf } from '../../../core/jar/state/recipe-of.ts'
import { decodeBatch, encodeBatch } from '../../../core/recipe/code/batch-code.ts'
import { planRecipe } from '../../../core/recipe/code/plan-recipe.ts'
import type { Recipe } from '../../../core/recipe/code/recipe.ts'
import { batchOf } from '../../../core/recipe/code/recipe-batch.ts'
import { whiteSugar } from '../../../core/recipe/sweetening.ts'
import { runs, SEED } from '../../runs.ts'
import { refusal } from '../quantity/refusal.ts'
import { START, spirit } from '../recipe-plan/wishes.ts'
import { added, entriesOf, META, ml, on, plant, started, storyFrom, strained, strength, sweetened } from './jars.ts'
import { tries } from './random-stories.ts'

const TARGETS = { abvPercent: 30, sugarGPerL: 250 }
const begun = started({ plan: { targets: TARGETS, strainFrom: '2026-11-15', strainBy: '2026-12-01', restDays: 40 } })

/** What happened, each on its day after the start. */
const storyOn = (...told: readonly (readonly [day: number, what: Happening, typed?: JarEntry['typed']])[]): JarState =>
  jarStateOf(
    told.reduce<readonly JarEntry[]>(
      (entries, [day, what, typed = []]) => record(entries, what, on(day), { ...META, typed }).entries,
      [],
    ),
  )!

const planOf = (recipe: Recipe) =>
  planRecipe(
    batchOf(recipe),
    { spirits: null, spiritAbvPercent: null, plants: [] },
    {
      named: { abvPercent: undefined, sugarGPerL: undefined },
      bottles: [{ count: null, volumeMl: 500 }],
      start: START,
      readyBy: null,
      steepAtPercent: null,
    },
  )

describe('the recipe of a jar', () => {
  it('is what was planned, while it steeps', () => {
    expect(recipeOf(storyFrom(begun))).toEqual({
      plants: [{ id: 'lemon_peel', isDried: false, massMg: 150_000, countTenths: null, addOnDays: 0 }],
      spirits: [{ volumeTenthMl: 10_000, abvHundredthPercent: 9500 }],
      waterTenthG: 0,
      sugarTenthG: 0,
      targets: { abvHundredthPercent: 3000, sugarTenthGPerL: 2500 },
      steep: { fromDays: 14, byDays: 30 },
      restDays: 40,
    })
  })

  it('has what was added, and the days it really steeped', () => {
    const story = storyOn(
      [0, begun],
      [3, added({ plants: [plant('ginger', 20)], sweetenings: whiteSugar({ value: 40, plusMinus: 1 }) })],
      [
        5,
        added({ plants: [plant('lemon_peel', 30)], spirits: [spirit(200, 40)], waterG: { value: 60, plusMinus: 1 } }),
      ],
      [25, strained()],
    )
    expect(recipeOf(story)).toMatchObject({
      plants: [
        { id: 'lemon_peel', massMg: 180_000, addOnDays: 0 },
        { id: 'ginger', massMg: 20_000, addOnDays: 3 },
      ],
      spirits: [
        { volumeTenthMl: 10_000, abvHundredthPercent: 9500 },
        { volumeTenthMl: 2000, abvHundredthPercent: 4000 },
      ],
      waterTenthG: 600,
      sugarTenthG: 400,
      steep: { fromDays: 25, byDays: 25 },
    })
  })

  it('has a plant that was to go in later from its day, and not where the jar was strained before', () => {
    const later = started({ plants: [plant('lemon_peel', 150), plant('basil', 10, { addOn: '2026-11-09' })] })
    const ids = (story: JarState) => recipeOf(story).plants.map(({ id, addOnDays }) => [id, addOnDays])
    const both = [
      ['lemon_peel', 0],
      ['basil', 8],
    ]
    expect(ids(storyOn([0, later]))).toEqual(both)
    expect(ids(storyOn([0, later], [10, strained()]))).toEqual(both)
    expect(ids(storyOn([0, later], [4, strained()]))).toEqual([['lemon_peel', 0]])
    const early = storyOn([0, later], [6, added({ plants: [plant('basil', 12)] })], [9, strained()])
    expect(recipeOf(early).plants[1]).toMatchObject({ id: 'basil', massMg: 12_000, addOnDays: 6 })
  })

  it('has what it became where it was sweetened, to the last digit of the code', () => {
    const story = storyOn(
      [0, begun],
      [25, strained({ measured: ml(900), strength: strength(84) })],
      [26, sweetened(1100, 480)],
    )
    const { outcome } = contentsOf(story)
    expect(recipeOf(story).targets).toEqual({
      abvHundredthPercent: Math.round(100 * outcome.abvPercent.value),
      sugarTenthGPerL: Math.round(10 * outcome.sugarGPerL.value),
    })
    expect(recipeOf(story).targets).not.toEqual(recipeOf(storyFrom(begun)).targets)
  })

  it('can be planned even where less water came with the plants than is expected', () => {
    const story = storyOn(
      [0, begun],
      [25, strained({ measured: ml(900), strength: strength(93) })],
      [26, { kind: 'bottled', bottles: [{ count: 1, volumeMl: 500 }] }],
    )
    const { targets } = recipeOf(story)
    const { plan } = planOf(recipeOf(story))
    expect(plan.waterG.value).toBeLessThan(1)
    expect(targets!.abvHundredthPercent / 100).toBeLessThan(contentsOf(story).outcome.abvPercent.value)
    expect(targets!.abvHundredthPercent / 100).toBeCloseTo(plan.steep.infusionAbvPercent.value, 1)
  })

  it('tells plants that were dried', () => {
    const dried = started({ plants: [plant('ginger', 20, { isDried: true }), plant('turmeric', 10)] })
    const story = storyOn([0, dried])
    expect(recipeOf(story).plants.map(({ id, isDried }) => [id, isDried])).toEqual([
      ['ginger', true],
      ['turmeric', false],
    ])
  })

  it('leaves hours to the catalogue', () => {
    const hours = started({ plan: { isHours: true, strainFrom: '2026-11-01', strainBy: '2026-11-01' } })
    expect(recipeOf(storyOn([0, hours])).steep).toBeNull()
    expect(recipeOf(storyOn([0, hours], [0, strained()])).steep).toBeNull()
  })

  it('is not made of a plant that only its maker knows, nor of what is refused today', () => {
    const story = storyFrom(started({ plants: [plant('lemon_peel', 100), plant(null, 10)] }))
    expect(refusal(() => recipeOf(story))).toBe('unreachable plant_unshared')
    const gone = storyFrom(started({ plants: [plant('gone', 10)] }))
    expect(refusal(() => recipeOf(gone))).toBe('unreachable plant_unshared')
    const nutmeg = storyFrom(started({ plants: [plant('nutmeg', 100)] }))
    expect(refusal(() => recipeOf(nutmeg))).toBe('over_ceiling over_ceiling')
    expect(refusal(() => recipeOf(storyFrom(started({ plants: [] }))))).toBe('unreachable nothing_to_share')
  })

  it('tells nothing of its maker', () => {
    const story = storyOn(
      [0, { ...begun, name: 'Nonna’s secret' }],
      [8, { kind: 'tasted', rating: 4, note: 'for the midwinter fair' }],
      [25, strained()],
      [26, { kind: 'renamed', name: 'cellar' }],
    )
    const bare = storyOn([0, begun], [25, strained()])
    expect(recipeOf(story)).toEqual(recipeOf(bare))
    expect(JSON.stringify(recipeOf(story))).not.toMatch(/2026|secret|fair|cellar|note|rating|zone/)
  })

  it('of any jar is planned from its code, or kindly refused', () => {
    let made = 0
    fc.assert(
      fc.property(tries, (steps) => {
        const story = jarStateOf(entriesAfter(steps))
        if (story === null) return
        try {
          const recipe = recipeOf(story)
          expect(decodeBatch(encodeBatch(recipe))).toEqual(recipe)
          planOf(recipe)
          made++
        } catch (error) {
          if (!(error instanceof DomainError) || error.code === 'internal') throw error
        }
      }),
      { seed: SEED, numRuns: runs(25, 2000) },
    )
    expect(made).toBeGreaterThan(10)
  })
})

/** Those that can follow one another. */
function entriesAfter(steps: typeof tries extends fc.Arbitrary<infer Tries> ? Tries : never): readonly JarEntry[] {
  return steps.reduce<readonly JarEntry[]>((entries, step) => {
    if (step.do !== 'record') return entries
    try {
      return record(entries, step.happening, step.moment, META).entries
    } catch (error) {
      if (error instanceof DomainError) return entries
      throw error
    }
  }, entriesOf())
}
