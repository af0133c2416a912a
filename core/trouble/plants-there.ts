import { botanicalById } from '../botanical/catalogue/catalogue.ts'
import { inForm } from '../botanical/find/in-form.ts'
import type { PlantIn } from '../jar/entry/entry.ts'
import { ingredientsOf, plantsPouredIn } from '../jar/state/batch-facts.ts'
import type { JarState } from '../jar/state/jar-state.ts'
import { plantsOfStart } from '../jar/state/later-plants.ts'
import { isCatalogued } from '../jar/state/liquid-steps.ts'
import { putIn } from '../jar/state/made-batch.ts'
import { mix, volumeMl } from '../liquid/liquid.ts'
import { dayFromIso, daysBetween, type IsoDay } from '../quantity/time/calendar-day.ts'
import { liquidOf } from '../recipe/portion.ts'
import { valuesOf } from '../recipe/propagate.ts'
import type { PlantThere } from './facts.ts'

/** Everything that steeped in a jar, or came into it with another's liquid. */
export function plantsThere(story: JarState, today: IsoDay): readonly PlantThere[] {
  const spiritMl = volumeMl(mix(...ingredientsOf(story).spirits.map((spirit) => liquidOf(valuesOf(spirit)))))
  const own = putIn(story).flatMap((entry) => {
    const plants = entry.kind === 'started' ? plantsOfStart(story) : entry.plants
    return plants.map((plant) => plantThere(plant, spiritMl, daysIn(story, plant, plant.addOn ?? entry.day, today)))
  })
  // How long the plants of another jar were in is that jar's own story.
  return [...own, ...plantsPouredIn(story).map((plant) => plantThere(plant, 0, null))]
}

/** From the day it went in to the day it was lifted out, or all of them were strained. */
function daysIn({ happened, strained }: JarState, plant: PlantIn, from: IsoDay, today: IsoDay): number {
  const out = happened.find(
    (entry) =>
      entry.kind === 'taken_out' &&
      entry.plants.some(({ id, name }) => id === plant.id && (id !== null || name === plant.name)),
  )
  const until = out?.day ?? strained?.day ?? today
  return Math.max(0, daysBetween(dayFromIso(until), dayFromIso(from)))
}

function plantThere(
  { id, name, isDried, massG: mass, count }: PlantIn,
  spiritMl: number,
  days: number | null,
): PlantThere {
  const gPerL = spiritMl > 0 ? (1000 * mass.value) / spiritMl : null
  if (id === null || !isCatalogued(id)) return { botanical: null, name, gPerL, pieceShare: null, days }
  const usual = botanicalById(id)
  const botanical = isDried ? (inForm(usual, 'dried') ?? usual) : usual
  const most = botanical.zestGPerFruit?.strips[1]
  const pieceShare = count === null || count <= 0 || most === undefined ? null : mass.value / count / most
  return { botanical, name, gPerL, pieceShare, days }
}
