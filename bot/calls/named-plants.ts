import { type Found, findBotanical } from '../../core/botanical/find/find.ts'
import { expectNotRefused } from '../../core/botanical/refuse/refusal.ts'
import type { MaterialId } from '../../core/quantity/materials.ts'
import { sweetenerIn } from '../../core/quantity/read/material-named.ts'
import { parsePlants, type TypedPlant } from '../../core/recipe/plan/parse-plants.ts'

/** A plant of the catalogue with the text that named it. */
export interface NamedPlant extends Found {
  readonly typed: string
}

const found = ({ amount, noun, typed }: TypedPlant): NamedPlant => ({
  ...findBotanical(noun, amount?.kind === 'count' ? amount.piece : null),
  typed,
})

/** What sweetens, with the text that named it. */
export interface NamedSweetener {
  readonly material: MaterialId
  readonly typed: string
}

const isSame = (one: NamedPlant | NamedSweetener, other: NamedPlant | NamedSweetener): boolean =>
  'material' in one
    ? 'material' in other && one.material === other.material
    : 'botanical' in other && one.botanical.id === other.botanical.id

/**
 * Plants of a list, and what sweetens, with or without amounts, each once. What is refused is refused first, wherever it stands.
 */
export function findListed(text: string): readonly (NamedPlant | NamedSweetener)[] {
  expectNotRefused(text)
  const all = parsePlants(text).map((plant) => {
    const material = plant.noun === '' ? null : sweetenerIn(plant.noun)
    return material === null ? found(plant) : { material, typed: plant.typed }
  })
  return all.filter((each, index) => all.findIndex((other) => isSame(each, other)) === index)
}

/** One plant, with or without an amount. */
export function findOne(text: string): NamedPlant {
  expectNotRefused(text)
  const [plant, ...others] = parsePlants(text)
  return plant === undefined || others.length > 0 ? { ...findBotanical(text), typed: text.trim() } : found(plant)
}
