import type { Assumption } from '../../../core/quantity/quantities.ts'
import type { Kitchen } from '../../text/kitchen.ts'
import type { Message } from '../../text/words.ts'

const IMPERIAL_UNITS = new Set(['imp_fl_oz', 'imp_pint', 'imp_quart', 'imp_gallon'])
const US_UNITS = new Set(['cup', 'fl_oz', 'pint', 'quart', 'gallon', 'lb', 'oz', 'oz_weight'])

/** What a quantity tells of how it was typed. */
interface Typed {
  readonly kind?: string
  readonly unit?: string
  readonly assumed: readonly Assumption[]
  readonly atC?: number | null
}

/** The names on the bottles that were typed, however deep. */
function bottleNames(node: unknown): readonly string[] {
  if (typeof node !== 'object' || node === null) return []
  const own = 'strengthTyped' in node && 'named' in node && typeof node.named === 'string' ? [node.named] : []
  return [...own, ...Object.values(node).flatMap(bottleNames)]
}

/** Every quantity inside an input, however deep. */
function typedIn(node: unknown): readonly Typed[] {
  if (typeof node !== 'object' || node === null) return []
  const own = 'assumed' in node ? [node as Typed] : []
  return [...own, ...Object.values(node).flatMap(typedIn)]
}

/** The kitchen whose units were typed: an imperial or else a US one as soon as one of its units was. */
export const kitchenOf = (input: object): Kitchen => {
  const typed = typedIn(input).flatMap(({ unit }) => unit ?? [])
  if (typed.some((unit) => IMPERIAL_UNITS.has(unit))) return 'imperial'
  return typed.some((unit) => US_UNITS.has(unit)) ? 'us' : 'metric'
}

/** What was read into the input, once each, and that readings at another temperature were brought to 20 °C. */
export function assumptionNotes(input: object): readonly Message<'notes'>[] {
  const typed = typedIn(input)
  const keys = [...new Set(typed.flatMap(({ assumed }) => assumed))]
  const readWarm = (kind: string) => typed.some((each) => each.kind === kind && typeof each.atC === 'number')
  const names = [...new Set(bottleNames(input))]
  return [
    ...(names.length === 0 ? [] : [{ group: 'notes', key: 'bottle_named', values: { names } } as const]),
    ...keys.map((key): Message<'notes'> => ({ group: 'notes', key, values: undefined })),
    ...(readWarm('volume') ? [{ group: 'notes', key: 'volume_at_20', values: undefined } as const] : []),
    ...(readWarm('strength') ? [{ group: 'notes', key: 'strength_at_20', values: undefined } as const] : []),
  ]
}
