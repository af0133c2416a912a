import type { Person } from '../../../store/person.ts'
import type { Sentence, Surroundings } from '../../talk/bits/bit.ts'
import { isOver } from '../../talk/bits/jars-of.ts'
import { sentenceOnce } from '../../talk/bits/sentence-once.ts'
import type { TalkReading } from '../../talk/frames/reading.ts'
import { inMl } from '../../talk/household/by-household.ts'
import { isTroubleTold } from '../../talk/memory/undo-rule.ts'
import { bothDone } from '../../talk/reader/both-done.ts'
import { clausesApart, SHOWN } from '../../talk/reader/clauses-apart.ts'
import { deedsApart } from '../../talk/reader/deeds-apart.ts'
import { noSugarApart } from '../../talk/reader/no-sugar-apart.ts'
import { isJarNamed, jarNamed, ownDeeds } from '../../talk/reader/own-deeds.ts'
import { pricedBatch } from '../../talk/reader/prices-beside.ts'
import { HARMFUL } from '../../talk/reader/second-thought.ts'
import type { Dispatch } from '../run/call-outcome.ts'
import { mended, readingFor, surroundingsOf } from './reading-for.ts'

/** Answered by themselves: deeds, what they lack, what is worked out of them, and what has gone wrong. */
const isOne = ({ kind }: TalkReading): boolean => kind === 'call' || kind === 'question' || kind === 'symptom'

const isAnswered = (reading: TalkReading): boolean => isOne(reading) || reading.kind === 'topic'

const commandOf = (reading: TalkReading): string =>
  reading.kind === 'call' || reading.kind === 'question' ? reading.call.command : reading.kind

const isSame = (one: TalkReading, other: TalkReading): boolean => commandOf(one) === commandOf(other)

/** `Shook the cherry and it smells of glue`: what is said behind it is heard, though there is no such jar. */
const isOfNoJar = (reading: TalkReading): boolean => reading.kind === 'refused' && reading.problem.code === 'not_found'

/** A deed that is told, and lacks an amount or its jar. */
const isLacking = ({ about, call }: Extract<TalkReading, { kind: 'question' }>): boolean =>
  (about.kind === 'lacks' || about.kind === 'which_jar') && DEEDS.test(call.command)

const DEEDS = /^jar (?:shake|strain|sweeten|filter|bottle|taste|add|open)$/

/** The deeds of a sentence that tells of several. */
export interface Apart {
  readonly texts: readonly string[]
  /** What is asked of a jar that has to be asked for first. */
  readonly later: readonly string[]
}

const inOrder = (texts: readonly string[] | null): Apart | null => (texts === null ? null : { texts, later: [] })

/** Of a jar that is asked for: what is no jar's is answered at once, the rest once it is known. */
function behindJar(clauses: readonly string[], others: readonly TalkReading[]): Apart {
  const isOfAny = (each: TalkReading | undefined): boolean =>
    each?.kind === 'topic' ||
    // No danger waits for an answer.
    (each?.kind === 'symptom' && HARMFUL.has(each.id)) ||
    (each?.kind === 'call' && each.call.options.jar === undefined)
  const rest = clauses.slice(1)
  const texts = [...rest.filter((_, at) => isOfAny(others[at])), clauses[0]!]
  return { texts, later: rest.filter((_, at) => !isOfAny(others[at]) && others[at]?.kind !== 'lost') }
}

/** Whether a part of what was said says which jar it is of. */
export const namesJar = (text: string, dispatch: Dispatch, person: Person): boolean =>
  isJarNamed(mended(text, dispatch, person), surroundingsOf(dispatch, person))

const BEGINS = /^(?:plan|again|jar start)$/

/** What the parts of a sentence are read by. */
interface Among {
  readonly surroundings: Surroundings
  readonly read: (part: string) => TalkReading
}

