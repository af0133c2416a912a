import { findBotanical } from '../../../core/botanical/find/find.ts'
import { parseAmount } from '../../../core/quantity/read/parse-amount.ts'
import { parseStrength } from '../../../core/quantity/read/parse-strength.ts'
import { parseSugar } from '../../../core/quantity/read/parse-sugar.ts'
import { parseSweetness } from '../../../core/quantity/read/parse-sweetness.ts'
import { drinksIn } from '../../../core/recipe/drinks-in.ts'
import { readPlants } from '../../../core/recipe/plan/find-plants.ts'
import { parsePlants } from '../../../core/recipe/plan/parse-plants.ts'
import type { Meaning } from '../meaning.ts'

export type Options = Readonly<Record<string, string>>

const orNull = <Value>(read: () => Value): Value | null => {
  try {
    return read()
  } catch {
    return null
  }
}

/** US cups, bottles, spoons: within 5 %. */
const WITHIN = 0.05

export const isNear = (one: number | null | undefined, other: number): boolean =>
  one !== null && one !== undefined && Math.abs(one - other) <= WITHIN * Math.abs(other) + 1e-6

const read =
  (parse: (text: string) => number | null) =>
  (text: string | undefined): number | null =>
    text === undefined ? null : orNull(() => parse(text))

export const mlOf = read((text) => {
  const amount = parseAmount(text)
  return amount.kind === 'volume' ? amount.volumeMl : null
})
export const abvOf = read((text) => parseStrength(text).abvPercent)
export const gPerLOf = read((text) => parseSweetness(text).sugarGPerL)
export const gramsOf = read((text) => parseSugar(text).massG)
/** Water is weighed as well as poured. */
export const waterOf = read((text) => {
  const amount = parseAmount(text)
  return amount.kind === 'volume' ? amount.volumeMl : amount.massG
})

/** Ids that a name may stand for. */
export function idsOf(name: string): readonly string[] {
  try {
    return [findBotanical(name).botanical.id]
  } catch (error) {
    const { choices, id } = (error as { values?: { choices?: readonly string[]; id?: string } }).values ?? {}
    return choices ?? (id === undefined ? [name.toLowerCase()] : [id])
  }
}

export const isSamePlant = (said: string, meant: string): boolean => {
  const ids = idsOf(meant)
  return idsOf(said).some((id) => ids.includes(id)) || said.toLowerCase() === meant.toLowerCase()
}

type PlantMeant = NonNullable<Meaning['plants']>[number]

/** Every plant that was meant, with its amount, and no other. */
export function plantsHold(of: string | undefined, meant: readonly PlantMeant[] = []): boolean {
  if (meant.length === 0) return true
  const items = of === undefined ? null : orNull(() => parsePlants(of))
  if (items === null || items.length !== meant.length) return false
  return meant.every((plant) => {
    const { name, count, g } = typeof plant === 'string' ? { name: plant, count: undefined, g: undefined } : plant
    return items.some(({ noun, amount, typed }) => {
      if (!isSamePlant(noun, name)) return false
      if (count !== undefined && !(amount?.kind === 'count' && isNear(amount.count, count))) return false
      if (g === undefined) return true
      const massG =
        amount?.kind === 'mass' ? amount.massG : orNull(() => readPlants(typed).plants[0]?.massG?.value ?? null)
      return isNear(massG, g)
    })
  })
}

type SpiritMeant = NonNullable<Meaning['spirits']>[number]

export function spiritsHold({ spirit, strength }: Options, meant: readonly SpiritMeant[] = []): boolean {
  if (meant.length === 0) return true
  const drinks = spirit === undefined ? [] : (orNull(() => drinksIn(spirit, { blends: false })) ?? null)
  if (drinks === null) return false
  if (drinks.length === 0)
    return meant.every(({ ml, abv }) => ml === undefined && (abv === undefined || isNear(abvOf(strength), abv)))
  if (drinks.length !== meant.length) return false
  return meant.every(({ ml, abv }) =>
    drinks.some(({ amount, strength: own }) => {
      const volumeMl = amount.kind === 'volume' ? amount.volumeMl : null
      return (
        (ml === undefined || isNear(volumeMl, ml)) &&
        (abv === undefined || isNear(own?.abvPercent ?? abvOf(strength), abv))
      )
    }),
  )
}

export function partsHold(parts: string | undefined, meant: Meaning['parts']): boolean {
  if (meant === undefined || typeof meant === 'number') return true
  const read_ = parts === undefined ? null : orNull(() => drinksIn(parts, { blends: true }))
  return (
    read_ !== null &&
    meant.every(({ ml, abv }) =>
      read_.some(
        ({ amount, strength }) =>
          amount.kind === 'volume' && isNear(amount.volumeMl, ml) && isNear(strength?.abvPercent, abv),
      ),
    )
  )
}

export function bottlesHold(text: string | undefined, meant: Meaning['bottles']): boolean {
  if (meant === undefined) return true
  if (text === undefined) return false
  const all = Array.isArray(meant) ? meant : [meant]
  const items = text.split('+').map((item) => /^\s*(?:(\d+)\s*(?:x\s*)?)?(.*)$/.exec(item)!)
  return all.every(({ count, ml }) =>
    items.some(
      (item) =>
        (count === undefined || Number(item[1]) === count) &&
        (ml === undefined || isNear(mlOf(item[2]?.trim() || undefined) ?? (item[2]?.trim() === '' ? 500 : null), ml)),
    ),
  )
}

export const sweetnessHolds = (text: string | undefined, meant: Meaning['to_sweetness']): boolean =>
  meant === undefined ||
  text === meant ||
  isNear(gPerLOf(text), typeof meant === 'number' ? meant : (gPerLOf(meant) ?? Number.NaN))
