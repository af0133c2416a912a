/** US cup, NIST Handbook 44 Appendix C. */
const CUP_ML = 236.5882365
export const TABLESPOON_ML = CUP_ML / 16
/** Imperial pint and its fluid ounce, an eighth and a 160th of a gallon: UK Weights and Measures Act 1985, Schedule 1. */
const PINT_ML = 568.26125
const FLUID_OUNCES_A_PINT = 20
export const FLUID_OUNCE_ML = PINT_ML / FLUID_OUNCES_A_PINT
export const OUNCE_G = 28.349523125
/** Keeps a number and its unit on one line. */
const NBSP = '\u00a0'
const QUARTERS = ['', '¼', '½', '¾']

/** In quarters of a unit, at least one quarter. */
const inQuarters = (amount: number): string => {
  const quarters = Math.max(1, Math.round(amount * 4))
  const whole = Math.floor(quarters / 4)
  return [whole === 0 ? '' : `${whole}`, QUARTERS[quarters % 4]].filter((part) => part !== '').join(' ')
}

/** From so many cups a quarter of one is near enough. */
const MANY_CUPS = 8

/** Quarters of a cup and the spoons over, so that what is poured is within half a spoon. */
export const cups = (volumeMl: number): string => {
  const spoons = volumeMl / TABLESPOON_ML
  if (spoons < 3.5) return `${inQuarters(spoons)}${NBSP}tbsp`
  const step = volumeMl < MANY_CUPS * CUP_ML ? 1 : 4
  const rounded = Math.round(spoons / step) * step
  const over = rounded % 4
  const amount = rounded - over
  const cup = `${inQuarters(amount / 16)}${NBSP}${amount > 16 ? 'cups' : 'cup'}`
  return over === 0 ? cup : `${cup} + ${over}${NBSP}tbsp`
}

/** Under so many fluid ounces a quarter of one is told. */
const FEW_OUNCES = 5
/** From so many pints two fluid ounces are near enough. */
const MANY_PINTS = 4

/** Imperial pints and the fluid ounces over. They say `imp`, because pints and ounces that are typed bare are US ones. */
export const imperialPints = (volumeMl: number): string => {
  const ounces = volumeMl / FLUID_OUNCE_ML
  if (ounces < FEW_OUNCES) return `${inQuarters(ounces)}${NBSP}imp${NBSP}fl${NBSP}oz`
  const step = volumeMl < MANY_PINTS * PINT_ML ? 0.5 : 2
  const rounded = Math.round(ounces / step) * step
  const over = rounded % FLUID_OUNCES_A_PINT
  const pints = (rounded - over) / FLUID_OUNCES_A_PINT
  if (pints === 0) return `${inQuarters(over)}${NBSP}imp${NBSP}fl${NBSP}oz`
  const pint = `${pints}${NBSP}imp${NBSP}${pints === 1 ? 'pint' : 'pints'}`
  return over === 0 ? pint : `${pint} + ${inQuarters(over)}${NBSP}fl${NBSP}oz`
}

export const pounds = (massG: number): string => {
  const ounces = massG / OUNCE_G
  if (ounces < 15.75) return `${inQuarters(ounces)}${NBSP}oz`
  const whole = Math.round(ounces)
  return [`${Math.floor(whole / 16)}${NBSP}lb`, whole % 16 === 0 ? '' : `${whole % 16}${NBSP}oz`]
    .filter((part) => part !== '')
    .join(' ')
}
