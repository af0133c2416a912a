import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Happening, JarEntry, SecondOf } from '../../../core/jar/entry/entry.ts'
import { limitsPassed } from '../../../core/jar/limits/limits-passed.ts'
import { plantsInside } from '../../../core/jar/pour/lifted-out.ts'
import { broughtBy } from '../../../core/jar/pour/pour-together.ts'
import { secondDays, secondOf } from '../../../core/jar/pour/second-steep.ts'
import { ingredientsTold, plantIdsIn, sweeteningsIn } from '../../../core/jar/state/batch-facts.ts'
import { bestUntil } from '../../../core/jar/state/best-until.ts'
import { jarStateOf } from '../../../core/jar/state/jar-state.ts'
import { recipeOf } from '../../../core/jar/state/recipe-of.ts'
import { forGuests } from '../../../core/label/for-guests.ts'
import { ethanolG, mix, spirit as pure, volumeMl } from '../../../core/liquid/liquid.ts'
import { exactly } from '../../../core/quantity/measured/measured.ts'
import { addMonths, dayFromIso, isoDay } from '../../../core/quantity/time/calendar-day.ts'
import { whiteSugar } from '../../../core/recipe/sweetening.ts'
import { runs, SEED } from '../../runs.ts'
import { refusal } from '../quantity/refusal.ts'
import { spirit } from '../recipe-plan/wishes.ts'
import { entriesOf, plant, started, strained, unsoundIn } from './jars.ts'
import { expectSameGrams, gramsOf, liquidsIn, SLOES, straining } from './liquids.ts'

const jarOf = (...happened: readonly Happening[]) => ({ id: 'first', entries: entriesOf(...happened) })

/** A jar on plants that had steeped, with so much spirit. */
const begunOn = (again: SecondOf, spiritMl: number, ...more: readonly Happening[]) =>
  entriesOf(started({ name: 'two', plants: [], spirits: [spirit(spiritMl, 50)], secondOf: again }), ...more)

