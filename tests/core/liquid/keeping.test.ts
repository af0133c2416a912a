import { describe, expect, it, test } from 'vitest'
import {
  delleUnits,
  KEEPS_ABOVE_UNITS,
  KEEPS_ABV_PERCENT,
  keepingAt,
  keepingOf,
  keepsFromPercent,
  surelyDissolvedGPerL,
} from '../../../core/liquid/keeping.ts'
import { exactly } from '../../../core/quantity/measured/measured.ts'
import { compare, readTable } from '../../published/table.ts'

describe('Delle units', () => {
  it('are those of the published example', () => {
    const { off, compared } = compare(readTable('delle-units'), 2, ([abv, sugar]) => delleUnits(abv!, sugar!))
    expect([off, compared]).toEqual([[], 1])
  })

  // The formula of the source named in core/liquid/keeping.ts, by hand.
  test.each([
    [17.3, 0, 77.85],
    [15, 250, 92.5],
    [12, 100, 64],
  ])('of %f %% vol with %f g/L are %f', (abvPercent, sugarGPerL, units) => {
    expect(delleUnits(abvPercent, sugarGPerL)).toBeCloseTo(units, 10)
  })
})

describe('whether a liquid keeps', () => {
  // The lines are 20 and 15 % vol, 75 and 85 units; each from both sides. Common practice and judgement, see the source.
  test.each([
    [20, 0, 'keeps'],
    [19.9, 0, 'keeps'],
    [18.8, 0, 'undecided'],
    [15, 300, 'keeps'],
    [14.9, 300, 'ferments'],
    [16, 130, 'undecided'],
    [16, 130.1, 'keeps'],
    [16, 30, 'undecided'],
    [16, 29.9, 'ferments'],
    [15, 75, 'undecided'],
    [15, 74, 'ferments'],
    [15, 175, 'undecided'],
    [15, 176, 'keeps'],
    [9.7, 12, 'ferments'],
    [0, 600, 'ferments'],
  ] as const)('%f %% vol with %f g/L: %s', (abvPercent, sugarGPerL, word) => {
    expect(keepingAt(abvPercent, sugarGPerL)).toBe(word)
  })

  it('is sure of whatever has 20 % vol', () => {
    expect(delleUnits(KEEPS_ABV_PERCENT, 0)).toBeGreaterThan(KEEPS_ABOVE_UNITS)
    expect(KEEPS_ABV_PERCENT).toBe(20)
  })

  it('counts a strength by its first decimal, since water is measured out in round numbers', () => {
    expect(keepingAt(14.96, 300)).toBe('keeps')
    expect(keepingAt(14.94, 300)).toBe('ferments')
  })

  const measured = (value: number, plusMinus: number) => ({ value, plusMinus })
  const of = (abv: number, abvPlusMinus: number, sugar = 0, sugarPlusMinus = 0) =>
    keepingOf({ abvPercent: measured(abv, abvPlusMinus), sugarGPerL: measured(sugar, sugarPlusMinus) })

  it('is only sure at the low end of strength and sugar', () => {
    expect([of(22, 1), of(22, 4), of(22, 6)]).toEqual(['keeps', 'undecided', 'ferments'])
    // Within a hydrometer's error it is undecided, not condemned: it was planned so.
    expect([of(15, 0.5, 250), of(15, 1.1, 250)]).toEqual(['undecided', 'ferments'])
    expect([of(17, 0, 90, 1), of(17, 0, 90, 6)]).toEqual(['keeps', 'undecided'])
    // 75.5 units as they stand, 74.5 with the sugar that surely is in it.
    expect([of(16, 0, 35, 1), of(16, 0, 35, 10)]).toEqual(['undecided', 'ferments'])
  })

  it('counts no sugar that does not dissolve', () => {
    const sugarGPerL = exactly(900)
    // Scheibler's 679 g/L at 17.2 % vol, the most that such a liqueur holds.
    expect(surelyDissolvedGPerL({ abvPercent: exactly(17.2), sugarGPerL })).toBeCloseTo(679, 0)
    expect(surelyDissolvedGPerL({ abvPercent: exactly(30), sugarGPerL: measured(5, 9) })).toBe(0)
  })

  it('names the least whole strength that keeps', () => {
    for (const sugarGPerL of [0, 10, 50, 85, 100, 130, 175, 176, 400]) {
      const percent = keepsFromPercent(sugarGPerL)
      expect(keepingAt(percent, sugarGPerL)).toBe('keeps')
      expect(keepingAt(percent - 1, sugarGPerL)).not.toBe('keeps')
    }
    expect([keepsFromPercent(0), keepsFromPercent(100), keepsFromPercent(300)]).toEqual([19, 17, 15])
  })
})
