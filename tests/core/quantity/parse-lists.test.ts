import { describe, expect, test } from 'vitest'
import { parseParts } from '../../../core/quantity/read/parse-parts.ts'
import { parseSpirits } from '../../../core/quantity/read/parse-spirits.ts'
import { refusal } from './refusal.ts'

describe('spirits', () => {
  const seen = (text: string) =>
    parseSpirits(text).map(({ amount, strength, words }) => [
      amount.kind === 'volume' ? amount.volumeMl : amount.massG,
      strength?.abvPercent ?? null,
      words,
    ])

  test.each<[string, (number | string | null)[][]]>([
    ['1 l 95%', [[1000, 95, '']]],
    ['1 l', [[1000, null, '']]],
    ['1 l vodka', [[1000, null, 'vodka']]],
    ['1 l 40% vodka', [[1000, 40, 'vodka']]],
    ['1 l of vodka 40%', [[1000, 40, 'vodka']]],
    ['1 l Monkey 47 gin 47%', [[1000, 47, 'Monkey 47 gin']]],
    ['1 l di grappa 42 gradi', [[1000, 42, 'grappa']]],
    ['1 l 40', [[1000, 40, '']]],
    ['600 g 47%', [[600, 47, '']]],
    ['700 ml at 40%', [[700, 40, '']]],
    ['700 ml @ 80 proof', [[700, expect.closeTo(40, 0), '']]],
    ['700 ml at 28 C at 40%', [[700, 40, '']]],
    ['40% 700 ml', [[700, 40, '']]],
    ['40±0.5% 700 ml', [[700, 40, '']]],
    ['vodka 40% 700ml', [[700, 40, 'vodka']]],
    ['96% neutral grain spirit 1 l', [[1000, 96, 'neutral grain spirit']]],
    ['grain alcohol 1 l 95%', [[1000, 95, 'grain alcohol']]],
    ['sugar 40% 700 ml', [[700, 40, 'sugar']]],
    ['Allotment Pride gin 700 ml 40%', [[700, 40, 'Allotment Pride gin']]],
    ['1 l vodka, 40', [[1000, 40, 'vodka']]],
    ['1 l vodka (unflavoured) 40%', [[1000, 40, 'vodka (unflavoured']]],
    ['half a litre of 100-proof rum', [[500, expect.closeTo(50, 0), 'rum']]],
    ['700 ml 12 year old rum 40%', [[700, 40, 'year old rum']]],
    [
      'vodka 40% 700 ml + 1 l 95%',
      [
        [700, 40, 'vodka'],
        [1000, 95, ''],
      ],
    ],
    [
      '750 ml 75.5% + 375 ml 40%',
      [
        [750, 75.5, ''],
        [375, 40, ''],
      ],
    ],
    [
      '750ml 75.5%+375ml±5ml 40%',
      [
        [750, 75.5, ''],
        [375, 40, ''],
      ],
    ],
    [
      '930 +- 5 ml at 28 C 90.6% at 28 C + 1 l 40% rum',
      [
        [930, 90.6, ''],
        [1000, 40, 'rum'],
      ],
    ],
  ])('%s', (text, liquids) => {
    expect(seen(text)).toEqual(liquids)
  })

  test('what was assumed and stated stays with its liquid', () => {
    const [first, second] = parseSpirits('930±5 ml 90.6% at 28 C + 2 cups 40')
    expect(first?.amount).toMatchObject({ statedMl: 5, atC: null, assumed: [] })
    expect(first?.strength).toMatchObject({ atC: 28, assumed: [] })
    expect(second?.amount.assumed).toEqual(['us_measure'])
    expect(second?.strength?.assumed).toEqual(['percent_vol'])
  })

  test.each([
    ['1 l 95% +', 'bad_value dangling_plus'],
    ['+ 1 l 95%', 'bad_value dangling_plus'],
    ['1 l + + 2 l', 'bad_value dangling_plus'],
    ['1 l 110%', 'bad_value out_of_range'],
    ['1 l 0.95', 'ambiguous fraction_or_percent'],
    ['1 oz 40%', 'ambiguous ounces'],
    ['1 l 40 vodka', 'bad_value unknown_unit'],
    ['95%', 'bad_value wrong_kind'],
    ['700 ml at 40', 'bad_value no_unit'],
    ['700 ml at 40°', 'bad_value wrong_kind'],
    ['40% 700 ml 50%', 'bad_value said_twice'],
    ['1 l 95% water 500 ml', 'bad_value said_twice'],
    ['1 l 28% 250 g/L 300 g/L', 'bad_value said_twice'],
    ['1 bottle', 'ambiguous bottle_without_size'],
    ['a bottle of vodka 40%', 'ambiguous bottle_without_size'],
    ['2 bottles 40%', 'ambiguous bottle_without_size'],
    ['vodka', 'bad_value no_number'],
    ['', 'bad_value empty_text'],
  ])('%s is refused', (text, refused) => {
    expect(refusal(() => parseSpirits(text))).toBe(refused)
  })
})

describe('parts', () => {
  const seen = (text: string) =>
    parseParts(text).map(({ amount, strength, sweetness }) => [
      amount.kind === 'volume' ? amount.volumeMl : amount.massG,
      strength?.abvPercent ?? null,
      sweetness?.sugarGPerL ?? null,
    ])

  test.each<[string, (number | null)[][]]>([
    [
      '600 ml 47% 250 g/L + 300 ml 33% 350 g/L',
      [
        [600, 47, 250],
        [300, 33, 350],
      ],
    ],
    ['600 ml 250 g/L 47%', [[600, 47, 250]]],
    ['600 ml 250 g/L', [[600, null, 250]]],
    ['600 ml 47%', [[600, 47, null]]],
    ['500 ml water', [[500, null, null]]],
    ['300 ml of 47%', [[300, 47, null]]],
    ['300 ml at 47% 250 g/L', [[300, 47, 250]]],
    ['600 ml', [[600, null, null]]],
    ['600 g 25 g/100 ml 30%', [[600, 30, 250]]],
    ['600 g 250 g/L', [[600, null, 250]]],
    ['600 ml 30% dry', [[600, 30, 120]]],
    ['600 ml 30', [[600, 30, null]]],
    ['300 ml London dry gin 41%', [[300, 41, null]]],
    ['300 ml extra dry 12% 15 g/L', [[300, 12, 15]]],
    ['28% 250 g/L orange liqueur 500 ml', [[500, 28, 250]]],
  ])('%s', (text, liquids) => {
    expect(seen(text)).toEqual(liquids)
  })

  test('words are kept, for another to judge', () => {
    const words = (text: string) => parseParts(text).map((part) => part.words)
    expect(words('600 ml 30% foo + 500 ml orange liqueur 28% 250 g/L')).toEqual(['foo', 'orange liqueur'])
  })

  test.each([
    ['600 ml 30% 40%', 'bad_value said_twice'],
    ['600 ml dry 250 g/L', 'bad_value said_twice'],
    ['600 ml 1300 g/L', 'bad_value out_of_range'],
    ['600 ml 30% + ', 'bad_value dangling_plus'],
    ['30% 250 g/L', 'bad_value wrong_kind'],
  ])('%s is refused', (text, refused) => {
    expect(refusal(() => parseParts(text))).toBe(refused)
  })
})