describe('a second steep', () => {
  it('begins with its spirit and what the plants had soaked up, to the gram', () => {
    fc.assert(
      fc.property(straining, fc.integer({ min: 50, max: 2000 }), (strainedSo, spiritMl) => {
        const first = jarOf(SLOES, strainedSo)
        const { again } = secondOf(first, [first])
        const { soaked } = liquidsIn(first.entries).inFruit
        const two = begunOn(again, spiritMl)
        const poured = mix(soaked, pure({ volumeMl: spiritMl, abvPercent: 50 }))
        expectSameGrams(gramsOf(liquidsIn(two).liquid), gramsOf(poured))
        // Strained, nothing is lost but what a filter takes, 1.5 % of what drains.
        const done = liquidsIn(begunOn(again, spiritMl, strained()))
        const lost = volumeMl(liquidsIn(two).liquid) - volumeMl(done.liquid) - volumeMl(done.inFruit.soaked)
        expect(lost).toBeCloseTo((volumeMl(done.liquid) * 0.015) / 0.985, 6)
      }),
      { seed: SEED, numRuns: runs(50, 2000) },
    )
  })

  it('counts the alcohol that is left in them, and its share of the first', () => {
    const first = jarOf(SLOES, strained())
    const { left } = secondOf(first, [first])
    const { soaked } = liquidsIn(first.entries).inFruit
    expect(left.ethanolG.value).toBeCloseTo(ethanolG(soaked), 9)
    const steeping = liquidsIn(first.entries.slice(0, 1)).liquid
    expect(left.share.value).toBeCloseTo(volumeMl(soaked) / volumeMl(steeping), 9)
    expect(left.soakedMl.plusMinus).toBeGreaterThan(0)
  })

  it('gives no more water or sugar of the plants, but soaks up as much', () => {
    const first = jarOf(SLOES, strained())
    const two = begunOn(secondOf(first, [first]).again, 700)
    const { juice } = liquidsIn(two).inFruit
    expect(volumeMl(juice)).toBe(0)
    const kept = (entries: readonly JarEntry[]) => liquidsIn(entries).keptBackMl!
    const whole = kept(begunOn(secondOf(first, [first]).again, 700, strained()))
    // Filters take a share of what drains, which is not the same of two jars.
    expect(Math.abs(whole - kept(first.entries))).toBeLessThan(10)
  })

  it('carries what guests and limits have to know', () => {
    const first = jarOf(started({ spirits: [spirit(300, 60)], plants: [plant('green_walnut', 300)] }), strained())
    const two = jarStateOf(begunOn(secondOf(first, [first]).again, 300))!
    expect(plantIdsIn(two)).toEqual(['green_walnut'])
    expect(forGuests(ingredientsTold(two).plants).allergens).toContain('walnut')
    expect(plantsInside(two).map(({ id }) => id)).toEqual(['green_walnut'])
    const strong = jarOf(started({ spirits: [spirit(1000, 40)], plants: [plant('nutmeg', 4)] }), strained())
    const over = jarStateOf(begunOn(secondOf(strong, [strong]).again, 100))!
    expect(limitsPassed(over).length).toBeGreaterThan(0)
  })

  it('tells of the honey that the plants had soaked up, as much as is in them', () => {
    const honeyed = started({
      spirits: [spirit(700, 40)],
      plants: [plant('sloe', 500)],
      sweetenings: [{ material: 'honey', massG: exactly(100) }],
    })
    // White sugar that went in after straining never met the plants.
    const sweetened: Happening = { kind: 'sweetened', waterG: exactly(0), sweetenings: whiteSugar(exactly(100)) }
    const first = jarOf(honeyed, strained(), sweetened)
    const { again, left } = secondOf(first, [first])
    const two = begunOn(again, 700)
    const inTwo = sweeteningsIn(jarStateOf(two)!)
    expect(inTwo.map(({ material }) => material)).toEqual(['honey'])
    expect(inTwo[0]!.massG.value).toBeCloseTo(100 * left.share.value, 9)
    expect(left.share.value).toBeGreaterThan(0.1)
    expect(unsoundIn(two)).toBeNull()
  })

  it('is as good for as long as its plants are, and hands on what is not in the catalogue', () => {
    const first = jarOf(
      started({ spirits: [spirit(700, 40)], plants: [plant('strawberry', 300), plant(null, 5)] }),
      strained(),
    )
    const { again } = secondOf(first, [first])
    const two = jarStateOf(begunOn(again, 700, strained()))!
    // Strawberries: 3 months, see `shelfLife`.
    expect(bestUntil(two)).toBe(isoDay(addMonths(dayFromIso(two.strained!.day), 3)))
    const unknown = again.plants.find(({ id }) => id === null)!
    expect(broughtBy(two, exactly(1)).plants.map(({ name }) => name)).toContain(unknown.name)
  })

  it('is on plants that are strained, are not under sugar, and are nowhere else', () => {
    const sugared: Happening = { kind: 'fruit_sugared', sweetenings: whiteSugar(exactly(100)) }
    const call = (first: ReturnType<typeof jarOf>, others: readonly ReturnType<typeof jarOf>[] = []) =>
      refusal(() => secondOf(first, [first, ...others]))
    expect(call(jarOf(SLOES))).toBe('wrong_stage second_not_strained')
    expect(call(jarOf(started({ plants: [] }), strained()))).toBe('wrong_stage no_fruit')
    expect(call(jarOf(SLOES, strained(), sugared))).toBe('wrong_stage second_sugared')
    const first = jarOf(SLOES, strained())
    const two = { id: 'secnd', entries: begunOn(secondOf(first, [first]).again, 300) }
    expect(call(first, [two])).toBe('wrong_stage second_taken')
  })

  it('has half of everything where half was poured into another jar', () => {
    const half: Happening = { kind: 'parted', kept: exactly(0.5), other: 'sun', isNew: false }
    const [whole, parted] = [jarOf(SLOES, strained()), jarOf(SLOES, strained(), half)].map((jar) =>
      secondOf(jar, [jar]),
    )
    expect(parted!.again.plants[0]!.massG.value).toBeCloseTo(250, 9)
    expect(parted!.left.ethanolG.value).toBeCloseTo(whole!.left.ethanolG.value / 2, 9)
  })

  it('is no recipe of its own, and is sound in a file', () => {
    const first = jarOf(SLOES, strained())
    const two = begunOn(secondOf(first, [first]).again, 300)
    expect(refusal(() => recipeOf(jarStateOf(two)!))).toBe('unreachable second_steep_unshared')
    expect(unsoundIn(two)).toBeNull()
    const [start] = two
    const bad = {
      ...start!,
      secondOf: { ...secondOf(first, [first]).again, plants: [plant('unheard_of', 1)] },
    } as JarEntry
    expect(unsoundIn([bad])).not.toBeNull()
  })

  it('has the days of its plants, or none where one is not in the catalogue', () => {
    // Sloes: taste from day 45, 75 to 120 days (reference/botanicals.json).
    const start = { year: 2026, month: 11, day: 1 }
    expect(secondDays([plant('sloe', 500)], start)).toMatchObject({ strainFrom: '2027-01-15', strainBy: '2027-03-01' })
    expect(secondDays([plant('sloe', 500), plant(null, 5)], start)).toMatchObject({ strainFrom: null, strainBy: null })
  })
})
