import { wordsFrom } from '../../../core/quantity/read/tokens.ts'
import type { Bit, Sentence } from '../bits/bit.ts'
import { liquidsIn, spiritText } from '../frames/liquids.ts'
import { plantText } from '../frames/plant-slots.ts'
import type { CallRead } from '../frames/reading.ts'
import { isOf } from './plan-rules.ts'

/** Beside what is in it already. */
export const ADDED = /\b(?:too|as well|also|added|extra|anche|in piu)\b/u

/** `With 500 g plums`: another amount of what is in it, as `of:` of a batch made again takes it; the rest stays as it was. */
function ofItsPlants({ bits, typed }: Sentence, plan: CallRead | null): string | null {
  const items = plan?.options.of?.split('+').map((item) => item.trim()) ?? []
  const plants = bits.filter(({ kind }) => kind === 'plant')
  const [only, another] = bits
  // The plant that it is of was named before.
  if (only?.kind === 'mass' && another === undefined && items.length === 1) return only.text
  const isOwn = (plant: Bit): boolean => plant.with !== undefined && items.some((item) => isOf(item, plant))
  if (plants.length === 0 || !plants.every(isOwn) || ADDED.test(wordsFrom(typed))) return null
  return plants.map((plant) => plantText(bits, plant, typed)).join(' + ')
}

/** A batch once more with other amounts of its plants, and the spirit that is said too; null where more is said than the two. */
export function amountsAgain(name: string, sentence: Sentence, plan: CallRead | null): CallRead | null {
  const of = ofItsPlants(sentence, plan)
  if (of === null) return null
  const [liquid, another] = liquidsIn(sentence)
  const isLiquid = ({ kind }: Bit): boolean => kind === 'volume' || kind === 'spirit' || kind === 'strength'
  const isMore = sentence.bits.some(
    (bit) => !isLiquid(bit) && bit.kind !== 'plant' && bit.role !== 'of_plant' && bit.text !== of,
  )
  if (isMore || another !== undefined || (liquid === undefined && sentence.bits.some(isLiquid))) return null
  return {
    command: 'again',
    options: { jar: name, of, ...(liquid !== undefined && { spirit: spiritText(liquid) }) },
  }
}
