import { type Found, findBotanical } from '../../../core/botanical/find/find.ts'
import { expectNotRefused } from '../../../core/botanical/refuse/refusal.ts'
import { parsePlants } from '../../../core/recipe/plan/parse-plants.ts'

/** The plants of a list, with or without amounts, each once. What is refused is refused first, wherever it stands. */
export function findListed(text: string): readonly Found[] {
  expectNotRefused(text)
  const found = parsePlants(text).map(({ amount, noun }) =>
    findBotanical(noun, amount?.kind === 'count' ? amount.piece : null),
  )
  return found.filter(
    ({ botanical }, index) => found.findIndex((other) => other.botanical.id === botanical.id) === index,
  )
}

/** One plant, with or without an amount. */
export function findOne(text: string): Found {
  expectNotRefused(text)
  const [plant, ...others] = parsePlants(text)
  if (plant === undefined || others.length > 0) return findBotanical(text)
  const { amount, noun } = plant
  return findBotanical(noun, amount?.kind === 'count' ? amount.piece : null)
}
