import type { BotanicalKind } from '../../botanical/botanical.ts'
import { botanicalById } from '../../botanical/catalogue/catalogue.ts'
import { dayNumber, isoOf } from '../../quantity/time/day-number.ts'
import type { PlantIn } from '../entry/entry.ts'
import type { JarState, Of } from './jar-state.ts'
import { isSamePlant, plantKey } from './later-plants.ts'
import { isCatalogued } from './liquid-steps.ts'

const moved = (day: string | null, days: number): string | null => (day === null ? null : isoOf(dayNumber(day) + days))

/** The days of a plan, and since when they are known. */
interface Moved {
  readonly days: Of<'started'>['days']
  readonly sinceMs: number
}

/** Plants of the plan that went in later than it says: all of its days wait as long. */
function withLatePlants({ started, happened }: JarState): Moved {
  let late = { days: 0, sinceMs: started.enteredMs }
  for (const plant of started.plants) {
    const { addOn } = plant
    const added = happened.find(
      (entry) => entry.kind === 'added' && entry.plants.some((one) => isSamePlant(plant, one)),
    )
    if (addOn === null || added === undefined) continue
    const days = dayNumber(added.day) - dayNumber(addOn)
    if (days > late.days) late = { days, sinceMs: Math.max(added.enteredMs, started.enteredMs) }
  }
  return { days: movedBy(started.days, late.days), sinceMs: late.sinceMs }
}

const movedBy = (days: Moved['days'], by: number): Moved['days'] => ({
  ...days,
  tasteFrom: moved(days.tasteFrom, by),
  strainFrom: moved(days.strainFrom, by),
  strainBy: moved(days.strainBy, by),
})

/** Fruit that was layered in while the jar steeped, in order. */
const layersOf = ({ happened }: JarState): readonly Of<'added'>[] =>
  happened.filter((entry): entry is Of<'added'> => entry.kind === 'added' && entry.as === 'layer')

type Window = Pick<Moved['days'], 'tasteFrom' | 'strainFrom' | 'strainBy'>

/** The days that a layer wants by itself: its plants' own, as a plan has them, or as many as the first one was to have. */
function windowOf({ day, plants }: Of<'added'>, { started }: JarState): Window {
  const times = plants.flatMap(({ id }) => (id !== null && isCatalogued(id) ? [botanicalById(id).timesDays] : []))
  const [first] = times
  if (first === undefined || times.length < plants.length || started.named.steepFor !== null) {
    return movedBy(started.days, dayNumber(day) - dayNumber(started.day))
  }
  const longest = times.reduce((one, other) => (other.usualMin > one.usualMin ? other : one), first)
  const after = (days: number) => isoOf(dayNumber(day) + Math.floor(days))
  const most = Math.max(longest.usualMin, Math.min(...times.map(({ usualMax }) => usualMax)))
  return { tasteFrom: after(longest.tasteFrom), strainFrom: after(longest.usualMin), strainBy: after(most) }
}

/** The later of two days, as far as they are known. */
const later = (one: string | null, other: string | null): string | null =>
  one === null || other === null ? (one ?? other) : one > other ? one : other

/** The window follows the latest layer, and waits for what an earlier one still wants. */
function withLayer({ days, sinceMs }: Moved, layer: Of<'added'>, story: JarState): Moved {
  const own = windowOf(layer, story)
  const strainFrom = later(days.strainFrom, own.strainFrom)
  return {
    days: {
      ...days,
      tasteFrom: later(days.tasteFrom, own.tasteFrom),
      strainFrom,
      strainBy: own.strainBy === null ? days.strainBy : later(own.strainBy, strainFrom),
      isHours: false,
      steepHours: null,
    },
    sinceMs: Math.max(sinceMs, layer.enteredMs),
  }
}

/**
 * The jar with the days of its plan moved by as many as its later plants went in late, so that a plant steeps as long as was
 * planned for it, and then to those of the fruit that was layered in last. They are known from that entry on.
 */
export function movedByLatePlants(story: JarState): JarState {
  const { started } = story
  const { days, sinceMs } = layersOf(story).reduce(
    (before, layer) => withLayer(before, layer, story),
    withLatePlants(story),
  )
  return { ...story, started: { ...started, days, enteredMs: sinceMs } }
}

/** A plant of an earlier layer that is to come out before the last layer is done. */
export interface EarlyPlant {
  readonly id: string
  readonly name: string
  /** Days that it would have been in by the first day for straining. */
  readonly days: number
  /** From this many on it does harm. */
  readonly latestDays: number
}

/** Fruit that is layered in stays in all summer. Common practice, no source. */
const STAYS: readonly BotanicalKind[] = ['berry', 'fruit']

/** Of the first layers, what harms the drink when it stays in until the last layer is done, each plant once. */
export function plantsOverdone(story: JarState): readonly EarlyPlant[] {
  const last = layersOf(story).at(-1)
  const { strainFrom } = movedByLatePlants(story).started.days
  if (last === undefined || strainFrom === null) return []
  const out = new Set(story.happened.flatMap((entry) => (entry.kind === 'taken_out' ? entry.plants.map(plantKey) : [])))
  const early = story.happened.flatMap((entry): readonly (PlantIn & { readonly from: string })[] =>
    (entry.kind === 'started' || entry.kind === 'added') && entry !== last
      ? entry.plants.map((plant) => ({ ...plant, from: plant.addOn ?? entry.day }))
      : [],
  )
  const first = early.filter((plant, at) => early.findIndex((each) => isSamePlant(each, plant)) === at)
  return first.flatMap(({ from, ...plant }): readonly EarlyPlant[] => {
    if (plant.id === null || !isCatalogued(plant.id) || out.has(plantKey(plant))) return []
    const { kind, timesDays } = botanicalById(plant.id)
    if (STAYS.includes(kind)) return []
    const latestDays = timesDays.latest
    const days = dayNumber(strainFrom) - dayNumber(from)
    return latestDays === null || days <= latestDays ? [] : [{ id: plant.id, name: plant.name, days, latestDays }]
  })
}