/** Behind another deed, a clause with one of its own: of the jar that it names, or else of that of the first. */
function ownDeedsIn(sentence: Sentence, { surroundings, read }: Among): Apart | null {
  const [begin, ...rest] = ownDeeds(sentence) ?? []
  if (begin === undefined) return null
  const first = read(begin)
  if (first.kind !== 'call' && first.kind !== 'question') return null
  const of = BEGINS.test(first.call.command) ? null : jarNamed(begin, surroundings)
  const others = rest.map((own) => (of === null || isJarNamed(own, surroundings) ? own : `${of}, ${own}`))
  if (first.kind === 'call' || first.about.kind !== 'lacks') return inOrder([begin, ...others])
  const isNamed = (own: string): boolean => isJarNamed(own, surroundings)
  return { texts: [...others.filter(isNamed), begin], later: others.filter((own) => !isNamed(own)) }
}

/** The deeds of a sentence that tells of several, each understood by itself; null where it is read as a whole, which is `whole`. */
export function deedsIn(line: string, whole: TalkReading, dispatch: Dispatch, person: Person): Apart | null {
  // `Sorry, I shook the ginger, not the lemon`: what was written down of the other is asked about.
  if (whole.kind === 'question' && whole.about.kind === 'which_reading' && whole.call.command === 'jar undo')
    return null
  const priced = pricedBatch(line, whole, (part) => readingFor(part, dispatch, person))
  if (priced !== null) return inOrder(priced)
  const surroundings = surroundingsOf(dispatch, person)
  const isOfDeed = whole.kind === 'call' || whole.kind === 'question' || whole.kind === 'lost'
  if ((whole.kind === 'refused' && !isOfNoJar(whole)) || (!isOfDeed && surroundings.jars.every(isOver))) return null
  const text = inMl(mended(line, dispatch, person), surroundings)
  const sentence = sentenceOnce(text, surroundings)
  // `Strained it, gone slimy, undo it`: what is wrong is answered, and nothing is written down beside it.
  if (sentence.has('take_back') && isTroubleTold(sentence)) return null
  const both = bothDone(whole, sentence)
  if (both !== null) return inOrder(both)
  const plain = unsweetenedIn(sentence, surroundings, dispatch, person)
  if (plain !== null) return plain
  const among: Among = { surroundings, read: (part) => readingFor(part, dispatch, person) }
  return deedsTold(sentence, among) ?? (isOfDeed ? ownDeedsIn(sentence, among) : null)
}

/** `No sugar` beside a deed: it is noted first, so that what comes of the deed asks for none. */
function unsweetenedIn(
  sentence: Sentence,
  surroundings: Surroundings,
  dispatch: Dispatch,
  person: Person,
): Apart | null {
  const said = noSugarApart(sentence)
  if (said === null) return null
  const of = jarNamed(sentence.typed.text, surroundings)
  const wish = of === null ? said.wish : `${of}, ${said.wish}`
  const noted = readingFor(wish, dispatch, person)
  if (noted.kind !== 'call' || noted.call.command !== 'jar note') return null
  const own = readingFor(said.rest, dispatch, person)
  const rest = deedsIn(said.rest, own, dispatch, person) ?? { texts: [said.rest], later: [] }
  return { texts: [wish, ...rest.texts], later: rest.later }
}

function deedsTold(sentence: Sentence, { surroundings, read }: Among): Apart | null {
  const clauses = clausesApart(sentence, surroundings)
  const parts = deedsApart(sentence, surroundings)
  // `Bottled the orange. How long now?`: what the jar shows answers the second.
  const isShown = parts?.length === 2 && clauses?.at(-1)?.startsWith(SHOWN) === true
  if (!isShown && parts?.every((part) => isOne(read(part))) === true) return inOrder(parts)
  const readings = clauses?.map(read)
  // Two that are answered by one line are one.
  const [first, ...others] = readings ?? []
  // What the first lacks is not asked of the other.
  if (first !== undefined && others.length === 0) return isOne(first) ? inOrder(clauses) : null
  // `Bottled. How long now?`: what is asked is answered, and how many bottles is asked last, so that it stays open.
  if (first?.kind === 'question' && isLacking(first) && clauses !== null) {
    if (first.about.kind === 'which_jar') return behindJar(clauses, others)
    const rest = others.map((each) => isAnswered(each) && each.kind !== 'question')
    return inOrder([...clauses.slice(1).filter((_, at) => rest[at]), clauses[0]!])
  }
  const isApart =
    first !== undefined &&
    (first.kind === 'call' || isOfNoJar(first)) &&
    others.every((each) => isAnswered(each) && !isSame(first, each))
  return isApart ? inOrder(clauses) : null
}
