import { plantSaid } from '../../../core/botanical/find/plant-said.ts'
import type { HappeningKind } from '../../../core/jar/entry/entry.ts'
import { saidText } from '../../../core/quantity/said/said-text.ts'
import type { Bit, Role, Sentence, TalkJar, ToldEntry } from '../bits/bit.ts'
import { jarCalled, jarsNamed, runningAmong } from '../bits/jars-of.ts'
import type { CallRead, TalkReading } from '../frames/reading.ts'
import { type Concept, DEEDS } from '../lexicon/lexicon.ts'
import { correctedStart, isDayOf } from './correct-start.ts'
import type { Remembered } from './remembered.ts'
import { callReading, whichJar } from './rule.ts'
import { startToldLoosely } from './start-told-loosely.ts'

const NUMBER = String.raw`(\d+(?:[.,]\d+)?)`
const NOT = '(?:not|non|instead of|rather than|invece (?:di|che|dei|delle))'
const SMALL = String.raw`(?:(?:the|a|i|gli|le|il|was|were|it was|around|about|circa)\s+)*`
/** `910 ml of lemon not 930`, `non 930 ma 910`. */
const RIGHT_FIRST = new RegExp(String.raw`${NUMBER}[^\d.;?!]*?\b${NOT}\s+${SMALL}${NUMBER}`, 'i')
const WRONG_FIRST = new RegExp(
  String.raw`\b(?:not|non)\s+${SMALL}${NUMBER}[^\d.;?!]*?\b(?:but|ma|it was|erano|era)\s+${NUMBER}`,
  'i',
)

const WAS =
  /\b(?:was|were|should|shouldve|actually|meant|sorry|oops|wrong|put in|went in|had|era|erano|doveva|dovevano|scusa|messo|messi|messe)\b/i

const LONGEST = 22

/** What of an entry can be put right. */
const AMOUNTS: { readonly [Kind in HappeningKind]?: readonly string[] } = {
  started: ['of', 'spirit', 'strength', 'sugar'],
  added: ['of', 'spirit', 'strength', 'water', 'sugar'],
  tasted: ['rating'],
  strained: ['measured', 'strength', 'rinse'],
  filtered: ['measured'],
  sweetened: ['water', 'sugar'],
  fruit_sugared: ['sugar'],
  bottled: ['bottles'],
}

const KINDS: readonly (readonly [Concept, readonly HappeningKind[]])[] = [
  ['strained', ['strained']],
  ['filtered', ['filtered', 'strained']],
  ['refiltered', ['filtered', 'strained']],
  ['sweetened', ['sweetened', 'fruit_sugared']],
  ['bottled', ['bottled']],
  ['tasted', ['tasted']],
]

const plain = (number: string): string => number.replace(',', '.')

const numberPattern = (number: string): RegExp =>
  new RegExp(`(?<![\\d.,])${plain(number).replace('.', '[.,]')}(?![\\d]|[.,]\\d)`)

interface Held {
  readonly jar: TalkJar
  readonly entry: ToldEntry
  readonly option: string
  readonly items: readonly string[]
  readonly at: number
}

const UNITS: { readonly [Kind in Bit['kind']]?: RegExp } = {
  volume: /\d\s*(?:ml|cl|dl|l|litres?|liters?|litri|litro|fl ?oz|cups?|pints?|quarts?)\b/i,
  mass: /\d\s*(?:g|kg|oz|lbs?|grams?|grammi)\b/i,
  strength: /^\s*\d+(?:[.,]\d+)?\s*$|\d\s*(?:%|proof)/,
}

const OF_ROLE: { readonly [Of in Role]?: string } = {
  of_sugar: 'sugar',
  of_water: 'water',
  of_spirit: 'spirit',
  of_plant: 'of',
}

const NONE: ReadonlySet<string> = new Set()

/** Ids of what a part of the plants of a jar names: `400 g raspberries`. */
const idsIn = (item: string): readonly string[] => {
  const { tokens } = saidText(item)
  const ids = tokens.map((_, at) => plantSaid(tokens, at, NONE)?.ids ?? [])
  return ids.find((each) => each.length > 0) ?? []
}

const stemOf = (word: string): string =>
  word
    .toLowerCase()
    .replace(/(?:ies|y)$/, 'i')
    .replace(/(?:es|[aeios])$/, '')

/** Whether a number that is told may stand in a part of an option, by what it is of and by its unit. */
function mayStandIn({ kind, role, with: place }: Bit, bits: readonly Bit[], option: string, item: string): boolean {
  const own = role === null ? undefined : OF_ROLE[role]
  if (own !== undefined && own !== option) return false
  if (kind === 'bottles' || kind === 'rating') return option === kind
  const plant = place === undefined ? undefined : bits[place]
  if (option === 'of' && plant?.kind === 'plant') {
    const words = item.split(/\s+/).map(stemOf)
    const ids = idsIn(item)
    if (plant.ids?.some((id) => ids.includes(id)) === true) return true
    return plant.text.split(/\s+/).some((word) => words.includes(stemOf(word)))
  }
  return UNITS[kind]?.test(option === 'strength' && kind === 'strength' ? '40' : item) ?? true
}

