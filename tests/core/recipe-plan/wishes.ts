import { botanicalById } from '../../../core/botanical/catalogue/catalogue.ts'
import { exactly, type Measured } from '../../../core/quantity/measured/measured.ts'
import type { CalendarDay } from '../../../core/quantity/quantities.ts'
import type { PlanWish } from '../../../core/recipe/plan/plan-wish.ts'
import type { Portion } from '../../../core/recipe/portion.ts'

export const START: CalendarDay = { year: 2026, month: 11, day: 25 }

export const spirit = (volumeMl: number, abvPercent: number): Portion => ({
  amount: exactly(volumeMl),
  by: 'volume',
  atC: 20,
  abvPercent: exactly(abvPercent),
  abvAtC: 20,
  sugarGPerL: exactly(0),
})

/** A plan of these plants; everything that a test does not name is left to the plan. */
export const wish = (
  plants: readonly { readonly id: string; readonly massG?: number | Measured }[],
  rest: Partial<Omit<PlanWish, 'plants'>>,
): PlanWish => ({
  plants: plants.map(({ id, massG }) => ({
    botanical: botanicalById(id),
    massG: massG === undefined ? null : typeof massG === 'number' ? exactly(massG) : massG,
    count: null,
  })),
  unknown: [],
  steepFor: null,
  spirits: null,
  spiritAbvPercent: exactly(95),
  steepAtPercent: null,
  sweetenings: [],
  named: { abvPercent: undefined, sugarGPerL: undefined },
  bottles: [{ count: 4, volumeMl: 500 }],
  start: START,
  readyBy: null,
  ...rest,
})
