import fc from 'fast-check'
import { describe, expect, it, test } from 'vitest'
import { catalogue } from '../../../core/botanical/catalogue/catalogue.ts'
import { decodeBatch, encodeBatch, LONGEST_CODE } from '../../../core/recipe/code/batch-code.ts'
import { crc40 } from '../../../core/recipe/code/crc40.ts'
import { fromCrockford, toCrockford } from '../../../core/recipe/code/crockford.ts'
import { plantNumbers } from '../../../core/recipe/code/plant-numbers.ts'
import { RANGES, type Recipe } from '../../../core/recipe/code/recipe.ts'
import { runs, SEED } from '../../runs.ts'
import { refusal } from '../quantity/refusal.ts'
import { lemonSymbols, number, numbers, signed } from './forged.ts'
import kept from './kept-plant-numbers.json' with { type: 'json' }
import { anyRecipe, LEMON } from './recipes.ts'

const KEPT = '11NCHSTJ8P501JQH0JNHC00VV9SW4H50HFEB52FV6N'

const options = { seed: SEED, numRuns: runs(800, 20_000) }

describe('the published alphabet', () => {
  // Douglas Crockford, "Base 32", crockford.com/base32.html, table of encode and decode symbols (from memory).
  it('has a symbol for each value', () => {
    const symbols = Array.from({ length: 32 }, (_, value) => value)
    expect(toCrockford(symbols)).toBe('0123456789ABCDEFGHJKMNPQRSTVWXYZ')
    expect(fromCrockford('0123456789ABCDEFGHJKMNPQRSTVWXYZ')).toEqual(symbols)
    expect(fromCrockford('0123456789abcdefghjkmnpqrstvwxyz')).toEqual(symbols)
  })

  it('reads what looks like another symbol, and no U', () => {
    expect(fromCrockford('oOiIlL')).toEqual([0, 0, 1, 1, 1, 1])
    expect(fromCrockford(' 16-J ')).toEqual([1, 6, 18])
    for (const wrong of ['U', 'u', '+', 'é', 'ı', 'ſ', '１', 'А', '🍋']) expect(fromCrockford(wrong)).toBeNull()
  })
})

describe('the check', () => {
  // Catalogue of parametrised CRC algorithms, CRC-40/GSM: check value of the text 123456789 (from memory). Three zero bits
  // before its 72 bits change nothing, since the register begins empty.
  it('has the published known answer', () => {
    const bits = `000${[...'123456789'].map((digit) => digit.charCodeAt(0).toString(2).padStart(8, '0')).join('')}`
    const symbols = (bits.match(/.{5}/g) ?? []).map((five) => Number.parseInt(five, 2))
    expect(symbols).toHaveLength(15)
    expect(crc40(symbols).toString(16)).toBe('d4164fc646')
  })
})

describe('a plant’s number', () => {
  it('is there for every plant of the catalogue, once', () => {
    expect(plantNumbers.toSorted()).toEqual(catalogue.map(({ id }) => id).toSorted())
    expect(new Set(plantNumbers).size).toBe(plantNumbers.length)
  })

  it('never changes', () => {
    expect(plantNumbers.slice(0, kept.plantNumbers.length)).toEqual(kept.plantNumbers)
  })
})

describe('a code', () => {
  // Written when codes were first given out; such a code must be read for ever.
  it('reads what was written by the first version', () => {
    expect(encodeBatch(LEMON)).toBe(KEPT)
    expect(decodeBatch(KEPT)).toEqual(LEMON)
  })

  it('is one line of digits and letters, and reads back whole', () => {
    fc.assert(
      fc.property(anyRecipe, (recipe) => {
        const code = encodeBatch(recipe)
        expect(code).toMatch(/^[0-9A-HJKMNP-TV-Z]+$/)
        expect(decodeBatch(code)).toEqual(recipe)
      }),
      options,
    )
  })

  it('stays under 300 characters for the largest batch of eight plants and eight spirits', () => {
    const last = plantNumbers.slice(-8)
    const [, day] = RANGES.days
    const largest: Recipe = {
      plants: last.map((id) => ({
        id,
        isDried: false,
        massMg: RANGES.massMg[1],
        countTenths: RANGES.countTenths[1],
        addOnDays: day,
      })),
      spirits: last.map(() => ({
        volumeTenthMl: RANGES.volumeTenthMl[1],
        abvHundredthPercent: RANGES.spiritHundredthPercent[1],
      })),
      waterTenthG: RANGES.waterTenthG[1],
      sugarTenthG: RANGES.sugarTenthG[1],
      targets: {
        abvHundredthPercent: RANGES.abvHundredthPercent[1],
        sugarTenthGPerL: RANGES.sugarTenthGPerL[1],
      },
      steep: { fromDays: day, byDays: day },
      restDays: day,
    }
    const code = encodeBatch(largest)
    expect(code.length).toBeLessThan(LONGEST_CODE)
    expect(decodeBatch(code)).toEqual(largest)
    const more = { ...largest, spirits: [...largest.spirits, ...largest.spirits] }
    expect(refusal(() => encodeBatch(more))).toBe('limit recipe_too_long')
  })

  it('is read in any case, with hyphens and spaces', () => {
    const code = encodeBatch(LEMON)
    const grouped = code.replace(/.{5}/g, '$&-')
    for (const text of [
      code.toLowerCase(),
      grouped,
      ` ${grouped.replaceAll('-', ' – ')} `,
      code.replaceAll('0', 'o'),
    ]) {
      expect(decodeBatch(text)).toEqual(LEMON)
    }
  })
})

