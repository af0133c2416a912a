import { expect, test } from 'vitest'
import { catalogue } from '../../../core/botanical/catalogue/catalogue.ts'
import { exactly } from '../../../core/quantity/measured/measured.ts'
import { daysBetween } from '../../../core/quantity/time/calendar-day.ts'
import { plan } from '../../../core/recipe/plan/plan.ts'
import { wish } from './wishes.ts'

test.each(catalogue.map(({ id, spiritPercent }) => [id, spiritPercent.min, spiritPercent.max]))(
  '%s is planned at its typical dose, in its weakest and its strongest spirit',
  (id, lowPercent, highPercent) => {
    for (const percent of [lowPercent, highPercent]) {
      const made = plan(wish([{ id }], { spiritAbvPercent: exactly(percent) }))
      expect(made.outcome.volumeMl.value).toBeCloseTo(2000, 5)
      expect(made.filled).toEqual({ bottles: [{ count: 4, volumeMl: 500 }], leftoverMl: 0, empty: 0 })
      expect(made.steep.jarMl).toBeGreaterThan(made.spiritMl.value)
      const { start, tasteFrom, strainFrom, strainBy, sweetenBy, ready } = made.schedule!
      const days = [start, tasteFrom, strainFrom, strainBy, sweetenBy, ready]
      days.slice(1).forEach((day, index) => {
        expect(daysBetween(day, days[index]!)).toBeGreaterThanOrEqual(0)
      })
    }
  },
)
