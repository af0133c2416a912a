import { type Deep, inMore } from '../../chat/depth.ts'
import type { Message } from '../../text/words.ts'

/** What is wanted now stands first, all else one question deeper. */
export function byDepth<Item extends object>(
  items: readonly (Item & Deep)[],
  isFirst: (item: Item) => boolean,
): readonly (Item & Deep)[] {
  return [...items.filter(isFirst), ...inMore(items.filter((item) => !isFirst(item)))]
}

/** What was read or taken for granted, and might be wrong. */
const FIRST_NOTES: ReadonlySet<string> = new Set([
  'decimal_point',
  'thousands_separator',
  'bottle_named',
  'fresh_plants',
  'strength_surprising',
  'jar_reading_hidden',
  'unsweetened',
  'strength_drifts',
])

/** What burns, ferments, or has to be done before the liquids meet. */
const FIRST_CAUTIONS: ReadonlySet<string> = new Set([
  'flame',
  'cool_first',
  'not_neat',
  'can_ferment',
  'keeps_undecided',
  'honey_infant',
])

export const notesByDepth = (notes: readonly (Message<'notes'> & Deep)[]) =>
  byDepth(notes, ({ key }: Message<'notes'>) => FIRST_NOTES.has(key))

export const cautionsByDepth = (cautions: readonly (Message<'cautions'> & Deep)[]) =>
  byDepth(cautions, ({ key }: Message<'cautions'>) => FIRST_CAUTIONS.has(key))
