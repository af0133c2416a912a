import { unlessRefused } from '../domain-error.ts'
import { nameKey } from '../jar/entry/jar-name.ts'
import { isJuice, materialOf } from '../quantity/materials.ts'
import { botanicalOf } from '../recipe/plan/batch-wish.ts'
import { type Priced, type PriceTyped, pricedKey } from './price.ts'
import { pricedIn } from './read-price.ts'
import type { UsedItem } from './used.ts'

/** A `?` where a price belongs. */
export type PriceAsked = Exclude<PriceTyped, { readonly kind: 'given' }>

/** From so little on nobody names a price by the kilo, g. Judgement. */
const LITTLE_G = 100

/** The first of these that is read as the thing; null where none is. */
function readAs(priced: Priced, names: readonly string[]): string | null {
  const keyOf = (name: string): string | null => unlessRefused(() => pricedKey(pricedIn(name)))
  return names.find((name) => keyOf(name) === pricedKey(priced)) ?? null
}

const asked = (priced: Priced, names: readonly string[], per: string): PriceAsked | null => {
  const of = readAs(priced, names)
  return of === null ? null : { kind: 'asked', of, per, priced }
}

function plantAsked({ plant }: Extract<UsedItem, { kind: 'plant' }>): PriceAsked | null {
  const { id, name, isDried, massG, count } = plant
  if (id === null) return asked({ kind: 'food', name: nameKey(name) }, [name], 'kg')
  const per = count !== null ? 'each' : massG < LITTLE_G ? '100 g' : 'kg'
  const { names, form } = botanicalOf({ id, isDried })
  const [first = names.title] = names.en
  const several = names.en.filter((each) => each !== first && each.startsWith(first) && !each.includes(' '))
  const { state } = form
  const inForm = isDried ? [`dried ${first}`] : []
  const plural = plant.ofZest ? several : []
  const said = [...inForm, ...plural, ...names.en, names.title.toLowerCase(), `${state} ${first}`]
  return asked({ kind: 'plant', id, isDried, isPeel: false }, said, per)
}

/** A `?` in the place of the price of what has none, as it is typed; null of what no word is known for that is read. */
export function askedPrice(item: UsedItem): PriceAsked | null {
  switch (item.kind) {
    case 'plant':
      return plantAsked(item)
    case 'spirit': {
      const { abvPercent, drink } = item.spirit
      const percent = Number(abvPercent.toFixed(1))
      const named = drink === null ? null : asked({ kind: 'spirit', abvPercent, drink }, [`${drink} ${percent}%`], 'l')
      const of = `spirit ${percent}%`
      return named ?? { kind: 'asked', of, per: 'l', priced: { kind: 'spirit', abvPercent, drink: null } }
    }
    case 'sweetener': {
      const { material } = item.sweetener
      const { names } = materialOf(material)
      return {
        kind: 'asked',
        of: names[0]!,
        per: isJuice(material) ? 'l' : 'kg',
        priced: { kind: 'sweetener', material },
      }
    }
    case 'bottles':
      return { kind: 'asked', of: 'bottles', per: 'each', priced: { kind: 'bottle', volumeMl: null } }
  }
}
