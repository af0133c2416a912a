import { describe, expect, it, test } from 'vitest'
import { exactly } from '../../../core/quantity/measured/measured.ts'
import { readPlants } from '../../../core/recipe/plan/find-plants.ts'
import { parseDays, parseYesNo } from '../../../core/recipe/plan/parse-answers.ts'
import { plan } from '../../../core/recipe/plan/plan.ts'
import { answeredFor, plantUnknown, toldDays } from '../../../core/recipe/plan/unknown-plant.ts'
import { refusal } from '../quantity/refusal.ts'
import { START, spirit, wish } from './wishes.ts'

const unknown = { name: 'jaboticaba', at: 0, massG: exactly(30) }

describe('plants read', () => {
  it('apart, known and not', () => {
    const read = readPlants('30 g jaboticaba + 8 lemons')
    expect(read.plants.map(({ botanical }) => botanical.id)).toEqual(['lemon_peel'])
    expect(read.unknown).toMatchObject([{ name: 'jaboticaba', at: 0, massG: { value: 30 } }])
    expect(read.unknown[0]!.problem.problem).toBe('unknown_botanical')
  })

  test.each([
    ['jaboticaba + foxglove', 'refused refused_botanical'],
    ['10 g jaboticaba + 5 g jaboticaba', 'bad_value plant_twice'],
  ])('%s: %s', (text, reason) => {
    expect(refusal(() => readPlants(text))).toBe(reason)
  })

  it('has to be a food, of a part that was said, and weighed', () => {
    expect(refusal(() => readPlants('wormwood mush').unknown.map(answeredFor))).toBe('not_found unknown_botanical')
    expect(refusal(() => readPlants('10 g azaroles').unknown.map(answeredFor))).toBe('ambiguous unknown_botanical')
    expect(refusal(() => readPlants('jaboticaba').unknown.map(answeredFor))).toBe('bad_value plant_not_weighed')
  })
})

test('the ± of what it brings and keeps ends at none and at 95 % water, at 0.3 and 2 ml/g', () => {
  const { waterShare, exchangeShare, keptMlPerG } = plantUnknown(unknown)
  expect(waterShare.value * (exchangeShare.value - exchangeShare.plusMinus)).toBe(0)
  expect(waterShare.value * (exchangeShare.value + exchangeShare.plusMinus)).toBe(0.95)
  expect(keptMlPerG.value - keptMlPerG.plusMinus).toBeCloseTo(0.3, 12)
  expect(keptMlPerG.value + keptMlPerG.plusMinus).toBeCloseTo(2, 12)
})

test('a plan of it alone holds no schedule, and counts what it may bring', () => {
  const made = plan(wish([], { unknown: [unknown], spirits: [spirit(700, 95)] }))
  expect(made.schedule).toBeNull()
  expect(made.told).toEqual({ start: START, strainOn: null, sweetenBy: null })
  expect(made.steep.plantWaterG.value).toBeCloseTo(30 * 0.475, 9)
  expect(made.steep.plantWaterG.plusMinus).toBeCloseTo(30 * 0.475, 9)
  expect(made.steep.keptBackMl).toEqual({ value: 34.5, plusMinus: 25.5 })
})

test.each([
  ['10', { year: 2026, month: 12, day: 5 }],
  ['10 days', { year: 2026, month: 12, day: 5 }],
  ['2 settimane', { year: 2026, month: 12, day: 9 }],
  ['3 months', { year: 2027, month: 2, day: 25 }],
  ['1 hour', START],
])('%s from the start', (text, strainOn) => {
  expect(toldDays(START, parseDays(text)).strainOn).toEqual(strainOn)
})

test('yes and no, in two languages', () => {
  expect(['yes', ' Sì ', 'si\u0300', 'si', 'NO'].map(parseYesNo)).toEqual([true, true, true, true, false])
  expect(refusal(() => parseYesNo('maybe'))).toBe('bad_value yes_or_no')
})
