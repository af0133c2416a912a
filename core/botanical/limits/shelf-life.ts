import type { Botanical } from '../botanical.ts'
import type { Trust } from '../evidence/trust.ts'

/** Kinds of liqueur that are told apart by how long taste and colour last. */
export type ShelfKind = 'citrus' | 'strawberry' | 'browning' | 'fruit' | 'walnut_or_herb' | 'not_known'

/** How long taste and colour are at their best in a closed bottle, dark and cool: never a limit of safety. */
export interface ShelfLife {
  readonly kind: ShelfKind
  /** At most; null where nobody has said. */
  readonly months: number | null
  readonly trust: Trust
  readonly source: string
}

const EXPERT = 'note of a distillery engineer, “How long does liqueur last?”, 19 September 2020: an expert, no data'

const lives: Readonly<Record<ShelfKind, Omit<ShelfLife, 'kind'>>> = {
  citrus: {
    months: 12,
    trust: 'common_practice',
    source: 'no study found; Dugo et al. (2000), abstract: acid, warmth and UV change the aroma',
  },
  strawberry: { months: 3, trust: 'published', source: EXPERT },
  browning: { months: 6, trust: 'published', source: EXPERT },
  fruit: { months: 6, trust: 'published', source: EXPERT },
  walnut_or_herb: { months: 36, trust: 'published', source: EXPERT },
  not_known: { months: null, trust: 'not_found', source: 'no study and no expert found' },
}

const BROWNING: ReadonlySet<string> = new Set(['sloe', 'blackcurrant'])

function shelfKindOf({ id, kind }: Botanical): ShelfKind {
  if (kind === 'citrus') return 'citrus'
  if (id === 'strawberry') return 'strawberry'
  if (BROWNING.has(id)) return 'browning'
  if (kind === 'fruit' || kind === 'berry') return 'fruit'
  return kind === 'herb' || id === 'green_walnut' ? 'walnut_or_herb' : 'not_known'
}

/** The plant that is past its best first decides; null of none at all. */
export function shelfLife(plants: readonly Botanical[]): ShelfLife | null {
  const all = plants.map((plant): ShelfLife => {
    const kind = shelfKindOf(plant)
    return { kind, ...lives[kind] }
  })
  const known = all.filter(({ months }) => months !== null)
  return known.toSorted((one, other) => one.months! - other.months!)[0] ?? all[0] ?? null
}

/** An opened bottle, months: sooner where it is half empty. Common practice, no source. */
export const OPENED_MONTHS: readonly [number, number] = [6, 12]
