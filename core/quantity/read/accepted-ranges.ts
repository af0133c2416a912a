/** Both ends are accepted. */
export interface AcceptedRange {
  readonly low: number
  readonly high: number
}

/** What is accepted, each in the unit its name ends in. */
export const accepted = {
  volumeMl: { low: 0.1, high: 1e6 },
  massG: { low: 0.01, high: 1e6 },
  strengthPercent: { low: 0.1, high: 100 },
  sweetnessGPerL: { low: 0, high: 1200 },
  temperatureC: { low: -30, high: 100 },
  /** 1 hour to 20 years. */
  spanDays: { low: 1 / 24, high: 20 * 365.2425 },
  /** Grams of sugar to a gram of water: from a trace to drier than any syrup. */
  ratio: { low: 0.01, high: 20 },
  /** Fruit, sticks, leaves. */
  countPieces: { low: 0.1, high: 10_000 },
} as const satisfies Record<string, AcceptedRange>

// A unit's factor is not exact in binary: 212 °F must not miss 100 °C by its last bit.
const SLACK = 1e-9

export const isWithin = ({ low, high }: AcceptedRange, value: number): boolean =>
  value >= low - Math.abs(low) * SLACK && value <= high + Math.abs(high) * SLACK
