import { botanicalById } from '../../botanical/catalogue/catalogue.ts'
import type { Measured } from '../../quantity/measured/measured.ts'
import { strengthAt20 } from '../../recipe/portion.ts'
import { valuesOf } from '../../recipe/propagate.ts'
import { sugarsInG } from '../../recipe/sweetening.ts'
import type { Ingredients, PlantIn, ReadStrength } from '../entry/entry.ts'
import { ingredientsOf } from './batch-facts.ts'
import { believedSteps } from './believed-steps.ts'
import { contentsOf } from './contents.ts'
import type { JarState } from './jar-state.ts'
import { isCatalogued } from './liquid-steps.ts'

/** A strength that was read, and is taken from what went in instead, because what is dissolved hides more than is known of it. */
export interface HiddenStrength {
  /** As read, brought to 20 °C, % vol. */
  readonly read: Measured
  readonly expected: Measured
  /** The plants that gave most of what is dissolved, the most first. */
  readonly plants: readonly Pick<PlantIn, 'id' | 'name'>[]
  /** Whether sugar that was put in is much of it. */
  readonly isSweetened: boolean
}

/** Less than this share of what is dissolved is not named. */
const NAMED_SHARE = 1 / 3

/** Grams that a plant gives off, at the middle of what is known; of an unknown one as of dried herbs. */
function givenOffG({ id, massG }: Pick<PlantIn, 'id' | 'massG'>): number {
  if (id === null || !isCatalogued(id)) return 0.1 * massG.value
  const { sugarsFraction, waterExchange, extractFraction } = botanicalById(id)
  const sugars = ((sugarsFraction?.value ?? 0) * (waterExchange.min + waterExchange.max)) / 2
  return massG.value * (sugars + (extractFraction.min + extractFraction.max) / 2)
}

/** What gave most of what is dissolved. */
export function dissolvedBy({
  plants,
  sweetenings,
}: {
  readonly plants: readonly Pick<PlantIn, 'id' | 'name' | 'massG'>[]
  readonly sweetenings: Ingredients['sweetenings']
}): Pick<HiddenStrength, 'plants' | 'isSweetened'> {
  const given = plants.map((plant) => ({ plant, givenG: givenOffG(plant) }))
  const sugarG = sugarsInG(sweetenings)
  const leastG = NAMED_SHARE * given.reduce((sum, { givenG }) => sum + givenG, sugarG)
  return {
    plants: given
      .filter(({ givenG }) => givenG > 0 && givenG >= leastG)
      .toSorted((one, other) => other.givenG - one.givenG)
      .map(({ plant: { id, name } }) => ({ id, name })),
    isSweetened: sugarG > 0 && sugarG >= leastG,
  }
}

/** A strength as it was read, at 20 °C. */
export const readAt20 = (read: ReadStrength): Measured => ({
  value: strengthAt20(valuesOf(read)),
  plusMinus: read.abvPercent.plusMinus,
})

/** Whether its strength was told otherwise after it was strained: what was read then counts no more. */
export const isMeasuredSince = ({ strained, happened }: Pick<JarState, 'strained' | 'happened'>): boolean =>
  strained !== null && happened.some(({ kind, seq }) => kind === 'measured' && seq > strained.seq)

/** Null where nothing was read at straining, or where what was read counts. */
export function hiddenStrength(story: JarState): HiddenStrength | null {
  const { strained, happened } = story
  const isUsed = believedSteps(happened).some(({ step }) => step.kind === 'strained' && step.strength !== null)
  if (strained === null || strained.strength === null || isUsed || isMeasuredSince(story)) return null
  const { abvPercent } = contentsOf(story).outcome
  return { read: readAt20(strained.strength), expected: abvPercent, ...dissolvedBy(ingredientsOf(story)) }
}
