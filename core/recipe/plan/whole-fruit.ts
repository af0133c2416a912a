import type { Botanical } from '../../botanical/botanical.ts'
import { nameWords } from '../../spelling/normalise-name.ts'
import { between } from './between.ts'

/** What is peeled off is called one of these. */
const PEEL: ReadonlySet<string> = new Set(
  nameWords(
    'peel peels peeled peelings zest zests rind rinds skin skins strip strips scorza scorze buccia bucce zesta',
  ),
)

/** From so many of the largest fruit on nobody has weighed their peel alone. Common practice, no source. */
const LEAST_FRUIT = 2

/**
 * How many whole fruit somebody has weighed who names citrus by its weight: `1 kg lemons` are nine. Null where the weight
 * may be that of what goes into the jar, its peel, or where nobody has written down what a fruit weighs.
 */
export function wholeFruitIn({ zestGPerFruit, fruitG }: Botanical, noun: string, massG: number): number | null {
  if (zestGPerFruit === null || fruitG === null) return null
  if (nameWords(noun).some((word) => PEEL.has(word))) return null
  const [least, most] = fruitG
  return massG < LEAST_FRUIT * most ? null : Math.round(massG / between(least, most).value)
}
