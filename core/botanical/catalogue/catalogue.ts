import type { Botanical } from '../botanical.ts'
import { withLimits } from '../limits/limits.ts'
import { berries } from './berries.ts'
import { bitters } from './bitters.ts'
import { citrus } from './citrus.ts'
import { coffeeTeaCocoa } from './coffee-tea-cocoa.ts'
import { botanicalFrom } from './entry.ts'
import { flowers } from './flowers.ts'
import { fruit } from './fruit.ts'
import { herbs } from './herbs.ts'
import { nuts } from './nuts.ts'
import { pineAndOak } from './pine-and-oak.ts'
import { roots } from './roots.ts'
import { entriesOf, type Group } from './rows.ts'
import { spices } from './spices.ts'
import { vegetables } from './vegetables.ts'

/** The tables, by kind. */
export const groups: readonly Group[] = [
  ...citrus,
  ...berries,
  ...fruit,
  ...vegetables,
  ...herbs,
  ...spices,
  ...roots,
  ...bitters,
  ...flowers,
  ...nuts,
  ...coffeeTeaCocoa,
  ...pineAndOak,
]

/** Every plant that can be planned. */
export const catalogue: readonly Botanical[] = groups.flatMap(entriesOf).map(botanicalFrom).map(withLimits)

const byId: ReadonlyMap<string, Botanical> = new Map(catalogue.map((botanical) => [botanical.id, botanical]))

/** The plant with this id; an id that is not in the catalogue is a fault of ours. */
export const botanicalById = (id: string): Botanical => {
  const found = byId.get(id)
  if (found === undefined) throw new Error(`no botanical ${id}`)
  return found
}
