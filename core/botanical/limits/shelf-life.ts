import { KEEPS_ABV_PERCENT, type Keeping } from '../../liquid/keeping.ts'
import type { Botanical } from '../botanical.ts'
import type { Trust } from '../evidence/trust.ts'
import type { FoodKind } from '../food.ts'

/** Kinds of liqueur that are told apart by how long taste and colour last. */
export type ShelfKind = 'citrus' | 'strawberry' | 'browning' | 'fruit' | 'walnut_or_herb' | 'nut' | 'not_known'

/** A plant of a drink, of the catalogue or not; `kind` is null where nobody knows what it is. */
export interface ShelfPlant {
  readonly id: string | null
  readonly kind: Botanical['kind'] | FoodKind | null
}

/** What the drink is, beside its plants. */
export interface ShelfDrink {
  readonly abvPercent: number
  readonly keeping: Keeping
}

/** How long taste and colour are at their best in a closed bottle, dark and cool: never a limit of safety. */
export interface ShelfLife {
  readonly kind: ShelfKind
  /** At most; null where nobody has said, or where it does not keep. */
  readonly months: number | null
  /** It is too weak for the months of its kind. */
  readonly isWeak: boolean
  readonly trust: Trust
  readonly source: string
}

const EXPERT = 'note of a distillery engineer, “How long does liqueur last?”, 19 September 2020: an expert, no data'

const lives: Readonly<Record<ShelfKind, Omit<ShelfLife, 'kind' | 'isWeak'>>> = {
  citrus: {
    months: 12,
    trust: 'common_practice',
    source: 'no study found; Dugo et al. (2000), abstract: acid, warmth and UV change the aroma',
  },
  strawberry: { months: 3, trust: 'published', source: EXPERT },
  browning: { months: 6, trust: 'published', source: EXPERT },
  fruit: { months: 6, trust: 'published', source: EXPERT },
  walnut_or_herb: { months: 36, trust: 'published', source: EXPERT },
  nut: { months: null, trust: 'not_found', source: 'no study and no expert found; a nut’s oil goes rancid in air' },
  not_known: { months: null, trust: 'not_found', source: 'no study and no expert found' },
}

const BROWNING: ReadonlySet<string> = new Set(['sloe', 'blackcurrant'])

function shelfKindOf({ id, kind }: ShelfPlant): ShelfKind {
  if (kind === 'citrus') return 'citrus'
  if (id === 'strawberry') return 'strawberry'
  if (id !== null && BROWNING.has(id)) return 'browning'
  if (kind === 'fruit' || kind === 'berry') return 'fruit'
  if (kind === 'herb' || id === 'green_walnut') return 'walnut_or_herb'
  return kind === 'nut' ? 'nut' : 'not_known'
}

/** Below the strength at which nothing ferments a closed bottle is at its best no longer than this, months. Judgement. */
const WEAK_MONTHS = 6

/** A computed strength may miss its round number by the last digit, % vol. */
const LAST_DIGIT_PERCENT = 1e-6

const isWeakAt = (abvPercent: number): boolean => abvPercent < KEEPS_ABV_PERCENT - LAST_DIGIT_PERCENT

/**
 * The plant that is past its best first decides; null of none at all. Of a `drink` that may not keep there are no months;
 * null: of which nothing is known yet.
 */
export function shelfLife(plants: readonly ShelfPlant[], drink: ShelfDrink | null): ShelfLife | null {
  const isWeak = drink !== null && isWeakAt(drink.abvPercent)
  const all = plants.map((plant): ShelfLife => {
    const kind = shelfKindOf(plant)
    return { kind, isWeak, ...lives[kind] }
  })
  const known = all.filter(({ months }) => months !== null)
  const life = known.toSorted((one, other) => one.months! - other.months!)[0] ?? all[0] ?? null
  if (life === null || life.months === null || drink === null) return life
  if (drink.keeping !== 'keeps') return { ...life, months: null }
  return isWeak ? { ...life, months: Math.min(WEAK_MONTHS, life.months) } : life
}

/** An opened bottle, months: sooner where it is half empty. Common practice, no source. */
const OPENED_MONTHS: readonly [number, number] = [6, 12]

/** The same of a drink that is at its best for so many months closed: open it lasts no longer. */
export const openedMonths = (closedMonths: number | null): readonly [number, number] => {
  const [from, to] = OPENED_MONTHS
  return closedMonths === null ? OPENED_MONTHS : [Math.min(from, closedMonths), Math.min(to, closedMonths)]
}
