import type { Sentence } from '../bits/bit.ts'
import type { SlotKind } from './frame.ts'
import type { Fill } from './plant-slots.ts'

/** Fruit is layered in; spirit and water alone, which are poured, top a jar up. */
function addedAs({ has, bits }: Sentence): string | null {
  if (has('layered')) return bits.some(({ kind }) => kind === 'plant') ? 'layer' : null
  const isPoured = bits.some(({ kind }) => kind === 'volume') && bits.every(({ kind }) => kind !== 'mass')
  return has('topped_up') && isPoured ? 'top-up' : null
}

/** How something was done to a jar. */
export const handledFills = {
  on_fruit: ({ has }: Sentence) => (has('on_fruit') ? { text: 'yes', bits: [] } : null),
  all_in: ({ has }: Sentence) => (has('all_at_once') ? { text: 'yes', bits: [] } : null),
  racked: ({ has }: Sentence) => (has('racked') ? { text: 'yes', bits: [] } : null),
  added_as: (sentence: Sentence) => {
    const as = addedAs(sentence)
    return as === null ? null : { text: as, bits: [] }
  },
} as const satisfies Partial<Record<SlotKind, Fill>>
