import type { Refused } from '../refused.ts'
import { gardenPoisonsElsewhere } from './garden-poisons.ts'
import { refusedElsewhere } from './refused-elsewhere.ts'
import { refusedKinds } from './refused-kinds.ts'
import { refusedAdded, refusedMore } from './refused-more.ts'
import { refusedNames } from './refused-names.ts'

export interface RefusedName {
  readonly refused: Refused
  readonly name: string
  /** From so many letters on a typo is looked for. */
  readonly typoLetters: number
}

/** A short name in one more language is a letter away from too many good words: `ciguë`, `figue`. */
const TYPO_LETTERS = { here: 5, elsewhere: 7 } as const

const namesIn = (refused: Refused, names: string, typoLetters: number): readonly RefusedName[] =>
  names === '' ? [] : names.split(', ').map((name) => ({ refused, name, typoLetters }))

const elsewhere = ({ id }: Refused): string =>
  [refusedElsewhere[id] ?? '', refusedAdded[id] ?? '', id === 'garden_poisons' ? gardenPoisonsElsewhere : '']
    .filter((names) => names !== '')
    .join(', ')

export const allRefused: readonly Refused[] = [...refusedNames, ...refusedKinds, ...refusedMore]

/** Every name of what is never planned, those in English, Italian and Latin first. */
export const allRefusedNames: readonly RefusedName[] = [
  ...allRefused.flatMap((refused) => namesIn(refused, refused.names, TYPO_LETTERS.here)),
  ...allRefused.flatMap((refused) => namesIn(refused, elsewhere(refused), TYPO_LETTERS.elsewhere)),
]
