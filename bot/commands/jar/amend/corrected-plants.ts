import type { Happening } from '../../../../core/jar/entry/entry.ts'
import { isSamePlant } from '../../../../core/jar/state/later-plants.ts'
import type { Message } from '../../../text/words.ts'

/** What a list of plants that was typed anew does beside: plants that are no longer in, and other days for straining. */
export function correctedPlants(before: Happening, right: Happening, isStrained: boolean): readonly Message<'notes'>[] {
  const isPutIn = before.kind === 'started' || before.kind === 'added'
  if (!isPutIn || (right.kind !== 'started' && right.kind !== 'added')) return []
  const gone = before.plants.filter((plant) => !right.plants.some((each) => isSamePlant(plant, each)))
  const plants = gone.map(({ id, name }) => ({ id, name }))
  const dropped =
    plants.length === 0 ? [] : [{ group: 'notes', key: 'jar_plants_dropped', values: { plants } } as const]
  return isStrained ? dropped : [...dropped, ...movedNotes(before, right)]
}

function movedNotes(before: Happening, right: Happening): readonly Message<'notes'>[] {
  if (before.kind !== 'started' || right.kind !== 'started') return []
  const { strainFrom, strainBy } = right.days
  if (strainFrom === before.days.strainFrom && strainBy === before.days.strainBy) return []
  const days = strainFrom === null || strainBy === null ? null : { from: strainFrom, by: strainBy }
  return [{ group: 'notes', key: 'jar_strain_moved', values: { days } }]
}
