import { DomainError, type Problems, unlessRefused } from '../domain-error.ts'
import { nameKey } from '../jar/entry/jar-name.ts'
import { isDriedForm } from '../jar/entry/start-from-plan.ts'
import { isJuice, materialOf } from '../quantity/materials.ts'
import { materialNamed } from '../quantity/read/material-named.ts'
import { parseAmount } from '../quantity/read/parse-amount.ts'
import { readText, shown } from '../quantity/read/tokens.ts'
import { calledBottleMl, SPIRIT_BOTTLE_ML, US_SPIRIT_BOTTLE_ML } from '../quantity/us-bottles.ts'
import { drinksIn } from '../recipe/drinks-in.ts'
import { readPlants } from '../recipe/plan/find-plants.ts'
import { parseBottles } from '../recipe/plan/parse-bottles.ts'
import { orRefused, STRONG, spiritOf } from '../shopping/parse-have.ts'
import { BARE_SIZE, sizeNamed } from './bare-size.ts'
import { DOLLARS, readMoney } from './money.ts'
import { MOST_PRICE_CHARACTERS, type Per, type Price, type Priced, type PriceRead, type PriceTyped } from './price.ts'
import { AMOUNT_BEFORE, ARTICLE, ITEM, itemsIn, NONE, VERB } from './price-items.ts'

