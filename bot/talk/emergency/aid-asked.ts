import { type AidId, askedWords, fireWords, toldWords } from './aid-words.ts'
import type { DangerSaid } from './danger-said.ts'
import { AWAKE, DROWSING } from './drowsing.ts'
import { findHarm } from './find-harm.ts'
import type { HarmId } from './harm.ts'
import { plainWords } from './plain-words.ts'
import { respelt } from './respell.ts'
import { saidIn } from './said.ts'
import { isContent } from './signs.ts'
import { names, OTHERS } from './victim.ts'

const expressionOf = (says: string): RegExp => new RegExp(` (?:${says})(?= )`)

type Known = readonly (readonly [aid: AidId, says: RegExp])[]

const known = (rows: typeof askedWords): Known => rows.map(([aid, says]) => [aid, expressionOf(says)])

const [QUESTIONS, STATES, FIRES] = [known(askedWords), known(toldWords), known(fireWords)]

/** No more is told as well: `she isn't fine`. */
const NOT_FINE =
  / (?:not|isnt|doesnt|arent|never|dont|non) (?:\w+ ){0,3}(?:fine|ok|okay|better|alright|awake|well|bene|meglio)| (?:is|are|will|would) (?:he|she|they|it) (?:be )?(?:fine|ok|okay|alright|all right)/

const textOf = (typed: string): string => ` ${respelt(plainWords(typed)).join(' ')} `

function found(text: string, rows: Known, isSo = (_aid: AidId, _at: number) => true): readonly AidId[] {
  const all = rows.flatMap(([aid, says]) => {
    const at = text.search(says)
    return at === -1 || !isSo(aid, at) ? [] : [{ aid, at }]
  })
  return all.toSorted((one, other) => one.at - other.at).map(({ aid }) => aid)
}

/** What is asked of somebody; what is only told of them where nothing is asked. */
function ofPerson(text: string): readonly AidId[] {
  const questions = found(text, QUESTIONS)
  if (questions.length > 0) {
    // A way home alone, and a sleep that is left to itself, are one question.
    const isOne = questions.includes('go_home') || questions.includes('sleep')
    return questions.filter((aid) => !(aid === 'alone' && isOne))
  }
  return statesIn(text).slice(0, 1)
}

/** What was told of somebody, the one that asks for most first. */
const FIRST: readonly AidId[] = ['being_sick', 'can_wake', 'snoring', 'asleep', 'breathes', 'fine_now']

/** Right before a state: it is not so. */
const DENIED =
  / (?:not|isnt|arent|wasnt|doesnt|dont|didnt|cant|cannot|couldnt|wont|never|hardly|barely|stopped|no longer|if he|if she|non|a malapena|a stento) (?:\w+ ){0,3}$/

/** Somebody is better, or at least no worse: of these a denial counts. */
const RELIEF: readonly AidId[] = ['can_wake', 'breathes', 'asleep']

function statesIn(text: string): readonly AidId[] {
  return found(text, STATES, (aid, at) => !(RELIEF.includes(aid) && DENIED.test(text.slice(0, at + 1))))
    .filter((aid) => aid !== 'fine_now' || !NOT_FINE.test(text))
    .filter((aid) => aid !== 'asleep' || !AWAKE.test(text))
    .toSorted((one, other) => FIRST.indexOf(one) - FIRST.indexOf(other))
}

const FIRE: readonly HarmId[] = ['clothes_on_fire', 'spirit_fire', 'burn']

/** Somebody has drunk too much, in so many words. */
const DRUNK =
  / (?:(?:drunk|tipsy|legless|plastered|hammered|paralytic|wasted|inebriated|intoxicated|smashed|sloshed)(?! (?:in|it|the|this|by|from|at|all|young|cold|some))|(?:drank|drunk|had|drink|drinking) (?:\w+ ){0,4}(?:too much|too many)(?= (?:to drink|alcohol|booze|spirits?|wine|drinks?|glasses|limoncello|liqueur|gin|vodka|of it|and|at|last|tonight|now|again|[.,]|$))|overdone it|too much to drink|sober (?:him|her|them|my \w+|someone|somebody) (?:\w+ )?up|sleep (?:it|this) off|ubriac[oaie]|ubriacat[oaie]|sbronz\w*|bevuto (?:\w+ ){0,3}troppo|alzato il gomito|smaltire la (?:sbornia|sbronza))(?= )/

/** It is asked of a custom or of a drink that nobody has had. */
const SUPPOSED =
  / (?:if|when|in case|suppose|se|quando|before|so that|dont want|to get|get|gets|getting|how many|quanti) (?:\w+ ){0,6}(?:drunk|tipsy|wasted|too much|ubriac\w+|sbronz\w+) /

/** Somebody who is drunk is told of in the sentence itself. */
function isDrunkNamed(typed: string, text: string): boolean {
  if (!DRUNK.test(text) || SUPPOSED.test(text)) return false
  const said = saidIn(typed)
  return names(said, [...OTHERS, 'them', 'self']) && !isContent(said, { from: 8, to: 8 })
}

