import { type Found, findBotanical } from '../../core/botanical/find/find.ts'
import { expectNotRefused } from '../../core/botanical/refuse/refusal.ts'
import { parsePlants, type TypedPlant } from '../../core/recipe/plan/parse-plants.ts'

/** A plant of the catalogue with the text that named it. */
export interface NamedPlant extends Found {
  readonly typed: string
}

const found = ({ amount, noun, typed }: TypedPlant): NamedPlant => ({
  ...findBotanical(noun, amount?.kind === 'count' ? amount.piece : null),
  typed,
})

/** The plants of a list, with or without amounts, each once. What is refused is refused first, wherever it stands. */
export function findListed(text: string): readonly NamedPlant[] {
  expectNotRefused(text)
  const all = parsePlants(text).map(found)
  return all.filter(({ botanical }, index) => all.findIndex((other) => other.botanical.id === botanical.id) === index)
}

/** One plant, with or without an amount. */
export function findOne(text: string): NamedPlant {
  expectNotRefused(text)
  const [plant, ...others] = parsePlants(text)
  return plant === undefined || others.length > 0 ? { ...findBotanical(text), typed: text.trim() } : found(plant)
}
