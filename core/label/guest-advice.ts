import type { HazardKey } from '../botanical/evidence/hazards.ts'
import { nameWords } from '../spelling/normalise-name.ts'

/** What a guest has to know before drinking, beside allergens. */
export type GuestAdvice =
  | 'liquorice'
  | 'thujone'
  | 'medicines'
  | 'warfarin'
  | 'honey_infant'
  | 'quinine'
  | 'liver'
  | 'gallstones'
  | 'caffeine'

/** Worst first; sources stand with the hazards. */
const BY_HAZARD: readonly (readonly [GuestAdvice, HazardKey | null])[] = [
  ['medicines', 'grapefruit_interaction'],
  ['warfarin', 'cranberry_warfarin'],
  ['honey_infant', null],
  ['thujone', 'thujone'],
  ['liquorice', 'liquorice'],
  ['quinine', null],
  ['liver', 'turmeric_liver'],
  ['gallstones', 'bile'],
  ['caffeine', 'caffeine'],
]

/** Plants outside the catalogue, and under other names, in English, Italian and Latin. */
const NAMES: Readonly<Record<GuestAdvice, string>> = {
  medicines:
    'grapefruit, pomelo, pompelmo, Seville orange, bitter orange, arancia amara, arance amare, bergamot, bergamotto',
  warfarin: 'cranberry, mirtillo rosso americano',
  honey_infant: 'honey, miele',
  thujone:
    'wormwood, absinthe, assenzio, sage, salvia, genepi, génépi, mugwort, Artemisia absinthium, Salvia officinalis',
  liquorice: 'liquorice, licorice, liquirizia, Glycyrrhiza glabra, Süßholz, réglisse, regaliz',
  quinine:
    'quinine, chinino, cinchona, Peruvian bark, corteccia di china, china calisaya, china rossa, quinquina, tonic, tonic water, acqua tonica',
  liver: 'turmeric, curcuma',
  gallstones: 'artichoke, carciofo, turmeric, curcuma',
  caffeine:
    'coffee, caffè, espresso, tea, tè, matcha, mate, yerba mate, guarana, guaraná, kola nut, cola nut, noce di cola, cocoa, cacao, chocolate, cioccolato, Coffea arabica, Camellia sinensis',
}

const namesOf = (advice: GuestAdvice): readonly (readonly string[])[] => NAMES[advice].split(', ').map(nameWords)

const hasName = (words: readonly string[], name: readonly string[]): boolean =>
  words.some((_, at) => name.every((word, more) => words[at + more] === word))

/** Words after which it is no such plant: `tea tree`, `herbal tea`. */
const OTHERWISE = /\b(?:tea tree|herbal tea|fruit tea|lemon tea|mint tea|clary sage|sagebrush)\b/

export interface Judged {
  readonly hazards: readonly HazardKey[]
  /** What a plant that is not in the catalogue was called; null for one that is. */
  readonly name: string | null
}

/** Each once, worst first. */
export const adviceOf = (plants: readonly Judged[]): readonly GuestAdvice[] => {
  const names = plants.flatMap(({ name }) => (name === null ? [] : [nameWords(name)]))
  const told = names.filter((words) => !OTHERWISE.test(words.join(' ')))
  return BY_HAZARD.filter(
    ([advice, hazard]) =>
      plants.some(({ hazards }) => hazard !== null && hazards.includes(hazard)) ||
      namesOf(advice).some((name) => told.some((words) => hasName(words, name))),
  ).map(([advice]) => advice)
}

/**
 * From so many mg of glycyrrhizinic acid in a litre “contains liquorice” stands on a label, and from so many, above
 * 1.2 % vol, the words on high blood pressure. Source: Regulation (EU) 1169/2011, Annex III (300 from memory).
 */
export const LIQUORICE_MG_PER_L = { named: 10, warned: 300 } as const

/** The most glycyrrhizinic acid in the root, as a share (DFG-SKLM 2004). */
const MOST_IN_LIQUORICE = 0.14

/** Grams of the root that can bring the words on high blood pressure into a litre: 2.1 g. */
export const LIQUORICE_WARNED_G_PER_L = LIQUORICE_MG_PER_L.warned / 1000 / MOST_IN_LIQUORICE

/** Above so many mg in a litre caffeine is “high”. Source: Regulation (EU) 1169/2011, Annex III (from memory). */
export const CAFFEINE_HIGH_MG_PER_L = 150
