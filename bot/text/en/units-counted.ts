import { kitchenRounded } from '../../../core/recipe/tool-precision.ts'
import type { Format } from '../format.ts'
import { inEighths } from './format.ts'
import { plural } from './phrases.ts'

/** Units of ten, as many ml or g as one of them is. */
const METRIC: ReadonlyMap<string, number> = new Map([
  ['ml', 1],
  ['cc', 1],
  ['cl', 10],
  ['dl', 100],
  ['l', 1000],
  ['hl', 100_000],
  ['mg', 0.001],
  ['g', 1],
  ['hg', 100],
  ['kg', 1000],
])

/** Words of their own, where a key is none. */
const WORDS: ReadonlyMap<string, string> = new Map([['oz_weight', 'oz']])
const COUNTED = /(?:cup|pint|quart|gallon|gill)$/

/** Quarters of a measure, eighths under one. */
const STEPS = { large: 4, small: 8 } as const

/** So many of a unit, by its key, as a kitchen measures them: `400 g`, `2 ½ cups`. */
export function unitsCounted(count: number, unit: string, format: Pick<Format, 'plain'>): string {
  const each = METRIC.get(unit)
  if (each !== undefined) return `${format.plain(kitchenRounded(count * each).value / each, 3)}\u00a0${unit}`
  const step = count >= 1 ? STEPS.large : STEPS.small
  const rounded = Math.round(count * step) / step
  const word = WORDS.get(unit) ?? unit.replaceAll('_', ' ')
  return `${inEighths(rounded)}\u00a0${COUNTED.test(word) ? plural(Math.ceil(Math.max(rounded, 1)), word) : word}`
}
