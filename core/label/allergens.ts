/**
 * The 14 groups of Regulation (EU) 1169/2011, Annex II (from memory). No plant brings crustaceans, eggs, fish or
 * molluscs, but what a drink is fined with can; what is made of a plant can bring milk.
 */
export type AllergenGroup =
  | 'gluten'
  | 'crustaceans'
  | 'eggs'
  | 'fish'
  | 'peanuts'
  | 'soybeans'
  | 'milk'
  | 'nuts'
  | 'celery'
  | 'mustard'
  | 'sesame'
  | 'sulphites'
  | 'lupin'
  | 'molluscs'

/** `certain`: it is in the drink; `possible`: it may be, and the pack of what went in tells. */
export interface AllergenFacts {
  /** Null where the law does not list it, and a host has to ask all the same. */
  readonly group: AllergenGroup | null
  readonly is: 'certain' | 'possible'
}

const listed = (group: AllergenGroup, is: AllergenFacts['is'] = 'certain') => ({ group, is }) as const
const beyond = (is: AllergenFacts['is'] = 'certain') => ({ group: null, is }) as const

/**
 * What a label has to name, or a host has to ask about, worst first. Cereals and nuts are named by sort; they are
 * exempt only where they are distilled, not where they are steeped. Not on the list: the kin of cashew (Asia Pac Allergy
 * 2019;9(3):e25) and of daisies (from memory).
 */
export const allergens = {
  peanut: listed('peanuts'),
  walnut: listed('nuts'),
  almond: listed('nuts'),
  hazelnut: listed('nuts'),
  cashew: listed('nuts'),
  pecan: listed('nuts'),
  brazil_nut: listed('nuts'),
  pistachio: listed('nuts'),
  macadamia: listed('nuts'),
  /** Of a sort that its name does not tell. */
  nut: listed('nuts'),
  sesame: listed('sesame'),
  mustard: listed('mustard'),
  celery: listed('celery'),
  lupin: listed('lupin'),
  soya: listed('soybeans'),
  wheat: listed('gluten'),
  rye: listed('gluten'),
  barley: listed('gluten'),
  oats: listed('gluten'),
  /** Of a cereal that its name does not tell. */
  gluten: listed('gluten'),
  sulphites: listed('sulphites', 'possible'),
  nut_traces: listed('nuts', 'possible'),
  milk_traces: listed('milk', 'possible'),
  soya_traces: listed('soybeans', 'possible'),
  /** Of what it was fined with: most of it leaves with the lees. */
  egg_fined: listed('eggs', 'possible'),
  fish_fined: listed('fish', 'possible'),
  milk_fined: listed('milk', 'possible'),
  crustacean_fined: listed('crustaceans', 'possible'),
  cashew_family: beyond(),
  daisy_family: beyond(),
} as const satisfies Readonly<Record<string, AllergenFacts>>

export type Allergen = keyof typeof allergens

const ORDER = Object.keys(allergens) as readonly Allergen[]

/** Each once, worst first. */
export const inOrder = (found: readonly Allergen[]): readonly Allergen[] => ORDER.filter((each) => found.includes(each))

/** From so many mg of sulphur dioxide in a litre sulphites are named. Regulation (EU) 1169/2011, Annex II (from memory). */
export const SULPHITES_FROM_MG_PER_L = 10
