import { wordsFrom } from '../../../core/quantity/read/tokens.ts'
import type { Path } from '../../calls/signatures.ts'
import type { Sentence, TalkJar } from '../bits/bit.ts'
import { jarsOf, runningAmong } from '../bits/jars-of.ts'
import type { CallRead, TalkReading } from '../frames/reading.ts'
import type { ConceptSpan } from '../lexicon/concepts.ts'
import type { Concept } from '../lexicon/lexicon.ts'
import type { Remembered } from '../memory/remembered.ts'
import { whichJar } from '../memory/rule.ts'
import { isToldNow } from './is-told.ts'
import { jarWished } from './jar-wished.ts'

/** A deed, the jars that it can be of, what it needs beside the jar, and what stands for that where the jar is not there yet. */
interface Deed {
  readonly command: Path
  readonly stages: readonly TalkJar['stage'][]
  readonly needs?: { readonly option: string; readonly sample: string }
}

const IN_BOTTLES: readonly TalkJar['stage'][] = ['resting', 'ready']
const LIQUID: readonly TalkJar['stage'][] = ['strained', 'sweetened', 'resting', 'ready']
const ALL: readonly TalkJar['stage'][] = ['steeping', ...LIQUID]

const GIVEN: Deed = { command: 'bottles', stages: IN_BOTTLES, needs: { option: 'given', sample: '1' } }
const DRUNK: Deed = { command: 'bottles', stages: IN_BOTTLES, needs: { option: 'opened', sample: '1' } }

const SUGARED: Deed = {
  command: 'jar add',
  stages: ['steeping', 'strained', 'sweetened'],
  needs: { option: 'sugar', sample: '100 g' },
}

const DEEDS: Readonly<Partial<Record<Concept, Deed>>> = {
  shook: { command: 'jar shake', stages: ['steeping'] },
  strained: { command: 'jar strain', stages: ['steeping'] },
  filtered: { command: 'jar filter', stages: LIQUID },
  sweetened: { command: 'jar sweeten', stages: ['strained', 'sweetened'] },
  bottled: { command: 'jar bottle', stages: LIQUID, needs: { option: 'bottles', sample: '3 x 500 ml' } },
  tasted: { command: 'jar taste', stages: ALL, needs: { option: 'rating', sample: '4' } },
  opened: { command: 'jar open', stages: IN_BOTTLES },
  gave_away: GIVEN,
  added: SUGARED,
  stands: { command: 'jar note', stages: ALL, needs: { option: 'where', sample: 'cellar' } },
}

const DRANK =
  /^(?:(?:i|we|ive|weve|have|just) )*(?:drank|drunk) (?:it|them|that|this)(?: all)?(?: now| already| today)?$/u

/** `Drank one`, `opened two`, `we finished off a bottle`: of a batch in bottles so many are gone; a day and the batch may be named. */
const DRANK_ONE =
  /^(?:(?:i|we|ive|weve|have|just|ho|abbiamo|ne|ci siamo) )*(?:drank|drunk|finished|finished off|polished off|opened|opened up|uncorked|cracked|cracked open|broke open|bevut[oaie]|apert[oaie]|stappat[oaie]) (?:(?:up|another) )?(?<count>one|another|a bottle|another bottle|a second|one bottle|one of them|one more|two|three|four|two of them|two bottles|three bottles|two more|una|un altra|una bottiglia|due|tre|due bottiglie)(?: (?:of|from|di|del|della|delle|dei|degli)(?: (?:the|my|our|it|them|these|those))*)?(?: (?:now|already|today|tonight|oggi|with friends|for us|to try|last night))?$/u

const COUNTED: readonly (readonly [said: RegExp, count: string])[] = [
  [/^(?:two|due)/u, '2'],
  [/^(?:three|tre)/u, '3'],
  [/^four/u, '4'],
  [/^/u, '1'],
]

/** Said around a deed that tells nothing of its own: what it is done to, and when. */
const AROUND =
  /^(?:i|we|ive|weve|have|has|had|is|was|been|just|now|already|also|then|so|ok|right|finally|today|it|its|them|that|this|these|those|one|ones|all|em|the|my|our|jar|jars|batch|lot|up|off|out|away|anyway|anyways|regardless|still|then|comunque|stesso|ugualmente|ho|abbiamo|l|lo|la|li|le|e|gia|ora|adesso|oggi|tutto|tutta|tutti|questo|quello|vaso|barattolo)$/u

