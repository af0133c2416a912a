import fc from 'fast-check'
import { describe, expect, it, test } from 'vitest'
import { costOf, type Money, minorDigits, moneyText, readMoney, shareOf, sumsOf } from '../../../core/cost/money.ts'
import { runs, SEED } from '../../runs.ts'

const read = (text: string) => readMoney(text)!
const money = (text: string): Money => costOf(read(text), 1, 1)

describe('a typed amount', () => {
  test.each([
    ['4', 4, 0, '', '4.00'],
    ['€4.50', 450, 2, '€', '€4.50'],
    ['4,50 €', 450, 2, '€', '4,50\u00a0€'],
    ['4 euro', 4, 0, 'euro', '4.00\u00a0euro'],
    ['£ 22', 22, 0, '£', '£\u00a022.00'],
    ['CHF 3.5', 35, 1, 'CHF', 'CHF\u00a03.50'],
    ['40 kr', 40, 0, 'kr', '40.00\u00a0kr'],
    ['80p', 80, 2, '£', '£0.80'],
    ['30 cents', 30, 2, '', '0.30'],
    ['¥500', 500, 0, '¥', '¥500'],
  ])('%s', (text, units, decimals, symbol, written) => {
    expect(read(text)).toMatchObject({ units, decimals, currency: { text: symbol } })
    expect(moneyText(money(text))).toBe(written)
  })

  test.each(['', 'four', '-4', '4.123', '1,000', '1.234,50', '€4 £', '4 %', '4e3', '4 kilos'])(
    '“%s” is none',
    (text) => {
      expect(readMoney(text)).toBeNull()
    },
  )
})

/** ISO 4217: the yen and the won have no decimals, the Kuwaiti dinar three. */
test.each([
  ['€', 2],
  ['', 2],
  ['JPY', 0],
  ['₩', 0],
  ['KWD', 3],
  ['SEK', 2],
])('a “%s” has %d decimals', (text, digits) => {
  expect(minorDigits({ text, isBefore: false, isSpaced: false, isComma: false })).toBe(digits)
})

/** Worked out by hand. */
test.each([
  ['18', 1000, 1000, '18.00'],
  ['1.20', 540, 1000, '0.65'],
  ['4', 1175, 1000, '4.70'],
  ['22', 1400, 700, '44.00'],
  ['0.80', 6, 1, '4.80'],
  ['3.50', 10, 6, '5.83'],
  ['0.01', 500, 1000, '0.01'],
  ['0.01', 499, 1000, '0.00'],
  ['0', 500, 1000, '0.00'],
])('at %s for %d of %d it is %s', (price, amount, per, cost) => {
  expect(moneyText(costOf(read(price), amount, per))).toBe(cost)
})

const price = fc.record({ whole: fc.nat(9999), part: fc.nat(99) })
const textOf = ({ whole, part }: { readonly whole: number; readonly part: number }) =>
  `€${whole}.${String(part).padStart(2, '0')}`

it('is the fraction of whole numbers to the nearest hundredth, halves up', () => {
  fc.assert(
    fc.property(price, fc.nat(5_000_000), fc.integer({ min: 1, max: 3_000_000 }), (given, amountMilli, perMilli) => {
      const { minor } = costOf(read(textOf(given)), amountMilli / 1000, perMilli / 1000)
      const exact = BigInt(given.whole * 100 + given.part) * BigInt(amountMilli)
      const off = BigInt(minor) * BigInt(perMilli) - exact
      expect(2n * off <= BigInt(perMilli) && 2n * off > -BigInt(perMilli)).toBe(true)
    }),
    { seed: SEED, numRuns: runs(300, 10_000) },
  )
})

it('adds up to the last hundredth, where floating point does not', () => {
  expect(0.1 + 0.2).not.toBe(0.3)
  expect(sumsOf([money('0.10'), money('0.20')]).map(moneyText)).toEqual(['0.30'])
  fc.assert(
    fc.property(fc.array(price, { minLength: 1, maxLength: 60 }), (prices) => {
      const [sum, ...others] = sumsOf(prices.map((each) => money(textOf(each))))
      const hundredths = prices.reduce((all, { whole, part }) => all + whole * 100 + part, 0)
      expect(others).toEqual([])
      expect(sum!.minor).toBe(hundredths)
    }),
    { seed: SEED, numRuns: runs(200, 5000) },
  )
})

it('adds each currency by itself, and what has none to the only one there is', () => {
  const texts = (all: readonly string[]) => sumsOf(all.map(money)).map(moneyText)
  expect(texts(['€4', '2,50 €', '1 euro', '0.30'])).toEqual(['€7.80'])
  expect(texts(['€4', '£2', '50p', '1'])).toEqual(['€4.00', '£2.50', '1.00'])
  expect(texts(['$1', 'CAD 1'])).toEqual(['$1.00', 'CAD\u00a01.00'])
  expect(texts([])).toEqual([])
})

it('shares a sum', () => {
  expect(moneyText(shareOf(money('€24.85'), 500, 2867.5))).toBe('€4.33')
  expect(moneyText(shareOf(money('10'), 1, 3))).toBe('3.33')
})
