import { describe, expect, it } from 'vitest'
import { batchCardData } from '../../../bot/picture/card/batch-card-data.ts'
import { bottleLabelData, bottleSizesOf } from '../../../bot/picture/label/bottle-label-data.ts'
import { shelfData } from '../../../bot/picture/shelf/shelf-data.ts'
import { jarTagData } from '../../../bot/picture/tag/jar-tag-data.ts'
import { exactly } from '../../../core/quantity/measured/measured.ts'
import { dayNumber } from '../../../core/quantity/time/day-number.ts'
import { whiteSugar } from '../../../core/recipe/sweetening.ts'
import { jarOf, startedAs } from '../commands-jar-views/jars.ts'
import { plant, readyBatch, seen, steepingBatch, TODAY } from './batches.ts'

describe('a card', () => {
  it('shares out the whole liquid as its strength and sugar say', () => {
    const { made } = batchCardData(readyBatch('Lemon'), TODAY)
    const { alcohol, water, sugar } = made!.shares
    expect(alcohol + water + sugar).toBeCloseTo(1, 12)
    expect(alcohol).toBeCloseTo(made!.abvPercent.value / 100, 12)
    // Dissolved sugar takes 0.61 to 0.63 mL/g (its apparent volume; Scheibler 1872, see core/liquid).
    expect(sugar / (made!.sugarGPerL.value / 1000)).toBeGreaterThan(0.61)
    expect(sugar / (made!.sugarGPerL.value / 1000)).toBeLessThan(0.63)
  })

  it('tells its days as they were, and those to come as planned', () => {
    const done = batchCardData(readyBatch('Lemon'), TODAY)
    expect(done.milestones).toEqual([
      { kind: 'started', day: '2026-09-25', isDone: true },
      { kind: 'strained', day: '2026-10-18', isDone: true },
      { kind: 'sweetened', day: '2026-10-19', isDone: true },
      { kind: 'ready', day: '2026-11-18', isDone: true },
    ])
    expect([done.rating, done.steepedDays, done.planned]).toEqual([4, 23, null])
    const coming = batchCardData(steepingBatch('Walnut'), TODAY)
    expect(coming.milestones.map(({ day, isDone }) => [day, isDone])).toEqual([
      ['2026-11-01', true],
      ['2026-12-20', false],
      [null, false],
      // A day after, and 60 of rest.
      ['2027-02-19', false],
    ])
    expect([coming.rating, coming.steepedDays, coming.day]).toEqual([null, null, 25])
  })

  it('counts the days of a late jar on from today, all of them', () => {
    const plan = { strainFrom: '2026-10-01', strainBy: '2026-10-10', restDays: 30 }
    const late = seen(jarOf('late', [{ on: '2026-09-01', ...startedAs('late', {}, plan) }]))
    const days = batchCardData(late, TODAY).milestones.flatMap(({ day }) => (day === null ? [] : [dayNumber(day)]))
    expect(days.slice(1)).toEqual([dayNumber(TODAY), dayNumber(TODAY) + 1 + plan.restDays])
  })

  it('has no liquid to tell of where there is none', () => {
    const view = seen(jarOf('bare', [{ on: '2026-11-01', ...startedAs('bare', { spirits: [], plants: [] }) }]))
    expect(batchCardData(view, TODAY).made).toBeNull()
  })
})

describe('a shelf', () => {
  it('leaves out what is finished, and stretches what is late to today', () => {
    const ended = seen(
      jarOf('ended', [
        { on: '2026-09-01', ...startedAs('ended') },
        { on: '2026-10-01', kind: 'discarded' },
      ]),
    )
    const late = seen(
      jarOf('late', [
        {
          on: '2026-09-01',
          ...startedAs('late', {}, { strainFrom: '2026-10-01', strainBy: '2026-10-10', restDays: 30 }),
        },
      ]),
    )
    const { jars } = shelfData([ended, late], TODAY)
    expect(jars.map(({ name }) => name)).toEqual(['late'])
    const today = dayNumber(TODAY)
    expect(jars[0]!.spans).toEqual([
      { phase: 'steeping', from: dayNumber('2026-09-01'), to: dayNumber('2026-10-01') },
      { phase: 'straining', from: dayNumber('2026-10-01'), to: today + 1 },
      { phase: 'resting', from: today + 1, to: today + 31 },
    ])
    expect(jars[0]!.readyDay).toBe(today + 31)
    expect(jars[0]!.tasks[0]).toMatchObject({ kind: 'strain', state: 'overdue' })
  })
})

describe('what is printed', () => {
  it('takes from a jar what is on its tag', () => {
    const tag = jarTagData(steepingBatch('Walnut'))
    expect(tag).toMatchObject({ started: '2026-11-01', strainFrom: '2026-12-01', strainBy: '2026-12-20' })
    expect(tag.isFlammable).toBe(true)
    const bare = jarOf('water', [{ on: '2026-11-01', ...startedAs('water', { spirits: [], waterG: exactly(500) }) }])
    expect(jarTagData(seen(bare))).toMatchObject({ abvPercent: null, isFlammable: false })
  })

  it('takes from a batch what is on its bottles', () => {
    const view = readyBatch('Lemon')
    expect(bottleSizesOf(view)).toEqual([500])
    expect(bottleLabelData(view, 500)).toMatchObject({
      volumeMl: 500,
      bottled: '2026-10-24',
      // Lemon peel: twelve months from its bottling. Common practice, no source.
      bestBefore: '2027-10-24',
      allergens: [],
      unknown: [],
      sweeteners: ['white_sugar'],
    })
  })

  it('says what the drink is, and who made it where that was said', () => {
    const { kind, maker } = bottleLabelData(readyBatch('Lemon'), 500)
    expect([kind, maker]).toEqual(['liqueur', null])
    expect(bottleLabelData(readyBatch('Lemon'), 500, 'Hillside Allotment Society').maker).toBe(
      'Hillside Allotment Society',
    )
  })

  it('names allergens, and plants of which nobody knows', () => {
    const view = steepingBatch('Nuts', [
      plant('chamomile', 'Chamomile', 5),
      plant('green_walnut', 'Green walnut', 300),
      plant(null, 'jaboticaba', 12),
    ])
    expect(bottleLabelData(view, null)).toMatchObject({
      allergens: ['walnut', 'daisy_family'],
      unknown: ['jaboticaba'],
      bottled: null,
      bestBefore: null,
    })
  })

  it('promises no year to what is weak', () => {
    const weak = seen(
      jarOf('weak', [
        { on: '2026-09-01', ...startedAs('weak', {}, { restDays: 5 }) },
        { on: '2026-10-01', kind: 'strained', measured: null, strength: null, rinseWaterG: exactly(0) },
        { on: '2026-10-02', kind: 'sweetened', waterG: exactly(4000), sweetenings: whiteSugar(exactly(200)) },
      ]),
    )
    expect(weak.contents.outcome.abvPercent.value).toBeLessThan(25)
    expect(bottleLabelData(weak, null).bestBefore).toBeNull()
  })
})
