import { kindOfDrink } from '../../botanical/drink/drink-said.ts'
import { DomainError } from '../../domain-error.ts'
import type { Reader } from './symbols.ts'

/** Drinks by the number that codes know them by, from 1 on: only ever added to, at the end. 0 is spirit. */
export const drinkNumbers: readonly string[] = [
  'vodka',
  'gin',
  'rum',
  'brandy',
  'whisky',
  'grappa',
  'tequila',
  'white rum',
  'dark rum',
  'golden rum',
  'London dry gin',
  'dry gin',
  'whiskey',
  'bourbon',
  'Scotch whisky',
  'cognac',
  'armagnac',
  'calvados',
  'mezcal',
  'cachaça',
  'schnapps',
  'korn',
  'eau de vie',
  'kirsch',
  'pisco',
  'aquavit',
  'orujo',
  'rakia',
  'slivovitz',
  'marc',
  'arrack',
  'shochu',
]

/** What a code can tell of a drink: as it was called, else its kind; undefined of one that it does not know. */
export const drinkTold = (drink: string | null | undefined): string | undefined =>
  drink == null ? undefined : [drink, kindOfDrink(drink)].find((each) => drinkNumbers.includes(each))

/** Its number. */
export const drinkNumber = (drink: string | undefined): number =>
  drink === undefined ? 0 : drinkNumbers.indexOf(drink) + 1

/** Null where it cannot be read; throws `code_newer` of a drink that this bot does not know yet. */
export function readDrinkTold(reader: Reader): { readonly drink?: string } | null {
  const number = reader.next([0, 1e6])
  if (number === null) return null
  const drink = drinkNumbers[number - 1]
  if (number > 0 && drink === undefined) throw new DomainError('bad_value', 'code_newer', {})
  return drink === undefined ? {} : { drink }
}
