import { describe, expect, test } from 'vitest'
import { englishFormat } from '../../../bot/text/en/format.ts'
import { en } from '../../../bot/text/en/index.ts'
import { commands } from '../commands/desk.ts'

const metric = englishFormat('metric')
const us = englishFormat('us')
const imperial = englishFormat('imperial')
const plain = (text: string) => text.replaceAll('\u00a0', ' ')

describe('numbers carry no digit that their ± cannot', () => {
  test.each<[value: number, plusMinus: number, text: string]>([
    [1561.4, 31, '1.56 l'],
    [561.7, 11, '560 ml'],
    [999.6, 20, '1.00 l'],
    [0.0984, 0.002, '0.098 ml'],
  ])('%s ± %s ml', (value, plusMinus, text) => {
    expect(plain(metric.volume({ value, plusMinus }))).toBe(text)
  })

  test.each<[value: number, plusMinus: number, text: string]>([
    [30, 0.6, '30 % vol'],
    [47.28, 0.7, '47.3 % vol'],
    [40.06, 0.03, '40.06 % vol'],
  ])('%s ± %s % vol', (value, plusMinus, text) => {
    expect(plain(metric.strength({ value, plusMinus }))).toBe(text)
  })
})

describe('a US kitchen', () => {
  // 236.588 ml to a cup, 14.787 to a tablespoon, 28.3495 g to an ounce (NIST Handbook 44, Appendix C).
  test.each<[value: number, text: string]>([
    [236.6, '1 cup (237 ml)'],
    [59.15, '¼ cup (59 ml)'],
    [118, '½ cup (118 ml)'],
    [473, '2 cups (473 ml)'],
    [29.6, '2 tbsp (30 ml)'],
  ])('%s ml', (value, text) => {
    expect(plain(us.volume({ value, plusMinus: 1 }))).toBe(text)
  })

  test.each<[value: number, text: string]>([
    [567, '1 lb 4 oz (567 g)'],
    [453.6, '1 lb (454 g)'],
    [28.35, '1 oz (28 g)'],
  ])('%s g', (value, text) => {
    expect(plain(us.mass({ value, plusMinus: 1 }))).toBe(text)
  })

  test('temperatures in both', () => {
    expect(plain(us.temperature({ value: -18, plusMinus: 1 }))).toBe('0 °F (−18 °C)')
    expect(plain(metric.temperature({ value: -18, plusMinus: 1 }))).toBe('−18 °C')
    expect(plain(metric.temperature({ value: -0.2, plusMinus: 1 }))).toBe('0 °C')
  })
})

test.each<[value: number, plusMinus: number, text: string]>([
  [460, 300, '2 cups + 2 tbsp (500 ml)'],
  [204, 300, '¾ cup + 2 tbsp (200 ml)'],
  [60, 1, '¼ cup (60 ml)'],
  [5, 1, '1 tsp (5 ml)'],
])('%s ± %s ml is %s', (value, plusMinus, text) => {
  expect(plain(us.volume({ value, plusMinus }))).toBe(text)
})

test.each<[value: number, plusMinus: number, text: string]>([
  [29.98, 0.5, '30 % vol (60 proof)'],
  [29.6, 4, '30 % vol (60 proof)'],
  [29.8, 0.3, '29.8 % vol (60 proof)'],
  [95, 0.3, '95 % vol (190 proof)'],
])('%s ± %s % vol is %s', (value, plusMinus, text) => {
  expect(plain(us.strength({ value, plusMinus }))).toBe(text)
})

