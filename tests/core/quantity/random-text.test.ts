import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { en } from '../../../bot/text/en/index.ts'
import { quantityProblems } from '../../../bot/text/en/problems.ts'
import type { Format } from '../../../bot/text/format.ts'
import { DomainError } from '../../../core/domain-error.ts'
import { accepted, isWithin } from '../../../core/quantity/read/accepted-ranges.ts'
import { parseAmount } from '../../../core/quantity/read/parse-amount.ts'
import { parseCount } from '../../../core/quantity/read/parse-count.ts'
import { parseParts } from '../../../core/quantity/read/parse-parts.ts'
import { parseRatio } from '../../../core/quantity/read/parse-ratio.ts'
import { parseSpirits } from '../../../core/quantity/read/parse-spirits.ts'
import { parseStrength } from '../../../core/quantity/read/parse-strength.ts'
import { parseSugar } from '../../../core/quantity/read/parse-sugar.ts'
import { parseSweetness } from '../../../core/quantity/read/parse-sweetness.ts'
import { parseTemperature } from '../../../core/quantity/read/parse-temperature.ts'
import { parseVolume } from '../../../core/quantity/read/parse-volume.ts'
import { parseDate } from '../../../core/quantity/time/parse-date.ts'
import { parseSpan } from '../../../core/quantity/time/parse-span.ts'
import { parseMass } from './parse-mass.ts'
import { runs } from './runs.ts'

const today = { year: 2026, month: 11, day: 25 }

const parsers: readonly (readonly [string, (text: string) => unknown])[] = [
  ['volume', parseVolume],
  ['mass', parseMass],
  ['amount', parseAmount],
  ['sugar', parseSugar],
  ['strength', parseStrength],
  ['sweetness', parseSweetness],
  ['temperature', parseTemperature],
  ['ratio', parseRatio],
  ['span', parseSpan],
  ['date', (text) => parseDate(text, { today, country: null })],
  ['date in the US', (text) => parseDate(text, { today, country: 'US' })],
  ['count', parseCount],
  ['spirits', parseSpirits],
  ['parts', parseParts],
]

const numbersIn = (value: unknown): number[] => {
  if (typeof value === 'number') return [value]
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(numbersIn) : []
}

const sentences: { readonly [key: string]: ((values: never, format: Format) => string) | undefined } = quantityProblems

const takeOrRefuse = (parse: (text: string) => unknown, text: string): void => {
  try {
    for (const number of numbersIn(parse(text))) expect(Number.isFinite(number)).toBe(true)
  } catch (error) {
    if (!(error instanceof DomainError)) throw error
    const sentence = sentences[error.problem]?.(error.values as never, en.format('us')) ?? ''
    expect(sentence).toMatch(/^[^\p{C}]+[.?]$/u)
    expect(sentence).not.toMatch(/undefined|NaN(?!”)|\[object/)
    if ('typed' in error.values) expect([...error.values.typed].length).toBeLessThanOrEqual(40)
  }
}

const piece = fc.constantFrom(
  ...'1 2 0 95 1,000 1.5 0,750 12.345.678 ½ ¾ half mezzo 1/2 24/6 e + - ± +- / : % ° at a in of di ago fa l ml g kg'.split(
    ' ',
  ),
  ...'cup cups fl oz imp us lb vol abv proof gradi g/L 100 dry C F days weeks mesi December today lemons stick'.split(
    ' ',
  ),
  ...['🍋', '\u202e', '\u0000', '\u00a0', '．', '７', '.', ',', '(', '"', '’', 'é'],
)

describe.each(parsers)('any text read as a %s', (_, parse) => {
  test('is a quantity of finite numbers or a DomainError with a sentence', () => {
    const anyText = fc.oneof(
      fc.string({ unit: 'grapheme' }),
      fc.string({ unit: 'binary' }),
      fc.tuple(fc.array(piece, { maxLength: 9 }), fc.constantFrom('', ' ')).map(([pieces, gap]) => pieces.join(gap)),
    )
    fc.assert(
      fc.property(anyText, (text) => takeOrRefuse(parse, text)),
      runs,
    )
  })
})

test('a long text is refused at once, whatever it is made of', () => {
  for (const unit of ['1', '1.', '1 ', '1/', ' ', '+', 'a', '½', '1,000', '\u0301', '1 ml + ']) {
    for (const [, parse] of parsers) {
      const before = performance.now()
      takeOrRefuse(parse, unit.repeat(1_000_000 / unit.length))
      takeOrRefuse(parse, unit.repeat(200).slice(0, 200))
      expect(performance.now() - before).toBeLessThan(1000)
    }
  }
})

describe('a number typed in any habit is the same number', () => {
  const grouped = (whole: string, mark: string) => whole.replace(/\B(?=(\d{3})+$)/g, mark)

  test('decimal point, decimal comma, grouped or not', () => {
    const numbers = fc.tuple(fc.integer({ min: 1, max: 999_999 }), fc.integer({ min: 0, max: 99 }))
    fc.assert(
      fc.property(numbers, ([whole, hundredths]) => {
        const decimals = String(hundredths).padStart(2, '0')
        const value = Number(`${whole}.${decimals}`)
        const texts = [
          `${whole}.${decimals}`,
          `${whole},${decimals}`,
          `${grouped(String(whole), ',')}.${decimals}`,
          `${grouped(String(whole), '.')},${decimals}`,
        ]
        for (const text of texts) expect(parseVolume(`${text} ml`).volumeMl).toBe(value)
        expect(parseVolume(`${grouped(String(whole), '\u2009')} ml`).volumeMl).toBe(whole)
      }),
      runs,
    )
  })

  test('three digits after one separator: one reading in range, or both offered', () => {
    const numbers = fc.tuple(
      // 1.000 kg fits both ways: 1,000 kg is accepted too.
      fc.integer({ min: 2, max: 999 }),
      fc.integer({ min: 0, max: 999 }),
      fc.constantFrom('.', ','),
    )
    fc.assert(
      fc.property(numbers, ([head, tail, separator]) => {
        const text = `${head}${separator}${String(tail).padStart(3, '0')}`
        expect(parseMass(`${text} kg`)).toMatchObject({ assumed: ['decimal_point'] })
        try {
          parseMass(`${text} g`)
          expect.unreachable()
        } catch (error) {
          if (!(error instanceof DomainError) || error.problem !== 'two_readings') throw error
          const { choices } = error.values as { choices: readonly [string, string] }
          const read = choices.map((choice) => parseMass(choice).massG)
          expect(read).toEqual([head + tail / 1000, head * 1000 + tail].map((each) => expect.closeTo(each, 9)))
        }
      }),
      runs,
    )
  })

  test('what is read lies in the accepted range', () => {
    const numbers = fc.double({ min: 0, max: 1e7, noNaN: true }).map((value) => value.toFixed(4))
    fc.assert(
      fc.property(numbers, fc.constantFrom('ml', 'l', 'cups', 'imp pints'), (number, unit) => {
        takeOrRefuse((text) => {
          const { volumeMl } = parseVolume(text)
          expect(isWithin(accepted.volumeMl, volumeMl)).toBe(true)
          return volumeMl
        }, `${number} ${unit}`)
      }),
      runs,
    )
  })
})
