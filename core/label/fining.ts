import { DomainError } from '../domain-error.ts'
import { shown } from '../quantity/read/tokens.ts'
import type { Allergen } from './allergens.ts'

/** What carries haze to the bottom, by what it is made of. */
export interface FiningFacts {
  /** As people name it, the usual name first. */
  readonly names: readonly string[]
  /** What a label has to name; null where it brings none. */
  readonly allergen: Allergen | null
  /** Made of an animal. */
  readonly isAnimal: boolean
}

/**
 * What a liqueur may be fined with, and what it leaves to be named. Fish gelatine and isinglass are exempt as fining agents of
 * beer and wine alone, which a liqueur is not; milk, egg, crustaceans have no such exemption. Source: Regulation (EU)
 * 1169/2011, Annex II, points 2, 3, 4 and 7 (from memory). Gelatine of cattle and pigs is no allergen there.
 */
export const finings = {
  egg_white: {
    names: [
      'egg white',
      'egg',
      'egg whites',
      'eggs',
      'white of egg',
      'white of an egg',
      'whites of eggs',
      'albumen',
      'albume',
      'albumi',
      'uovo',
    ],
    allergen: 'egg_fined',
    isAnimal: true,
  },
  isinglass: {
    names: ['isinglass', 'fish', 'fish gelatine', 'colla di pesce'],
    allergen: 'fish_fined',
    isAnimal: true,
  },
  milk: {
    names: ['milk', 'casein', 'skimmed milk', 'whey', 'latte', 'caseina'],
    allergen: 'milk_fined',
    isAnimal: true,
  },
  gelatine: { names: ['gelatine', 'gelatin', 'gelatina'], allergen: null, isAnimal: true },
  chitosan: { names: ['chitosan', 'chitin', 'chitosano'], allergen: 'crustacean_fined', isAnimal: true },
  bentonite: { names: ['bentonite', 'clay', 'bentonita'], allergen: null, isAnimal: false },
  kieselsol: { names: ['kieselsol', 'silica sol', 'silica'], allergen: null, isAnimal: false },
  agar: { names: ['agar', 'agar agar', 'agar-agar'], allergen: null, isAnimal: false },
} as const satisfies Readonly<Record<string, FiningFacts>>

export type FiningId = keyof typeof finings

export const finingIds = Object.keys(finings) as readonly FiningId[]

export const finingOf = (id: FiningId): FiningFacts => finings[id]

const BEFORE = /^(?:with |con |col |the |some |an? |la |un |una )+/

/** Throws `no_fining` with what is known. */
export function parseFining(text: string): FiningId {
  const said = text
    .trim()
    .toLowerCase()
    .replaceAll(/[\s’']+/g, ' ')
    .replace(BEFORE, '')
  const found = finingIds.find((id) => finingOf(id).names.includes(said))
  if (found === undefined) throw new DomainError('bad_value', 'no_fining', { typed: shown(text), ids: finingIds })
  return found
}

/** What a label has to name because of them. */
export const allergensFined = (ids: readonly FiningId[]): readonly Allergen[] =>
  ids.flatMap((id) => finingOf(id).allergen ?? [])
