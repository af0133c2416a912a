import type { SymptomId } from '../../../core/trouble/symptoms.ts'
import type { Denial } from '../frames/denied.ts'
import type { TalkReading } from '../frames/reading.ts'
import type { EntryFound } from './entry-of-clause.ts'
import { topic } from './read-otherwise.ts'

const CLOUDS: ReadonlySet<SymptomId> = new Set(['cloudy_on_mixing', 'cloudy_in_cold', 'cloudy_later'])

/** What tells how it is kept from going wrong. */
const KEPT_FROM: Readonly<Partial<Record<SymptomId, string>>> = {
  cloudy_on_mixing: 'citrus_cloud',
  cloudy_in_cold: 'clearing',
  cloudy_later: 'clearing',
  oil_ring: 'fat_off',
  sediment: 'let_settle',
  gelled: 'pectin_enzyme',
  crystals: 'sugar_crystals',
  sugar_not_dissolving: 'boil_syrup',
  frozen: 'freezes',
  mould: 'keep_under',
  floating_bits: 'keep_under',
  brown: 'steep_light',
  faded: 'store_bottles',
  leaves_went_black: 'keep_green',
  black_or_metal: 'metal_lid',
  bitter: 'pith',
  harsh_hot: 'rest',
  too_sweet: 'sweetness_trial',
  too_dry_or_sour: 'sweetness_trial',
  too_weak: 'fruit_water',
  fermenting: 'weak_keeps',
  pressure: 'weak_keeps',
  vinegar: 'weak_keeps',
  curdled: 'cream',
  stuck_filter: 'slow_filter',
  leaking_lid: 'closures',
  musty: 'wash_fruit',
}

/** `It’s not bitter`, `how do I keep it from clouding`: never what is wrong with it, but how it is kept so, or what is wrong then. */
export function deniedReading(
  { id, denial }: { readonly id: SymptomId; readonly denial: Denial },
  entry: EntryFound | null,
  isQuestion: boolean,
): TalkReading {
  const kept = denial === 'prevented' ? KEPT_FROM[id] : CLOUDS.has(id) ? 'stays_clear' : undefined
  if (kept !== undefined) return topic({ id: kept, others: entry === null || entry.id === kept ? [] : [entry.id] })
  if (entry !== null && isQuestion) return topic(entry)
  const call = { command: 'trouble', options: {} } as const
  return { kind: 'question', call, about: { kind: 'not_so', symptom: id }, choices: [call], leftOut: [] }
}
