import { HEADINGS, type Heading } from '../text/more-text.ts'

/** The first screen is what somebody needs now; the rest is one question deeper. */
export type Depth = 'first' | 'more'

/** What part of a reply stands deeper; left out: on the first screen. `data`: another part says it, so only scripts are told. */
export interface Deep {
  readonly depth?: 'more' | 'data'
}

/** The same, one question deeper. */
export const inMore = <Item extends object>(items: readonly Item[]): readonly (Item & Deep)[] =>
  items.map((item) => ({ ...item, depth: 'more' }))

export const depthOf = ({ depth }: Deep): Depth | 'data' => depth ?? 'first'

export const atDepth = <Item extends Deep>(items: readonly Item[], depth: Depth): readonly Item[] =>
  items.filter((item) => depthOf(item) === depth)

/** What is shown of a reply: one of its depths, or both one after the other. */
export type DepthShown = Depth | 'whole'

interface Parts {
  readonly under?: readonly unknown[]
  readonly table: readonly Deep[]
  readonly sure: readonly unknown[]
  readonly notes: readonly Deep[]
  readonly cautions: readonly Deep[]
  readonly actions: readonly Deep[]
}

const shownOf = <Item extends Deep>(items: readonly Item[]): readonly Item[] =>
  items.some((item) => depthOf(item) === 'data') ? items.filter((item) => depthOf(item) !== 'data') : items

/** Those without a heading first, then what stands under each. */
export const byHeading = <Item extends { readonly heading?: Heading }>(items: readonly Item[]) =>
  [undefined, ...HEADINGS]
    .map((heading) => ({ heading, items: items.filter((item) => item.heading === heading) }))
    .filter(({ items }) => items.length > 0)

/** Whether anything stands deeper; how sure the numbers are always does. */
export const hasMore = ({ table, sure, notes, cautions, actions }: Parts): boolean =>
  sure.length > 0 || [...table, ...notes, ...cautions, ...actions].some((item) => depthOf(item) === 'more')

/** The parts of a reply that one of its depths shows. */
export const partsAt = <Reply extends Parts>(reply: Reply, shown: DepthShown): Reply =>
  shown === 'whole'
    ? { ...reply, cautions: shownOf(reply.cautions) }
    : {
        ...reply,
        ...(shown === 'more' && reply.under !== undefined && { under: [] }),
        table: atDepth(reply.table, shown),
        sure: shown === 'more' ? reply.sure : [],
        notes: atDepth(reply.notes, shown),
        cautions: atDepth(reply.cautions, shown),
        actions: atDepth(reply.actions, shown),
      }