/** Somebody drank a lot of it, whatever they call it. */
const MUCH_DRUNK =
  /(?<! (?:not|hasnt|hadnt|didnt|never|havent)(?: even)?) (?:drank|drunk|downed|had|finished|emptied|necked|polished off|knocked back|got through|went through|bevut[oaie]|scolat[oaie]|finit[oaie]) (?:\w+ ){0,3}(?:bottles?|litres?|liters?|pints?|lots?|loads|several|many|whole|half|most|jugs?|skinful|(?:three|four|five|six|seven|eight|nine|ten|[3-9]|\d\d) (?:\w+ )?(?:glasses|shots|drinks)|bottigli\w|litr\w|mezz\w|(?:tre|quattro|cinque|sei) bicchier\w+|un sacco)(?! (?:\w+ ){0,2}(?:left|over|spare|ready|rimast\w))(?= )/

/** Whoever sleeps now and drank a lot is told of in the sentence itself. */
const isSleepingItOff = (typed: string, text: string): boolean => {
  if (!MUCH_DRUNK.test(text) || SUPPOSED.test(text)) return false
  const said = saidIn(typed)
  return names(said, [...OTHERS, 'them']) && !isContent(said, { from: 8, to: 8 })
}

/** Of a drink that is made, and of nobody. */
const MAKING =
  / (?:jars?|bottles?|litres?|liters?|ml|cl|kg|oz|(?:drink|serve|pour) (?:it|this|them)|infusion|steep\w*|strain\w*|sweeten\w*|recipe|plan|peels?|syrup|batch|label|vas[oi]|barattol[oi]|bottigli[ae]|litr[oi]|ricetta|sciroppo|bucc[ei]a?)(?= )/

const isOfMaking = (typed: string, text: string): boolean =>
  MAKING.test(text) && !names(saidIn(typed), [...OTHERS, 'them'])

const MOST_WORDS = 14
/** So many answers later `he` may be somebody else. */
const MOST_ANSWERS = 2

/** A few words of him or her who was just spoken of, whatever they say: `his hands are shaky`. */
export function isStillOfThem(typed: string, danger: DangerSaid | null): boolean {
  if (danger?.of !== 'person' || danger.answersSince > MOST_ANSWERS || !DROWSING.includes(danger.harm)) return false
  if (typed.trim().startsWith('/')) return false
  const text = textOf(typed)
  if (MAKING.test(text) || /\d/.test(text) || text.trim().split(' ').length > MOST_WORDS) return false
  const said = saidIn(typed)
  return names(said, ['pronoun']) && !isContent(said, { from: 8, to: 8 })
}

export interface AidAsked {
  readonly aids: readonly AidId[]
  /** Whose numbers and steps stand with the answer. */
  readonly harm: HarmId
}

/**
 * What is asked of somebody who was harmed: behind the answer that told whom to call, or in a sentence that tells of a drunk
 * person itself; null where nothing is. `alone` is the harm that the text tells of by itself.
 */
export function aidAsked(typed: string, alone: HarmId | null, danger: DangerSaid | null): AidAsked | null {
  if (typed.trim().startsWith('/')) return null
  const text = textOf(typed)
  const before = danger?.of === 'person' ? danger.harm : null
  if (before !== null && FIRE.includes(before) && (alone === null || alone === 'burn' || alone === before)) {
    const aids = found(text, FIRES)
    return aids.length > 0 ? { aids, harm: 'burn' } : null
  }
  const harm = before ?? alone ?? 'swallowed_spirit_adult'
  if (!DROWSING.includes(harm)) return null
  if (isOfMaking(typed, text)) return null
  const aids = ofPerson(text)
  const isAsleep = aids[0] === 'asleep' && (alone !== null || isSleepingItOff(typed, text))
  const isTold = before !== null || isAsleep || isDrunkNamed(typed, text)
  if (!isTold || aids.length === 0) return null
  return { aids, harm: harmNow(aids, danger, alone, findHarm(typed)) }
}

/** Whose numbers and steps count now; `own` is what the sentence tells of, whatever was said before. */
function harmNow(aids: readonly AidId[], danger: DangerSaid | null, alone: HarmId | null, own: HarmId | null): HarmId {
  const before = danger?.of === 'person' ? danger.harm : null
  const harm = before ?? alone ?? 'swallowed_spirit_adult'
  if (own === SENSELESS) return worse(harm, alone)
  // Whether a sleep is one is found out by waking them, which the answer asks for.
  if (aids[0] === 'asleep' && [before ?? 'swallowed_spirit_adult', own ?? 'swallowed_spirit_adult'].every(isOfDrink)) {
    return 'swallowed_spirit_adult'
  }
  if (before === SENSELESS && (aids[0] === 'can_wake' || aids[0] === 'fine_now')) {
    return danger?.behind ?? 'swallowed_spirit_adult'
  }
  return worse(harm, alone)
}

const SENSELESS: HarmId = 'unconscious_after_drinking'

const isOfDrink = (harm: HarmId): boolean => harm === 'swallowed_spirit_adult'

/** Who was poorly and is out of their senses now, or drank what poisons, is worse off. */
function worse(before: HarmId, now: HarmId | null): HarmId {
  if (now === null || !DROWSING.includes(now) || GENERAL.includes(now)) return before
  return GENERAL.includes(before) || now === 'unconscious_after_drinking' ? now : before
}

/** What any sign tells of, and nothing more. */
const GENERAL: readonly HarmId[] = ['swallowed_spirit_adult', 'someone_hurt']
