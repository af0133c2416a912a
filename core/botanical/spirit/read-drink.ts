import { DomainError } from '../../domain-error.ts'
import { shown } from '../../quantity/typed-text.ts'
import { isOneTypo } from '../one-typo.ts'
import { expectNotRefused } from '../refusal.ts'
import { expectDrinkable, expectNotNearUndrinkable } from '../refuse-spirit.ts'
import { bottleName } from './bottle-name.ts'
import { classify, type DrinkKind, drinkNames } from './classify.ts'
import { type DrinkText, drinkText } from './drink-chunks.ts'

/** What the words beside an amount tell of a drink. */
export interface Drink {
  /** The name on the bottle; null where nothing unknown was said. */
  readonly named: string | null
  /** Whether there is sugar in it, or mostly is: a liqueur, a wine. */
  readonly isSweet: boolean
}

export interface DrinkTakes {
  /** Whether water is one of the liquids. */
  readonly water: boolean
}

const NOTHING: Drink = { named: null, isSweet: false }

/** From so many letters on a slip in the name of a drink is seen. */
const TYPO_LETTERS = 5

const unknownProblem = (typed: string, { pieces, words }: DrinkText, kinds: readonly DrinkKind[]): DomainError => {
  const strange = words.filter((_, at) => kinds[at] === 'unknown')
  const plants = words.filter((_, at) => kinds[at] === 'plant')
  const meant = strange
    .map(({ word }) => drinkNames.find((name) => name.word.length >= TYPO_LETTERS && isOneTypo(word, name.word)))
    .find((name) => name !== undefined)
  const shownOf = (each: typeof strange) =>
    [...new Set(each.map(({ piece }) => piece))].map((at) => pieces[at]!).join(' ')
  const isDrinkLeft = kinds.includes('drink') || kinds.includes('sweet')
  const extra = shown(shownOf(strange.length > 0 ? strange : plants))
  return new DomainError('ambiguous', 'unknown_drink', {
    typed: shown(typed),
    extra,
    meant: meant?.shown ?? null,
    isDrinkLeft,
    fix: null,
  })
}

/**
 * Judges the words that were typed of a spirit, a liqueur or a wine against what drinks of the trade are called.
 * Throws `refused_spirit`, `near_refused_spirit`, what `expectNotRefused` throws, `ethanol_asked`, and `unknown_drink`.
 */
export function readDrink(said: string, { water }: DrinkTakes): Drink {
  const text = drinkText(said)
  const words = text.words.map(({ word }) => word)
  if (words.length === 0) return NOTHING
  // Water among spirits is as strange a word as any.
  const kinds = classify(words).map((kind) => (kind === 'water' && !water ? 'unknown' : kind))
  const isSweet = kinds.includes('sweet') || (kinds.includes('plant') && kinds.includes('drink'))
  expectDrinkable(said, isSweet)
  const unknown = words.filter((_, at) => kinds[at] === 'unknown')
  const isPlant = kinds.includes('plant')
  expectNotNearUndrinkable(unknown, said)
  if (unknown.length > 0 || isPlant) expectNotRefused(said)
  const asked = kinds.indexOf('asked')
  if (asked !== -1) {
    const word = shown(text.pieces[text.words[asked]!.piece]!)
    throw new DomainError('ambiguous', 'ethanol_asked', { typed: shown(said), word, fix: null })
  }
  const named = unknown.length === 0 ? null : bottleName(text, kinds)
  if ((isPlant && !isSweet) || (unknown.length > 0 && named === null)) throw unknownProblem(said, text, kinds)
  return { named, isSweet: isSweet && !kinds.includes('unsweetened') }
}
