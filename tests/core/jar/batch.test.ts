import { describe, expect, it } from 'vitest'
import { startedFrom } from '../../../core/jar/entry/start-from-plan.ts'
import { contentsOf } from '../../../core/jar/state/contents.ts'
import { abvPercent, massG } from '../../../core/liquid/liquid.ts'
import { exactly } from '../../../core/quantity/measured/measured.ts'
import { isoDay } from '../../../core/quantity/time/calendar-day.ts'
import { parseSpan } from '../../../core/quantity/time/parse-span.ts'
import { plan } from '../../../core/recipe/plan/plan.ts'
import { whiteSugar } from '../../../core/recipe/sweetening.ts'
import { spirit, wish } from '../recipe-plan/wishes.ts'
import { entriesOf, storyFrom } from './jars.ts'

const lemons = wish([{ id: 'lemon_peel', massG: 120 }], { spirits: [spirit(1000, 95)] })

describe('a jar started from a plan', () => {
  it('holds what the plan pours in, and its days', () => {
    const planned = plan(lemons)
    const jar = startedFrom(planned, lemons, 'lemon')
    expect(contentsOf(storyFrom(jar)).outcome.liquid).toEqual(planned.steep.jar)
    expect(jar).toMatchObject({
      kind: 'started',
      name: 'lemon',
      plants: [
        {
          id: 'lemon_peel',
          name: 'Lemon peel (zest)',
          count: null,
          isDried: false,
          isUsual: false,
          words: null,
          addOn: null,
        },
      ],
      targets: planned.targets,
      bottles: [{ count: 4, volumeMl: 500 }],
      days: { isHours: false, steepHours: null },
    })
    // From 25 November: first tasted after 7 days, strained from 14 to 30, rested 30 (catalogue).
    expect(jar.days).toMatchObject({
      tasteFrom: '2026-12-02',
      strainFrom: '2026-12-09',
      strainBy: '2026-12-25',
      restDays: 30,
    })
  })

  it('becomes what was planned when it is strained and sweetened as planned', () => {
    const planned = plan(lemons)
    const story = storyFrom(
      startedFrom(planned, lemons, 'lemon'),
      { kind: 'strained', measured: null, strength: null, rinseWaterG: exactly(0) },
      { kind: 'sweetened', waterG: planned.waterG, sweetenings: whiteSugar(planned.sugarG) },
    )
    const { outcome } = contentsOf(story)
    expect(outcome.abvPercent.value).toBeCloseTo(planned.targets.abvPercent, 6)
    expect(outcome.sugarGPerL.value).toBeCloseTo(planned.targets.sugarGPerL, 6)
    expect(massG(outcome.liquid)).toBeCloseTo(massG(planned.outcome.liquid), 6)
  })

  it('names the water that dilutes, and the sugar that goes in with the plants', () => {
    const diluted = { ...lemons, steepAtPercent: 70, sweetenings: whiteSugar(exactly(80)) }
    const jar = startedFrom(plan(diluted), diluted, 'lemon')
    expect(jar.waterG.value).toBeGreaterThan(250)
    expect(jar.sweetenings).toEqual(whiteSugar(exactly(80)))
    expect(abvPercent(contentsOf(storyFrom(jar)).outcome.liquid)).toBeCloseTo(abvPercent(plan(diluted).steep.jar), 9)
  })

  it('names the day of a plant that goes in later', () => {
    const two = wish([{ id: 'green_walnut' }, { id: 'basil' }], { spirits: [spirit(1000, 60)] })
    const planned = plan(two)
    const [first, later] = startedFrom(planned, two, 'walnut').plants
    expect(first!.addOn).toBeNull()
    expect(later!.addOn).toBe(isoDay(planned.schedule!.addOn[1]!))
    expect(later!.addOn! > isoDay(two.start)).toBe(true)
  })

  it('counts hours where the plants are done within the day', () => {
    // Black tea: 0.2 to 0.5 days.
    const tea = wish([{ id: 'tea_black' }], { spirits: [spirit(1000, 60)] })
    const batch = startedFrom(plan(tea), tea, 'tea').days
    expect(batch.isHours).toBe(true)
    expect(batch.steepHours!.min).toBeCloseTo(4.8, 9)
    expect(batch.steepHours!.max).toBeCloseTo(12, 9)
  })

  it('keeps the days that the maker of an unknown plant told', () => {
    const unknown = [{ name: 'meadow tips', at: 0, massG: exactly(40) }]
    const told = { ...wish([], { spirits: [spirit(1000, 60)] }), unknown, steepFor: parseSpan('10 days') }
    const jar = startedFrom(plan(told), told, 'meadow')
    expect(jar.plants).toEqual([
      {
        id: null,
        name: 'meadow tips',
        massG: exactly(40),
        count: null,
        isDried: false,
        isUsual: false,
        words: null,
        addOn: null,
      },
    ])
    expect(jar.days).toMatchObject({
      tasteFrom: null,
      strainFrom: '2026-12-05',
      strainBy: '2026-12-05',
      restDays: null,
    })
    const short = { ...told, steepFor: parseSpan('6 hours') }
    expect(startedFrom(plan(short), short, 'short').days).toMatchObject({
      isHours: true,
      steepHours: { min: 6, max: 6 },
    })
    expect(entriesOf(jar)).toHaveLength(1)
  })
})
