/**
 * A number with half of its 95 % interval, in the unit that its holder's name ends in
 * (`infusionMl: Measured` is millilitres, both numbers).
 */
export interface Measured {
  readonly value: number
  readonly plusMinus: number
}

/** A number taken as exact: a target, a ratio, a temperature that was asked for. */
export const exactly = (value: number): Measured => ({ value, plusMinus: 0 })

/** Two together, each off by itself. */
export const plus = (one: Measured, other: Measured): Measured => ({
  value: one.value + other.value,
  plusMinus: Math.hypot(one.plusMinus, other.plusMinus),
})

/** `factor` times as much, as well known. */
export const times = ({ value, plusMinus }: Measured, factor: number): Measured => ({
  value: value * factor,
  plusMinus: plusMinus * factor,
})
