import type { PieceKind } from '../../botanical/botanical.ts'
import { plantList, SOME_OF } from '../../botanical/words/plant-list.ts'
import { DomainError } from '../../domain-error.ts'
import type { Count, Mass } from '../../quantity/quantities.ts'
import { massAt } from '../../quantity/read/amount-at.ts'
import { parseCount } from '../../quantity/read/parse-count.ts'
import { isBelowZero, readNumber } from '../../quantity/read/read-number.ts'
import { splitList } from '../../quantity/read/split-list.ts'
import { readText, shown, type TypedText, textFrom } from '../../quantity/read/tokens.ts'
import { anyUnitAt } from '../../quantity/read/unit-at.ts'
import { TEASPOONS_A_TABLESPOON } from '../../quantity/write/household.ts'
import { COUNTED_WITH_OF, MEASURE_OF, PIECE_OF, withoutSize } from './piece-words.ts'

/** One of the plants of `of:`. */
export interface TypedPlant {
  /** Null where only the plant was named: the usual dose is meant. */
  readonly amount: Mass | Count | null
  /** What is counted, where that is more than `parseCount` knows: a thumb, a head, a spoonful. */
  readonly kind: PieceKind | null
  /** What the plant was called; empty where only an amount was said. */
  readonly noun: string
  /** The whole item, fit to be shown. */
  readonly typed: string
  /** True where the amount was a measure that tells no weight, a handful or a cup; `amount` is null then. */
  readonly isUnweighed?: true
}

const ARTICLE = /^(?:an?|one|un['’]?|una|uno)\s*(?<=\s|['’])/i
const ZEST_OF = /^(?:the\s+)?(?:zests?|peels?|rinds?|scorz[ae]|bucc(?:ia|e))\s+(?:of|di)\s+(?=[0-9½¼¾]|an?\s)/i
const OF = new Set(['of', 'di', 'd'])

const unweighed = (noun: string, typed: string): TypedPlant => ({
  amount: null,
  kind: null,
  noun,
  typed,
  isUnweighed: true,
})

const plantOf = (item: TypedText): TypedPlant => {
  const typed = shown(item.text)
  const some = SOME_OF.exec(item.text)
  if (some !== null) return unweighed(item.text.slice(some[0].length), typed)
  const text = item.text.replace(ZEST_OF, '').replace(ARTICLE, '1 ')
  const read = readText(text, 'mass')
  const number = read.tokens.findIndex((_, at) => readNumber(read, at) !== null)
  if (number === -1) return { amount: null, kind: null, noun: text, typed }
  if (isBelowZero(read, number)) throw new DomainError('bad_value', 'negative_number', { typed, wanted: 'plant' })
  const unitFound = anyUnitAt(read, readNumber(read, number)!.next)
  const unit = unitFound?.unit
  if (unit === undefined) return counted(read, number, typed)
  if (unit.key === 'tbsp') return tableSpooned(read, number, unitFound!.next, typed)
  if (unit.key === 'tsp') return spooned(read, number, unitFound!.next, 'teaspoon', typed)
  if (unit.key === 'cup') return spooned(read, number, unitFound!.next, 'cup', typed)
  if (unit.kind !== 'mass') return unweighed(named(read, number, unitFound!.next), typed)
  const { amount, next } = massAt(read, number)
  return { amount, kind: null, noun: named(read, number, next), typed }
}

/** The words before the amount and after it. */
const named = (read: TypedText, number: number, next: number): string => {
  const from = OF.has(read.tokens[next]?.text ?? '') ? next + 1 : next
  return [textFrom(read, 0, number), textFrom(read, from)].filter((words) => words !== '').join(' ')
}

/** `2 tsp black tea`, `2 cups raspberries`: by a measure, where its weight is known. */
const spooned = (read: TypedText, number: number, next: number, kind: PieceKind, typed: string): TypedPlant => {
  const noun = named(read, number, next)
  const until = readNumber(read, number)!.next
  const amount = parseCount(`${textFrom(read, number, until)} ${noun}`)
  return { amount, kind, noun, typed }
}

/** Three teaspoons each. */
function tableSpooned(read: TypedText, number: number, next: number, typed: string): TypedPlant {
  const spoons = spooned(read, number, next, 'teaspoon', typed)
  const { amount } = spoons
  if (amount?.kind !== 'count') return spoons
  return { ...spoons, amount: { ...amount, count: TEASPOONS_A_TABLESPOON * amount.count } }
}

/** `8 lemons`, `1 stick of cinnamon`, and the number last: `lemons 8`. */
const counted = (read: TypedText, number: number, typed: string): TypedPlant => {
  const turned = number === 0 ? read : readText(`${textFrom(read, number)} ${textFrom(read, 0, number)}`, 'count')
  const behind = readNumber(turned, 0)!.next
  const whole = withoutSize(textFrom(turned, behind))
  const amount = parseCount(`${textFrom(turned, 0, behind)} ${whole}`)
  const measure = MEASURE_OF.exec(whole)
  if (measure !== null) return unweighed(whole.slice(measure[0].length), typed)
  const match = PIECE_OF.exec(whole)
  if (match === null) return { amount, kind: null, noun: amount.noun, typed }
  const kind = COUNTED_WITH_OF[match.slice(1).findIndex((each) => each !== undefined)]!
  return { amount: { ...amount, piece: null }, kind, noun: whole.slice(match[0].length), typed }
}

/** Plants joined with `+` or as people list them (see `plantList`): `8 lemons + 30 g ginger`, `lemon`, `1 stick cinnamon`; one may lack its name. */
export const parseAmounts = (text: string): readonly TypedPlant[] => splitList(plantList(text)).map(plantOf)

export function expectNamed({ noun, typed }: TypedPlant): void {
  if (noun === '') throw new DomainError('bad_value', 'plant_not_named', { typed })
}

/** The same, all of them named. */
export function parsePlants(text: string): readonly TypedPlant[] {
  const plants = parseAmounts(text)
  plants.forEach(expectNamed)
  return plants
}
