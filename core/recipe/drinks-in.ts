import { readDrink } from '../botanical/drink/read-drink.ts'
import { expectNotRefused } from '../botanical/refuse/refusal.ts'
import { expectDrinkable } from '../botanical/refuse/refuse-spirit.ts'
import { DomainError, isRefused } from '../domain-error.ts'
import type { LiquidPart } from '../quantity/quantities.ts'
import { parseParts } from '../quantity/read/parse-parts.ts'
import { parseSpirits } from '../quantity/read/parse-spirits.ts'
import { shown } from '../quantity/read/tokens.ts'
import { expectDistilled } from './distilled.ts'

/** One of the liquids, with the name on its bottle and what it is called; null where neither was said. */
export interface DrinkPart extends LiquidPart {
  readonly named: string | null
  /** `gin`; null of spirit as such, and of what is sweet. */
  readonly drink: string | null
}

export interface DrinksTake {
  /** Whether `dry` is a sweetness, and water one of the liquids: where finished drinks are poured together. */
  readonly blends: boolean
}

/** From this strength on a spirit is one to dilute, % vol. Common practice, no source. */
const STRONG_PERCENT = 60

const SWEETNESS = '250 g/L'

/** As a question would show it. */
const usual = ({ strength }: LiquidPart): string =>
  strength !== null && strength.abvPercent >= STRONG_PERCENT ? 'neutral spirit' : 'vodka'

/** The part without the words of its drink. */
const withoutWords = ({ typed, words }: LiquidPart): string => {
  const said = new Set(words.split(/\s+/))
  return typed
    .split(/\s+/)
    .filter((piece) => !said.has(piece))
    .join(' ')
}

function partOf(item: LiquidPart, { blends }: DrinksTake): DrinkPart {
  const { words, sweetness } = item
  const { named, isSweet, drink } = readDrink(words, { water: blends })
  if (isSweet && sweetness === null) {
    const values = { typed: shown(item.typed), words: shown(words), fix: null }
    throw new DomainError('ambiguous', 'drink_sweetness', values)
  }
  return { ...item, named, drink }
}

/** Other texts for the part, the likeliest first. */
function othersFor(part: LiquidPart, { problem, values }: DomainError): readonly string[] {
  const { typed } = part
  if (problem === 'drink_sweetness') return [`${typed} ${SWEETNESS}`]
  if (problem === 'ethanol_asked') {
    const { word } = values as DomainError<'ethanol_asked'>['values']
    return [typed.replace(word, 'food alcohol'), `${withoutWords(part)} food alcohol`]
  }
  if (problem !== 'unknown_drink') return []
  const { extra, meant, drink } = values as DomainError<'unknown_drink'>['values']
  // Without the strange word only where a drink is left: `zorble alcohol` may be any alcohol.
  const known = `${withoutWords(part)} ${drink ?? usual(part)}`
  return [
    ...(meant === null ? [] : [typed.replace(extra, meant)]),
    known,
    ...(drink === null ? [] : [`${known} ${SWEETNESS}`]),
  ]
}

const isRead = (text: string, takes: DrinksTake): boolean => !isRefused(() => readDrinks(text, takes, (error) => error))

/** The same problem with what could be typed in its place, where something can. */
function mended(error: DomainError, parts: readonly LiquidPart[], at: number, takes: DrinksTake): DomainError {
  const fixes = othersFor(parts[at]!, error).map((text) =>
    parts.map((part, place) => (place === at ? text : part.typed)).join(' + '),
  )
  if (fixes.length === 0) return error
  const fix = fixes.map((text) => text.trim().replace(/\s+/g, ' ')).find((text) => isRead(text, takes)) ?? null
  const values = { ...error.values, typed: shown(parts[at]!.typed), fix }
  return new DomainError(error.code, error.problem, values as never)
}

const parsed = (text: string, { blends }: DrinksTake): readonly LiquidPart[] => {
  try {
    return blends ? parseParts(text) : parseSpirits(text)
  } catch (error) {
    // What is dangerous is said before what cannot be read.
    expectNotRefused(text)
    throw error
  }
}

/** A word for a sweetness, which may be half of a name: dry ice is no dry liqueur. */
const STYLE_WORD = /\b(?:dry|rich|everyday)\b/i

type Fault = (error: DomainError, parts: readonly LiquidPart[], at: number) => DomainError

/** Throws what `faultOf` makes of the first fault in a part. */
function readDrinks(text: string, takes: DrinksTake, faultOf: Fault): readonly DrinkPart[] {
  expectDrinkable(text, true)
  const parts = parsed(text, takes)
  for (const { typed } of parts) if (takes.blends && STYLE_WORD.test(typed)) expectNotRefused(typed)
  const drinks = parts.map((part, at) => {
    try {
      return partOf(part, takes)
    } catch (error) {
      throw error instanceof DomainError ? faultOf(error, parts, at) : error
    }
  })
  for (const { strength, strengthTyped } of drinks) {
    if (strength !== null) expectDistilled(strength, strengthTyped, text.replace(strengthTyped, '95%'))
  }
  return drinks
}

/**
 * The liquids of `spirit:` or `parts:`, each a drink of the trade: `1 l vodka 40% + 500 ml orange liqueur 28% 250 g/L`. Throws
 * what `readDrink` throws, `drink_sweetness`, `spirit_too_strong`, and what `readLiquid` throws; a fault comes with a text that
 * would be read in its place, where there is one.
 */
export const drinksIn = (text: string, takes: DrinksTake): readonly DrinkPart[] =>
  readDrinks(text, takes, (error, parts, at) => mended(error, parts, at, takes))
