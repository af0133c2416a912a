import type { Botanical } from '../../../core/botanical/botanical.ts'
import { hazards, type Severity } from '../../../core/botanical/evidence/hazards.ts'
import type { HazardOf } from '../../text/messages/hazards.ts'
import type { Message } from '../../text/words.ts'

export const SEVERITY_RANK: { readonly [Key in Severity]: number } = {
  critical: 0,
  high: 1,
  medium: 2,
  low: 3,
  quality: 4,
}

export const rankOf = ({ hazard }: HazardOf): number => SEVERITY_RANK[hazards[hazard].severity]

/** Whether it spoils the look only. */
export const isOfLook = ({ hazard }: HazardOf): boolean => hazards[hazard].severity === 'quality'

/** Of which plants something is known from memory, if of any. */
export function memoryNotes(found: readonly HazardOf[]): readonly Message<'notes'>[] {
  const ids = [...new Set(found.flatMap(({ hazard, ids }) => (hazards[hazard].trust.includes('memory') ? ids : [])))]
  return ids.length === 0 ? [] : [{ group: 'notes', key: 'hazards_memory', values: { ids } }]
}

/** Every hazard of these plants once, worst first. */
export function hazardsOf(botanicals: readonly Botanical[]): readonly HazardOf[] {
  const keys = [...new Set(botanicals.flatMap((botanical) => botanical.hazards))]
  return keys
    .map((hazard) => ({
      hazard,
      ids: botanicals.filter((botanical) => botanical.hazards.includes(hazard)).map(({ id }) => id),
    }))
    .toSorted((one, other) => rankOf(one) - rankOf(other))
}
