import { nameWords } from '../../spelling/normalise-name.ts'
import { type Food, type FoodKind, type FoodTable, foodOf } from '../food.ts'
import { berries } from './berries.ts'
import { flowers } from './flowers.ts'
import { fruit } from './fruit.ts'
import { herbs } from './herbs.ts'
import { others } from './others.ts'
import { roots } from './roots.ts'
import { vegetables } from './vegetables.ts'

const TABLES: readonly FoodTable[] = [fruit, berries, herbs, flowers, roots, vegetables, others]

/** Published plant foods that the catalogue has no amounts for; names in English and Latin. See NOTICE. */
export const foods: readonly Food[] = TABLES.flatMap((table) =>
  Object.entries(table).flatMap(([kind, rows]) => rows.map((row) => foodOf(kind as FoodKind, row))),
)

const keyOf = (name: string): string => nameWords(name).join(' ')

/** By the name as names are compared; the first row that has it. */
export const foodByName: ReadonlyMap<string, Food> = new Map(
  foods.toReversed().flatMap((food) => food.names.map(({ name }) => [keyOf(name), food] as const)),
)

/** The foods of one species, of which each is another part. */
export const foodsByLatin: ReadonlyMap<string, readonly Food[]> = (() => {
  const index = new Map<string, Food[]>()
  for (const food of foods) {
    for (const key of food.latin.map(keyOf)) index.set(key, [...(index.get(key) ?? []), food])
  }
  return index
})()

/** Whether it is the whole name of a food, in the words that names are compared by; in English or Latin. */
export const isFoodName = (key: string): boolean => foodByName.has(key) || foodsByLatin.has(key)

export const LONGEST_FOOD_WORDS = Math.max(
  ...[...foodByName.keys(), ...foodsByLatin.keys()].map((key) => key.split(' ').length),
)
