import { describe, expect, test } from 'vitest'
import { scaledText } from '../../../bot/talk/frames/scaled-text.ts'
import { numberOf } from '../../../bot/talk/frames/typed-number.ts'
import { replaced } from '../../../bot/talk/memory/change-call.ts'
import { parseAmount } from '../../../core/quantity/read/parse-amount.ts'

/** How numbers stand on scales, cups and bottles, each with what it counts. */
const NUMBERS: readonly (readonly [string, number])[] = [
  ...[0, 1, 2, 3, 7, 11].flatMap((whole) =>
    [
      [1, 2, '½'],
      [1, 3, '⅓'],
      [2, 3, '⅔'],
      [1, 4, '¼'],
      [3, 4, '¾'],
      [1, 8, '⅛'],
      [5, 8, '⅝'],
    ].flatMap(([over, under, sign]) => {
      const value = whole + Number(over) / Number(under)
      const begin = whole === 0 ? '' : `${whole} `
      return [
        [`${begin}${over}/${under}`, value],
        [`${begin}${sign}`, value],
        [`${begin.trim()}${sign}`, value],
      ] as const
    }),
  ),
  ['1', 1],
  ['2', 2],
  ['1.75', 1.75],
  ['1,5', 1.5],
]

const UNITS = ['cups', 'lb', 'quart', 'tbsp', 'l', 'pints']

const FACTORS = [0.25, 1 / 3, 0.5, 0.75, 1.5, 2, 3, 4, 10]

const sizeOf = (text: string): number => {
  const amount = parseAmount(text)
  return amount.kind === 'mass' ? amount.massG : amount.volumeMl
}

describe('an amount so many times as large', () => {
  test('is read as that, whatever its number looks like', () => {
    for (const [typed, value] of NUMBERS) {
      expect(numberOf(typed), typed).toBeCloseTo(value, 10)
      for (const unit of UNITS)
        for (const factor of FACTORS) {
          const scaled = scaledText('spirit', `${typed} ${unit}`, factor)
          const ratio = sizeOf(scaled) / sizeOf(`${typed} ${unit}`)
          // A kitchen’s digits: three of them, so half a hundredth of 1.00 at most, and of litres two behind the point.
          const most = unit === 'l' ? Math.max(0.006, 0.0051 / Math.max(0.3, value * factor)) : 0.006
          expect(Math.abs(ratio / factor - 1), `${typed} ${unit} × ${factor} = ${scaled}`).toBeLessThan(most)
        }
    }
  })

  test.each([
    ['spirit', '2 3/4 cups 80 proof vodka', 2, '5 1/2 cups 80 proof vodka'],
    ['spirit', '1 ½ quarts rum 63%', 2, '3 quarts rum 63%'],
    ['spirit', '1½ cups 151 proof', 0.5, '3/4 cups 151 proof'],
    ['of', '1 1/2 lb plums + 2 cinnamon sticks', 2, '3 lb plums + 4 cinnamon sticks'],
    ['of', '1 lb 4 oz figs', 2, '2 lb 8 oz figs'],
    ['of', '2 1/2 qt cherries', 3, '7 1/2 qt cherries'],
    ['of', '1/2 vanilla bean', 2, '1 vanilla bean'],
    ['spirit', '750 ml 80 proof vodka', 0.5, '375 ml 80 proof vodka'],
    ['sugar', '2 lb and 3 oz', 3, '6 lb and 9 oz'],
    ['spirit', '2 x 750 ml rum 40%', 2, '4 x 750 ml rum 40%'],
    ['bottles', '6 x 12 oz', 0.5, '3 x 12 oz'],
    ['of', '700 g sloes', 2 / 3, '467 g sloes'],
    ['of', '35 g ginger', 1 / 4, '8.8 g ginger'],
    ['spirit', '1 litre 95%', 1 / 3, '0.33 litre 95%'],
    ['of', '1 kg damsons', 1.25, '1.25 kg damsons'],
    ['of', '1 lb figs', 1 / 8, '0.125 lb figs'],
  ])('%s %s × %d', (option, typed, factor, expected) => {
    expect(scaledText(option, typed, factor)).toBe(expected)
  })
})

describe('a number in place of another', () => {
  const plan = (options: Record<string, string>) => ({ command: 'plan' as const, options })

  test('is none that another number only ends or begins with', () => {
    const call = plan({ of: '2 1/2 lb plums', spirit: '3 cups vodka 40%' })
    expect(replaced(call, '2', '5')).toBeNull()
    expect(replaced(call, '1', '5')).toBeNull()
    expect(replaced(call, '1/2', '5')).toBeNull()
    expect(replaced(call, '2 1/2', '4')?.options.of).toBe('4 lb plums')
    expect(replaced(call, '3', '3 3/4')?.options.spirit).toBe('3 3/4 cups vodka 40%')
  })

  test('brings the unit that was said of it', () => {
    expect(replaced(plan({ of: '3 lb figs' }), '3', '900', '900 g')?.options.of).toBe('900 g figs')
  })
})
