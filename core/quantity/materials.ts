interface Material {
  /** Words by which it is known; the first is written. */
  readonly words: string
  /** As it is poured, g/ml. */
  readonly pouredGPerMl: number
  /** Shares of its mass, 0 to 1; together at most 1. */
  readonly sucroseFraction: number
  readonly invertFraction: number
  readonly waterFraction: number
}

/**
 * Granulated sugar as it is poured, g/ml: 200 g in a US cup of 236.588 ml.
 * Source: USDA FoodData Central, SR Legacy, NDB 19335 (sugars, granulated), 1 cup = 200 g.
 */
export const POURED_SUGAR_G_PER_ML = 200 / 236.5882365

/** What sweetens. White sugar counts as dry sucrose: 99.8 g of sugars in 100 g (USDA FoodData Central, NDB 19335). */
export const materials = {
  white_sugar: {
    words: 'sugar white caster castor granulated table fine superfine cane beet zucchero bianco semolato extrafine',
    pouredGPerMl: POURED_SUGAR_G_PER_ML,
    sucroseFraction: 1,
    invertFraction: 0,
    waterFraction: 0,
  },
} as const satisfies Readonly<Record<string, Material>>

export type MaterialId = keyof typeof materials

/** What is meant where nothing is said. */
export const USUAL_MATERIAL: MaterialId = 'white_sugar'

const wordsOf = ({ words }: Material): readonly string[] => words.split(' ')

const ids = Object.keys(materials) as MaterialId[]

/** The material that goes by all of these words; null where none does. */
export const materialNamed = (words: readonly string[]): MaterialId | null =>
  words.length === 0
    ? USUAL_MATERIAL
    : (ids.find((id) => words.every((word) => wordsOf(materials[id]).includes(word))) ?? null)

export const isMaterialWord = (word: string): boolean => ids.some((id) => wordsOf(materials[id]).includes(word))

/** How it is written after an amount: ` honey`; nothing for the usual one. */
export const materialText = (id: MaterialId): string => (id === USUAL_MATERIAL ? '' : ` ${wordsOf(materials[id])[0]}`)
