import type { Meaning } from '../meaning.ts'
import {
  abvOf,
  bottlesHold,
  gPerLOf,
  gramsOf,
  isNear,
  isSamePlant,
  mlOf,
  type Options,
  plantsHold,
  spiritsHold,
  sweetnessHolds,
  waterOf,
} from './amounts.ts'
import type { Told } from './told.ts'

export type Meant = Meaning &
  Partial<
    Record<
      | 'ml'
      | 'infusion_ml'
      | 'spirit_ml'
      | 'water_ml'
      | 'sugar_g'
      | 'pour_ml'
      | 'measured_ml'
      | 'rating'
      | 'brix'
      | 'sg'
      | 'sg_before'
      | 'sg_after',
      number
    >
  > &
  Partial<Record<'without' | 'when' | 'entry' | 'symptom', string>>

export type Check = (options: Options, meaning: Meant, told: Told) => boolean

export const holds = (value: number | null, meant: number | null | undefined): boolean =>
  meant === undefined || meant === null || isNear(value, meant)

export const ofPlant: Check = ({ of = '' }, { plant, plants }) =>
  (plant === undefined || isSamePlant(of, plant)) && (plants === undefined || plantsHold(of, plants))

export const batch: Check = (options, meaning) =>
  plantsHold(options.of, meaning.plants) &&
  spiritsHold(options, meaning.spirits) &&
  bottlesHold(options.bottles, meaning.bottles) &&
  (meaning.ready_by === undefined || options['ready-by'] !== undefined) &&
  holds(abvOf(options['to-strength']), meaning.to_abv) &&
  sweetnessHolds(options['to-sweetness'], meaning.to_sweetness) &&
  (typeof meaning.sugar_g !== 'number' || isNear(gramsOf(options.sugar), meaning.sugar_g))

export const syrup: Check = (options, meaning) =>
  holds(mlOf(options.infusion), meaning.infusion_ml ?? meaning.ml) &&
  holds(abvOf(options.strength), meaning.abv) &&
  holds(abvOf(options['to-strength']), meaning.to_abv) &&
  sweetnessHolds(options['to-sweetness'], meaning.to_sweetness)

export const dilute: Check = (options, meaning) =>
  holds(mlOf(options.spirit), meaning.ml ?? meaning.spirit_ml) &&
  holds(abvOf(options.strength), meaning.abv) &&
  holds(abvOf(options['to-strength']), meaning.to_abv)

export const mix: Check = (options, meaning) =>
  (meaning.spirits === undefined ? holds(mlOf(options.spirit), meaning.ml) : spiritsHold(options, meaning.spirits)) &&
  holds(waterOf(options.water), meaning.water_ml) &&
  holds(gramsOf(options.sugar), meaning.sugar_g)

export const adjust: Check = (options, meaning) =>
  holds(mlOf(options.liqueur), meaning.ml) &&
  holds(abvOf(options.strength), meaning.abv) &&
  (typeof meaning.sugar !== 'number' || isNear(gPerLOf(options.sweetness), meaning.sugar))

export const serving: Check = (options, meaning) =>
  holds(mlOf(options.pour), meaning.pour_ml) && holds(abvOf(options.strength), meaning.abv)

/** The jar by its name; `all`, or one that only the shelf tells. */
export const isJar = ({ jar }: Options, { jar: meant }: Meant): boolean =>
  meant === undefined ||
  meant === null ||
  (jar ?? '').toLowerCase() === meant.toLowerCase() ||
  (jar ?? '').toLowerCase().startsWith(meant.toLowerCase())
