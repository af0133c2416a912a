import { DomainError } from '../../domain-error.ts'
import type { Piece } from '../../quantity/quantities.ts'
import { shown } from '../../quantity/read/tokens.ts'
import { nameWords, plainWords } from '../../spelling/normalise-name.ts'
import { isOneTypo } from '../../spelling/one-typo.ts'
import type { AskBack } from '../ask-back.ts'
import type { Botanical, PlantState } from '../botanical.ts'
import { botanicalById } from '../catalogue/catalogue.ts'
import { type FoundFood, findFood, foodsOfLatin, isExactFood } from '../foods/find-food.ts'
import { unplannedFood } from '../foods/unplanned.ts'
import { type Described, describe } from '../names/descriptors.ts'
import { byAskWord, byLooseName, byName, byOtherNumber, keyOf, looseKeyOf, spellings } from '../names/name-index.ts'
import type { NotPlanned } from '../problems.ts'
import { expectNotFar } from '../refuse/far-refused.ts'
import { expectNotRefused } from '../refuse/refusal.ts'
import { liqueurPlant } from '../words/liqueur-names.ts'
import { saidOf } from '../words/said-of.ts'
import { inForm, isFormAsked } from './in-form.ts'
import { nearestIds } from './nearest-ids.ts'

export interface Found {
  /** In the form that was said, or in its usual one. */
  readonly botanical: Botanical
  /** What was said of its state; null where nothing was and the usual one was taken. */
  readonly saidState: PlantState | null
  /** True where one typo was forgiven. */
  readonly corrected: boolean
}

/** Words of pieces, as they stand in names. */
const PIECE_WORDS: Readonly<Record<Piece, readonly string[]>> = {
  stick: ['stick', 'stecca', 'stecche'],
  pod: ['pod', 'baccello', 'bacca'],
  bean: ['bean', 'chicco', 'chicchi'],
  clove: ['clove'],
  leaf: ['leaf', 'foglia', 'foglie'],
  sprig: ['sprig', 'rametto', 'rametti'],
  slice: [],
  piece: [],
  bunch: [],
  head: [],
  pinch: [],
}

/** From five letters on a typo is forgiven. */
const TYPO_LETTERS = 5

const lettersOf = (key: string): number => key.replaceAll(' ', '').length

interface Match {
  readonly plants: readonly Botanical[]
  readonly ask: AskBack | null
}

/** A name as it stands, then one that is asked about, then one in another order or number. */
const matchOf = (words: readonly string[]): Match | null => {
  const key = keyOf(words)
  const ask = byAskWord.get(key)?.[0]
  if (ask !== undefined) return { plants: ask.choices.map(botanicalById), ask }
  const loose = looseKeyOf(words)
  const plants = byName.get(key) ?? byLooseName.get(loose) ?? byOtherNumber.get(loose)
  return plants === undefined ? null : { plants, ask: null }
}

/** Words that are one letter away from a name, and mean something else. */
const OTHER_THINGS = new Set(
  'clover clovers pesce pesci nocciolo noccioli glove gloves toffee toffees toffie poppers popper'.split(' '),
)

const typoMatch = (key: string): Match | null => {
  if (lettersOf(key) < TYPO_LETTERS || OTHER_THINGS.has(key)) return null
  const near = spellings().filter(([known]) => lettersOf(known) >= TYPO_LETTERS && isOneTypo(key, known))
  const meant = new Set(near.map(([, value]) => value))
  if (meant.size === 0) return null
  const asks = [...meant].filter((value) => 'choices' in value)
  const plants = [...meant].flatMap((value) => ('choices' in value ? value.choices.map(botanicalById) : [value]))
  return { plants: [...new Set(plants)], ask: meant.size === 1 ? (asks[0] ?? null) : null }
}

/** Whether the choices are one plant in several forms, and none that is refused goes by that word. */
const differInForm = ({ plants, ask }: Match): boolean =>
  (ask === null || ask.refused.length === 0) &&
  new Set(plants.map(({ kind, names }) => `${kind} ${names.latin.join()}`)).size === 1

/** What was said of the form tells the choices apart (`dried bay`, `coffee, cracked`). */
const narrowed = (match: Match, { state, cut }: Described): Match => {
  const { plants, ask } = match
  if (plants.length < 2 || !differInForm(match)) return match
  const told = plants.filter(
    ({ form }) => (cut !== null && form.cut === cut) || (state !== null && form.state === state && form.cut === null),
  )
  return told.length === 1 ? { plants: told, ask: null } : { plants, ask }
}

const unclear = (typed: string, { plants, ask }: Match): DomainError<'unclear_botanical'> =>
  new DomainError('ambiguous', 'unclear_botanical', {
    typed,
    ask: ask?.id ?? null,
    choices: plants.map(({ id }) => id),
    refused: ask?.refused ?? [],
  })

