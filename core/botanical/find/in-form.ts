import type { Botanical, Limit, PlantState } from '../botanical.ts'
import { extractOf, usualExtract } from '../catalogue/extract.ts'

/** As the dried herbs and roots of the catalogue: 5 to 12 % water, most near 10 %. */
const DRIED_WATER_FRACTION = 0.1

/** Whether the plant may be meant dried, where its state was not said: a fruit that is not weighed is a whole one, and fresh. */
export const mayBeDried = ({ driedPerFresh, zestGPerFruit }: Botanical, isWeighed: boolean): boolean =>
  driedPerFresh !== null && (isWeighed || zestGPerFruit === null)

const driedExtract = (kind: Botanical['kind'], sugars: number) => {
  const [min, max] = extractOf(usualExtract(kind, 'dried'), DRIED_WATER_FRACTION, sugars)
  return { min, max, trust: 'estimated' } as const
}

const scaled = (limit: Limit | null, factor: number): Limit | null =>
  limit === null ? null : { ...limit, gPerLSpirit: limit.gPerLSpirit * factor }

/**
 * The plant as it is when dried: doses and ceilings scaled by how much dried stands for one fresh, its water, sugars and
 * what it keeps back estimated. Null where nothing is known of that form.
 */
export const inForm = (botanical: Botanical, state: PlantState): Botanical | null => {
  if (state === botanical.form.state) return botanical
  const { driedPerFresh, dose, sugarsFraction } = botanical
  if (state !== 'dried' || driedPerFresh === null) return null
  const { factor } = driedPerFresh
  return {
    ...botanical,
    form: { ...botanical.form, state },
    driedPerFresh: null,
    bulky: false,
    monthsNorth: null,
    waterFraction: {
      value: DRIED_WATER_FRACTION,
      trust: 'estimated',
      sources: ['common_practice'],
      ndb: null,
      range: [0.05, 0.15],
      proxyOf: null,
    },
    sugarsFraction:
      sugarsFraction === null
        ? null
        : { ...sugarsFraction, value: sugarsFraction.value / factor, trust: 'estimated', ndb: null },
    extractFraction: driedExtract(botanical.kind, (sugarsFraction?.value ?? 0) / factor),
    waterExchange: { min: 0.9, max: 1, trust: 'estimated' },
    dose: {
      minGPerL: dose.minGPerL * factor,
      typicalGPerL: dose.typicalGPerL * factor,
      maxGPerL: dose.maxGPerL * factor,
      trust: driedPerFresh.trust,
    },
    warnAbove: scaled(botanical.warnAbove, factor),
    ceiling: scaled(botanical.ceiling, factor),
    zestGPerFruit: null,
    fruitG: null,
    pieces: [],
    retainedMlPerG: { min: 0.8, max: 1.8, trust: 'estimated' },
  }
}

/**
 * Whether an amount tells nothing before its form is said: the most that is usual of the fresh plant is over the ceiling of
 * the dried one.
 */
export const isFormAsked = (botanical: Botanical): boolean => {
  const dried = botanical.form.state === 'fresh' ? (inForm(botanical, 'dried')?.ceiling ?? null) : null
  return dried !== null && botanical.dose.maxGPerL > dried.gPerLSpirit
}
