import { wordsFrom } from '../../../core/quantity/read/tokens.ts'
import type { Bit, Sentence, TalkJar } from '../bits/bit.ts'
import { jarsNamed, runningAmong } from '../bits/jars-of.ts'
import type { CallRead, TalkReading } from '../frames/reading.ts'
import { numberOf } from '../frames/typed-number.ts'
import { DEEDS } from '../lexicon/lexicon.ts'
import { withOption } from './change-call.ts'
import type { Remembered } from './remembered.ts'
import { callReading, digitsOf, numbersOf } from './rule.ts'

/** Said of what was. */
const WAS =
  /\b(?:was|were|meant|mean|sorry|oops|whoops|ops|should|shouldve|actually|really|used|had|no|nope|scusa|scusate|era|erano|anzi|volevo|intendevo|doveva|dovevano|dovrebbe|realta)\b/u
/** That it is put right, of a jar that was not started just now. */
const RIGHTED =
  /\b(?:meant|sorry|oops|whoops|should have|shouldve|actually|really|in truth|hang on|wait|scusa|scusate|ops|anzi|volevo dire|intendevo|in realta|doveva|dovevano)\b/u
const SHOULD = /\b(?:should|shouldve|meant|mean|doveva|dovevano|volevo|intendevo)\b/u
const MORE = /\b(?:more|extra|another|di piu|in piu|altr[oaie])\b/u
const LESS = /\b(?:less|fewer|di meno|in meno)\b/u
/** Of something that is no amount of what went in. */
const OTHERWISE =
  /\b(?:jars?|kilner|demijohn|bottles? of|came out|came to|weeks?|days?|months?|degrees|euros?|pounds|dollars|cost|paid|vas[oi]|barattol[oi]|giorni|settimane|gradi|pagat[oi]|today|tomorrow)\b|[€£$]/u

const LONGEST = 14

const FIRST =
  /\d+(?:[.,]\d+)?(?:\s*(?:fl\.? ?oz|ml|cl|dl|l|litres?|liters?|litri|litro|g|kg|oz|lbs?|cups?|pints?|quarts?)\b)?/i
const STRENGTH = /\d+(?:[.,]\d+)?\s*(?:%|proof\b|°)/i
/** Counted, as it was typed: `10 lemons`. */
const COUNTED = /^\d+\s+(?!(?:ml|cl|dl|l|g|kg|oz|lbs?|cups?|pints?|quarts?|litres?|liters?|grams?)\b)/i

/** Nobody is wrong by more, and what is so far off is of something else. */
const MOST_OFF = 12

type Typed = Readonly<Record<string, string>>

const items = (text: string): readonly string[] => text.split(/\s*\+\s*/)

/** What stands in the place of one of what was typed, and null where it fits none of them, or several alike. */
function inItem(number: Bit, of: string, words: string, isOfIt: (item: string, at: number) => boolean): string | null {
  const all = items(of)
  const fitting = all.flatMap((item, at) => (isOfIt(item, at) ? [at] : []))
  const [at, another] = fitting
  if (at === undefined || another !== undefined) return null
  const was = numberOf(FIRST.exec(all[at]!)?.[0].match(/^[\d.,]+/)?.[0] ?? '')
  if (was === null || was <= 0) return null
  const isBare = number.kind === 'bare'
  const change = SHOULD.test(words) ? (MORE.test(words) ? 1 : LESS.test(words) ? -1 : 0) : 0
  if (change !== 0) {
    const now = was + change * number.value
    return isBare && now > 0 ? all.with(at, all[at]!.replace(/\d+(?:[.,]\d+)?/, String(now))).join(' + ') : null
  }
  if (isBare && Math.max(was / number.value, number.value / was) > MOST_OFF) return null
  const right = isBare ? digitsOf(number) : number.text
  return all.with(at, all[at]!.replace(isBare ? /\d+(?:[.,]\d+)?/ : FIRST, right)).join(' + ')
}

