import { shown } from '../../quantity/read/tokens.ts'
import type { Food } from '../food.ts'
import type { UnplannedFood } from '../problems.ts'
import { answered } from './answers.ts'
import { exampleG } from './bounds.ts'

interface Typed {
  readonly noun: string
  /** The whole item with its amount; null where none was given. */
  readonly from: string | null
}

/** What is known of a food that is not planned yet: what it is asked, and what to type. */
export const unplannedFood = (food: Food, isAnswered: boolean, { noun, from }: Typed): UnplannedFood => {
  const name = shown(noun)
  const as = isAnswered ? name : answered(name, food)
  const item = from?.includes(name) ? from.replace(name, as) : `${exampleG(food)} g ${as}`
  return { name, question: isAnswered ? null : food.question, retype: { from, as: item, line: null } }
}