/** Everything that was typed for a jar in which a number may stand; with no pattern any number is meant. */
const heldIn = (jar: TalkJar, wrong: RegExp, number: Bit, bits: readonly Bit[]): readonly Held[] =>
  jar.told().flatMap((entry) =>
    entry.typed.flatMap(([option, text]) => {
      if (AMOUNTS[entry.kind]?.includes(option) !== true) return []
      const items = text.split(/\s*\+\s*/)
      const at = items.findIndex((item) => wrong.test(item) && mayStandIn(number, bits, option, item))
      return at === -1 ? [] : [{ jar, entry, option, items, at }]
    }),
  )

const kindsTold = ({ has }: Sentence): readonly HappeningKind[] =>
  KINDS.flatMap(([concept, all]) => (has(concept) ? all : []))

/** Those of the kind of deed that is told, else all. */
function ofDeed(held: readonly Held[], sentence: Sentence): readonly Held[] {
  const kinds = kindsTold(sentence)
  const fitting = held.filter(({ entry }) => kinds.includes(entry.kind))
  return fitting.length > 0 ? fitting : held
}

function callFor({ jar, entry, option, items, at }: Held, wrong: RegExp, right: string): CallRead {
  const now = items.with(at, items[at]!.replace(wrong, right)).join(' + ')
  return { command: 'jar correct', options: { jar: jar.name, entry: String(entry.seq), [option]: now } }
}

const ANY_NUMBER = /\d+(?:[.,]\d+)?/

/**
 * `I strained 910 ml of lemon not 930`, `yesterday I put in 450 g raspberries, not 400`: the entry that holds the number that is not so
 * is put right; nothing is added or filtered. Null where no entry of a jar that may be meant holds it.
 */
function correctedEntry(sentence: Sentence, { call, step }: Remembered): TalkReading | null {
  const { typed, bits, jars, has } = sentence
  const first = RIGHT_FIRST.exec(typed.text)
  const second = first === null ? WRONG_FIRST.exec(typed.text) : null
  const [right, wrong] = first === null ? [second?.[2], second?.[1]] : [first[1], first[2]]
  if (right === undefined || wrong === undefined || plain(right) === plain(wrong)) return null
  if (has('asking', 'wish') || typed.text.includes('?') || typed.tokens.length > LONGEST) return null
  if (!has(...DEEDS) && !WAS.test(typed.text)) return null
  // What was only worked out last, and holds it, is changed.
  const isOfCall = Object.values(call?.options ?? {}).some((text) => numberPattern(wrong).test(text))
  if (isOfCall && call !== null && !call.command.startsWith('jar ') && !has(...DEEDS)) return null
  const running = runningAmong(jars)
  const named = jarsNamed(bits, running).map(({ jar }) => jar)
  const number = bits.find((bit) => numberPattern(right).test(bit.text))
  if (number === undefined) return null
  const among = named.length > 0 ? named : running
  const those = (pattern: RegExp): readonly Held[] => among.flatMap((jar) => heldIn(jar, pattern, number, bits))
  const held = ofDeed(those(numberPattern(wrong)), sentence)
  // Nothing holds it: the deed that is told was told before, with another number.
  const isHeld = held.length > 0
  const kinds = kindsTold(sentence)
  const meant = isHeld ? held : those(ANY_NUMBER).filter(({ entry }) => kinds.includes(entry.kind))
  const lastJar = jarCalled(step?.options.jar, among)
  const ofLast = meant.filter(({ jar }) => jar === lastJar)
  const all = ofLast.length > 0 ? ofLast : meant
  const last = [...new Set(all.map(({ jar }) => jar))].map((jar) => all.findLast((each) => each.jar === jar)!)
  const [only, another] = last
  if (only === undefined) return null
  const calls = last.map((each) => callFor(each, isHeld ? numberPattern(wrong) : ANY_NUMBER, right))
  if (another !== undefined) return whichJar(calls[0]!, calls)
  if (isHeld && isDayOf(sentence, only.entry.day)) return callReading(calls[0]!, 'record')
  return { kind: 'question', call: calls[0]!, about: { kind: 'told_or_asked' }, choices: calls, leftOut: [] }
}

/** A number of a jar that was told wrongly, put right: of what it was started with, or of any entry. */
export const toldRight = (sentence: Sentence, said: Remembered): TalkReading | null =>
  correctedStart(sentence, said) ?? correctedEntry(sentence, said) ?? startToldLoosely(sentence, said)
