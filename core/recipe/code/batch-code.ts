import { catalogue } from '../../botanical/catalogue/catalogue.ts'
import { DomainError } from '../../domain-error.ts'
import { USUAL_MATERIAL } from '../../quantity/materials.ts'
import { shown } from '../../quantity/read/tokens.ts'
import { crc40 } from './crc40.ts'
import { fromCrockford, toCrockford } from './crockford.ts'
import { drinkNumber, readDrinkTold } from './drink-numbers.ts'
import { plantNumbers } from './plant-numbers.ts'
import { RANGES, type Recipe, type RecipePlant, type RecipeSpirit } from './recipe.ts'
import { readSugars, sugarNumbers } from './sugar-numbers.ts'
import { type Reader, readerOf, several, symbolsOf } from './symbols.ts'

/** The first number of a code. A later version may change all that follows but the check at the end. */
const VERSION = 3
/** Nothing but spirit: what needs no more is written so that older bots read it. */
const SPIRIT_VERSION = 2
/** White sugar alone, likewise. */
const SUGAR_VERSION = 1

/** Characters of a code, at most. */
export const LONGEST_CODE = 300

/** Symbols of the check, which ends every code of every version. */
const CHECK_SYMBOLS = 8
/** Under so many characters a text is no code, whatever became of it. */
const LEAST_SYMBOLS = 16

const MOST_PLANTS = 64
const MOST_SPIRITS = 64

const known: ReadonlyMap<string, boolean> = new Map(
  catalogue.map(({ id, driedPerFresh }) => [id, driedPerFresh !== null] as const),
)

const checkOf = (symbols: readonly number[]): readonly number[] => {
  const check = crc40(symbols)
  return Array.from({ length: CHECK_SYMBOLS }, (_, at) => Number((check >> BigInt(5 * (CHECK_SYMBOLS - 1 - at))) & 31n))
}

/** Null as 0, a number as the next one. */
const orNone = (whole: number | null): number => (whole === null ? 0 : whole + 1)

const versionOf = ({ spirits, sweetenings = [], sweetener = USUAL_MATERIAL, filler }: Recipe): number => {
  if (spirits.some(({ drink }) => drink !== undefined)) return VERSION
  return sweetenings.length === 0 && sweetener === USUAL_MATERIAL && filler === undefined
    ? SUGAR_VERSION
    : SPIRIT_VERSION
}

const numbersOf = (
  { plants, spirits, waterTenthG, sugarTenthG, targets, steep, restDays }: Recipe,
  version: number,
  otherSugars: readonly number[],
): readonly number[] => [
  plants.length,
  ...plants.flatMap(({ id, isDried, massMg, countTenths, addOnDays }) => [
    2 * plantNumbers.indexOf(id) + Number(isDried),
    massMg,
    orNone(countTenths),
    addOnDays,
  ]),
  spirits.length,
  ...spirits.flatMap(({ volumeTenthMl, abvHundredthPercent, drink }) => [
    volumeTenthMl,
    abvHundredthPercent,
    ...(version > SPIRIT_VERSION ? [drinkNumber(drink)] : []),
  ]),
  waterTenthG,
  sugarTenthG,
  ...otherSugars,
  ...(targets === null ? [0] : [orNone(targets.abvHundredthPercent), targets.sugarTenthGPerL]),
  ...(steep === null ? [0] : [orNone(steep.fromDays), steep.byDays - steep.fromDays]),
  orNone(restDays),
]

/** The recipe in one line of digits and capital letters; throws `recipe_too_long` where that takes more than 300, or more than is read. */
export function encodeBatch(recipe: Recipe): string {
  const version = versionOf(recipe)
  const otherSugars = version === SUGAR_VERSION ? [] : sugarNumbers(recipe)
  const symbols = [version, ...numbersOf(recipe, version, otherSugars)].flatMap(symbolsOf)
  const isOver = recipe.plants.length > MOST_PLANTS || recipe.spirits.length > MOST_SPIRITS
  if (isOver || symbols.length + CHECK_SYMBOLS > LONGEST_CODE) {
    throw new DomainError('limit', 'recipe_too_long', { most: LONGEST_CODE })
  }
  return toCrockford([...symbols, ...checkOf(symbols)])
}

/** A number that may be none; undefined where it cannot be read. */
const maybe = (reader: Reader, [least, most]: readonly [least: number, most: number]): number | null | undefined => {
  const read = reader.next([0, most + 1])
  if (read === null || (read !== 0 && read - 1 < least)) return undefined
  return read === 0 ? null : read - 1
}

