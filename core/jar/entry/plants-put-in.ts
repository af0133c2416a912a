import type { Happening, PlantIn } from './entry.ts'

/** All plants that something put in a jar: fresh ones, those that steep once more, what came with liquid of another jar. */
export function plantsPutIn(happening: Happening): readonly PlantIn[] {
  if (happening.kind === 'started') return [...happening.plants, ...(happening.secondOf?.plants ?? [])]
  return happening.kind === 'added' || happening.kind === 'poured_in' ? happening.plants : []
}
