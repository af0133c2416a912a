import { describe, expect, test } from 'vitest'
import { abvPercent, massG, sugarGPerL, sweeteningG, volumeMl } from '../../../core/quantity/measured/precision.ts'
import { parseStrength } from '../../../core/quantity/read/parse-strength.ts'
import { parseSugar } from '../../../core/quantity/read/parse-sugar.ts'
import { parseSweetness } from '../../../core/quantity/read/parse-sweetness.ts'
import { parseVolume } from '../../../core/quantity/read/parse-volume.ts'
import { parseMass } from './parse-mass.ts'

// DEVELOPERS.md, “Uncertainty”: half the last digit or the tool, whichever is larger, unless stated.
describe('the ± of an input', () => {
  test.each<[string, number]>([
    ['930 ml', 18.6],
    ['1 l', 20],
    ['1.5 l', 50],
    ['10 ml', 0.5],
    ['930±5 ml', 5],
    ['930±0 ml', 0],
  ])('%s: ± %f ml', (text, plusMinus) => {
    expect(volumeMl(parseVolume(text)).plusMinus).toBeCloseTo(plusMinus, 9)
  })

  test.each<[string, number]>([
    ['100 g', 1],
    ['500 g', 2.5],
    ['1.2 kg', 50],
    ['500±2 g', 2],
  ])('%s: ± %f g', (text, plusMinus) => {
    expect(massG(parseMass(text)).plusMinus).toBeCloseTo(plusMinus, 9)
  })

  test('sugar by the cup is ± 10 %', () => {
    const cups = { value: expect.closeTo(400, 6), plusMinus: expect.closeTo(40, 6) }
    expect(sweeteningG(parseSugar('2 cups'))).toEqual(cups)
    expect(sweeteningG(parseSugar('500 g')).plusMinus).toBe(2.5)
  })

  test('honey by the cup is ± 3 %, or as stated', () => {
    expect(sweeteningG(parseSugar('200 ml honey')).plusMinus).toBeCloseTo(0.03 * 284.4, 6)
    expect(sweeteningG(parseSugar('200±20 ml honey')).plusMinus).toBeCloseTo(28.44, 6)
  })

  test.each<[string, 'label' | 'hydrometer', number]>([
    ['95%', 'label', 0.5],
    ['75.5%', 'label', 0.3],
    ['90.6%', 'hydrometer', 0.5],
    ['90.6±0.2%', 'hydrometer', 0.2],
  ])('%s by %s: ± %f %% vol', (text, tool, plusMinus) => {
    expect(abvPercent(parseStrength(text), tool).plusMinus).toBeCloseTo(plusMinus, 9)
  })

  test.each<[string, number]>([
    ['250 g/L', 5],
    ['25 g/100 ml', 5],
    ['dry', 2.4],
    ['0 g/L', 0],
    ['250±20 g/L', 20],
  ])('%s: ± %f g/L', (text, plusMinus) => {
    expect(sugarGPerL(parseSweetness(text)).plusMinus).toBeCloseTo(plusMinus, 9)
  })
})
