import { dayNumber, isoOf } from '../../quantity/time/day-number.ts'
import type { JarState } from './jar-state.ts'
import { isSamePlant } from './later-plants.ts'

const moved = (day: string | null, days: number): string | null => (day === null ? null : isoOf(dayNumber(day) + days))

/**
 * The jar with the days of its plan moved by as many as its later plants went in late: a plant steeps as long as was planned
 * for it. They are known from the entry of the latest on.
 */
export function movedByLatePlants(story: JarState): JarState {
  const { started, happened } = story
  let late = { days: 0, since: started.enteredMs }
  for (const plant of started.plants) {
    const { addOn } = plant
    const added = happened.find(
      (entry) => entry.kind === 'added' && entry.plants.some((one) => isSamePlant(plant, one)),
    )
    if (addOn === null || added === undefined) continue
    const days = dayNumber(added.day) - dayNumber(addOn)
    if (days > late.days) late = { days, since: Math.max(added.enteredMs, started.enteredMs) }
  }
  if (late.days === 0) return story
  const { tasteFrom, strainFrom, strainBy } = started.days
  const planned = {
    ...started.days,
    tasteFrom: moved(tasteFrom, late.days),
    strainFrom: moved(strainFrom, late.days),
    strainBy: moved(strainBy, late.days),
  }
  return { ...story, started: { ...started, days: planned, enteredMs: late.since } }
}