const found = (match: Match, described: Described, typed: string, corrected: boolean): Found => {
  const { plants, ask } = narrowed(match, described)
  const [plant] = plants
  if (plant === undefined || plants.length > 1 || ask !== null) throw unclear(typed, { plants, ask })
  const { state } = described
  if (state === null || state === plant.form.state) return { botanical: plant, saidState: state, corrected }
  // Roasted and cured things are dry, and said to be.
  if (state === 'dried' && plant.form.state !== 'fresh') return { botanical: plant, saidState: null, corrected }
  const other = inForm(plant, state)
  if (other === null) throw new DomainError('not_found', 'unknown_form', { typed, id: plant.id, state })
  return { botanical: other, saidState: state, corrected }
}

/** A noun that is no plant of the catalogue: a food without amounts, a liqueur, or nothing that is known. */
const unknown = (typed: string, nearest: readonly string[], more: Partial<NotPlanned> = {}): DomainError =>
  new DomainError('not_found', 'unknown_botanical', { typed, nearest, liqueur: null, food: null, ...more })

const unplanned = (typed: string, noun: string, { food, isAnswered }: FoundFood): DomainError =>
  new DomainError(isAnswered ? 'not_found' : 'ambiguous', 'unknown_botanical', {
    typed,
    nearest: [],
    liqueur: null,
    food: unplannedFood(food, isAnswered, { noun, from: null }),
  })

/** Throws where the noun is a food of the list, and of a species named in Latin asks which part it is. */
const expectNoFood = (typed: string, noun: string): void => {
  const found = findFood(noun)
  if (found !== null) throw unplanned(typed, noun, found)
  const [food] = foodsOfLatin(noun)
  if (food === undefined) return
  const { name } = food.names[0]
  throw unplanned(typed, name, { food, isAnswered: false })
}

/** `large dried plums`: a food of the list where the catalogue has the plant in another state only. */
const foundOr = (expectNone: () => void, find: () => Found): Found => {
  try {
    return find()
  } catch (error) {
    if (error instanceof DomainError && error.problem === 'unknown_form') expectNone()
    throw error
  }
}

/**
 * The plant that a noun names, in English, Italian or Latin; every word has to be explained, the longest name wins.
 * `piece` is what was counted, where that was taken out of the noun (`5 coffee beans`: `coffee`, `bean`).
 * Throws `refused` (see `expectNotRefused`), `unclear_botanical` where two fit, `unknown_botanical`, `unknown_form`.
 * The exact name of a food comes before what is read out of a longer phrase or forgiven as a typo.
 */
export const findBotanical = (noun: string, piece: Piece | null = null): Found => {
  const whole = piece === null ? noun : `${noun} ${piece}`
  expectNotRefused(whole)
  const typed = shown(noun)
  const { rest } = saidOf(plainWords(noun).join(' '))
  const words = nameWords(rest)
  const withPiece = piece === null ? [] : PIECE_WORDS[piece].map((word) => [...words, word])
  const readings = [...withPiece, words].map((each) => ({ each, described: describe(each) }))
  const fits = (match: Match | null, isBare: boolean): match is Match =>
    match !== null && !(piece === 'leaf' && isBare && !match.plants.every(({ kind }) => LEAFY.has(kind)))
  for (const { each, described } of readings) {
    const isBare = each.length === words.length
    const named = matchOf(each)
    // The name itself says the cut: `ground coffee`.
    if (fits(named, isBare)) return found(named, { ...described, cut: null }, typed, false)
    if (isExactFood(each.join(' '))) expectNoFood(typed, each.join(' '))
    const bare = described.words.length === 0 ? null : matchOf(described.words)
    if (fits(bare, isBare))
      return foundOr(
        () => expectNoFood(typed, whole),
        () => found(bare, described, typed, false),
      )
  }
  expectNoFood(typed, whole)
  expectNoFood(typed, noun)
  const liqueur = liqueurPlant(words)
  if (liqueur !== null) throw unknown(typed, [liqueur], { liqueur })
  for (const { each, described } of [...readings, { each: plainWords(rest), described: describe(words) }]) {
    const near = typoMatch(keyOf(each))
    const match = near ?? typoMatch(keyOf(described.words))
    if (!fits(match, true)) continue
    return found(match, near === null ? described : { ...described, cut: null }, typed, true)
  }
  expectNotFar(noun, typed)
  throw unknown(typed, nearestIds(words))
}

/** Plants whose leaf is what the catalogue means; `2 orange leaves` are no orange peel. */
const LEAFY = new Set(['herb', 'bitter', 'coffee_tea_cocoa'])

/** Throws `unsaid_form` where a ceiling depends on the state of the plant and none was said. */
export const expectSaidForm = ({ botanical, saidState }: Found): void => {
  if (saidState === null && isFormAsked(botanical)) {
    throw new DomainError('ambiguous', 'unsaid_form', { id: botanical.id, states: ['fresh', 'dried'] })
  }
}
