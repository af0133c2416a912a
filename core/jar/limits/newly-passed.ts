import { ceilingsUsed, type OverCeiling } from '../../botanical/limits/ceilings.ts'
import { exactly } from '../../quantity/measured/measured.ts'
import { expectUsual } from '../../recipe/plan/unknown-plant.ts'
import type { HappeningEntry } from '../entry/entry.ts'
import type { JarState } from '../state/jar-state.ts'
import { heldIn, limitsPassed } from './limits-passed.ts'

/** Room for the last digit of a double. */
const SLACK = 1e-6

const shareOf = (story: JarState, hazard: OverCeiling['hazard']): number => {
  const { weighed, spiritMl, finishedMl } = heldIn(story)
  if (spiritMl === 0) return 0
  return ceilingsUsed(weighed, spiritMl, finishedMl).shares.find((each) => each.hazard === hazard)?.share ?? 0
}

/** The limits that a jar passes and did not pass before, or not so far. */
export const newlyPassed = (before: JarState, story: JarState): readonly OverCeiling[] =>
  limitsPassed(story).filter(({ hazard, share }) => share > shareOf(before, hazard) * (1 + SLACK))

/** The story with other plants in one entry. */
const withPlants = (story: JarState, seq: number, change: (entry: HappeningEntry) => HappeningEntry): JarState => {
  const happened = story.happened.map((entry) => (entry.seq === seq ? change(entry) : entry))
  const started = happened.find((entry) => entry.kind === 'started')
  return { ...story, happened, started: started ?? story.started }
}

const timesPlants =
  (factorOf: (id: string | null) => number) =>
  (entry: HappeningEntry): HappeningEntry =>
    entry.kind !== 'started' && entry.kind !== 'added'
      ? entry
      : {
          ...entry,
          plants: entry.plants.map((plant) => {
            const { value, plusMinus } = plant.massG
            const factor = factorOf(plant.id)
            return { ...plant, massG: { value: value * factor, plusMinus: plusMinus * factor } }
          }),
        }

/** A little less, so that what is rounded to be weighed out still fits. */
const ROUNDED = 1 - 1e-4

/**
 * By how much the plants of an entry may be there beside what is in the jar, by id, so that no limit is passed; null where
 * nothing of one may, or where less of them is no way.
 */
export function fittingFactors(
  story: JarState,
  seq: number,
  over: readonly OverCeiling[],
): ReadonlyMap<string, number> | null {
  const factors = new Map<string, number>()
  const rest = withPlants(
    story,
    seq,
    timesPlants(() => 0),
  )
  for (const { hazard, share, of: parts } of over) {
    const others = shareOf(rest, hazard)
    const factor = (ROUNDED * (1 - others)) / (share - others)
    for (const { id } of parts) factors.set(id, Math.min(factor, factors.get(id) ?? 1))
  }
  if ([...factors.values()].some((factor) => factor <= 0)) return null
  const factorOf = (id: string | null): number => (id === null ? 1 : (factors.get(id) ?? 1))
  const isWithin = newlyPassed(rest, withPlants(story, seq, timesPlants(factorOf))).length === 0
  return isWithin ? factors : null
}

/** All of each food in a jar that the catalogue has no amounts for, by name, in grams. */
const foodsIn = ({ happened }: JarState): ReadonlyMap<string, number> => {
  const foods = new Map<string, number>()
  for (const entry of happened) {
    if (entry.kind !== 'started' && entry.kind !== 'added') continue
    for (const { id, name, massG } of entry.plants) {
      if (id === null) foods.set(name, (foods.get(name) ?? 0) + massG.value)
    }
  }
  return foods
}

/** Throws `over_food_bound` where there is more of a food than before, and more than is usual of its kind. */
export function expectUsualFoods(before: JarState, story: JarState): void {
  const were = foodsIn(before)
  const more = [...foodsIn(story)].filter(([name, massG]) => massG > (were.get(name) ?? 0))
  expectUsual(
    more.map(([name, massG]) => ({ name, massG: exactly(massG) })),
    heldIn(story).spiritMl,
  )
}
