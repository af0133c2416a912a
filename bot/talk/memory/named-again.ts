import { wordsFrom } from '../../../core/quantity/read/tokens.ts'
import type { Bit, Sentence, TalkJar } from '../bits/bit.ts'
import { jarsNamed } from '../bits/jars-of.ts'
import type { CallRead, TalkReading } from '../frames/reading.ts'
import { wordSet } from '../lexicon/concepts.ts'
import { type Concept, DEEDS } from '../lexicon/lexicon.ts'
import { isOf } from './plan-rules.ts'
import { NOTHING_SAID, type Remembered } from './remembered.ts'
import { callReading } from './rule.ts'
import { timesOf } from './scaled-again.ts'
import { resized, tasteChanged } from './taste-rules.ts'

const AGAIN = /\b(?:again|redo|repeat|once more|di nuovo|ancora|un altra volta|rifai|rifare|rifacciamo)\b/u

/** What is wished of it beside its name. */
const WISHES: ReadonlySet<Concept> = new Set([
  'again',
  'twice',
  'thrice',
  'halve',
  'drier',
  'sweeter',
  'stronger',
  'weaker',
  'slightly',
  'make',
  'wish',
  'too_sweet',
  'too_dry',
  'too_weak',
  'too_strong',
])

/** `Take the ginger out again`. */
const TAKEN_OUT = /\b(?:out|off|away|via|togli\p{L}*|leva\p{L}*)\b/u

const JOINS =
  /^(?:again|redo|repeat|once|more|and|but|the|my|that|please|then|now|with|only|just|as|much|many|di|nuovo|ancora|altra|volta|rifai|rifare|rifacciamo|ma|e|il|la|lo|l|le|i|con|solo|per|favore)$/

/** Whether anything is said to be made again. */
export const isAgainSaid = ({ typed }: Pick<Sentence, 'typed'>): boolean => AGAIN.test(wordsFrom(typed))

/** The one plant or jar that is named to be made again, with nothing else but how; null where more is said. */
export function namedIn({ bits, typed, spans, lexicon, has }: Sentence): Bit | null {
  const [named, another] = bits
  if (named === undefined || another !== undefined || (named.kind !== 'plant' && named.kind !== 'jar')) return null
  if (named.with !== undefined || named.role === 'left_out' || !isAgainSaid({ typed })) return null
  if (has('without', ...DEEDS) || TAKEN_OUT.test(wordsFrom(typed))) return null
  const fillers = wordSet(lexicon.fillers)
  const isSaid = (at: number): boolean =>
    (named.from <= at && at < named.to) ||
    spans.some(({ concept, from, to }) => WISHES.has(concept) && from <= at && at < to)
  const isOnly = typed.tokens.every(
    ({ kind, text }, at) => (kind === 'sign' && text !== '?') || fillers.has(text) || JOINS.test(text) || isSaid(at),
  )
  return isOnly ? named : null
}

/** A strength that no liqueur has: what stands in the jar is not diluted yet, % vol. */
const INFUSED_PERCENT = 45
const USUAL_PERCENT = 30
const STEP_PERCENT = 5

/** The jar once more, in another size or taste. */
export function jarAgain(jar: TalkJar, { has }: Sentence): CallRead {
  const { name, strengthPercent } = jar
  const times = has('twice') ? 2 : has('thrice') ? 3 : has('halve') ? 0.5 : 1
  const now = strengthPercent()
  const from = now === null || now > INFUSED_PERCENT ? USUAL_PERCENT : Math.round(now)
  const style = has('drier') ? 'dry' : has('sweeter') ? 'rich' : null
  const strength = has('stronger') ? from + STEP_PERCENT : has('weaker') ? from - STEP_PERCENT : null
  return {
    command: 'again',
    options: {
      jar: name,
      ...timesOf(jar, times),
      ...(style !== null && { 'to-sweetness': style }),
      ...(strength !== null && { 'to-strength': `${strength}%` }),
    },
  }
}

/** `The lemon again but double and less sweet`: of what was planned of it in this talk, else of its jar; never of the last plan, if that is of something else. */
export function namedAgain(sentence: Sentence, { trail, call }: Remembered = NOTHING_SAID): TalkReading | null {
  const named = namedIn(sentence)
  if (named === null) return null
  const planned = trail.findLast(
    ({ command, options: { of } }) => command === 'plan' && of?.split('+').some((item) => isOf(item.trim(), named)),
  )
  if (planned !== undefined) {
    const wish = { ...sentence, bits: [] }
    const said = { ...NOTHING_SAID, trail, call }
    return tasteChanged(wish, planned, said) ?? resized(wish, planned, said) ?? callReading(planned)
  }
  const [jar, other] = jarsNamed(sentence.bits, sentence.jars)
  return jar === undefined || other !== undefined ? null : callReading(jarAgain(jar.jar, sentence))
}
