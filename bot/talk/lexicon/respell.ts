import { isPlantWord } from '../../../core/botanical/find/plant-said.ts'
import type { Token } from '../../../core/quantity/read/tokens.ts'
import { HUNDREDS, TENS, UNITS } from '../../../core/quantity/said/number-words.ts'
import { isDayWord } from '../../../core/quantity/time/date-said.ts'
import { monthNamed } from '../../../core/quantity/time/parse-month.ts'
import { isOneTypo } from '../../../core/spelling/one-typo.ts'
import type { Lexicon } from './lexicon.ts'
import { isWhole } from './whole-words.ts'

/** Shorter words have too many neighbours. */
const LEAST_LETTERS = 5

const vocabularies = new WeakMap<Lexicon, ReadonlyMap<string, readonly string[]>>()

/** Days as they are most often slipped in: a deed of `yesterdy` is not one of today. */
const DAYS: Readonly<Record<Lexicon['id'], string>> = {
  en: 'yesterday tomorrow tonight tuesday wednesday thursday saturday',
  it: 'domani stasera martedi mercoledi giovedi venerdi sabato domenica',
}

const wordsOf = (lexicon: Lexicon): readonly string[] =>
  [
    DAYS[lexicon.id],
    ...Object.values(lexicon.concepts),
    lexicon.fillers,
    lexicon.small,
    lexicon.between,
    lexicon.sugars,
    lexicon.waters,
    lexicon.bottles,
    lexicon.loose,
    ...lexicon.spirits.map(([words]) => words),
    ...lexicon.drinks.map(([words]) => words),
  ].flatMap((list) => list.split(/[\s,|]+/))

/** By the first letter, which is seldom wrong; stems with their star. */
function vocabularyOf(lexicon: Lexicon): ReadonlyMap<string, readonly string[]> {
  const known = vocabularies.get(lexicon)
  if (known !== undefined) return known
  const byFirst = new Map<string, string[]>()
  for (const word of new Set(wordsOf(lexicon))) {
    if (word === '') continue
    const all = byFirst.get(word[0]!)
    if (all === undefined) byFirst.set(word[0]!, [word])
    else all.push(word)
  }
  vocabularies.set(lexicon, byFirst)
  return byFirst
}

/** `Un quarto di questo` is no `quanto`. */
const isNumberWord = (word: string): boolean =>
  UNITS.has(word) || TENS.has(word) || HUNDREDS.has(word) || /^(?:quart[oi]|terz[oi]|thirds?|quarters?)$/.test(word)

/** Whether a lexicon has a word, whole or by its beginning of so many letters. */
export const isWordOf = (word: string, lexicon: Lexicon, leastStem: number): boolean =>
  (vocabularyOf(lexicon).get(word[0] ?? '') ?? []).some((each) =>
    each.endsWith('*') ? each.length > leastStem && word.startsWith(each.slice(0, -1)) : each === word,
  )

/** A number, a plant or a day: what no lexicon lists. */
export const isWordOfCore = (word: string): boolean =>
  isNumberWord(word) || isPlantWord(word) || isDayWord(word) || monthNamed(word) !== null

/** `Straind`, `filterd`, `shakn`: an ending without its vowel; `strainned`, `filtratto`, `botled`: a letter twice, or once. */
function endingMeant(word: string, near: readonly string[]): string | null {
  const full = /[^aeiou][dn]$/.test(word) ? [`${word.slice(0, -1)}e${word.slice(-1)}`] : []
  if (!/(?:ed|t{1,2}[aoie])$/.test(word)) return full.find((each) => near.includes(each)) ?? null
  const single = word.replace(/([npt])\1(?=ed$|[aoie]$)/, '$1')
  const twice = word.replace(/^(.[aeiou])([npt])(?=l|[aoie])/, '$1$2$2')
  return [...full, single, twice].find((each) => each !== word && near.includes(each)) ?? null
}

function meant(word: string, near: readonly string[]): string | null {
  if (near.includes(word) || isWordOfCore(word)) return null
  const ended = endingMeant(word, near)
  if (ended !== null) return ended
  if (near.some((each) => each.endsWith('*') && word.startsWith(each.slice(0, -1)))) return null
  const found = near.filter((each) => !each.endsWith('*') && each.length >= LEAST_LETTERS - 1 && isOneTypo(word, each))
  return found.length === 1 ? found[0]! : null
}

const UNITS_SLIPPED: readonly string[] = [
  'litre',
  'liter',
  'litro',
  'kilo',
  'pint',
  'gram',
  'grams',
  'pound',
  'ounces',
  'chilo',
  'bottle',
]

/** `A litr of vodka`: between a number and what it is of, short words too. */
function unitMeant(tokens: readonly Token[], at: number): string | null {
  const [before, token, behind] = [tokens[at - 1], tokens[at]!, tokens[at + 1]]
  if (token.kind !== 'word' || token.text.length < 4 || !/^(?:of|di|d)$/.test(behind?.text ?? '')) return null
  const isCounted =
    before?.kind === 'number' ||
    /^(?:a|an|un|una|half|mezzo|of)$/.test(before?.text ?? '') ||
    (before !== undefined && isNumberWord(before.text))
  if (!isCounted || isWordOfCore(token.text) || UNITS_SLIPPED.includes(token.text)) return null
  const found = UNITS_SLIPPED.filter((unit) => unit[0] === token.text[0] && isOneTypo(token.text, unit))
  return found.length > 0 && !KNOWN.test(token.text) ? found[0]! : null
}

/** Words of their own. */
const KNOWN =
  /^(?:litres|liters|litri|kilos|chili|pints|pounds|bottles|grain|glass|botte|list|lite|little|late|print|paint|point|sound|found|round|count)$/

/** The same pieces with one slip mended in each word that nothing knows, where it can only be one other. */
export function respelt(tokens: readonly Token[], lexicon: Lexicon, names: ReadonlySet<string>): readonly Token[] {
  const vocabulary = vocabularyOf(lexicon)
  return tokens.map((token, at) => {
    const unit = unitMeant(tokens, at)
    if (unit !== null) return { ...token, text: unit, isMended: true }
    if (token.kind !== 'word' || token.text.length < LEAST_LETTERS || names.has(token.text)) return token
    if (isWhole(token.text, lexicon)) return token
    const text = meant(token.text, vocabulary.get(token.text[0]!) ?? [])
    return text === null ? token : { ...token, text, isMended: true }
  })
}
