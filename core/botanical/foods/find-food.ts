import { nameWords, plainWords } from '../../spelling/normalise-name.ts'
import type { Food, FoodPart } from '../food.ts'
import { saidOf } from '../words/said-of.ts'
import { ANSWER_WORDS, isAnswered } from './answers.ts'
import { foodByName, foodsByLatin } from './foods.ts'

/** Words that change nothing about which plant it is, as names are compared. */
const FORM_WORDS: ReadonlySet<string> = new Set(
  (
    'fresh freshly frozen dried dry ripe whole ground powdered powder crushed chopped sliced grated peeled organic untreated ' +
    'unwaxed unsprayed washed halved small large big bought shelled roasted toasted tip head fresco fresca freschi fresche ' +
    'secco secca secchi secche essiccato essiccata essiccati essiccate surgelato surgelata maturo matura maturi mature bio ' +
    'biologico biologica tritato tritata grattugiato grattugiata intero intera'
  ).split(' '),
)

/** What the part of a row is also called, behind its name. */
const PART_WORDS: Readonly<Partial<Record<FoodPart, readonly string[]>>> = {
  leaf: ['leaf', 'sprig', 'herb'],
  flower: ['flower', 'blossom', 'petal'],
  berry: ['berry', 'fruit'],
  fruit: ['fruit'],
  nut: ['nut'],
  seed: ['seed'],
  root: ['root'],
  stem: ['stalk', 'stem'],
  grain: ['grain'],
  bulb: ['bulb'],
  sap: ['sap'],
  alga: ['seaweed'],
}

export interface FoundFood {
  readonly food: Food
  /** False where its question is still to be asked. */
  readonly isAnswered: boolean
}

const ofPart = (words: readonly string[]): Food | undefined => {
  const food = words.length < 2 ? undefined : foodByName.get(words.slice(0, -1).join(' '))
  return food !== undefined && (PART_WORDS[food.part] ?? []).includes(words.at(-1)!) ? food : undefined
}

/**
 * The food that a noun names, whole: the exact name; without words of its form; without one last word that names the
 * row's own part. No typo is forgiven, and no name is read out of a longer phrase. Null where it names none.
 */
export const findFood = (noun: string): FoundFood | null => {
  const plain = plainWords(noun).join(' ')
  const compared = nameWords(noun)
  const words = nameWords(saidOf(plain).rest)
  const isForm = (word: string): boolean => FORM_WORDS.has(word)
  const leading = words.findIndex((word) => !isForm(word))
  const without = (isDropped: (word: string) => boolean) => words.filter((word) => !isDropped(word))
  const bare = without((word) => isForm(word) || ANSWER_WORDS.has(word))
  const names = [
    compared,
    words,
    without((word) => ANSWER_WORDS.has(word)),
    ...words.slice(0, Math.max(0, leading)).map((_, at) => words.slice(at + 1)),
    without(isForm),
    bare,
  ]
  const exact = names.map((each) => foodByName.get(each.join(' '))).find((each) => each !== undefined)
  const food = exact ?? ofPart(words) ?? ofPart(bare)
  return food === undefined ? null : { food, isAnswered: isAnswered(food, compared, plain) }
}

/** Whether the noun is the name of a food as the table has it. */
export const isExactFood = (noun: string): boolean => foodByName.has(nameWords(noun).join(' '))

/** The foods of a species named in Latin: only that of no part. */
export const foodsOfLatin = (noun: string): readonly Food[] => foodsByLatin.get(nameWords(noun).join(' ')) ?? []
