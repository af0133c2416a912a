import { DomainError, domainErrorOf } from '../../domain-error.ts'
import { lazily } from '../../once.ts'
import { shown } from '../../quantity/read/tokens.ts'
import { nameWords, plainWords } from '../../spelling/normalise-name.ts'
import { keyOf } from '../names/name-index.ts'
import type { RefusalId } from '../refused.ts'
import { phrases } from '../spirit/phrases.ts'
import { type UndrinkableId, undrinkables, unharmed } from '../spirit/undrinkable.ts'
import { isGood, LONGEST } from './near-refused.ts'
import { expectNotRefused } from './refusal.ts'
import { refusalRules } from './refusal-rules.ts'
import {
  ABOUT_THE_HOUSE,
  ALCOHOL,
  byName,
  COLOURED_GROWTH,
  DOING,
  DONE_WITH,
  doneWith,
  GOT_IN,
  isDeniedAt,
  MARKS,
  OF_NO_SHOP,
  OF_PLANTS,
  PICKING,
  PLANT_OIL,
  RULES,
  TELLING_LETTERS,
  WHERE_IT_STANDS,
  withoutLikeness,
} from './refused-words.ts'

/** What is refused in a sentence, and the problem that says why. */
export interface RefusedSaid {
  /** Where it stands, in plain words (`plainWords`). */
  readonly from: number
  readonly to: number
  readonly id: RefusalId | UndrinkableId
  /** Only one slip away from what is refused. */
  readonly isNear: boolean
  readonly problem: DomainError
}

/** Most lines are no sentence. */
const tabled = lazily(() => ({
  tables: undrinkables.map(({ id, anywhere, beside }) => ({
    id,
    anywhere: phrases(anywhere),
    beside: phrases(beside),
  })),
  good: phrases(unharmed),
}))

/** Among words, where a phrase stands in them, joined with a blank each. */
function placeOf({ input, index, 0: phrase }: RegExpExecArray): Pick<RefusedSaid, 'from' | 'to'> {
  const from = input.slice(0, index).split(' ').length - 1
  return { from, to: from + phrase.split(' ').length }
}

const UNIT =
  /^(?:\d+)?(?:ml|cl|dl|l|litres?|liters?|litr[oi]|oz|g|tsp|tbsp|teaspoons?|tablespoons?|cups?|cucchiai(?:no|ni|o)?|tazz[ae])$/

/** So much of it: `20 ml of bleach`, `a spoon of ammonia`. */
const isMeasuredAt = (words: readonly string[], at: number): boolean =>
  UNIT.test(words[/^(?:of|di)$/.test(words[at - 1] ?? '') ? at - 2 : at - 1] ?? '')

function undrinkableSaid(words: readonly string[], text: string): RefusedSaid | null {
  const { tables, good } = tabled()
  const isAlcohol = words.some((word) => ALCOHOL.test(word))
  const plain = words.join(' ')
  const isDone = DOING.test(plain)
  for (const { id, anywhere } of tables) {
    for (let at = 0; at < words.length; at++) {
      const length = anywhere.longestAt(words, at)
      if (length === 0 || good.longestAt(words, at) > 0 || isDeniedAt(words, at)) continue
      // `A 95 e 10 limoni` is no petrol.
      if (words[at] === 'e' && !/benzin|carburant|fuel|petrol/.test(plain)) continue
      if (!isAlcohol && !isDone && ABOUT_THE_HOUSE.test(words[at]!) && !isMeasuredAt(words, at)) continue
      return refusedSpirit(id, words, at, at + length, text)
    }
  }
  const home = OF_NO_SHOP.exec(plain)
  if (home !== null) {
    const { from, to } = placeOf(home)
    if (!isDeniedAt(words, from)) return refusedSpirit('untaxed', words, from, to, text)
  }
  const got = GOT_IN.exec(plain)
  if (got !== null) {
    const { from, to } = placeOf(got)
    return refusedSpirit('solvent', words, from, to, text)
  }
  const alcohol = words.findIndex((word) => ALCOHOL.test(word))
  if (alcohol === -1) return null
  for (let at = Math.max(0, alcohol - 3); at < Math.min(words.length, alcohol + 6); at++) {
    const length = MARKS.longestAt(words, at)
    if (length === 0 || good.longestAt(words, at) > 0 || isDeniedAt(words, at)) continue
    if (WHERE_IT_STANDS.test(words.slice(Math.max(0, at - 4), at + length).join(' '))) continue
    if (COLOURED_GROWTH.test(words.slice(at, at + 7).join(' '))) continue
    const table = tables.find(({ beside }) => beside.longestAt(words, at) > 0)
    return refusedSpirit(table?.id ?? 'denatured', words, at, at + length, text)
  }
  return null
}

