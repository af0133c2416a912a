import { DomainError } from '../../domain-error.ts'
import { dayFromIso, daysBetween, type IsoDay } from '../../quantity/time/calendar-day.ts'
import { plantNumbers } from '../../recipe/code/plant-numbers.ts'
import { RANGES, type RecipePlant } from '../../recipe/code/recipe.ts'
import type { Ingredients, PlantIn } from '../entry/entry.ts'
import type { Of, Story } from './jar-state.ts'
import { plantsOfStart } from './later-plants.ts'

type PutIn = Of<'started'> | Of<'added'>

/** A rounding is no milligram. */
const ROUNDING = 1e-6

export const within = (value: number, [least, most]: readonly [number, number]): number =>
  Math.min(most, Math.max(least, value))

/** Whole days from the start. */
export const daysInto = ({ started }: Story, day: IsoDay): number =>
  Math.max(0, daysBetween(dayFromIso(day), dayFromIso(started.day)))

/** What was put in, in order: until it was strained everything, spirit also later. */
export function putIn({ happened, strained }: Story): readonly (PutIn & Ingredients)[] {
  const entries = happened.filter((entry): entry is PutIn => entry.kind === 'started' || entry.kind === 'added')
  if (strained === null) return entries
  const until = happened.indexOf(strained)
  return entries.map((entry) => (happened.indexOf(entry) < until ? entry : { ...entry, plants: [] }))
}

const plantsIn = (entry: PutIn, story: Story): readonly PlantIn[] =>
  entry.kind === 'added' ? entry.plants : plantsOfStart(story)

function asPlant({ id, name, massG, count, addOn, isDried }: PlantIn, entry: PutIn, story: Story): RecipePlant {
  if (id === null || !plantNumbers.includes(id)) throw new DomainError('unreachable', 'plant_unshared', { name })
  return {
    id,
    isDried,
    massMg: within(Math.floor(massG.value * 1000 + ROUNDING), RANGES.massMg),
    countTenths: count === null ? null : within(Math.round(count * 10), RANGES.countTenths),
    addOnDays: within(daysInto(story, addOn ?? entry.day), RANGES.addOnDays),
  }
}

const isSame = (one: RecipePlant, other: RecipePlant): boolean => one.id === other.id && one.isDried === other.isDried

/** Each plant once, from the first day on which some of it went in; throws `plant_unshared`. */
export function recipePlants(story: Story): readonly RecipePlant[] {
  const plants = putIn(story).flatMap((entry) => plantsIn(entry, story).map((plant) => asPlant(plant, entry, story)))
  return plants
    .filter((plant, index) => plants.findIndex((each) => isSame(each, plant)) === index)
    .map((plant) => {
      const same = plants.filter((each) => isSame(each, plant))
      return {
        ...plant,
        massMg: within(
          same.reduce((sum, { massMg }) => sum + massMg, 0),
          RANGES.massMg,
        ),
        countTenths: same.length === 1 ? plant.countTenths : null,
        addOnDays: Math.min(...same.map(({ addOnDays }) => addOnDays)),
      }
    })
}
