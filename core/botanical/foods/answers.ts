import { singular } from '../../spelling/normalise-name.ts'
import type { Food, FoodAnswer } from '../food.ts'
import { saidOf, withoutGarden } from '../words/said-of.ts'

/** Words that answer each question, as names are compared: singular. */
const ANSWERS: Readonly<Record<FoodAnswer, string>> = {
  flesh: 'flesh pulp cored pitted stoned destoned deseeded seeded seedless polpa',
  stoned: 'flesh pulp pitted stoned destoned stoneless whole uncracked',
  whole: 'flesh pulp whole uncracked uncrushed',
  ripe: 'ripe maturo matura maturi mature',
  husked: 'husked dehusked',
  peeled: 'peeled flesh pulp sbucciato sbucciata',
  mild: 'mild bought shop supermarket',
  bought: 'bought shop supermarket store planted',
  cooked: 'cooked boiled roasted baked steamed stewed toasted',
  roasted: 'roasted toasted',
  pod: 'pod',
}

const words = (text: string): readonly string[] => text.split(' ')

/** What a name may say beside the plant itself: all of the answers. */
export const ANSWER_WORDS: ReadonlySet<string> = new Set(Object.values(ANSWERS).flatMap(words))

const STONE_ANSWERS: readonly FoodAnswer[] = ['flesh', 'stoned', 'whole']

/** Whether these words of a name, plain and as compared, answer what is asked of the food. */
export const isAnswered = ({ question }: Food, compared: readonly string[], plain: string): boolean => {
  if (question === null) return true
  const { answer } = question
  const { stones, isCrushed, isPlanted } = saidOf(plain)
  if (STONE_ANSWERS.includes(answer) && stones === 'out') return true
  // A crushed stone is a cracked one.
  if (answer === 'stoned' || answer === 'whole') {
    if (isCrushed) return false
    if (stones === 'in') return true
  }
  if (answer === 'husked' && stones === 'out') return true
  if (answer === 'bought' && isPlanted) return true
  return compared.some((word) => words(ANSWERS[answer]).includes(word))
}

/** `apples` as `apple`. */
const ofOne = (noun: string): string => noun.replace(/\p{L}+$/u, singular)

/** The same food with its question answered, as it can be typed: `apple flesh`, `bought carrots`. */
export const answered = (noun: string, { question }: Food): string => {
  if (question === null) return noun
  const { answer } = question
  const grown = withoutGarden(noun)
  if (answer === 'bought' && grown !== noun) return `${grown} I planted`
  return answer === 'flesh' || answer === 'pod' ? `${ofOne(noun)} ${answer}` : `${answer} ${noun}`
}
