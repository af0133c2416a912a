import type { AskId } from '../botanical/ask-back.ts'
import { findBotanical } from '../botanical/find/find.ts'
import type { BotanicalProblems } from '../botanical/problems.ts'
import { expectNotRefused } from '../botanical/refuse/refusal.ts'
import { plantList } from '../botanical/words/plant-list.ts'
import { DomainError } from '../domain-error.ts'
import type { MaterialId } from '../quantity/materials.ts'
import type { Piece } from '../quantity/quantities.ts'
import { parseCount } from '../quantity/read/parse-count.ts'
import { readNumber } from '../quantity/read/read-number.ts'
import { splitList } from '../quantity/read/split-list.ts'
import { shown, type TypedText, textFrom } from '../quantity/read/tokens.ts'
import { anyUnitAt } from '../quantity/read/unit-at.ts'
import { allergensNamed, withoutUnsulphured } from './allergens-named.ts'
import { type ForGuests, forGuests } from './for-guests.ts'

/** A plant of the drink; its ids in the catalogue, several where its form is all the same to a label. */
export interface LabelPlant {
  readonly typed: string
  /** The whole text for it, its amount included. */
  readonly item: string
  /** Empty where it is not in the catalogue. */
  readonly ids: readonly string[]
}

interface Named {
  readonly noun: string
  readonly piece: Piece | null
}

const JOINING = new Set(['of', 'di'])

/** Questions about the form of one plant, or its next of kin: no law and no allergen depends on the answer. */
const FORMS: readonly (AskId | null)[] = ['coffee', 'bay', 'chilli', 'cinnamon', 'mint', 'fennel', 'tea', 'pine']

const valuesOf = <Key extends keyof BotanicalProblems>(error: unknown, key: Key): BotanicalProblems[Key] | null =>
  error instanceof DomainError && error.problem === key ? (error.values as BotanicalProblems[Key]) : null

/** The ids of a noun; a plant that is not known is none, for it can still be labelled. */
const idsOf = ({ noun, piece }: Named): readonly string[] => {
  try {
    return [findBotanical(noun, piece).botanical.id]
  } catch (error) {
    const unclear = valuesOf(error, 'unclear_botanical')
    if (unclear !== null && FORMS.includes(unclear.ask)) return unclear.choices
    // Its allergen is the same, whichever of them it is: `walnuts`, green or ripe.
    if (unclear !== null && unclear.refused.length === 0 && allergensNamed(noun).isWhole) return []
    const form = valuesOf(error, 'unknown_form')
    if (form !== null) return [form.id]
    if (valuesOf(error, 'unknown_botanical') !== null) return []
    throw error
  }
}

/** The name without an amount before it: `8 lemons`, `30 g of ginger` and `1 stick of cinnamon` name plants. */
const nameOf = (item: TypedText): Named => {
  const number = readNumber(item, 0)
  if (number === null) return { noun: item.text, piece: null }
  const unit = anyUnitAt(item, number.next)
  if (unit === null) return parseCount(item.text)
  const isJoined = JOINING.has(item.tokens[unit.next]?.text ?? '')
  return { noun: textFrom(item, isJoined ? unit.next + 1 : unit.next), piece: null }
}

/** What a drink is of, amounts passed over: `lemon`, `8 lemons + 30 g ginger`. Refuses what is never planned. */
export const parseLabelPlants = (text: string): readonly LabelPlant[] => {
  expectNotRefused(text)
  return splitList(plantList(text)).map((item) => {
    const named = nameOf(item)
    const noun = withoutUnsulphured(named.noun) ?? named.noun
    return { typed: shown(named.noun || item.text), item: item.text, ids: idsOf({ ...named, noun }) }
  })
}

/** What has to be said of them to whoever is offered a glass. */
export const labelPlantsForGuests = (
  plants: readonly Pick<LabelPlant, 'typed' | 'ids'>[],
  sweeteners: readonly MaterialId[] = [],
): ForGuests =>
  forGuests(
    plants.flatMap(({ typed, ids }) => (ids.length === 0 ? [null] : ids).map((id) => ({ id, name: typed }))),
    sweeteners,
  )
