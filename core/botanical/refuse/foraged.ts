import { DomainError } from '../../domain-error.ts'
import { nameWords } from '../../spelling/normalise-name.ts'
import type { Botanical } from '../botanical.ts'
import type { HazardKey } from '../evidence/hazards.ts'
import { isFoodName } from '../foods/foods.ts'
import { byName, keyOf } from '../names/name-index.ts'
import type { RefusalId } from '../refused.ts'
import { saidOf, withoutGarden } from '../words/said-of.ts'
import { CARROT_FAMILY, FORAGED, PICKED } from './refusal-rules.ts'

/** Plants of the catalogue whose doubles kill: picked in the wild they are refused, not asked about. */
const doubleOf = ({ hazards, names }: Botanical): RefusalId | null => {
  if (names.latin.some((latin) => latin.startsWith('Allium '))) return 'wild_garlic'
  if (hazards.includes('veratrum_confusion')) return 'self_dug_gentian'
  if (hazards.includes('carrot_family')) return 'wild_carrot_family'
  const deadly = ['bay_lookalikes', 'jasmine_double', 'locust_double', 'burdock_double'] as const
  return deadly.some((double) => hazards.includes(double)) ? 'foraged' : null
}

/** Of which a deadly plant is the double. */
export const DOUBLES: readonly HazardKey[] = [
  'bay_lookalikes',
  'carrot_family',
  'conifer_lookalikes',
  'juniper_species',
  'ramsons_lookalikes',
  'star_anise_adulteration',
  'veratrum_confusion',
]

/** Only bought, also where they were planted: a root looks like any other. */
const BOUGHT_ONLY: ReadonlyMap<string, RefusalId> = new Map([
  ['gentian_root', 'self_dug_gentian'],
  ['angelica_root', 'wild_carrot_family'],
])

const plantsIn = (keys: readonly string[]): readonly Botanical[] => keys.flatMap((key) => byName.get(key) ?? [])

/** Picked fruit is no wild fruit: of a citrus tree nobody says where it stands. */
const isFruitPicked = (plants: readonly Botanical[]): boolean =>
  plants.length > 0 && plants.every(({ kind }) => kind === 'citrus')

/**
 * What a plant picked in the wild is refused as, or null where nothing was. `keys` are all runs of words of the part.
 * Throws `foraged_botanical` where the plant is named and of the catalogue: the maker has to be certain.
 */
export const foragedRefusal = (plain: string, keys: readonly string[], typed: string): RefusalId | null => {
  const { rest, isGarden } = saidOf(plain)
  const isPicked = !isGarden && PICKED.test(rest)
  if (!FORAGED.test(rest) && !isPicked) return null
  const key = keyOf(nameWords(rest))
  if (byName.has(key) || isFoodName(key)) return null
  if (CARROT_FAMILY.test(plain)) return 'wild_carrot_family'
  const plants = plantsIn(keys)
  const double = plants.map(doubleOf).find((id) => id !== null)
  if (double !== undefined && double !== null) return double
  const [plant] = plants
  if (plant === undefined) return 'foraged'
  if (isPicked && isFruitPicked(plants)) return null
  throw new DomainError('ambiguous', 'foraged_botanical', { typed, id: plant.id })
}

/** Kinds of which a gardener digs or cuts another plant by mistake. */
const isEasilyAnother = ({ kind, hazards }: Botanical): boolean =>
  kind === 'root' || DOUBLES.some((double) => hazards.includes(double))

/**
 * What a plant of a garden is refused as, or null. Throws `garden_botanical` for roots, juniper, bay, pine and the carrot
 * family, unless the maker planted it; fruit and kitchen herbs of a garden are as good as bought.
 */
export const gardenRefusal = (plain: string, keys: readonly string[], part: string): RefusalId | null => {
  const { isGarden, isPlanted } = saidOf(plain)
  if (!isGarden && !isPlanted) return null
  const plants = plantsIn(keys)
  const only = plants.map(({ id }) => BOUGHT_ONLY.get(id)).find((id) => id !== undefined)
  if (only !== undefined) return only
  const plant = plants.find(isEasilyAnother)
  if (plant === undefined || isPlanted) return null
  const from = part.trim()
  const retype = { from, as: `${withoutGarden(from)} I planted`, line: null }
  throw new DomainError('ambiguous', 'garden_botanical', { typed: from, id: plant.id, retype })
}
