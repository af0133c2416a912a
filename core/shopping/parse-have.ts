import { expectNotRefused } from '../botanical/refuse/refusal.ts'
import { DomainError, unlessRefused } from '../domain-error.ts'
import { isDriedForm } from '../jar/entry/start-from-plan.ts'
import { materialOf } from '../quantity/materials.ts'
import { exactly } from '../quantity/measured/measured.ts'
import { materialNamed } from '../quantity/read/material-named.ts'
import { hasAmount, sweeteningOf } from '../quantity/read/parse-sugar.ts'
import { splitList } from '../quantity/read/split-list.ts'
import { shown, type TypedText } from '../quantity/read/tokens.ts'
import { type DrinkPart, drinksIn } from '../recipe/drinks-in.ts'
import { type FoundPlant, findPlants } from '../recipe/plan/find-plants.ts'
import { parseBottles } from '../recipe/plan/parse-bottles.ts'
import type { Have, VesselsAtHand } from './have.ts'
import { type PlantNeed, plantNeed, type SpiritNeed } from './needs.ts'
import { spiritNeeds } from './needs-of-plan.ts'
import { packOf } from './pack-of.ts'

/** Of which an example tells. */
const PACK_G = 500

const BOTTLE = /\b(?:bottles?|bottigli[ae])\b/iu
const JAR = /\b(?:jars?|barattol[oi]|vas[oi]|vasett[oi])\b/iu
const CLOTH =
  /^(?:(?:a|an|the|some|my|straining|clean|un|una|il|la)\s+)*(?:cloths?|muslin|cheesecloth|sieve|strainer|tel[oi]|garz[ae]|colino)$/iu
const PAPER =
  /^(?:(?:a|the|some|my|un|dei|i)\s+)*(?:(?:paper|coffee)\s+)?(?:filters?|filtr[oi](?:\s+(?:di\s+carta|da\s+caff[eè]))?|filter\s+papers?)$/iu

/** Words by which a thing is a spirit, and nothing that sweetens and no plant. */
export const STRONG = /%|°|\bproof\b|\b(?:vodka|gin|rum|grappa|brandy|whisky|whiskey|spirits?|alcohol|alcool|alcol)\b/iu

/** A spirit of a drink that was read; throws `no_number` where its strength was not said. */
export function spiritOf({ amount, strength, sweetness, typed, drink }: DrinkPart): SpiritNeed {
  if (strength === null) throw new DomainError('bad_value', 'no_number', { typed: shown(typed), wanted: 'strength' })
  const [only] = spiritNeeds([
    {
      amount: exactly(amount.kind === 'mass' ? amount.massG : amount.volumeMl),
      by: amount.kind === 'mass' ? 'mass' : 'volume',
      atC: amount.kind === 'mass' ? 20 : (amount.atC ?? 20),
      abvPercent: exactly(strength.abvPercent),
      abvAtC: strength.atC,
      readsProof: strength.unit === 'proof',
      sugarGPerL: exactly(sweetness?.sugarGPerL ?? 0),
      drink,
    },
  ])
  return only!
}

/** The words of a sweetener or a juice, with its amount before it or without one; null where it is none. */
function sweetenerIn(item: TypedText): Have | null {
  const typed = item.text.trim()
  const words = item.tokens.filter(({ kind }) => kind === 'word').map(({ text }) => text)
  if (!hasAmount(item)) {
    const material = words.length === 0 ? null : materialNamed(words)
    return material === null ? null : { kind: 'sweetener', typed, sweetener: { material, massG: null } }
  }
  return unlessRefused(() => {
    const { material, massG } = sweeteningOf({ ...item, wanted: 'sugar' })
    // A bare amount is of nobody knows what.
    return words.length < 2 ? null : { kind: 'sweetener', typed, sweetener: { material, massG } }
  })
}

const SEVERAL = /\b(?:bottles|bottiglie|jars|barattoli|vasi|vasetti)\b/iu

/** How many there are, and their size; one of which no number is said is one. Throws `bottles_not_read`. */
function vesselsIn(typed: string, word: RegExp): VesselsAtHand {
  const text = typed
    .replace(/^(?:an?|un[ao]?|the|my)\s+/iu, '')
    .replace(word, ' x ')
    .replace(/\s+x\s*$/iu, '')
    .replace(/x\s+(?:x\s+)?(?:of|di|da)\s+/iu, 'x ')
    .trim()
    .replace(/^x\s+(?=\d)/iu, '')
  const uncounted = SEVERAL.test(typed) ? null : 1
  if (text === '' || text === 'x') return { count: uncounted, volumeMl: null }
  const [only] = parseBottles(text)
  return { count: only!.count ?? uncounted, volumeMl: only!.size === null ? null : only!.volumeMl }
}

function plantAtHand({ botanical, massG, count }: FoundPlant, typed: string): Have {
  const need: PlantNeed = plantNeed({
    id: botanical.id,
    name: botanical.names.title,
    isDried: isDriedForm(botanical),
    massG: massG?.value ?? 1,
    count,
  })
  return {
    kind: 'plant',
    typed,
    plant: massG === null ? { ...need, count: null, massG: null } : { ...need, massG: massG.value },
  }
}

/** One plant, or several as `of:` takes them: `3 lemons and 2 oranges`. */
function plantsIn(typed: string): readonly Have[] {
  const found = findPlants(typed)
  return found.map((plant) => plantAtHand(plant, found.length === 1 ? typed : plant.typed.typed))
}

function itemsIn(item: TypedText): readonly Have[] {
  const typed = item.text.trim()
  if (CLOTH.test(typed)) return [{ kind: 'cloth', typed }]
  if (PAPER.test(typed)) return [{ kind: 'paper', typed }]
  if (STRONG.test(typed)) {
    return [{ kind: 'spirit', typed, spirit: spiritOf(drinksIn(typed, { blends: false })[0]!) }]
  }
  if (JAR.test(typed)) return [{ kind: 'jars', typed, vessels: vesselsIn(typed, JAR) }]
  if (BOTTLE.test(typed)) return [{ kind: 'bottles', typed, vessels: vesselsIn(typed, BOTTLE) }]
  const sweetener = sweetenerIn(item)
  return sweetener === null ? plantsIn(typed) : [sweetener]
}

/** What cannot be read and is refused is said to be that; a sweetener of the table is none, whatever its name. */
export function orRefused<Read>(read: () => Read, text: string): Read {
  try {
    return read()
  } catch (error) {
    expectNotRefused(text)
    throw error
  }
}

/**
 * What is at hand, joined with `+`: `500 g sugar + 1 l 95% + 3 lemons + 4 bottles of 500 ml + a 1.5 l jar + muslin`. A plant or a
 * sweetener without an amount is as much as it takes. What is refused is refused here too.
 */
export function parseHave(text: string): readonly Have[] {
  const items = splitList(text)
  items.forEach((item, at) => {
    expectWeighed(items, at, item.text.trim())
  })
  return items.flatMap((item) => orRefused(() => itemsIn(item), item.text))
}

/** Throws `pack_weight` of a bag of sugar, with a text in which it weighs something. */
function expectWeighed(items: readonly TypedText[], at: number, typed: string): void {
  const material = packOf(typed)
  if (material === null) return
  const weighed = `${PACK_G} g ${materialOf(material).names[0]}`
  const example = items.map((item, place) => (place === at ? weighed : item.text.trim())).join(' + ')
  throw new DomainError('missing_option', 'pack_weight', { typed: shown(typed), example })
}