/** The options of a start or a plan as they are now, by one number that is told of what went in; null where it fits none. */
function changedIn(sentence: Sentence, number: Bit, typed: Typed, words: string): Typed | null {
  const { bits } = sentence
  const plant = bits.find(({ kind, role }) => kind === 'plant' && role !== 'gone')
  const { of = '', spirit = '', strength } = typed
  const isMore = MORE.test(words) || LESS.test(words)
  if (number.kind === 'strength') {
    if (strength !== undefined) return { strength: number.text }
    if (spirit === '' || items(spirit).length > 1) return null
    return { spirit: STRENGTH.test(spirit) ? spirit.replace(STRENGTH, number.text) : `${spirit} ${number.text}` }
  }
  if (number.kind === 'volume') {
    if (plant !== undefined || spirit === '' || isMore) return null
    const now = inItem(number, spirit, words, (item) => FIRST.test(item))
    return now === null ? null : { spirit: now }
  }
  if (number.kind !== 'mass' && number.kind !== 'bare') return null
  const said = plant?.text.toLowerCase().replace(/(?:ies|y|es|s|[aeio])$/, '')
  const isCounted = (item: string): boolean => COUNTED.test(item.trim())
  const isOnly = items(of).length === 1
  const isOfIt = (item: string): boolean =>
    (said === undefined || isOnly || item.toLowerCase().includes(said)) &&
    (number.kind === 'mass' ? said !== undefined || !isCounted(item) : said !== undefined || number.value >= 1)
  const now = inItem(number, of, words, isOfIt)
  return now === null ? null : { of: now }
}

/** The jar of which it is told: by name, or the one that was started just now. */
function jarMeant({ bits, jars }: Sentence, { step }: Remembered): TalkJar | null {
  const running = runningAmong(jars)
  const named = [...new Set(jarsNamed(bits, running).map(({ jar }) => jar))]
  if (named.length > 0) return named.length === 1 ? named[0]! : null
  if (step?.command !== 'jar start') return null
  const { name, of } = step.options
  const [only, another] = running
  if (another === undefined) return only ?? null
  return running.findLast((jar) => jar.name === name || jar.told()[0]?.typed.some(([, text]) => text === of)) ?? null
}

const isNumberOfIt = ({ role, kind }: Bit): boolean =>
  role !== 'price' && role !== 'of_sugar' && role !== 'of_water' && kind !== 'rating' && kind !== 'temperature'

/**
 * `It was really 900 ml`, `sorry, it was seven oranges`, `the spirit was 50 percent`, right behind a start or later with the jar’s name:
 * what went in was told otherwise, and is put right. Behind a plan the plan is.
 */
export function startToldLoosely(sentence: Sentence, said: Remembered): TalkReading | null {
  const { typed, bits, has } = sentence
  if (typed.tokens.length > LONGEST || said.call === null) return null
  const words = wordsFrom(typed)
  if (!WAS.test(words) || OTHERWISE.test(words) || typed.text.includes('?')) return null
  const [number, another] = numbersOf(sentence)
  if (number === undefined || another !== undefined || !isNumberOfIt(number)) return null
  if (has('asking', 'wish', 'how_much', 'again') || said.question !== null) return null
  if (has('hypothesis') && !SHOULD.test(words)) return null
  if (has(...[...DEEDS].filter((deed) => deed !== 'started' && deed !== 'added'))) return null
  if ((MORE.test(words) || LESS.test(words)) && !SHOULD.test(words)) return null
  if (bits.some(({ kind }) => kind === 'date' || kind === 'span' || kind === 'sugar' || kind === 'water')) return null
  const { call, step } = said
  const isOfPlan = call.command === 'plan'
  if (isOfPlan && !bits.some(({ kind }) => kind === 'jar')) return planToldLoosely(sentence, number, call, words)
  const isJust = call.command === 'jar start' && step?.command === 'jar start'
  if (!isJust && !(RIGHTED.test(words) && jarsNamed(bits, sentence.jars).length === 1)) return null
  const jar = jarMeant(sentence, said)
  const entry = jar?.told()[0]
  if (jar === null || entry === undefined || (!isJust && jar.stage !== 'steeping')) return null
  // What is told of a strength later may be what the float reads.
  if (!isJust && number.kind === 'strength' && !bits.some(({ kind }) => kind === 'spirit')) return null
  const now = changedIn(sentence, number, Object.fromEntries(entry.typed), words)
  if (now === null) return null
  return callReading({ command: 'jar correct', options: { jar: jar.name, entry: String(entry.seq), ...now } }, 'record')
}

/** Of a plan only what no other rule takes for itself: a strength of its spirit, and pieces more or fewer. */
function planToldLoosely(sentence: Sentence, number: Bit, plan: CallRead, words: string): TalkReading | null {
  const isOfSpirit = number.kind === 'strength' && sentence.bits.some(({ kind }) => kind === 'spirit')
  const isMore = number.kind === 'bare' && (MORE.test(words) || LESS.test(words))
  if (!isOfSpirit && !isMore) return null
  const now = changedIn(sentence, number, plan.options, words)
  if (now === null) return null
  const [[option, text] = ['', '']] = Object.entries(now)
  return callReading(withOption(plan, option, text))
}
