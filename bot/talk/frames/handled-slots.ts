import { finingIds, finingOf } from '../../../core/label/fining.ts'
import { textFrom } from '../../../core/quantity/read/tokens.ts'
import type { Sentence } from '../bits/bit.ts'
import { againFills } from './again-slots.ts'
import { atHome } from './at-home-slot.ts'
import type { SlotKind } from './frame.ts'
import { had } from './had-slot.ts'
import type { Fill, SlotFilled } from './plant-slots.ts'

/** Fruit is layered in; spirit and water alone, which are poured, top a jar up. */
function addedAs({ has, bits }: Sentence): string | null {
  if (has('layered')) return bits.some(({ kind }) => kind === 'plant') ? 'layer' : null
  const isPoured = bits.some(({ kind }) => kind === 'volume') && bits.every(({ kind }) => kind !== 'mass')
  return has('topped_up') && isPoured ? 'top-up' : null
}

const AGENTS = finingIds
  .flatMap((id) => finingOf(id).names)
  .map((name) => name.split(/[\s-]+/))
  .toSorted((one, other) => other.length - one.length)

const WITH = /^(?:with|using|con|col|coll|colla)$/
const END = /^(?:and|then|e|poi|on|today|yesterday|ieri|oggi|[.,;!?])$/

/** What it was fined with, as it was typed, so that what nobody knows is asked about; null where nothing is named. */
function fining({ typed, spans, bits }: Sentence): SlotFilled | null {
  const { tokens } = typed
  const said = spans.filter(({ concept }) => concept === 'fined').toSorted((one, other) => one.from - other.from)[0]
  if (said === undefined) return null
  const found = (from: number, to: number): SlotFilled => ({
    text: textFrom(typed, from, to),
    bits: bits.filter((bit) => bit.from >= from && bit.to <= to),
  })
  for (const words of AGENTS) {
    const at = tokens.findIndex(
      (_, from) => from > said.from && words.every((word, more) => tokens[from + more]?.text === word),
    )
    if (at !== -1) return found(at, at + words.length)
  }
  const from = tokens.findIndex(({ text }, at) => at > said.from && WITH.test(text)) + 1
  if (from === 0) return null
  const end = tokens.findIndex(({ text }, at) => at > from && END.test(text))
  return from >= tokens.length ? null : found(from, end === -1 ? tokens.length : end)
}

/** How something was done to a jar. */
export const handledFills = {
  ...againFills,
  at_home: atHome,
  had,
  on_fruit: ({ has }: Sentence) => (has('on_fruit') ? { text: 'yes', bits: [] } : null),
  all_in: ({ has }: Sentence) => (has('all_at_once') ? { text: 'yes', bits: [] } : null),
  racked: ({ has }: Sentence) => (has('racked') ? { text: 'yes', bits: [] } : null),
  fining,
  added_as: (sentence: Sentence) => {
    const as = addedAs(sentence)
    return as === null ? null : { text: as, bits: [] }
  },
} as const satisfies Partial<Record<SlotKind, Fill>>
