import { spiritsNamed } from '../jar/entry/spirits-named.ts'
import type { IngredientsNamed } from '../jar/state/batch-facts.ts'
import { contentsOf } from '../jar/state/contents.ts'
import type { JarState } from '../jar/state/jar-state.ts'
import { plantsOfStart } from '../jar/state/later-plants.ts'
import type { Plan } from '../recipe/plan/plan.ts'
import type { Needs, PlantNeed, SpiritNeed, SweetenerNeed, VesselNeed } from '../shopping/needs.ts'
import { plantNeed } from '../shopping/needs.ts'
import { expectedOutcome, needsOfJar } from '../shopping/needs-of-jar.ts'
import { needsOfPlan, spiritNeeds, sweetenerNeeds } from '../shopping/needs-of-plan.ts'
import { countBought } from '../shopping/sold.ts'

/** Something that goes into a batch, or that it is filled into. */
export type UsedItem =
  | { readonly kind: 'plant'; readonly plant: PlantNeed }
  | { readonly kind: 'spirit'; readonly spirit: SpiritNeed }
  | { readonly kind: 'sweetener'; readonly sweetener: SweetenerNeed }
  | { readonly kind: 'bottles'; readonly vessels: VesselNeed }

/** All that a batch uses, each thing once, and what becomes of it. */
export interface Used {
  readonly items: readonly UsedItem[]
  readonly volumeMl: number
  /** Some of it has not gone in yet. */
  readonly isExpected: boolean
  /** Jars that were poured into it, whose cost is not in it. */
  readonly pouredFrom: readonly string[]
}

const plantItem = (plant: PlantNeed): UsedItem => ({
  kind: 'plant',
  // Part of a fruit is bought with the rest of it.
  plant: plant.count === null ? plant : { ...plant, count: plant.ofZest ? countBought(plant.count) : plant.count },
})

const itemsIn = ({
  plants,
  spirits,
  sweeteners,
  bottles,
}: Pick<Needs, 'plants' | 'spirits' | 'sweeteners' | 'bottles'>) => [
  ...plants.map(plantItem),
  ...spirits.map((spirit): UsedItem => ({ kind: 'spirit', spirit })),
  ...sweeteners.map((sweetener): UsedItem => ({ kind: 'sweetener', sweetener })),
  ...bottles.map((vessels): UsedItem => ({ kind: 'bottles', vessels })),
]

/** `share` of each, 0 to 1. */
function shareOfItem(item: UsedItem, share: number): UsedItem {
  switch (item.kind) {
    case 'plant': {
      const { plant } = item
      const count = plant.count === null ? null : plant.count * share
      return { ...item, plant: { ...plant, massG: plant.massG * share, count } }
    }
    case 'spirit':
      return { ...item, spirit: { ...item.spirit, volumeMl: item.spirit.volumeMl * share } }
    case 'sweetener':
      return { ...item, sweetener: { ...item.sweetener, massG: item.sweetener.massG * share } }
    case 'bottles':
      return item
  }
}

/** What is one thing on a bill. */
function keyOf(item: UsedItem): string {
  switch (item.kind) {
    case 'plant':
      return `plant ${item.plant.id ?? item.plant.name} ${item.plant.isDried} ${item.plant.unit}`
    case 'spirit':
      return `spirit ${item.spirit.abvPercent.toFixed(1)} ${item.spirit.sugarGPerL.toFixed(0)} ${item.spirit.drink}`
    case 'sweetener':
      return `sweetener ${item.sweetener.material}`
    case 'bottles':
      return `bottles ${item.vessels.volumeMl.toFixed(0)}`
  }
}

function together(one: UsedItem, other: UsedItem): UsedItem {
  if (one.kind === 'plant' && other.kind === 'plant') {
    const count = one.plant.count === null || other.plant.count === null ? null : one.plant.count + other.plant.count
    return { ...one, plant: { ...one.plant, massG: one.plant.massG + other.plant.massG, count } }
  }
  if (one.kind === 'spirit' && other.kind === 'spirit') {
    return { ...one, spirit: { ...one.spirit, volumeMl: one.spirit.volumeMl + other.spirit.volumeMl } }
  }
  if (one.kind === 'sweetener' && other.kind === 'sweetener') {
    return { ...one, sweetener: { ...one.sweetener, massG: one.sweetener.massG + other.sweetener.massG } }
  }
  if (one.kind === 'bottles' && other.kind === 'bottles') {
    return { ...one, vessels: { ...one.vessels, count: one.vessels.count + other.vessels.count } }
  }
  return one
}

function eachOnce(items: readonly UsedItem[]): readonly UsedItem[] {
  const kept = new Map<string, UsedItem>()
  for (const item of items) {
    const before = kept.get(keyOf(item))
    kept.set(keyOf(item), before === undefined ? item : together(before, item))
  }
  return [...kept.values()]
}

/** All that a plan uses from the first day to the last. */
export function usedInPlan(plan: Plan, bottles: Parameters<typeof needsOfPlan>[1]): Used {
  return {
    items: eachOnce(itemsIn(needsOfPlan(plan, bottles))),
    volumeMl: plan.outcome.volumeMl.value,
    isExpected: true,
    pouredFrom: [],
  }
}

const ingredientItems = ({
  plants,
  spirits,
  sweetenings,
}: Pick<IngredientsNamed, 'plants' | 'spirits' | 'sweetenings'>) =>
  itemsIn({
    plants: plants.map((plant) => plantNeed({ ...plant, massG: plant.massG.value })),
    spirits: spiritNeeds(spirits),
    sweeteners: sweetenerNeeds(sweetenings),
    bottles: [],
  })

const sweetenedItems = (sweetenings: IngredientsNamed['sweetenings']): readonly UsedItem[] =>
  ingredientItems({ plants: [], spirits: [], sweetenings })

const bottleItems = (bottles: readonly VesselNeed[]): readonly UsedItem[] =>
  itemsIn({ plants: [], spirits: [], sweeteners: [], bottles })

/** What has gone into a jar so far, in order; of what was poured into another jar only the share that stayed. */
function usedSoFar(story: JarState): readonly UsedItem[] {
  let items: UsedItem[] = []
  for (const entry of story.happened) {
    if (entry.kind === 'started')
      items.push(...ingredientItems({ ...entry, spirits: spiritsNamed(entry), plants: plantsOfStart(story) }))
    if (entry.kind === 'added') items.push(...ingredientItems({ ...entry, spirits: spiritsNamed(entry) }))
    if (entry.kind === 'sweetened' || entry.kind === 'fruit_sugared') items.push(...sweetenedItems(entry.sweetenings))
    if (entry.kind === 'parted') items = items.map((item) => shareOfItem(item, entry.kept.value))
    if (entry.kind === 'bottled') items.push(...bottleItems(entry.bottles))
  }
  return items
}

/** What a jar has used, and while it runs what is still to go in. */
export function usedInJar(story: JarState): Used {
  const { happened, bottled } = story
  const { sweeteners, bottles } = needsOfJar(story)
  const toCome = itemsIn({ plants: [], spirits: [], sweeteners, bottles: bottled === null ? bottles : [] })
  return {
    items: eachOnce([...usedSoFar(story), ...toCome]),
    volumeMl: (expectedOutcome(story) ?? contentsOf(story).outcome).volumeMl.value,
    isExpected: toCome.length > 0,
    pouredFrom: happened.flatMap((entry) => (entry.kind === 'poured_in' ? [entry.other] : [])),
  }
}