const EACH =
  /^(?:each|apiece|a ?piece|one|1|piece|pieces|cad(?:auno|a|\.)?|l['’]un[oa]|un[oa]|ciascun[oa]|ognun[oa])$/iu
/** What a plant or a bottle is counted in. */
const PIECE =
  /^(?:pods?|sticks?|pieces?|beans?|cloves?|heads?|bunch(?:es)?|sprigs?|leaf|leaves|fruits?|stars?|bottles?|bacc?ell[oi]|stecc(?:a|he)|mazz[oi]|bottigli[ae])$/iu
const BOTTLE =
  /^(?:(?:empty|glass|swing-?top|new)\s+)*(?:bottles?|bottigli[ae](?:\s+vuot[ae])?)(?:\s+(?:of\s+|da\s+|di\s+)?(?<size>\d.*))?$|^(?<before>\d[\d.,]*\s*(?:ml|cl|l))\s+(?:bottles?|bottigli[ae])$/iu
const PEEL = /\b(?:peels?|zests?|rinds?|scorz[ae]|bucc(?:ia|e))\b/iu

const notRead = (typed: string): DomainError => new DomainError('bad_value', 'price_not_read', { typed: shown(typed) })

/** What it is of. Throws what is refused, and what the plants throw where it is nothing that is known. */
export function pricedIn(of: string): Priced {
  const bottle = BOTTLE.exec(of)?.groups
  if (bottle !== undefined) {
    const size = bottle.size ?? bottle.before
    return { kind: 'bottle', volumeMl: size === undefined ? null : parseBottles(size)[0]!.volumeMl }
  }
  if (STRONG.test(of)) {
    const [drink] = drinksIn(`1 l ${of}`, { blends: false })
    const abvPercent = drink!.strength === null ? null : spiritOf(drink!).abvPercent
    return { kind: 'spirit', abvPercent, drink: drink!.drink }
  }
  const words = readText(of, 'sweetener').tokens.map(({ text }) => text)
  const material = materialNamed(words)
  if (material !== null) return { kind: 'sweetener', material }
  const { plants, unknown } = readPlants(of)
  if (plants.length + unknown.length > 1) throw notRead(of)
  const [plant, food] = [plants[0], unknown[0]]
  if (plant !== undefined) {
    return { kind: 'plant', id: plant.botanical.id, isDried: isDriedForm(plant.botanical), isPeel: PEEL.test(of) }
  }
  if (food === undefined || food.food === null) throw food?.problem ?? notRead(of)
  return { kind: 'food', name: nameKey(food.name) }
}

/** How each kind of thing is sold, and an example of it. */
const SOLD_BY: {
  readonly [Kind in Priced['kind']]: { readonly units: readonly Per['unit'][]; readonly usual: string }
} = {
  plant: { units: ['g', 'piece'], usual: 'kg' },
  food: { units: ['g'], usual: 'kg' },
  spirit: { units: ['ml'], usual: 'l' },
  sweetener: { units: ['g', 'ml'], usual: 'kg' },
  bottle: { units: ['piece'], usual: 'each' },
}

/** For how much, in a few words: `kg`, `700 ml`, `each`; null where that tells no amount. */
function perIn(text: string): Per | null {
  if (EACH.test(text) || PIECE.test(text)) return { unit: 'piece', amount: 1 }
  if (/^(?:dozen|dozzina)$/iu.test(text)) return { unit: 'piece', amount: 12 }
  const bottleMl = calledBottleMl(text)
  if (bottleMl !== null) return { unit: 'ml', amount: bottleMl }
  if (/^[1-9]\d{0,3}$/u.test(text)) return { unit: 'piece', amount: Number(text) }
  return unlessRefused(() => {
    const amount = parseAmount(/^\d/u.test(text) ? text : `1 ${text}`)
    return amount.kind === 'mass' ? { unit: 'g', amount: amount.massG } : { unit: 'ml', amount: amount.volumeMl }
  })
}

interface Said {
  readonly typed: string
  readonly of: string
  /** With its currency, or `?`. */
  readonly amount: string
}

const SIZE_ALONE = new RegExp(`^${BARE_SIZE.source}$`, 'u')

/** A bottle of spirit whose size nobody says is one of the United States where it is paid in dollars, and says no size elsewhere. */
const sizeOf = (priced: Priced, per: string, money: string): string =>
  priced.kind === 'spirit' && /^bottles?$/iu.test(per) && DOLLARS.test(money) ? `${US_SPIRIT_BOTTLE_ML} ml` : per

/** A volume of what is weighed and pours is so many grams. */
function perOf(priced: Priced, text: string, { typed, of, amount }: Said): Per {
  const { units, usual } = SOLD_BY[priced.kind]
  const isSize = priced.kind === 'spirit' && SIZE_ALONE.test(text)
  const isBottle = priced.kind === 'spirit' && /^bottles?$/iu.test(text)
  const example = writePrice({
    of,
    amount,
    per: isSize ? sizeNamed(text) : isBottle ? `${SPIRIT_BOTTLE_ML} ml` : usual,
  })
  const per = perIn(text)
  if (per === null || !units.includes(per.unit)) {
    throw new DomainError('bad_value', 'price_per_what', { typed: shown(typed), example })
  }
  if (priced.kind !== 'sweetener' || per.unit !== 'ml') return per
  if (!isJuice(priced.material) && !materialOf(priced.material).isSyrup) {
    throw new DomainError('bad_value', 'price_per_what', { typed: shown(typed), example })
  }
  return { unit: 'g', amount: per.amount * materialOf(priced.material).pouredGPerMl }
}

const tooLong = (price: Price): boolean =>
  Object.values(price).some((text: string) => text.length > MOST_PRICE_CHARACTERS)

function itemIn(text: string): PriceTyped {
  const typed = text.trim().replace(/\s+/gu, ' ')
  const none = NONE.exec(typed)?.groups
  if (none !== undefined) return { kind: 'none', of: none.of!, per: '', priced: pricedIn(none.of!) }
  const found = ITEM.exec(typed)?.groups
  if (found === undefined) throw notRead(typed)
  const name = found.of!.replace(VERB, '').replace(ARTICLE, '').trim()
  const isOpen = found.per === undefined && found.each === undefined && !BOTTLE.test(name)
  const before = isOpen ? AMOUNT_BEFORE.exec(name)?.groups : undefined
  // `10 lemons 40 cents each`: the price is of any of them.
  const of = before?.of ?? (BOTTLE.test(name) ? name : (AMOUNT_BEFORE.exec(name)?.groups?.of ?? name))
  const priced = pricedIn(of)
  const said = found.per ?? found.each ?? before?.per ?? (priced.kind === 'bottle' ? 'each' : '')
  const per = sizeOf(priced, said.trim().replace(/^an?\s+/iu, ''), found.money!)
  const read = perOf(priced, per, { typed, of, amount: found.money!.trim() })
  if (found.money === '?') return { kind: 'asked', of, per, priced }
  const money = readMoney(found.money!)
  const price = { of, amount: found.money!.trim(), per }
  if (money === null || tooLong(price)) throw notRead(typed)
  return { kind: 'given', price, priced, money, per: read }
}

/** The example for one of several is the whole list: what was said of the others is not lost. */
function withOthers<Read>(read: () => Read, items: readonly string[], at: number): Read {
  try {
    return read()
  } catch (error) {
    if (!(error instanceof DomainError) || error.problem !== 'price_per_what' || items.length === 1) throw error
    const { typed, example } = error.values as Problems['price_per_what']
    const all = items.with(at, example).map((item) => item.trim())
    throw new DomainError('bad_value', 'price_per_what', { typed, example: all.join(' + ') })
  }
}

/** `lemons 4/kg + sugar 1.20/kg + spirit 95% 18/l + bottles 0.80 each`; `?` stands for a price, `none` takes one away. */
export function parsePrices(text: string): readonly PriceTyped[] {
  const items = itemsIn(text)
  if (items.some((item) => item.trim() === ''))
    throw new DomainError('bad_value', 'dangling_plus', { typed: shown(text) })
  return items.map((item, at) => orRefused(() => withOthers(() => itemIn(item), items, at), item))
}

const isEach = (per: string): boolean => /^(?:each|apiece|cad|ciascun|ognun)/iu.test(per)

/** How a price is typed. */
const writePrice = ({ of, amount, per }: Price): string =>
  isEach(per) ? `${of} ${amount} ${per}` : `${of} ${amount}/${per}`

/** With a blank that stands by itself. */
const askedText = ({ of, per }: { readonly of: string; readonly per: string }): string =>
  isEach(per) ? `${of} ? ${per}` : `${of} ? per ${per}`

/** One of several, likewise. */
export function writePriceTyped(typed: PriceTyped): string {
  if (typed.kind === 'given') return writePrice(typed.price)
  return typed.kind === 'none' ? `${typed.of} none` : askedText(typed)
}

/** A price that is kept; null where it cannot be read any more. */
export function readPrice(price: Price): PriceRead | null {
  return unlessRefused(() => {
    const [read] = parsePrices(writePrice(price))
    if (read?.kind !== 'given') return null
    const { priced, money, per } = read
    return { price, priced, money, per }
  })
}
