import type { IsoDay } from '../../quantity/time/calendar-day.ts'
import type { PlantIn } from '../entry/entry.ts'
import { nameKey } from '../entry/jar-name.ts'
import type { JarState } from './jar-state.ts'

/** A plant that the plan puts in later and that has not gone in yet. */
export type PlantToAdd = PlantIn & { readonly addOn: string }

/** The plant itself: by its id, or by its name where the catalogue does not have it. */
export const plantKey = ({ id, name }: Pick<PlantIn, 'id' | 'name'>): string => id ?? nameKey(name)

export const isSamePlant = (one: PlantIn, other: PlantIn): boolean =>
  (one.id === null) === (other.id === null) && plantKey(one) === plantKey(other)

export const plantsToAdd = ({ started, happened }: JarState): readonly PlantToAdd[] =>
  started.plants.filter(
    (plant): plant is PlantToAdd =>
      plant.addOn !== null &&
      !happened.some((entry) => entry.kind === 'added' && entry.plants.some((added) => isSamePlant(plant, added))),
  )

/** What the plan puts in by a day, and is not in yet. */
export const plantsDue = (story: JarState, day: IsoDay): readonly PlantToAdd[] =>
  plantsToAdd(story).filter(({ addOn }) => addOn <= day)

/** Later plants of which nothing was said and whose day had come when the jar was strained: they count as put in. */
export const plantsTakenAsAdded = (story: JarState): readonly PlantToAdd[] => {
  const { strained } = story
  return strained === null ? [] : plantsDue(story, strained.day)
}

/** Later plants whose day had not come when the jar was strained: they are none of it. */
export const plantsLeftOut = (story: JarState): readonly PlantToAdd[] => {
  const { strained } = story
  return strained === null ? [] : plantsToAdd(story).filter(({ addOn }) => addOn > strained.day)
}

/**
 * The start's plants without those that went in as said later: while it steeps, those still to come keep their `addOn`; once
 * strained, those whose day never came are none of it.
 */
export function plantsOfStart(story: JarState): readonly PlantIn[] {
  const waiting: readonly PlantIn[] = story.strained === null ? plantsToAdd(story) : plantsTakenAsAdded(story)
  return story.started.plants.filter((plant) => plant.addOn === null || waiting.includes(plant))
}
