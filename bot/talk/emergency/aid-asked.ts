import { type AidId, askedWords, fireWords, toldWords } from './aid-words.ts'
import type { DangerSaid } from './danger-said.ts'
import { DROWSING } from './drowsing.ts'
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

function found(text: string, rows: Known): readonly AidId[] {
  const all = rows.flatMap(([aid, says]) => {
    const at = text.search(says)
    return at === -1 ? [] : [{ aid, at }]
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
  return found(text, STATES)
    .filter((aid) => aid !== 'fine_now' || !NOT_FINE.test(text))
    .slice(0, 1)
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
  if (before === null && !isDrunkNamed(typed, text)) return null
  if (isOfMaking(typed, text)) return null
  const aids = ofPerson(text)
  return aids.length > 0 ? { aids, harm: worse(harm, alone) } : null
}

/** Who was poorly and is out of their senses now, or drank what poisons, is worse off. */
function worse(before: HarmId, now: HarmId | null): HarmId {
  if (now === null || !DROWSING.includes(now) || GENERAL.includes(now)) return before
  return GENERAL.includes(before) || now === 'unconscious_after_drinking' ? now : before
}

/** What any sign tells of, and nothing more. */
const GENERAL: readonly HarmId[] = ['swallowed_spirit_adult', 'someone_hurt']
