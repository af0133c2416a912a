import { DomainError } from '../domain-error.ts'
import type { Botanical } from './botanical.ts'
import { byName, keyOf } from './name-index.ts'
import { nameWords } from './plain-words.ts'
import { CARROT_FAMILY, FORAGED } from './refusal-rules.ts'
import type { RefusalId } from './refused.ts'

/** Plants of the catalogue whose doubles kill: picked in the wild they are refused, not asked about. */
const doubleOf = ({ hazards, names }: Botanical): RefusalId | null => {
  if (names.latin.some((latin) => latin.startsWith('Allium '))) return 'wild_garlic'
  if (hazards.includes('veratrum_confusion')) return 'self_dug_gentian'
  if (hazards.includes('carrot_family')) return 'wild_carrot_family'
  const deadly = ['bay_lookalikes', 'jasmine_double', 'locust_double', 'burdock_double'] as const
  return deadly.some((double) => hazards.includes(double)) ? 'foraged' : null
}

/**
 * What a plant picked in the wild is refused as, or null where nothing was. `keys` are all runs of words of the part.
 * Throws `foraged_botanical` where the plant is named and of the catalogue: the maker has to be certain.
 */
export const foragedRefusal = (plain: string, keys: readonly string[], typed: string): RefusalId | null => {
  if (!FORAGED.test(plain) || byName.has(keyOf(nameWords(plain)))) return null
  if (CARROT_FAMILY.test(plain)) return 'wild_carrot_family'
  const plants = keys.flatMap((key) => byName.get(key) ?? [])
  const double = plants.map(doubleOf).find((id) => id !== null)
  if (double !== undefined && double !== null) return double
  const [plant] = plants
  if (plant === undefined) return 'foraged'
  throw new DomainError('ambiguous', 'foraged_botanical', { typed, id: plant.id })
}