describe('an imperial kitchen', () => {
  // Gallon of 4.54609 l, so a pint of 0.56826125 l and a fluid ounce, its 20th, of 28.4130625 ml; pound of 453.59237 g
  // (UK Weights and Measures Act 1985, Schedule 1; from memory).
  test.each<[value: number, text: string]>([
    [568.26125, '1 imp pint (568 ml)'],
    [2 * 568.26125, '2 imp pints (1.137 l)'],
    [28.4130625, '1 imp fl oz (28 ml)'],
    [0.25 * 28.4130625, '¼ imp fl oz (7 ml)'],
    [5 * 28.4130625, '5 imp fl oz (142 ml)'],
    [10 * 28.4130625, '10 imp fl oz (284 ml)'],
    [12.5 * 28.4130625, '12 ½ imp fl oz (355 ml)'],
    [25 * 28.4130625, '1 imp pint + 5 fl oz (710 ml)'],
    [4546.09, '8 imp pints (4.546 l)'],
    [3, '3 ml'],
  ])('%s ml', (value, text) => {
    expect(plain(imperial.volume({ value, plusMinus: 1 }))).toBe(text)
  })

  test('is never further off than half a fluid ounce or 3.5 %, what a jug tells', () => {
    for (let volumeMl = 4; volumeMl < 20_000; volumeMl *= 1.013) {
      const text = plain(imperial.volume({ value: volumeMl, plusMinus: 1 }))
      const [, pints = '0', whole = '0', part = ''] =
        /^(?:(\d+) imp pints?)?(?: \+ )?(?:(\d*) ?([⅛¼⅜½⅝¾⅞]?)(?: imp)? fl oz)? \(/.exec(text) ?? []
      const ounces = Number(pints) * 20 + Number(whole) + ' ⅛¼⅜½⅝¾⅞'.indexOf(part || ' ') / 8
      // And half of the last digit of the millilitres behind it.
      const mostMl = Math.max(0.25 * 28.4130625, 0.035 * volumeMl) + Math.max(0.5, volumeMl / 2000)
      expect(Math.abs(ounces * 28.4130625 - volumeMl), text).toBeLessThanOrEqual(mostMl + 1e-9)
    }
  })

  test('pounds and ounces, degrees Celsius, no proof', () => {
    expect(plain(imperial.mass({ value: 453.59237, plusMinus: 1 }))).toBe('1 lb (454 g)')
    expect(plain(imperial.temperature({ value: -18, plusMinus: 1 }))).toBe('−18 °C')
    expect(plain(imperial.give.temperature({ value: -18, plusMinus: 3 }))).toBe('3 °C')
    expect(plain(imperial.strength({ value: 40, plusMinus: 0.3 }))).toBe('40 % vol')
  })
})

test('every option of every command is said, and every example calls its own command', () => {
  for (const { path, input } of commands) {
    const text = en.commands[path as keyof typeof en.commands]
    expect(Object.keys(text.options).sort()).toEqual(Object.keys(input.shape).sort())
    for (const example of text.examples) expect(`${example} `.startsWith(`/${path} `)).toBe(true)
  }
})

test('summaries and options fit beside their names in 100 columns', () => {
  for (const text of Object.values(en.commands)) {
    expect(text.summary.length).toBeLessThanOrEqual(90)
    expect(text.summary).not.toMatch(/\.$/)
  }
})

test('rounds as a cook does, within an eighth at the smallest, and never to nothing', () => {
  const { round } = metric
  expect([1512, 511, 191, 44, 12.4, 4.2, 0.42].map(round.mass).join(' ').replaceAll('\u00a0', ' ')).toBe(
    '1.51 kg 510 g 190 g 45 g 12 g 4 g 0.4 g',
  )
  expect([1000, 930, 2706, 15_320, 996].map(round.volume).join(' ').replaceAll('\u00a0', ' ')).toBe(
    '1 l 930 ml 2.71 l 15.3 l 1 l',
  )
  for (let amount = 20; amount < 40_000; amount *= 1.07) {
    const [, number = '', unit] = /^([\d.]+)\s(m?l)$/.exec(round.volume(amount)) ?? []
    expect(Math.abs((Number(number) * (unit === 'l' ? 1000 : 1)) / amount - 1)).toBeLessThan(0.13)
  }
})

test('gives a strength as a label does', () => {
  const { round } = metric
  expect(round.strength({ value: 37.5, plusMinus: 0.3 })).toBe('37.5\u00a0%')
  expect(round.strength({ value: 95, plusMinus: 0.3 })).toBe('95\u00a0%')
  expect(round.strength({ value: 29.6, plusMinus: 0.6 })).toBe('30\u00a0%')
  expect(round.strength({ value: 0, plusMinus: 0.3 })).toBe('0\u00a0%')
})