describe('what no maker wrote', () => {
  it('forged here holds', () => {
    expect(signed(lemonSymbols)).toBe(encodeBatch(LEMON))
    expect(numbers(1, 1, number, 105_000, 101, 0, 1, 10_000, 9500, 0, 0, 3001, 2500, 21, 0, 31)).toBe(
      encodeBatch(LEMON),
    )
  })

  test.each<readonly [string, string, string]>([
    ['nothing', '', 'bad_value not_a_code'],
    ['a word', 'lemon', 'bad_value not_a_code'],
    ['a sentence', 'my friend gave me a liqueur', 'bad_value code_damaged'],
    ['only zeros', '0'.repeat(40), 'bad_value code_damaged'],
    ['a book', 'A'.repeat(5000), 'bad_value code_damaged'],
    ['a later version', signed([4, ...lemonSymbols.slice(1)]), 'bad_value code_newer'],
    ['a much later version', numbers(500, 1, 2, 3, 4, 5, 6, 7, 8), 'bad_value code_newer'],
    ['no version', signed([0, ...lemonSymbols.slice(1)]), 'bad_value code_damaged'],
    ['a plant to come', numbers(1, 1, 9000, 105_000, 0, 0, 1, 10_000, 9500, 0, 0, 0, 0, 0), 'bad_value code_newer'],
    ['no plant', numbers(1, 0, 1, 10_000, 9500, 0, 0, 3001, 2500, 21, 0, 31), 'bad_value code_damaged'],
    ['no spirit', numbers(1, 1, number, 105_000, 101, 0, 0, 0, 0, 3001, 2500, 21, 0, 31), 'bad_value code_damaged'],
    [
      'a plant twice',
      numbers(1, 2, number, 9, 0, 0, number, 9, 0, 0, 1, 10_000, 9500, 0, 0, 0, 0, 0),
      'bad_value code_damaged',
    ],
    [
      'dried strawberries',
      numbers(1, 1, 2 * plantNumbers.indexOf('strawberry') + 1, 105_000, 0, 0, 1, 10_000, 9500, 0, 0, 0, 0, 0),
      'bad_value code_damaged',
    ],
    ['no mass', numbers(1, 1, number, 0, 0, 0, 1, 10_000, 9500, 0, 0, 0, 0, 0), 'bad_value code_damaged'],
    ['too much of it', numbers(1, 1, number, 2e9, 0, 0, 1, 10_000, 9500, 0, 0, 0, 0, 0), 'bad_value code_damaged'],
    [
      'spirit over 100 %',
      numbers(1, 1, number, 105_000, 0, 0, 1, 10_000, 10_001, 0, 0, 0, 0, 0),
      'bad_value code_damaged',
    ],
    [
      'a hundred years',
      numbers(1, 1, number, 105_000, 0, 0, 1, 10_000, 9500, 0, 0, 0, 36_500, 0, 0),
      'bad_value code_damaged',
    ],
    ['something after it', signed([...lemonSymbols, 1]), 'bad_value code_damaged'],
    ['a number with leading zeros', signed([1, 16, 1, ...lemonSymbols.slice(2)]), 'bad_value code_damaged'],
    ['an unfinished number', signed([...lemonSymbols.slice(0, -1), 31]), 'bad_value code_damaged'],
    ['an endless number', signed([1, ...Array.from({ length: 200 }, () => 31)]), 'bad_value code_damaged'],
  ])('%s is refused', (_, text, reason) => {
    expect(refusal(() => decodeBatch(text))).toBe(reason)
  })
})
