import type { Botanical } from '../../botanical/botanical.ts'
import { expectSaidForm, type Found, findBotanical } from '../../botanical/find/find.ts'
import { expectNotRefused } from '../../botanical/refuse/refusal.ts'
import { DomainError } from '../../domain-error.ts'
import type { Measured } from '../../quantity/measured/measured.ts'
import { massG } from '../../quantity/measured/precision.ts'
import type { PlantWords } from '../batch.ts'
import { expectPlantsOnly } from './other-than-plants.ts'
import { expectNamed, parseAmounts, type TypedPlant } from './parse-plants.ts'
import type { PlannedPlant } from './plan-wish.ts'
import { severalInOne } from './several-in-one.ts'
import { expectOnce, isUnknown, type TypedUnknown, typedUnknown } from './unknown-plant.ts'
import { weighPieces } from './weigh-pieces.ts'
import { wholeFruitIn } from './whole-fruit.ts'

export interface FoundPlant extends Found {
  readonly typed: TypedPlant
  /** Null where only the plant was named: its typical dose is meant. */
  readonly massG: Measured | null
  /** What was counted, and whole citrus that was weighed; null where what goes in was weighed or only named. */
  readonly count: number | null
  /** True where the zest of so many fruit was meant. */
  readonly ofZest: boolean
}

/** What `of:` names. */
export interface PlantsRead {
  readonly plants: readonly FoundPlant[]
  /** Not in the catalogue, in the order typed; each holds the problem that it is without the maker's word. */
  readonly unknown: readonly TypedUnknown[]
  /** An amount alone, such as `4`, which only a batch of one plant can tell what of. */
  readonly nameless?: TypedPlant
}

/**
 * The plants of `of:`, those of the catalogue weighed. What is refused is refused first, wherever it stands in the text;
 * what is neither refused nor known is handed back, for the maker to answer for.
 */
export function readPlants(text: string): PlantsRead {
  expectNotRefused(text)
  expectPlantsOnly(text)
  const parsed = parseAmounts(text).flatMap(severalInOne)
  const [only, ...others] = parsed
  if (only?.noun === '' && others.length === 0) return { plants: [], unknown: [], nameless: only }
  const read = parsed.map((typed, at) => findPlantNamed(typed, at))
  const plants = read.filter((each): each is FoundPlant => 'botanical' in each)
  plants.forEach(({ botanical, typed }, index) => {
    if (plants.findIndex((other) => other.botanical.id === botanical.id) === index) return
    throw new DomainError('bad_value', 'plant_twice', { typed: typed.typed, id: botanical.id })
  })
  const unknown = read.filter((each): each is TypedUnknown => !('botanical' in each))
  expectOnce(unknown)
  return { plants, unknown }
}

/** The plants of `of:`, each of the catalogue and weighed. */
export function findPlants(text: string): readonly FoundPlant[] {
  const { plants, unknown, nameless } = readPlants(text)
  if (nameless !== undefined) expectNamed(nameless)
  const [first] = unknown
  if (first !== undefined) throw first.problem
  return plants
}

/** How its maker spoke of it, without the amount. */
export const wordsOf = ({ saidState, ofZest, typed: { amount, kind, noun } }: FoundPlant): PlantWords => ({
  noun,
  isFormSaid: saidState !== null,
  unit: amount?.kind === 'count' ? (kind ?? amount.piece ?? 'each') : ofZest ? 'each' : null,
})

/** As a plan takes it. */
export function plannedPlant(found: FoundPlant): PlannedPlant {
  const { botanical, massG, count } = found
  return { botanical, massG, count, words: wordsOf(found) }
}

/** The plant of the catalogue that an item names, weighed, or the item with its problem where nothing is known of it. */
export function findPlantNamed(typed: TypedPlant, at: number): FoundPlant | TypedUnknown {
  try {
    return findPlant(typed)
  } catch (error) {
    if (isUnknown(error)) return typedUnknown(typed, at, error)
    throw error
  }
}

function findPlant(typed: TypedPlant): FoundPlant {
  expectNamed(typed)
  const { amount, noun, kind, isUnweighed } = typed
  const found = findBotanical(noun, amount?.kind === 'count' ? amount.piece : null)
  expectSaidForm(found)
  if (isUnweighed === true) {
    const { id, dose } = found.botanical
    throw new DomainError('bad_value', 'piece_not_weighed', { typed: typed.typed, id, typicalGPerL: dose.typicalGPerL })
  }
  if (amount === null) return { ...found, typed, massG: null, count: null, ofZest: false }
  if (amount.kind === 'mass') {
    const count = wholeFruitIn(found.botanical, noun, amount.massG)
    if (count === null) return { ...found, typed, massG: massG(amount), count: null, ofZest: false }
    const weighed = weighPieces(found.botanical, { count, piece: null, kind: null }, typed.typed)
    const assumed = [...amount.assumed, 'whole_fruit' as const]
    return { ...found, typed: { ...typed, amount: { ...amount, assumed } }, massG: weighed, count, ofZest: true }
  }
  const { count, piece } = amount
  const weighed = weighPieces(found.botanical, { count, piece, kind }, typed.typed)
  const ofZest = kind === null && isZest(found.botanical, piece)
  return { ...found, typed, massG: weighed, count, ofZest }
}

/** Whether so many of a plant are fruit of which the zest is taken. */
export const isZest = ({ zestGPerFruit }: Botanical, piece: string | null): boolean =>
  zestGPerFruit !== null && (piece === null || piece === 'piece')
