import { DomainError } from '../../domain-error.ts'
import { shown } from '../../quantity/read/tokens.ts'
import { isOneTypo } from '../../spelling/one-typo.ts'
import { expectNotRefused } from '../refuse/refusal.ts'
import { expectDrinkable, expectNotNearUndrinkable } from '../refuse/refuse-spirit.ts'
import { classify, type DrinkKind, drinkNames } from '../spirit/classify.ts'
import { type DrinkText, drinkText } from '../spirit/drink-chunks.ts'
import { bottleName } from './bottle-name.ts'
import { drinkSaid } from './drink-said.ts'

/** What the words beside an amount tell of a drink. */
export interface Drink {
  /** The name on the bottle; null where nothing unknown was said. */
  readonly named: string | null
  /** Whether there is sugar in it, or mostly is: a liqueur, a wine. */
  readonly isSweet: boolean
  /** `gin`, `dark rum`; null of spirit as such, and of what is sweet. */
  readonly drink: string | null
}

export interface DrinkTakes {
  /** Whether water is one of the liquids. */
  readonly water: boolean
}

const NOTHING: Drink = { named: null, isSweet: false, drink: null }

/** From so many letters on a slip in the name of a drink is seen. */
const TYPO_LETTERS = 5

/** The first drink that is named, as typed: `London dry gin` is more than it. */
function drinkNamed({ pieces, words }: DrinkText, kinds: readonly DrinkKind[]): string | null {
  const kind = kinds.find((each) => each === 'drink' || each === 'sweet')
  if (kind === undefined) return null
  const first = kinds.indexOf(kind)
  const length = kinds.slice(first).findIndex((each) => each !== kind)
  const last = length === -1 ? kinds.length : first + length
  return pieces.slice(words[first]!.piece, words[last - 1]!.piece + 1).join(' ')
}

const unknownProblem = (typed: string, text: DrinkText, kinds: readonly DrinkKind[]): DomainError => {
  const { pieces, words } = text
  const drink = drinkNamed(text, kinds)
  const isStrange = words.map((_, at) => kinds[at] === 'unknown')
  const isPlant = kinds.includes('plant')
  const meant = words
    .filter((_, at) => isStrange[at])
    .map(({ word }) => drinkNames.find((name) => name.word.length >= TYPO_LETTERS && isOneTypo(word, name.word)))
    .find((name) => name !== undefined)
  // `with lemon peel`: what stands between is said with it.
  const said = words.filter((_, at) => isStrange[at] || kinds[at] === 'plant').map(({ piece }) => piece)
  const extra = shown(pieces.slice(said[0]!, said.at(-1)! + 1).join(' '))
  const values = { typed: shown(typed), extra, meant: meant?.shown ?? null, drink, isPlant, fix: null }
  return new DomainError('ambiguous', 'unknown_drink', values)
}

/** `vodka al limone`, `rhum aux mangues`. */
const FLAVOURED_WITH = new Set('al alla allo all ai agli alle aux'.split(' '))

/** A drink that a plant is named before, or after the word for it: it has mostly sugar in it. */
const isFlavoured = (words: readonly string[], kinds: readonly DrinkKind[]): boolean =>
  kinds.includes('drink') &&
  kinds.some((kind, at) => {
    const next = kinds.slice(at + 1).find((each) => each !== 'plant' && each !== 'filler')
    return kind === 'plant' && (next === 'drink' || FLAVOURED_WITH.has(words[at - 1] ?? ''))
  })

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
  const isSweet = kinds.includes('sweet') || isFlavoured(words, kinds)
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
  return {
    named,
    isSweet: isSweet && !kinds.includes('unsweetened'),
    drink: isSweet ? null : drinkSaid(text, kinds),
  }
}
