import type { Bit, BitKind, Sentence, TalkJar } from '../bits/bit.ts'
import { jarsNamed } from '../bits/jars-of.ts'
import type { CallRead, TalkReading } from '../frames/reading.ts'
import { DEEDS } from '../lexicon/lexicon.ts'
import { followUp } from '../memory/follow-up.ts'
import { NOTHING_SAID } from '../memory/remembered.ts'
import { NO_LIQUEUR } from '../memory/rule.ts'
import { symptomReading } from './symptom-reading.ts'

/** What is said around it; longer sentences tell of more. */
const MOST_WORDS = 12

/** Asked for by name, whatever jar it is. */
const OF_OTHER = [
  'how_much',
  'how_long',
  'how_strong',
  'remind',
  'put_off',
  'print_label',
  'freezes',
  'taste_word',
] as const

const TARGETS: ReadonlySet<BitKind> = new Set(['strength', 'sweetness', 'bare'])

/** Stronger than any liqueur, it is what there is. */
const isTarget = ({ kind, value }: Bit): boolean => TARGETS.has(kind) && !(kind === 'strength' && value > NO_LIQUEUR)

const SYRUP_OF: ReadonlySet<BitKind> = new Set(['sugar', 'water'])

const callFor = ({ stage, name }: TalkJar): CallRead | null => {
  if (stage === 'strained') return { command: 'syrup', options: { jar: name } }
  return stage === 'sweetened' || stage === 'resting' || stage === 'ready'
    ? { command: 'adjust', options: { jar: name } }
    : null
}

/** A step in place of a number needs the drink that is there: what went wrong tells how it is mended. */
function ofFinished(sentence: Sentence, call: CallRead): TalkReading | null {
  const { has } = sentence
  if (has('sweeter', 'too_dry')) return symptomReading(sentence, 'too_dry_or_sour')
  if (has('drier')) return symptomReading(sentence, 'too_sweet')
  if (has('stronger')) return symptomReading(sentence, 'too_weak')
  return has('weaker', 'too_strong')
    ? {
        kind: 'question',
        call,
        about: { kind: 'lacks', option: 'to-strength' },
        choices: [],
        leftOut: [],
      }
    : null
}

/**
 * `Make the lemon sweeter`, `lemon at 28%`, `the orange is too strong`: what a jar that stands there, strained or sweetened, is to be.
 * `without` reads the sentence with `it` for the jar. Null where it is told what was done, or more than how it is to be.
 */
export function jarWished(sentence: Sentence, without: (text: string) => Sentence): TalkReading | null {
  const { bits, jars, typed } = sentence
  const [named, another] = jarsNamed(bits, jars)
  if (named === undefined || another !== undefined || named.bit.value > 0) return null
  const isOnly = bits.every((bit) => bit === named.bit || isTarget(bit) || (bit.value === 0 && SYRUP_OF.has(bit.kind)))
  const call = callFor(named.jar)
  const isLong = typed.tokens.filter(({ kind }) => kind === 'word').length > MOST_WORDS
  if (!isOnly || call === null || isLong || sentence.has(...DEEDS) || sentence.has(...OF_OTHER)) return null
  const isNumber = bits.some(isTarget)
  if (call.command === 'adjust' && !isNumber) return ofFinished(sentence, call)
  const [from, to] = [typed.tokens[named.bit.from]!.from, typed.tokens[named.bit.to - 1]!.to]
  const before = typed.text.slice(0, from).replace(/\b(?:the|my|our|il|lo|la|l['’])\s*$/i, '')
  const rest = without(`${before}it${typed.text.slice(to)}`)
  const wished = followUp(rest, { ...NOTHING_SAID, call })
  return wished?.kind === 'call' && wished.call.command === call.command && wished.call !== call ? wished : null
}
