/** A measure that a household pours or weighs by. */
export type HouseholdUnit = 'cup' | 'tbsp' | 'tsp' | 'imp_pint' | 'imp_fl_oz' | 'lb' | 'oz'

/** So many of a measure, in whole eighths or thirds. */
export interface HouseholdPart {
  readonly count: number
  readonly unit: HouseholdUnit
}

export const isWhole = (count: number): boolean => Math.abs(count - Math.round(count)) < 1e-9

const EIGHTHS = 8

const DENOMINATORS: Readonly<Record<number, string>> = {
  1: '1/8',
  2: '1/4',
  3: '3/8',
  4: '1/2',
  5: '5/8',
  6: '3/4',
  7: '7/8',
}

const THIRDS: Readonly<Record<number, string>> = { 1: '1/3', 2: '2/3' }

/** The third that a count has beside whole ones, 1 or 2; null of one in whole eighths. */
export const thirdsOver = (count: number): 1 | 2 | null => {
  const thirds = 3 * (count - Math.floor(count))
  if (!isWhole(thirds)) return null
  return Math.round(thirds) === 1 ? 1 : Math.round(thirds) === 2 ? 2 : null
}

export const countTyped = (count: number): string => {
  const whole = Math.floor(count)
  const thirds = thirdsOver(count)
  const part = (thirds === null ? DENOMINATORS[Math.round((count - whole) * EIGHTHS)] : THIRDS[thirds]) ?? ''
  return [whole === 0 ? '' : `${whole}`, part].filter((text) => text !== '').join(' ')
}

const TYPED: { readonly [Unit in HouseholdUnit]: string } = {
  cup: 'cups',
  tbsp: 'tbsp',
  tsp: 'tsp',
  imp_pint: 'imp pints',
  imp_fl_oz: 'imp fl oz',
  lb: 'lb',
  oz: 'oz',
}

const typedUnit = ({ count, unit }: HouseholdPart): string =>
  count <= 1 && (unit === 'cup' || unit === 'imp_pint') ? TYPED[unit].replace(/s$/, '') : TYPED[unit]

/** As somebody types it: `4 1/4 cups 2 tbsp`, `2/3 cup`. */
export const householdTyped = (told: readonly HouseholdPart[]): string =>
  told.map((part) => `${countTyped(part.count)} ${typedUnit(part)}`).join(' ')
