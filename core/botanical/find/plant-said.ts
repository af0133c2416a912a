import { lazily } from '../../once.ts'
import type { Token } from '../../quantity/read/tokens.ts'
import { nameWords } from '../../spelling/normalise-name.ts'
import { isOneTypo } from '../../spelling/one-typo.ts'
import { ORDINARY } from '../../spelling/ordinary-words.ts'
import { botanicalById } from '../catalogue/catalogue.ts'
import { foodByName } from '../foods/foods.ts'
import { describe } from '../names/descriptors.ts'
import {
  byAskWord,
  byLooseName,
  byName,
  byOtherNumber,
  keyOf,
  LONGEST_NAME_WORDS,
  looseKeyOf,
  spellings,
} from '../names/name-index.ts'

/** A plant in a sentence: which it may be, and where its name ends. */
export interface PlantFound {
  /** Ids of the catalogue, the usual one first; empty for a food that has no amounts. */
  readonly ids: readonly string[]
  readonly next: number
  readonly isSlip: boolean
}

const idsOf = (words: readonly string[]): readonly string[] | null => {
  const key = keyOf(words)
  const loose = looseKeyOf(words)
  const plants = byName.get(key) ?? (words.length > 1 ? byLooseName.get(loose) : undefined) ?? byOtherNumber.get(loose)
  const asked = byAskWord.get(key)?.[0]?.choices
  if (plants !== undefined || asked !== undefined) return asked ?? plants!.map(({ id }) => id)
  return foodByName.has(key) ? [] : null
}

/** How dried and cut things are called stands before a name or behind it. */
export const isDescriptor = (word: string): boolean => {
  const { words, state, cut } = describe([word])
  return words.length === 0 && (state !== null || cut !== null)
}

/**
 * The plant whose name begins at a piece, the longest name first; null where none does. Names of one word in `others` mean
 * something else. Never throws: which of several it is, an option asks.
 */
export function plantSaid(tokens: readonly Token[], at: number, others: ReadonlySet<string>): PlantFound | null {
  const most = Math.min(LONGEST_NAME_WORDS + 3, tokens.length - at)
  for (let count = most; count > 0; count--) {
    const said = tokens.slice(at, at + count)
    const [first, last] = [said[0]!, said.at(-1)!]
    if (said.some(({ kind }) => kind !== 'word') || (count === 1 && others.has(first.text))) continue
    // A name neither begins nor ends with `of`.
    const words = nameWords(said.map(({ text }) => text).join(' '))
    if (words.length === 0 || nameWords(first.text).length === 0 || nameWords(last.text).length === 0) continue
    const ids = idsOf(words)
    if (ids !== null) return { ids, next: at + count, isSlip: false }
  }
  return null
}

/** Most lines are no sentence. */
const plantWords = lazily(
  (): ReadonlySet<string> =>
    new Set(
      [...byName.keys(), ...byAskWord.keys(), ...foodByName.keys(), ...byOtherNumber.keys()].flatMap((key) =>
        key.split(' '),
      ),
    ),
)

/** Whether a word stands in the name of any plant. */
export const isPlantWord = (word: string): boolean => nameWords(word).every((each) => plantWords().has(each))

const SLIP_LETTERS = 6

/** The plant of a name of one or two words with one slip in it: `rasberries`, `cinamon`; null where none is. */
export function plantMisspelt(tokens: readonly Token[], at: number): PlantFound | null {
  for (const count of [2, 1]) {
    const said = tokens.slice(at, at + count)
    if (said.length < count || said.some(({ kind }) => kind !== 'word')) continue
    const key = keyOf(nameWords(said.map(({ text }) => text).join(' ')))
    if (key.replaceAll(' ', '').length < SLIP_LETTERS || said.some(({ text }) => text.length < 3)) continue
    const near = spellings().find(([known]) => known.length >= SLIP_LETTERS && isOneTypo(key, known))
    if (near === undefined || ORDINARY.has(key)) continue
    const ids = 'choices' in near[1] ? near[1].choices : [near[1].id]
    return { ids: ids.map((id) => botanicalById(id).id), next: at + count, isSlip: true }
  }
  return null
}