function refusedSpirit(
  id: UndrinkableId,
  words: readonly string[],
  from: number,
  to: number,
  text: string,
): RefusedSaid {
  const values = { typed: shown(text), word: words.slice(from, to).join(' '), id }
  return { from, to, id, isNear: false, problem: new DomainError('refused', 'refused_spirit', values) }
}

/** The problem that core has with a phrase, or null. */
const problemOf = (phrase: string): DomainError | null => domainErrorOf(() => expectNotRefused(phrase))

/** Whether something is done with what may be talked of: of plants, an amount or a place is enough. */
const isTaken = (plain: string, id: RefusalId): boolean =>
  DOING.test(plain) || (OF_PLANTS.has(id) && PICKING.test(plain))

function plantsSaid(words: readonly string[]): readonly RefusedSaid[] {
  const found: RefusedSaid[] = []
  const plain = words.join(' ')
  for (let at = 0; at < words.length; at++) {
    for (let count = Math.min(LONGEST, words.length - at); count > 0; count--) {
      const said = words.slice(at, at + count)
      const key = keyOf(nameWords(said.join(' ')))
      if (key === '' || nameWords(said[0]!).length === 0 || nameWords(said.at(-1)!).length === 0) continue
      const talkedOf = doneWith.get(key)
      const name =
        byName.get(key) ?? (talkedOf !== undefined && isTaken(plain, talkedOf.refused.id) ? talkedOf : undefined)
      if (name === undefined && !isGood(key)) continue
      // A longer good name around a bad one wins: it is passed over whole.
      const problem = name === undefined || isDeniedAt(words, at) ? null : problemOf(said.join(' '))
      if (name !== undefined && problem !== null && problem.code === 'refused')
        found.push({ from: at, to: at + count, id: name.refused.id, isNear: false, problem })
      at += count - 1
      break
    }
  }
  return found
}

/** `Penny royal`, `fox glove`: one word of a name, typed as two. */
function apartSaid(words: readonly string[]): readonly RefusedSaid[] {
  return words.slice(1).flatMap((word, before) => {
    const name = byName.get(keyOf(nameWords(`${words[before]}${word}`)))
    if (name === undefined || name.words.join('').length < TELLING_LETTERS) return []
    if (isGood(keyOf(nameWords(`${words[before]} ${word}`))) || isDeniedAt(words, before)) return []
    const problem = problemOf(name.name)
    return problem === null ? [] : [{ from: before, to: before + 2, id: name.refused.id, isNear: false, problem }]
  })
}

function rulesSaid(words: readonly string[]): readonly RefusedSaid[] {
  const plain = words.join(' ')
  return refusalRules.flatMap(({ id, pattern, except, isTelling }) => {
    const isOil = id === 'essential_oils'
    if (isTelling !== true && !RULES.has(id) && !isOil && !(DONE_WITH.has(id) && isTaken(plain, id))) return []
    const text = except === undefined ? plain : plain.replace(except, (found) => '-'.repeat(found.length))
    const match = (isOil ? PLANT_OIL : pattern).exec(text)
    if (match === null) return []
    const problem = problemOf(match[0])
    return problem === null ? [] : [{ ...placeOf(match), id, isNear: false, problem }]
  })
}

/**
 * What is refused anywhere in a sentence, whatever else it says, by name or by phrase; never by what it is merely like
 * (`smells like nail polish remover`) nor by words that are said of much else (`half and half`, `found one from 2021`).
 * Never throws.
 */
export function refusedIn(text: string): readonly RefusedSaid[] {
  const told = withoutLikeness(text)
  const words = plainWords(told)
  const spirit = undrinkableSaid(words, text)
  return [...(spirit === null ? [] : [spirit]), ...plantsSaid(words), ...apartSaid(words), ...rulesSaid(words)]
}
