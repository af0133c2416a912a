import type { SourceKey } from './evidence/sources.ts'

export type FoodKind =
  | 'fruit'
  | 'berry'
  | 'nut'
  | 'seed'
  | 'cereal'
  | 'legume'
  | 'herb'
  | 'leaf'
  | 'flower'
  | 'spice'
  | 'root'
  | 'vegetable'
  | 'tea'
  | 'sap'
  | 'other'

/** What of the plant the row names; `dried` is a dried fruit. */
export type FoodPart =
  | 'fruit'
  | 'berry'
  | 'dried'
  | 'nut'
  | 'seed'
  | 'grain'
  | 'leaf'
  | 'flower'
  | 'root'
  | 'stem'
  | 'bulb'
  | 'sap'
  | 'alga'
  | 'fungus'

/** What has to be said of it first: the part, its state, or that it is surely no other plant. */
export type FoodAnswer =
  | 'flesh'
  | 'stoned'
  | 'whole'
  | 'ripe'
  | 'husked'
  | 'peeled'
  | 'mild'
  | 'bought'
  | 'cooked'
  | 'roasted'
  | 'pod'

/** Asked before it is planned. */
export interface FoodQuestion {
  readonly answer: FoodAnswer
  /** Of `flesh`: what else of it is no food (`pips`, `stones`, `seeds`, `rest`). Of `bought`: its double's name. */
  readonly about: string | null
}

/** What a person who drinks of it may have to know. */
export type FoodNote =
  | 'a_little'
  | 'allergen'
  | 'aspirin'
  | 'caffeine'
  | 'cashew_kin'
  | 'daisy'
  | 'drowsy'
  | 'epilepsy'
  | 'estragole'
  | 'gluten'
  | 'grapefruit'
  | 'hairs'
  | 'iodine'
  | 'kidney'
  | 'latex'
  | 'legume'
  | 'medicines'
  | 'oil'
  | 'oxalate'
  | 'pregnancy'
  | 'spoils'
  | 'sulphites'
  | 'sunburn'
  | 'waxed'

export interface FoodName {
  readonly name: string
  /** True where none of the row's sources has it word for word. */
  readonly fromMemory: boolean
}

/** A plant food that the catalogue has no amounts for. Questions and notes are from memory. */
export interface Food {
  readonly names: readonly [FoodName, ...FoodName[]]
  readonly latin: readonly string[]
  readonly kind: FoodKind
  readonly part: FoodPart
  readonly question: FoodQuestion | null
  readonly notes: readonly FoodNote[]
  readonly sources: readonly SourceKey[]
}

/** Rows of each kind: `names | Latin | part | question | notes | source`; a star marks a name from memory. */
export type FoodTable = Readonly<Partial<Record<FoodKind, readonly string[]>>>

const SOURCES: Readonly<Record<string, SourceKey>> = {
  foodon: 'foodon',
  usda: 'usda_ndb',
  foodex2: 'foodex2',
  memory: 'common_practice',
}

const words = (text: string): readonly string[] => text.split(' ').filter((word) => word !== '')

const nameIn = (text: string): FoodName => ({ name: text.replace('*', ''), fromMemory: text.endsWith('*') })

const questionIn = (text: string): FoodQuestion | null => {
  const [answer = '', about] = text.split(':')
  return answer === '' ? null : { answer: answer as FoodAnswer, about: about ?? null }
}

/** A row of a table; the tests hold every word of it to the types above. */
export const foodOf = (kind: FoodKind, row: string): Food => {
  const [names = '', latin = '', part = '', question = '', notes = '', source = ''] = row
    .split('|')
    .map((cell) => cell.trim())
  const [first = '', ...others] = names.split(', ')
  return {
    names: [nameIn(first), ...others.map(nameIn)],
    latin: latin.split(', '),
    kind,
    part: part as FoodPart,
    question: questionIn(question),
    notes: words(notes) as readonly FoodNote[],
    sources: words(source).map((key) => SOURCES[key]!),
  }
}
