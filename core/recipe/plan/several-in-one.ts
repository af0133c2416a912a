import { findBotanical } from '../../botanical/find/find.ts'
import { domainErrorOf } from '../../domain-error.ts'
import type { TypedPlant } from './parse-plants.ts'
import { isUnknown } from './unknown-plant.ts'

const BETWEEN = /\s*(?:,\s+|\s(?:and|with|plus|e|con)\s|&)\s*/i

const isKnown = (noun: string): boolean => {
  const refusal = domainErrorOf(() => findBotanical(noun))
  return refusal === null || !isUnknown(refusal)
}

/** `strawberry and basil`: several names without an amount, where together they name no plant and each names one. */
export const severalInOne = (typed: TypedPlant): readonly TypedPlant[] => {
  const { amount, noun, isUnweighed } = typed
  const nouns = noun.split(BETWEEN)
  if (amount !== null || isUnweighed === true || nouns.length < 2 || nouns.includes('')) return [typed]
  return !isKnown(noun) && nouns.every(isKnown) ? nouns.map((each) => ({ ...typed, noun: each, typed: each })) : [typed]
}
