import { wordsAlone } from '../../../core/quantity/read/tokens.ts'
import type { Bit, BitKind, Sentence, TalkJar } from '../bits/bit.ts'
import { jarCalled, jarsNamed, runningAmong } from '../bits/jars-of.ts'
import { nextStrength } from '../frames/better.ts'
import type { CallRead, TalkReading } from '../frames/reading.ts'
import { DEEDS } from '../lexicon/lexicon.ts'
import { withOption } from '../memory/change-call.ts'
import { followUp } from '../memory/follow-up.ts'
import { ASKS_MENDING } from '../memory/mend-asked.ts'
import { NOTHING_SAID, type Remembered } from '../memory/remembered.ts'
import { callReading, NO_LIQUEUR, WORKED_OUT, whichJar } from '../memory/rule.ts'
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

/** What is strained is mostly diluted to 30 % vol: a step weaker, % vol. */
const WEAKER_PERCENT = 25

/** A step in place of a number needs the drink that is there: what went wrong tells how it is mended. */
function ofFinished(sentence: Sentence, call: CallRead, { strengthPercent }: TalkJar): TalkReading | null {
  const { has } = sentence
  if (has('sweeter', 'too_dry')) return symptomReading(sentence, 'too_dry_or_sour')
  if (has('drier')) return symptomReading(sentence, 'too_sweet')
  if (has('stronger')) return symptomReading(sentence, 'too_weak')
  if (!has('weaker', 'too_strong')) return null
  const now = strengthPercent()
  // Worked out a step weaker, as it is sweet: how weak it is to be is said behind it.
  return now === null
    ? {
        kind: 'question',
        call,
        about: { kind: 'lacks', option: 'to-strength' },
        choices: [],
        leftOut: [],
      }
    : callReading(withOption(call, 'to-strength', `${nextStrength(now, false)}%`))
}

const ASKS_WHETHER = /^(?:is|was|are|isn|would|will|could|can|does|do|why|how|perch)/iu
const BEFORE_MENDING = /^.*?(?=\b(?:what|how|can|any|cosa|come)\b)/u

/** `Troppo forte` asks for no amount. */
const isOfOther = ({ spans, has }: Sentence): boolean => {
  const strong = spans.find(({ concept }) => concept === 'too_strong')
  return OF_OTHER.some(
    (each) =>
      has(each) &&
      (each !== 'how_much' || spans.some(({ concept, from }) => concept === each && from !== strong?.from)),
  )
}

/** `Too strong for me`, with no jar named: of the one spoken of last, or the one that is past its straining. */
function foundTooStrong(sentence: Sentence, said: Remembered): TalkReading | null {
  const { bits, jars, has, typed } = sentence
  if (!bits.every(({ kind, role }) => kind === 'strength' && role === 'want') || has('denial', 'hypothesis'))
    return null
  // `Is it too strong?` asks, `too strong, what can I do?` tells.
  if (ASKS_WHETHER.test(typed.text.trim())) return null
  if (typed.text.includes('?') && !ASKS_MENDING.test(wordsAlone(typed).replace(BEFORE_MENDING, ''))) return null
  if (has(...DEEDS) || isOfOther(sentence) || typed.tokens.filter(({ kind }) => kind === 'word').length > MOST_WORDS)
    return null
  const { call: last } = said
  if (last !== null && WORKED_OUT.test(last.command) && last.options.jar === undefined) return null
  const running = runningAmong(jars)
  const spoken = jarCalled(last?.options.jar, running)
  const meant = spoken === undefined ? running.filter((jar) => callFor(jar) !== null) : [spoken]
  const [jar, another] = meant
  if (jar === undefined) return null
  const ofJar = (each: TalkJar): CallRead | null => {
    const call = callFor(each)
    const wished = call === null ? null : bits.length > 0 ? followUp(sentence, { ...NOTHING_SAID, call }) : null
    if (wished?.kind === 'call') return wished.call
    const now = each.strengthPercent()
    if (call?.command === 'syrup') return withOption(call, 'to-strength', `${WEAKER_PERCENT}%`)
    return call === null || now === null ? null : withOption(call, 'to-strength', `${nextStrength(now, false)}%`)
  }
  if (another !== undefined) {
    const choices = meant.flatMap((each) => ofJar(each) ?? [])
    return choices.length < 2 ? null : whichJar({ command: choices[0]!.command, options: {} }, choices)
  }
  const one = ofJar(jar)
  return one === null ? null : callReading(one)
}

/**
 * `Make the lemon sweeter`, `lemon at 28%`, `the orange is too strong`: what a jar that stands there, strained or sweetened, is to be.
 * `without` reads the sentence with `it` for the jar. Null where it is told what was done, or more than how it is to be.
 */
export function jarWished(
  sentence: Sentence,
  without: (text: string) => Sentence,
  said: Remembered = NOTHING_SAID,
): TalkReading | null {
  const { bits, jars, typed } = sentence
  const [named, another] = jarsNamed(bits, jars)
  if (named === undefined) return sentence.has('too_strong') ? foundTooStrong(sentence, said) : null
  if (another !== undefined || named.bit.value > 0) return null
  const isOnly = bits.every((bit) => bit === named.bit || isTarget(bit) || (bit.value === 0 && SYRUP_OF.has(bit.kind)))
  const call = callFor(named.jar)
  const isLong = typed.tokens.filter(({ kind }) => kind === 'word').length > MOST_WORDS
  if (!isOnly || call === null || isLong || sentence.has(...DEEDS) || sentence.has(...OF_OTHER)) return null
  const isNumber = bits.some(isTarget)
  if (call.command === 'adjust' && !isNumber) return ofFinished(sentence, call, named.jar)
  const [from, to] = [typed.tokens[named.bit.from]!.from, typed.tokens[named.bit.to - 1]!.to]
  const before = typed.text.slice(0, from).replace(/\b(?:the|my|our|il|lo|la|l['’])\s*$/i, '')
  const rest = without(`${before}it${typed.text.slice(to)}`)
  const wished = followUp(rest, { ...NOTHING_SAID, call })
  return wished?.kind === 'call' && wished.call.command === call.command && wished.call !== call ? wished : null
}
