import { DomainError } from '../../domain-error.ts'
import { shown } from '../../quantity/read/tokens.ts'
import { nameWords, plainWords } from '../../spelling/normalise-name.ts'
import type { Botanical } from '../botanical.ts'
import { byAskWord, byName as byPlantName, keyOf } from '../names/name-index.ts'
import type { Refused } from '../refused.ts'
import { saidOf } from '../words/said-of.ts'
import { allRefused } from './all-refused.ts'
import { foragedRefusal, gardenRefusal } from './foraged.ts'
import {
  holds,
  isGood,
  lengthOf,
  type Named,
  type NameSpan,
  named,
  nearNameIn,
  spansOf,
  touches,
} from './near-refused.ts'
import { HOLDS_PIPS, HOLDS_STONES, refusalRules, UNNAMED } from './refusal-rules.ts'

/** `bitter almond` as `almond bitter`, `rhubarb leaf` as `leaf (of) rhubarb`. */
const turned = ({ words: [first = '', ...rest] }: Named): string => keyOf([...rest, first])
const turnedBack = ({ words }: Named): string => keyOf([words.at(-1) ?? '', ...words.slice(0, -1)])

const byName: ReadonlyMap<string, Named> = new Map(named.toReversed().map((each) => [keyOf(each.words), each]))
const byTurnedName: ReadonlyMap<string, Named> = new Map(
  named
    .toReversed()
    .filter(({ words }) => words.length > 1)
    .flatMap((each) => [[turned(each), each] as const, [turnedBack(each), each] as const])
    .filter(([key]) => !isGood(key)),
)

/** A `+`, a semicolon or a new line begins another thing; a comma may not (`almonds, bitter`). */
const PARTS = /[+;&\n]/

/** A refused name among the words; a longer allowed name around it wins. */
const nameIn = (spans: readonly NameSpan[]): Named | null => {
  const allowed = spans.filter(({ key }) => isGood(key))
  const found = spans
    .map((span) => ({ span, hit: byName.get(span.key), turnedHit: byTurnedName.get(span.key) }))
    .filter(({ span, hit, turnedHit }) => {
      if (hit !== undefined) return !allowed.some((other) => holds(other, span) && lengthOf(other) > lengthOf(span))
      return turnedHit !== undefined && !allowed.some((other) => touches(other, span) && !holds(span, other))
    })
    .sort((one, other) => lengthOf(other.span) - lengthOf(one.span))[0]
  return found?.hit ?? found?.turnedHit ?? null
}

/** `blue berries`: a name of the catalogue, taken apart. */
const isTakenApart = (plain: string): boolean => byPlantName.has(keyOf(nameWords(plain.replaceAll(' ', ''))))

/** Fruit that is called a cherry and holds no stone. */
const NO_CHERRY = /\bground cherr(?:y|ies)\b(?! stones?| pits?)|\bcherry tomato(?:es)?\b/g

/** No rule speaks of an amount alone; asking them all takes longer than all the rest of a short line. */
const ONLY_AMOUNTS =
  /^(?:\d+|\d*(?:mg|kg|ml|cl|dl|lb|oz|vol|[glcfx]))(?: (?:\d+|\d*(?:mg|kg|ml|cl|dl|lb|oz|vol|[glcfx])))*$/

const ruleIn = (plain: string): Refused['id'] | null => {
  if (ONLY_AMOUNTS.test(plain)) return null
  const found = refusalRules.find(({ pattern, except }) =>
    pattern.test(except === undefined ? plain : plain.replace(except, ' ; ')),
  )
  if (found !== undefined) return found.id
  const fruit = plain.replaceAll(NO_CHERRY, ' ; ')
  const { stones, isCrushed } = saidOf(fruit)
  if (isCrushed && stones === 'in' && HOLDS_PIPS.test(fruit)) return 'kernels'
  if (isCrushed && stones !== 'out' && HOLDS_STONES.test(fruit)) return 'cracked_stones'
  return UNNAMED.test(plain) && !isTakenApart(plain) ? 'unnamed_plant' : null
}

