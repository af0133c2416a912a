import { encodeBatch } from '../../../core/recipe/code/batch-code.ts'
import { crc40 } from '../../../core/recipe/code/crc40.ts'
import { fromCrockford, toCrockford } from '../../../core/recipe/code/crockford.ts'
import { plantNumbers } from '../../../core/recipe/code/plant-numbers.ts'
import { symbolsOf } from '../../../core/recipe/code/symbols.ts'
import { LEMON } from './recipes.ts'

/** A code of these symbols with a check that holds. */
export const signed = (symbols: readonly number[]): string => {
  const check = crc40(symbols)
  return toCrockford([
    ...symbols,
    ...Array.from({ length: 8 }, (_, at) => Number((check >> BigInt(5 * (7 - at))) & 31n)),
  ])
}
export const lemonSymbols = fromCrockford(encodeBatch(LEMON))!.slice(0, -8)
export const numbers = (...all: readonly number[]) => signed(all.flatMap(symbolsOf))
/** Of lemon peel. */
export const number = plantNumbers.indexOf('lemon_peel') * 2
