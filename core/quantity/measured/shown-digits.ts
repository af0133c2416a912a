/** A number as it is shown: rounded, and the decimals to write it with (0 for tens and above). */
export interface Digits {
  readonly roundedValue: number
  readonly decimals: number
}

const MAX_SIGNIFICANT_DIGITS = 4
/** What `toFixed` and `toPrecision` take. */
const MAX_DIGITS = 100
// A ± of 0.30000000000000004 is 0.3, not 0.4 rounded up.
const NOISE = 1e-9

/** The power of ten of the first significant digit; `value` finite and not 0. */
const exponentOf = (value: number): number => Number(value.toExponential().split('e')[1])

const decimalsFor = (place: number): number => Math.min(Math.max(0, -place), MAX_DIGITS)

/**
 * A ± (half a 95 % interval) by itself: rounded up to one significant digit, to two where it begins with 1.
 * 0 and what is not a finite number count as no ± and give 0.
 */
export const plusMinusDigits = (plusMinus: number): Digits => {
  if (plusMinus === 0 || !Number.isFinite(plusMinus)) return { roundedValue: 0, decimals: 0 }
  const [mantissa = '1', exponent = '0'] = Math.abs(plusMinus).toExponential().split('e')
  const digitCount = mantissa.startsWith('1') ? 2 : 1
  const scaled = Math.ceil(Number(mantissa) * 10 ** (digitCount - 1) - NOISE)
  // 0.195 becomes 0.2 and 0.96 becomes 1: neither 0.20 nor 1.0.
  const isCarried = scaled === (digitCount === 2 ? 20 : 10)
  const lastPlace = Number(exponent) - digitCount + 1 + (isCarried ? 1 : 0)
  const rounded = Number(`${isCarried ? scaled / 10 : scaled}e${lastPlace}`)
  return { roundedValue: Number.isFinite(rounded) ? rounded : Math.abs(plusMinus), decimals: decimalsFor(lastPlace) }
}

/** `value` rounded at the place of ten to the power of `place`, to one significant digit at least. */
const roundAt = (value: number, place: number): number => {
  const significant = exponentOf(value) - place + 1
  const rounded = Number(value.toPrecision(Math.min(Math.max(1, significant), MAX_DIGITS)))
  // The largest doubles round up to infinity.
  return Number.isFinite(rounded) ? rounded : value
}

/**
 * The digits that `value` ± `plusMinus` (same unit, half a 95 % interval) can carry: down to the place of the first
 * significant digit of the ± as shown; at most 4 and at least 1 significant digit. Without a ±, 4.
 */
export const digits = (value: number, plusMinus: number): Digits => {
  const { roundedValue: shownPlusMinus } = plusMinusDigits(plusMinus)
  const plusMinusPlace = shownPlusMinus === 0 ? null : exponentOf(shownPlusMinus)
  if (value === 0) return { roundedValue: 0, decimals: decimalsFor(plusMinusPlace ?? 0) }
  if (!Number.isFinite(value)) return { roundedValue: value, decimals: 0 }
  const first = exponentOf(value)
  const finest = first - MAX_SIGNIFICANT_DIGITS + 1
  const place = Math.min(Math.max(plusMinusPlace ?? finest, finest), first)
  const roundedValue = roundAt(value, place)
  // 9.9996 with four digits becomes 10.00: one decimal less.
  const isCarried = place === finest && exponentOf(roundedValue) > first
  return { roundedValue, decimals: decimalsFor(isCarried ? place + 1 : place) }
}

const roundUpAt = (value: number, decimals: number): number => {
  const [mantissa, exponent] = value.toExponential().split('e')
  return Number(`${Math.ceil(Number(`${mantissa}e${Number(exponent) + decimals}`) - NOISE)}e${-decimals}`)
}

/** A value and its ± as they stand side by side. */
export interface Spread {
  readonly value: Digits
  readonly plusMinus: Digits
}

/**
 * A value and its ± side by side: the value with the decimals of the ± where its four digits reach so far, else the ± rounded
 * up to what they reach. So the ± never has more decimals than its value.
 */
export const spreadDigits = (value: number, plusMinus: number): Spread => {
  const [alone, own] = [digits(value, plusMinus), plusMinusDigits(plusMinus)]
  const most = value === 0 || !Number.isFinite(value) ? own.decimals : digits(value, 0).decimals
  const decimals = Math.max(alone.decimals, Math.min(own.decimals, most))
  return {
    value: decimals === alone.decimals ? alone : { roundedValue: roundAt(value, -decimals), decimals },
    plusMinus: own.decimals <= decimals ? own : { roundedValue: roundUpAt(own.roundedValue, decimals), decimals },
  }
}
