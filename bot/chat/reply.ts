import type { Kitchen } from '../text/kitchen.ts'
import type { Message } from '../text/words.ts'

/** A command already filled in, offered after a reply. */
export interface Action {
  readonly label: Message<'actions'>
  /** The line to type, as the grammar reads it. */
  readonly line: string
}

export interface Row {
  readonly label: Message<'rows'>
  readonly cell: Message<'cells'>
}

/** A value that survives JSON: full doubles, null where unknown, never absent. */
export type Data = null | boolean | number | string | readonly Data[] | { readonly [name: string]: Data }

/** What a command answers: data that every surface renders. The answer first, the worst caution first. */
export interface Reply {
  readonly headline: Message<'headlines'>
  readonly table: readonly Row[]
  /** How sure the numbers are. */
  readonly sure: readonly Message<'sure'>[]
  readonly notes: readonly Message<'notes'>[]
  readonly cautions: readonly Message<'cautions'>[]
  readonly actions: readonly Action[]
  /** For `--json`; see contracts in the developers' guide. */
  readonly data: { readonly [name: string]: Data }
  /** The units the person typed in, which the reply speaks too. */
  readonly kitchen: Kitchen
}
