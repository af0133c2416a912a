import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { AddedAs, Happening } from '../../../core/jar/entry/entry.ts'
import { expectFollows } from '../../../core/jar/record/check-sequence.ts'
import { record, undo } from '../../../core/jar/record/record.ts'
import { jarStateOf } from '../../../core/jar/state/jar-state.ts'
import { movedByLatePlants, plantsOverdone } from '../../../core/jar/state/late-plants.ts'
import { agenda } from '../../../core/jar/tasks/agenda.ts'
import { duties } from '../../../core/jar/tasks/duties.ts'
import { ethanolG, sugarG } from '../../../core/liquid/liquid.ts'
import { exactly } from '../../../core/quantity/measured/measured.ts'
import { whiteSugar } from '../../../core/recipe/sweetening.ts'
import { runs, SEED } from '../../runs.ts'
import { spirit } from '../recipe-plan/wishes.ts'
import { settings } from './diary.ts'
import { added, DAY_MS, entriesOf, META, on, plant, START_MS, started } from './jars.ts'
import { liquidsIn } from './liquids.ts'

/** Strawberries, strained after one to two weeks. */
const STRAWBERRIES = started({
  name: 'rumpot',
  spirits: [spirit(1000, 54)],
  plants: [plant('strawberry', 500)],
  sweetenings: whiteSugar(exactly(250)),
  plan: { tasteFrom: '2026-11-04', strainFrom: '2026-11-08', strainBy: '2026-11-15' },
})

const layer = (id: string | null, as: AddedAs | null = 'layer', sugar = 250): Happening =>
  added({
    plants: [plant(id, 500)],
    spirits: [spirit(300, 54)],
    sweetenings: whiteSugar(exactly(sugar)),
    ...(as !== null && { as }),
  })

/** Each on its day after the start. */
const jarWith = (...told: readonly (readonly [number, Happening])[]) =>
  told.reduce((entries, [day, each]) => record(entries, each, on(day), META).entries, entriesOf(STRAWBERRIES))

const windowIn = (entries: ReturnType<typeof jarWith>) => {
  const { tasteFrom, strainFrom, strainBy } = movedByLatePlants(jarStateOf(entries)!).started.days
  return [tasteFrom, strainFrom, strainBy]
}

const BASE = liquidsIn(jarWith()).liquid

const WANTED = settings({ zone: 'UTC', shake: 'off' })

describe('fruit layered in', () => {
  it('takes the window along to its own days', () => {
    expect(windowIn(jarWith())).toEqual(['2026-11-04', '2026-11-08', '2026-11-15'])
    // Plums steep 30 to 60 days (reference/botanicals.json), twenty days after the start: 21 November.
    expect(windowIn(jarWith([20, layer('plum')]))).toEqual(['2026-12-05', '2026-12-21', '2027-01-20'])
  })

  it('waits for an earlier layer that still wants longer', () => {
    expect(windowIn(jarWith([20, layer('plum')], [22, layer('strawberry')])).slice(1)).toEqual([
      '2026-12-21',
      '2026-12-21',
    ])
  })

  it('moves the days by as many as it came later where the catalogue does not have it', () => {
    expect(windowIn(jarWith([20, layer(null)]))).toEqual(['2026-11-24', '2026-11-28', '2026-12-05'])
  })

  it('leaves the days as they are where it is no layer', () => {
    expect(windowIn(jarWith([20, layer('plum', null)]))).toEqual(['2026-11-04', '2026-11-08', '2026-11-15'])
  })

  it('is asked to be strained in that window, and not before', () => {
    const entries = jarWith([5, layer('plum')])
    const at = (day: number) => START_MS + day * DAY_MS
    const asked = (day: number) => agenda(entries, WANTED, at(day)).today.map(({ kind }) => kind)
    expect(asked(10)).not.toContain('strain')
    expect(asked(36)).toContain('strain')
    const said = duties(entries, WANTED, at(400)).flatMap(({ kind, day }) => (kind === 'strain' ? [day] : []))
    expect(said[0]).toBe('2026-12-06')
    expect(new Set(said).size).toBe(said.length)
  })

  it('names what of the first layers would be in too long, but no fruit', () => {
    const withPeel = jarWith([0, layer('lemon_peel', null)], [1, layer('basil', null)], [20, layer('plum')])
    // Basil by day 7 (reference/botanicals.json); lemon peel and strawberries stay.
    expect(plantsOverdone(jarStateOf(withPeel)!).map(({ id, days, latestDays }) => [id, days, latestDays])).toEqual([
      ['basil', 49, 7],
    ])
    const out = record(withPeel, { kind: 'taken_out', plants: [plant('basil', 500)] }, on(21), META).entries
    expect(plantsOverdone(jarStateOf(out)!)).toEqual([])
  })

  it('counts its spirit and its sugar to the gram, in any order, and is undone', () => {
    const some = fc.array(fc.tuple(fc.integer({ min: 0, max: 40 }), fc.integer({ min: 0, max: 400 })), { maxLength: 5 })
    const bySort = fc.constantFrom<AddedAs | null>('layer', null)
    fc.assert(
      fc.property(some, bySort, (layers, as) => {
        const told = layers.map(([day, sugar]) => [day, layer('sour_cherry', as, sugar)] as const)
        const entries = jarWith(...told)
        expectFollows(entries)
        const { liquid } = liquidsIn(entries)
        // By hand: 54 % vol of 789.24 g/L; 300 ml and its sugar with each layer, and what the fruit's own sugar adds.
        const ethanol = (1000 + 300 * layers.length) * 0.54 * 0.78924
        expect(Math.abs(ethanolG(liquid) - ethanol)).toBeLessThan(1e-5 * ethanol)
        expect(Math.abs(ethanolG(liquid) - ethanolG(BASE) * (1 + 0.3 * layers.length))).toBeLessThan(1e-9 * ethanol)
        const plain = liquidsIn(jarWith(...layers.map(([day]) => [day, layer('sour_cherry', as, 0)] as const))).liquid
        const sugar = layers.reduce((sum, [, each]) => sum + each, 0)
        expect(Math.abs(sugarG(liquid) - sugarG(plain) - sugar)).toBeLessThan(1e-9 * (1 + sugarG(liquid)))
        if (layers.length > 0) {
          const before = jarWith(...told.slice(0, -1))
          expect(jarStateOf(undo(entries, META).entries)).toEqual(jarStateOf(before))
        }
      }),
      { seed: SEED, numRuns: runs(30, 1000) },
    )
  })
})

describe('an enzyme', () => {
  it('is worth a word once there is spirit, and changes nothing in the jar', () => {
    const enzyme = added({ enzyme: '1 tsp' })
    const made = record(entriesOf(STRAWBERRIES), enzyme, on(1), META)
    expect(made.unusual.map(({ key }) => key)).toEqual(['enzyme_after_spirit'])
    expect(liquidsIn(made.entries).liquid).toEqual(liquidsIn(entriesOf(STRAWBERRIES)).liquid)
  })
})