/** `Tasted it, just right`: how it tastes, where `tasted it just now` says when. */
const TASTED_SO = /[,;:.–—-]\s*(?:(?:and )?(?:it[’']?s|it is|tastes?|now) )?(?:just |all |quite |about )?right\b/i

/** The longest of what holds there: `put it in bottles` is no place for it. */
function deedIn({ spans }: Sentence): { readonly deed: Deed; readonly span: ConceptSpan } | null {
  const all = spans.filter(({ concept }) => DEEDS[concept] !== undefined)
  const longest = all.toSorted((one, other) => other.to - other.from - (one.to - one.from))[0]
  if (longest === undefined) return null
  const others = all.filter(({ from, to }) => from < longest.from || to > longest.to)
  const deed = DEEDS[longest.concept]!
  const isOne = others.every(({ concept }) => DEEDS[concept]!.command === deed.command)
  return isOne ? { deed, span: longest } : null
}

/** Sugar, and how much of it nobody has said. */
const isSugar = ({ kind, value, text }: Sentence['bits'][number]): boolean =>
  kind === 'sugar' && value === 0 && /^(?:sugar|zucchero)$/i.test(text)

const isAlone = ({ typed, bits, spans }: Sentence, span: ConceptSpan | null): boolean =>
  bits.every((bit) => bit.kind === 'date' || isSugar(bit)) &&
  typed.tokens.every(
    ({ kind, text }, at) =>
      kind === 'sign' ||
      AROUND.test(text) ||
      // `Gave the old faithful a shake`: what stands in a gap is a name.
      (span !== null && span.from <= at && at < span.to && span.gaps?.includes(at) !== true) ||
      bits.some(({ from, to }) => from <= at && at < to) ||
      spans.some(({ concept, from, to }) => concept === 'greeting' && from <= at && at < to),
  )

/** Of one jar, what it still needs is asked for; one that is not so far says so itself. */
function ofJar(deed: Deed, jar: TalkJar, when: Readonly<Record<string, string>>): TalkReading {
  const { command, needs, stages } = deed
  const call: CallRead = { command, options: { jar: jar.name, ...when } }
  if (needs === undefined || (!stages.includes(jar.stage) && command !== 'bottles'))
    return { kind: 'call', call, does: 'record', leftOut: [] }
  if (!stages.includes(jar.stage))
    return {
      kind: 'call',
      call: { ...call, options: { ...call.options, [needs.option]: needs.sample } },
      does: 'record',
      leftOut: [],
    }
  return { kind: 'question', call, about: { kind: 'lacks', ...needs }, choices: [], leftOut: [] }
}

/** What a deed is by where the jars stand: straining again is filtering, and sugar for a jar that was strained is its syrup. */
function deedOf(deed: Deed, { bits }: Sentence, running: readonly TalkJar[]): Deed | null {
  const has = (stage: TalkJar['stage']): boolean => running.some((jar) => jar.stage === stage)
  if (bits.some(isSugar)) {
    if (deed.command !== 'jar add' && deed.command !== 'jar sweeten') return null
    return has('strained') ? DEEDS.sweetened! : SUGARED
  }
  if (deed === SUGARED) return null
  return deed.command === 'jar strain' && !has('steeping') ? DEEDS.filtered! : deed
}

/** Bottles that were opened, of the batch that is named, else of the only one that has any. */
function drankSome({ bits, jars, typed, has }: Sentence, running: readonly TalkJar[]): TalkReading | null {
  const within = (at: number): boolean =>
    bits.some(({ kind, from, to }) => (kind === 'date' || isNamed(kind)) && from <= at && at < to)
  const words = typed.tokens.flatMap(({ kind, text }, at) => (kind === 'sign' || within(at) ? [] : [text])).join(' ')
  const count = DRANK_ONE.exec(words)?.groups?.count
  if (count === undefined || typed.text.includes('?') || has('asking', 'denial', 'hypothesis', 'wish')) return null
  const named = bits.filter(({ kind }) => isNamed(kind))
  const meant =
    named.length === 0 ? running : running.filter((jar) => named.some((bit) => jarsOf(bit, jars).includes(jar)))
  const day = bits.find(({ kind }) => kind === 'date')
  const opened = COUNTED.find(([said]) => said.test(count))![1]
  const more = { opened, ...(day !== undefined && day.text !== 'today' && { when: day.text }) }
  const calls = meant
    .filter(({ stage }) => IN_BOTTLES.includes(stage))
    .map(({ name }): CallRead => ({ command: 'bottles', options: { jar: name, ...more } }))
  const [only, another] = calls
  if (only === undefined) return null
  return another === undefined
    ? { kind: 'call', call: only, does: 'record', leftOut: [] }
    : whichJar({ command: 'bottles', options: more }, calls)
}

const isNamed = (kind: Sentence['bits'][number]['kind']): boolean => kind === 'plant' || kind === 'jar'

/** `Bottled it`, `gave them away`: a deed and nothing else, of the one jar that it can be of, else of the one that there is. */
function deedAlone(sentence: Sentence): TalkReading | null {
  const { bits, jars, typed, has } = sentence
  const running = runningAmong(jars)
  const words = wordsFrom(typed)
    .replace(/[.!]+$/u, '')
    .trim()
  const drunk = drankSome(sentence, running)
  if (drunk !== null) return drunk
  const found = DRANK.test(words) ? { deed: DRUNK, span: null } : deedIn(sentence)
  if (running.length === 0 || found === null || typed.tokens.some(({ text }) => text === '?')) return null
  const { span } = found
  const deed = deedOf(found.deed, sentence, running)
  if (deed === null || (deed.command === 'jar taste' && TASTED_SO.test(typed.text))) return null
  if (span !== null && !(isAlone(sentence, span) && (has('stands') || isToldNow(sentence, deed.command)))) return null
  if (has('asking', 'denial', 'hypothesis', 'wish', 'piece_out')) return null
  const fitting = running.filter(({ stage }) => deed.stages.includes(stage))
  const meant = fitting.length > 0 ? fitting : running
  const day = bits.find(({ kind }) => kind === 'date')
  const when: Readonly<Record<string, string>> = day === undefined || day.text === 'today' ? {} : { when: day.text }
  const [jar, another] = meant
  if (jar === undefined) return null
  if (another === undefined) return ofJar(deed, jar, when)
  if (deed.command === 'jar shake' && has('all_of_them', 'both_of_them')) return null
  const choices = meant.map(({ name }): CallRead => ({ command: deed.command, options: { jar: name, ...when } }))
  return whichJar({ command: deed.command, options: when }, choices)
}

/** What is wished, or told as done, of a jar that no word names. */
export const jarTold = (
  sentence: Sentence,
  read: (said: string) => Sentence,
  said: Remembered | undefined,
): TalkReading | null => jarWished(sentence, read, said) ?? deedAlone(sentence)