/** So many times the most that is usual of a plant are still within its limit. Common practice, no source. */
const WELL_WITHIN = 1.5

const isEasilyKept = ({ ceiling, dose }: Botanical): boolean =>
  ceiling === null || ceiling.gPerLSpirit > WELL_WITHIN * dose.maxGPerL

/** The plant of the catalogue itself in place of its oil, where what is usual of it is well within its limit. */
const plantIn = (spans: readonly NameSpan[]): string | null =>
  spans.flatMap(({ key }) => byPlantName.get(key) ?? []).find(isEasilyKept)?.id ?? null

const insteadOf = (id: Refused['id'], spans: readonly NameSpan[]): string | null =>
  id === 'essential_oils' ? plantIn(spans) : (allRefused.find((each) => each.id === id)?.instead ?? null)

/** Amounts at the front are no part of a name. */
const AMOUNT = /^(?:\d+(?:g|kg|ml|l)? |(?:g|kg|mg|ml|l|oz|lb|tbsp|tsp|cups?) )+/
const TYPED_AMOUNT =
  /^\s*(?:[\d.,/½¼¾]+\s*)+(?:(?:mg|g|kg|ml|cl|dl|l|oz|lbs?|pounds?|ounces?|tbsp|tsp|cups?|grams?|litres?|liters?|grammi)\b\.?\s*)?(?:(?:of|di)\s+)?/i

const AMOUNT_LAST = /\s[\d.,/]+\s*(?:mg|g|kg|ml|cl|dl|l|oz|lbs?|tbsp|tsp)?\s*$/i

const withoutAmount = (part: string): string =>
  part
    .replace(TYPED_AMOUNT, '')
    .replace(AMOUNT_LAST, '')
    .replace(/^[\s%°.,:-]+|[\s,:-]+$/g, '')
    .trim() || part

/** `cherries, stones left in`: the comma tells them from cherry stones. */
const STONES_LEFT =
  /\s*[,(]\s*(?=(?:the\s+)?(?:stones?|pits?|noccioli?)\s+(?:(?:still|left|kept)\s+)*(?:in|inside|whole|intact|interi)\b)/gi

/**
 * Throws where anything in the text is refused, alone or among other things: `refused_botanical` by name or by rule,
 * `foraged_botanical` for a plant of the catalogue that was picked in the wild, `garden_botanical` for one of a garden that is
 * easily another, `near_refused` for one typo.
 * Returns nothing: what is not refused is not thereby known.
 */
export const expectNotRefused = (text: string): void => {
  const typed = shown(text)
  for (const part of text.split(PARTS)) {
    const spans = spansOf(nameWords(part))
    const plain = plainWords(part.replace(STONES_LEFT, ' with ')).join(' ').replace(AMOUNT, '')
    // A word that has a question of its own is asked about, not judged by its parts: `wild fennel`.
    const isAsked = byAskWord.has(keyOf(nameWords(plain)))
    const name = isAsked ? null : nameIn(spans)
    if (name !== null) {
      const { id, instead } = name.refused
      const noun = withoutAmount(part)
      const isWhole = keyOf(nameWords(noun)) === keyOf(name.words)
      const values = {
        typed,
        id,
        name: isWhole ? shown(noun) : name.name,
        instead: id === 'essential_oils' ? plantIn(spans) : instead,
      }
      throw new DomainError('refused', 'refused_botanical', values)
    }
    const keys = spans.map(({ key }) => key)
    const rule = isAsked
      ? null
      : (ruleIn(plain) ?? foragedRefusal(plain, keys, typed) ?? gardenRefusal(plain, keys, part))
    if (rule !== null) {
      throw new DomainError('refused', 'refused_botanical', {
        typed,
        id: rule,
        name: shown(withoutAmount(part)),
        instead: insteadOf(rule, spans),
      })
    }
    const near = nearNameIn(part)
    if (near !== null) {
      throw new DomainError('ambiguous', 'near_refused', {
        typed: shown(withoutAmount(part)),
        id: near.refused.id,
        name: near.name,
      })
    }
  }
}
