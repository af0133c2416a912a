import fc from 'fast-check'
import { describe, expect, it, test } from 'vitest'
import { catalogue } from '../../../core/botanical/catalogue/catalogue.ts'
import { DomainError } from '../../../core/domain-error.ts'
import { addDays, daysBetween } from '../../../core/quantity/time/calendar-day.ts'
import { schedule, type Times } from '../../../core/recipe/plan/schedule.ts'
import { runs, SEED } from '../../runs.ts'
import { refusedValues } from '../quantity/refusal.ts'
import { START } from './wishes.ts'

const timesOf = (id: string): Times => {
  const { timesDays } = catalogue.find((each) => each.id === id)!
  return {
    tasteDays: timesDays.tasteFrom,
    usualMinDays: timesDays.usualMin,
    usualMaxDays: timesDays.usualMax,
    restMinDays: timesDays.restMin,
  }
}

const inDays = (days: number) => addDays(START, days)
const lemon = timesOf('lemon_peel')

// steep times of lemon in the catalogue: taste 7, usual 14 to 30, rest 30 days.
describe('one plant', () => {
  it('strains within the usual days and rests', () => {
    const made = schedule([lemon], { start: START, readyBy: null })
    expect(made).toMatchObject({
      tasteFrom: inDays(7),
      strainFrom: inDays(14),
      strainBy: inDays(30),
      sweetenBy: inDays(31),
      ready: inDays(61),
      hurried: 'no',
      latestStart: null,
    })
  })

  test.each([
    ['plenty of time', 120, 'no', 14, 30, 30],
    ['a narrower window', 50, 'no', 14, 19, 30],
    ['just the usual', 45, 'no', 14, 14, 30],
    ['a shorter rest', 44, 'rest', 14, 14, 29],
    ['the shortest rest', 22, 'rest', 14, 14, 7],
    ['a shorter steep', 21, 'steep', 13, 13, 7],
    ['the shortest of all', 15, 'steep', 7, 7, 7],
  ] as const)('%s: ready in %d days', (_, days, hurried, from, by, rest) => {
    const made = schedule([lemon], { start: START, readyBy: inDays(days) })
    expect(made).toMatchObject({ hurried, strainFrom: inDays(from), strainBy: inDays(by), restDays: rest })
    expect(daysBetween(made.ready, inDays(days))).toBeLessThanOrEqual(0)
  })

  it('refuses a feast before that, with the earliest day', () => {
    const call = () => schedule([lemon], { start: START, readyBy: inDays(14) })
    expect(refusedValues(call)).toEqual({ readyBy: inDays(14), earliest: inDays(15) })
    expect(schedule([lemon], { start: START, readyBy: inDays(15) }).ready).toEqual(inDays(15))
  })

  it('says how late it may be begun', () => {
    expect(schedule([lemon], { start: START, readyBy: inDays(100) }).latestStart).toEqual(inDays(55))
  })
})

describe('several plants', () => {
  it('starts with the longest and adds the shorter ones so that all are strained together', () => {
    const basil = timesOf('basil')
    const made = schedule([basil, lemon], { start: START, readyBy: null })
    expect(made.addOn).toEqual([inDays(14 - basil.usualMinDays), START])
    expect(made.strainFrom).toEqual(inDays(14))
    expect(made.strainBy).toEqual(inDays(14 + basil.usualMaxDays - basil.usualMinDays))
  })

  it('puts in together what can be strained together', () => {
    const made = schedule([lemon, timesOf('ginger')], { start: START, readyBy: null })
    expect(made.addOn).toEqual([START, START])
    expect(made.strainBy).toEqual(inDays(21))
  })
})

it('a ready-by day is met or refused with one that is met; every plant has its time', () => {
  const some = fc.array(fc.nat(catalogue.length - 1), { minLength: 1, maxLength: 4 })
  fc.assert(
    fc.property(some, fc.integer({ min: -5, max: 500 }), (indices, days) => {
      const plants = indices.map((index) => timesOf(catalogue[index]!.id))
      try {
        const made = schedule(plants, { start: START, readyBy: inDays(days) })
        expect(daysBetween(made.ready, inDays(days))).toBeLessThanOrEqual(0)
        const order = [START, made.tasteFrom, made.strainFrom, made.strainBy, made.sweetenBy, made.ready]
        for (const [index, day] of order.slice(1).entries()) {
          expect(daysBetween(day, order[index]!)).toBeGreaterThanOrEqual(0)
        }
        expect(made.restDays).toBeGreaterThanOrEqual(Math.min(7, ...plants.map(({ restMinDays }) => restMinDays)))
        for (const [index, day] of made.addOn.entries()) {
          expect(daysBetween(day, START)).toBeGreaterThanOrEqual(0)
          expect(daysBetween(made.strainFrom, day)).toBeGreaterThanOrEqual(0)
          // None is over its usual time on the last straining day, by the day that a fraction is rounded to.
          const longest = daysBetween(made.strainBy, day)
          expect(longest).toBeLessThanOrEqual(Math.max(plants[index]!.usualMaxDays, plants[index]!.usualMinDays) + 1)
        }
      } catch (error) {
        if (!(error instanceof DomainError)) throw error
        const { earliest } = error.values as { earliest: typeof START }
        expect(daysBetween(earliest, inDays(days))).toBeGreaterThan(0)
        expect(schedule(plants, { start: START, readyBy: earliest }).ready).toEqual(earliest)
      }
    }),
    { seed: SEED, numRuns: runs(500, 5000) },
  )
})
