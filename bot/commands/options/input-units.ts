import type { Assumption } from '../../../core/quantity/quantities.ts'
import type { UnitSystem } from '../../../core/quantity/read/parse-units.ts'
import { unitsSaid } from '../../../core/quantity/read/units-said.ts'
import { isKitchenOf, type Kitchen, kitchenOfEach, withKinds } from '../../text/messages/kitchen.ts'
import type { Message } from '../../text/words.ts'
import { kindsTyped } from './kinds-typed.ts'

const IMPERIAL_UNITS = new Set(['imp_fl_oz', 'imp_pint', 'imp_quart', 'imp_gallon'])
const US_UNITS = new Set(['cup', 'fl_oz', 'pint', 'quart', 'gallon', 'fifth', 'handle', 'lb', 'oz', 'oz_weight'])

/** What a quantity tells of how it was typed. */
interface Typed {
  readonly kind?: string
  readonly unit?: string
  readonly volumeMl?: number
  /** A mass that was told by the cup. */
  readonly byVolume?: boolean
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
function typedIn(node: unknown, found: Typed[] = []): readonly Typed[] {
  if (typeof node !== 'object' || node === null) return found
  if ('assumed' in node) found.push(node as Typed)
  for (const each of Object.values(node)) typedIn(each, found)
  return found
}

/** Bottles that are sold by the litre in the United States too, where all else is told otherwise, ml: 27 CFR 5.203. */
const US_TRADE_ML: ReadonlySet<number> = new Set([375, 750, 1750])

/** What is read off such a bottle tells no kitchen where anything else does. */
const isOfTrade = ({ kind, unit, volumeMl }: Typed): boolean =>
  kind === 'volume' && systemOf(unit ?? '') === 'metric' && US_TRADE_ML.has(volumeMl ?? 0)

const systemOf = (unit: string): UnitSystem =>
  IMPERIAL_UNITS.has(unit) ? 'imperial' : US_UNITS.has(unit) ? 'us' : 'metric'

/** Of the first of some quantities; null where there is none. */
const firstSystem = (typed: readonly Typed[]): UnitSystem | null =>
  typed.flatMap(({ unit }) => (unit === undefined ? [] : [systemOf(unit)]))[0] ?? null

const isWeighed = ({ kind, byVolume }: Typed): boolean => kind === 'mass' && byVolume !== true

/** The units that were typed for what is poured and for what is weighed; null where none was. */
export interface UnitsTyped {
  readonly volume: UnitSystem | null
  readonly mass: UnitSystem | null
  /** Whether a strength was typed in US proof, and a sweetness in grams. */
  readonly isInProof: boolean
  readonly isSweetInGrams: boolean
}

/** Of each kind those of its first amount, sugar before plants where it is weighed; bottles left out. */
export function unitsTyped(input: object): UnitsTyped {
  const { bottles: _, sugar, ...others } = input as { readonly bottles?: unknown; readonly sugar?: unknown }
  const [inSugar, inOthers] = [typedIn(sugar), typedIn(others)]
  const all = [...inOthers, ...inSugar].filter((each) => !isOfTrade(each))
  return {
    volume:
      firstSystem(all.filter(({ kind }) => kind === 'volume')) ??
      firstSystem(all.filter(({ byVolume }) => byVolume === true)),
    mass: firstSystem([...inSugar, ...inOthers].filter(isWeighed)),
    isInProof: all.some(({ kind, unit }) => kind === 'strength' && unit === 'proof'),
    isSweetInGrams: all.some(({ kind, unit }) => kind === 'sweetness' && unit?.startsWith('g/') === true),
  }
}

/** Those of the bottles, which are sold in millilitres and so decide where nothing else does. */
export const unitsOfBottles = (input: object): UnitsTyped => ({
  volume: 'bottles' in input ? firstSystem(typedIn(input.bottles)) : null,
  mass: null,
  isInProof: false,
  isSweetInGrams: false,
})

/**
 * What is poured and what is weighed, each in the first units that were typed for it; where none were, US ones of whoever tells
 * proof, else metric.
 */
export function kitchenOfUnits(typed: readonly UnitsTyped[]): Kitchen {
  const first = (kind: 'volume' | 'mass') => typed.flatMap((each) => each[kind] ?? [])[0] ?? null
  const [poured, weighed] = [first('volume'), first('mass')]
  const isInProof = typed.some((each) => each.isInProof)
  const usual = isInProof ? 'us' : 'metric'
  return kitchenOfEach({
    volume: poured ?? weighed ?? usual,
    mass: weighed ?? poured ?? usual,
    ...(isInProof && { strength: 'proof' }),
    ...(typed.some((each) => each.isSweetInGrams) && { sweetness: 'metric' }),
  })
}

/** Whether any of it tells a kitchen. */
export const tellsUnits = ({ volume, mass, isInProof }: UnitsTyped): boolean =>
  volume !== null || mass !== null || isInProof

/** Whether anything that was typed tells a kitchen. */
const saysUnits = (input: object): boolean => tellsUnits(unitsTyped(input)) || tellsUnits(unitsOfBottles(input))

/** The kitchen whose units were typed; where none were, the one of whoever typed. */
export const kitchenTyped = (input: object, usual: () => Kitchen): Kitchen =>
  saysUnits(input) ? kitchenOf(input) : withKinds(usual(), kindsTyped([input]))

/** The kitchen that a text speaks of which was not read as a whole; null where it tells none, or more than one. */
export const kitchenInText = (text: string): Kitchen | null => {
  const units = unitsSaid(text)
  if (units !== 'us') return units
  return /\bproof\b/i.test(text) ? { volume: 'us', mass: 'us', strength: 'proof' } : 'us'
}

/** The kitchen whose units were typed. */
export const kitchenOf = (input: object): Kitchen =>
  withKinds(kitchenOfUnits([unitsTyped(input), unitsOfBottles(input)]), kindsTyped([input]))

/** Whether amounts are said as they were typed: unless somebody has chosen other units for everything. */
export const isSaidAsTyped = (kitchen: Kitchen, { units }: { readonly units: UnitSystem | null }): boolean =>
  units === null || isKitchenOf(units, kitchen)

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