function readPlant(reader: Reader): RecipePlant | null {
  const number = reader.next([0, 1e6])
  const massMg = reader.next(RANGES.massMg)
  const countTenths = maybe(reader, RANGES.countTenths)
  const addOnDays = reader.next(RANGES.addOnDays)
  if (number === null || massMg === null || countTenths === undefined || addOnDays === null) return null
  const id = plantNumbers[Math.floor(number / 2)]
  const isDried = number % 2 === 1
  const dries = id === undefined ? undefined : known.get(id)
  if (id === undefined || dries === undefined) throw new DomainError('bad_value', 'code_newer', {})
  return isDried && !dries ? null : { id, isDried, massMg, countTenths, addOnDays }
}

function readSpirit(reader: Reader, version: number): RecipeSpirit | null {
  const volumeTenthMl = reader.next(RANGES.volumeTenthMl)
  const abvHundredthPercent = reader.next(RANGES.spiritHundredthPercent)
  if (volumeTenthMl === null || abvHundredthPercent === null) return null
  const called = version > SPIRIT_VERSION ? readDrinkTold(reader) : {}
  return called && { volumeTenthMl, abvHundredthPercent, ...called }
}

/** Null where there is none, undefined where it cannot be read. */
function readTargets(reader: Reader): Recipe['targets'] | undefined {
  const abvHundredthPercent = maybe(reader, RANGES.abvHundredthPercent)
  if (abvHundredthPercent === null || abvHundredthPercent === undefined) return abvHundredthPercent
  const sugarTenthGPerL = reader.next(RANGES.sugarTenthGPerL)
  return sugarTenthGPerL === null ? undefined : { abvHundredthPercent, sugarTenthGPerL }
}

function readSteep(reader: Reader): Recipe['steep'] | undefined {
  const fromDays = maybe(reader, RANGES.days)
  if (fromDays === null || fromDays === undefined) return fromDays
  const openDays = reader.next(RANGES.days)
  return openDays === null ? undefined : { fromDays, byDays: fromDays + openDays }
}

function readRecipe(reader: Reader, version: number): Recipe | null {
  const plants = several(reader, [1, MOST_PLANTS], readPlant)
  const spirits = plants && several(reader, [1, MOST_SPIRITS], (each) => readSpirit(each, version))
  const waterTenthG = reader.next(RANGES.waterTenthG)
  const sugarTenthG = reader.next(RANGES.sugarTenthG)
  const sugars = version === SUGAR_VERSION ? {} : readSugars(reader)
  const targets = readTargets(reader)
  const steep = readSteep(reader)
  const restDays = maybe(reader, RANGES.days)
  if (plants === null || spirits === null || waterTenthG === null || sugarTenthG === null) return null
  if (sugars === null) return null
  if (targets === undefined || steep === undefined || restDays === undefined || !reader.isAtEnd()) return null
  const kinds = new Set(plants.map(({ id, isDried }) => `${id} ${isDried}`))
  if (kinds.size < plants.length) return null
  return { plants, spirits, waterTenthG, sugarTenthG, ...sugars, targets, steep, restDays }
}

/**
 * The recipe that `encodeBatch` wrote, whatever its case, with hyphens or spaces; every number within what can be typed.
 * Whether it can be planned is the plan's to say. Throws `not_a_code`, `code_damaged`, `code_newer`.
 */
export function decodeBatch(text: string): Recipe {
  const typed = shown(text)
  const letters = text.replace(/[^\p{L}\p{N}]/gu, '').length
  if (letters < LEAST_SYMBOLS) throw new DomainError('bad_value', 'not_a_code', { typed })
  const damaged = () => new DomainError('bad_value', 'code_damaged', { typed })
  const symbols = letters > LONGEST_CODE ? null : fromCrockford(text)
  if (symbols === null || symbols.length < LEAST_SYMBOLS) throw damaged()
  const told = symbols.slice(0, -CHECK_SYMBOLS)
  if (checkOf(told).some((symbol, at) => symbol !== symbols[told.length + at])) throw damaged()
  const reader = readerOf(told)
  const version = reader.next([1, 1e6])
  if (version !== null && version > VERSION) throw new DomainError('bad_value', 'code_newer', {})
  const recipe = version === null ? null : readRecipe(reader, version)
  if (recipe === null) throw damaged()
  return recipe
}
