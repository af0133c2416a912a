import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Happening } from '../../../core/jar/entry/entry.ts'
import { ethanolG, sugarG } from '../../../core/liquid/liquid.ts'
import { exactly } from '../../../core/quantity/measured/measured.ts'
import { whiteSugar } from '../../../core/recipe/sweetening.ts'
import { runs, SEED } from '../../runs.ts'
import { spirit } from '../recipe-plan/wishes.ts'
import { added, entriesOf, started, strained, sweetened } from './jars.ts'
import { liquidsIn } from './liquids.ts'

/** Ethanol at 20 °C, g/ml: by what % vol is defined (OIML R 22, 1975, table I: 789.24 kg/m³). */
const ETHANOL_G_PER_ML = 0.78924

/** What is in a jar, counted step by step with nothing of the core. */
interface Counted {
  readonly ethanolG: number
  readonly sugarG: number
}

type Step =
  | { readonly does: 'spirit'; readonly ml: number; readonly abv: number }
  | { readonly does: 'sugar'; readonly g: number; readonly waterG: number }
  | { readonly does: 'pour off'; readonly kept: number }

/** What stays in cloth and sieve at the straining, as a share. Common practice, no source. */
const CLINGS = 0.015

const countedAfter = ({ ethanolG, sugarG }: Counted, step: Step): Counted => {
  switch (step.does) {
    case 'spirit':
      return { ethanolG: ethanolG + step.ml * (step.abv / 100) * ETHANOL_G_PER_ML, sugarG }
    case 'sugar':
      return { ethanolG, sugarG: sugarG + step.g }
    case 'pour off':
      return { ethanolG: ethanolG * step.kept, sugarG: sugarG * step.kept }
  }
}

const happeningOf = (step: Step): Happening => {
  switch (step.does) {
    case 'spirit':
      return added({ spirits: [spirit(step.ml, step.abv)] })
    case 'sugar':
      return sweetened(step.waterG, step.g)
    case 'pour off':
      return { kind: 'parted', kept: exactly(step.kept), other: 'aside', isNew: false }
  }
}

const steps: fc.Arbitrary<Step> = fc.oneof(
  fc.record({
    does: fc.constant('spirit' as const),
    ml: fc.integer({ min: 50, max: 1500 }),
    abv: fc.integer({ min: 20, max: 96 }),
  }),
  fc.record({
    does: fc.constant('sugar' as const),
    g: fc.integer({ min: 5, max: 400 }),
    waterG: fc.integer({ min: 50, max: 900 }),
  }),
  fc.record({ does: fc.constant('pour off' as const), kept: fc.double({ min: 0.1, max: 0.9, noNaN: true }) }),
)

describe('any order of steps', () => {
  it('leaves the alcohol and the sugar that a count by hand leaves', () => {
    fc.assert(
      fc.property(fc.array(steps, { minLength: 1, maxLength: 8 }), (order) => {
        const story = [
          started({ plants: [], spirits: [spirit(1000, 95)], sweetenings: whiteSugar(exactly(30)) }),
          strained(),
          ...order.map(happeningOf),
        ]
        const { liquid } = liquidsIn(entriesOf(...story))
        const begun = countedAfter({ ethanolG: 0, sugarG: 30 }, { does: 'spirit', ml: 1000, abv: 95 })
        const counted = order.reduce(countedAfter, countedAfter(begun, { does: 'pour off', kept: 1 - CLINGS }))
        expect(ethanolG(liquid) / counted.ethanolG).toBeCloseTo(1, 4)
        expect(sugarG(liquid) / counted.sugarG).toBeCloseTo(1, 9)
      }),
      { seed: SEED, numRuns: runs(80, 5000) },
    )
  })
})
