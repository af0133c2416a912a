import { isOfTaste } from '../../../core/trouble/rows.ts'
import type { Sentence, TalkJar } from '../bits/bit.ts'
import { jarsOf, runningAmong } from '../bits/jars-of.ts'
import type { CallRead, TalkReading } from '../frames/reading.ts'
import { symptomIn } from '../frames/symptoms.ts'
import type { Remembered } from './remembered.ts'
import { callReading } from './rule.ts'
import { isTakenBack } from './taken-back.ts'

/** Said of what was written down and of nothing else. */
const UNDOES = /\b(?:undo|revert|roll back|take (?:that|it) back|annull\p{L}*)\b/iu

type Kind = NonNullable<TalkJar['lastKind']>

/** A step by its name, as the entry that it made and the command that made it. */
const NAMED: readonly (readonly [RegExp, readonly Kind[], CallRead['command']])[] = [
  [/\b(?:re-?filter\p{L}*|filter\p{L}*|racking)\b/iu, ['filtered'], 'jar filter'],
  [/\b(?:strain(?:ing|ed)?|filtrazione|filtrata|filtrato|colatura)\b/iu, ['strained'], 'jar strain'],
  [/\b(?:sweeten\p{L}*|syrup|zuccher\p{L}*|sciroppo|dolcifica\p{L}*)\b/iu, ['sweetened'], 'jar sweeten'],
  [/\b(?:bottling|bottled|imbottiglia\p{L}*)\b/iu, ['bottled'], 'jar bottle'],
  [/\b(?:shake|shaking|shook|scuotimento|scossa|agitazione)\b/iu, ['shaken'], 'jar shake'],
  [/\b(?:tast(?:e|ing)|rating|stars|assaggio|voto)\b/iu, ['tasted'], 'jar taste'],
  [/\b(?:rename|renaming|new name|nuovo nome)\b/iu, ['renamed'], 'jar rename'],
  [/\b(?:reminders?|put(?:ting)?[ -]off|postpon\p{L}*|snooze|promemoria|rinvio)\b/iu, ['put_off'], 'jar later'],
  [/\b(?:note|nota)\b/iu, ['noted'], 'jar note'],
]

const stepNamed = (text: string) => NAMED.find(([pattern]) => pattern.test(text)) ?? null

/**
 * A step that is named, of a jar where it is the last: taken back. Where another came after it, that one is named and asked about, as the
 * last goes first.
 */
function undoneStep(
  [, kinds, command]: (typeof NAMED)[number],
  named: readonly TalkJar[],
  spokenOf: TalkJar | undefined,
  running: readonly TalkJar[],
): TalkReading {
  const isLast = ({ lastKind }: TalkJar): boolean => lastKind !== null && kinds.includes(lastKind)
  const meant = named.length > 0 ? named : spokenOf !== undefined ? [spokenOf] : running
  const able = meant.filter(isLast)
  const [only] = able
  if (only !== undefined && able.length === 1) return callReading(undoOf(only.name), 'record')
  // Spoken of another jar: the one whose last step it is is asked about.
  const others = named.length === 0 ? running.filter(isLast) : []
  const [jar] = others.length > 0 ? [] : meant
  if (jar !== undefined && meant.length === 1) {
    const call = undoOf(jar.name)
    const about = { kind: 'undo_first', last: jar.lastKind, wanted: command } as const
    return { kind: 'question', call, about, choices: [call], leftOut: [] }
  }
  const choices = (able.length > 0 ? able : others.length > 0 ? others : meant)
    .slice(0, MOST_JARS)
    .map(({ name }) => undoOf(name))
  const call = choices[0] ?? { command: 'jar undo', options: {} }
  return jarAsked(call, choices, meant)
}

/** Which jar’s last step is to go; what is a danger is said of each, as undoing makes none safe. */
const jarAsked = (call: CallRead, choices: readonly CallRead[], meant: readonly TalkJar[]): TalkReading => {
  const named = new Set(choices.map(({ options }) => options.jar))
  const told = meant.flatMap(({ name, lastTold }) =>
    lastTold === undefined || !named.has(name) ? [] : [{ jar: name, told: lastTold }],
  )
  return { kind: 'question', call, about: { kind: 'undo_jar', told }, choices, leftOut: [] }
}

/** `Gone slimy, undo it`: what is told of the jar now is no step, and nothing is taken back for it. */
export function isTroubleTold(sentence: Sentence): boolean {
  const found = symptomIn(sentence)
  return found !== null && !isOfTaste(found.id)
}

const MOST_WORDS = 6

const MOST_JARS = 3

/**
 * `Undo`: what was written down last in this talk is taken back. Where other answers came after it, it is named and asked about; where
 * nothing was written down, or a jar is named, that jar's line is for typing, as it may be its start that goes.
 */
export function undone(sentence: Sentence, { step, answersSince, question }: Remembered): TalkReading | null {
  const { has, bits, typed, jars } = sentence
  if (has('take_back') && !jars.some(({ lastTold }) => lastTold !== undefined) && isTroubleTold(sentence)) return null
  const own = jars.find(({ id, name }) => step?.options.jar === `#${id}` || step?.options.jar === name)
  if (step !== null && own !== undefined && isTakenBack(sentence, step, own))
    return answersSince === 0 && question === null ? callReading(undoOf(`#${own.id}`), 'record') : undoAsked(step, own)
  // `Put it back in the cellar` is where it stands.
  if (!has('take_back') || has('housed')) return null
  // `My mistake, 84`: what is put right is not undone.
  if (!UNDOES.test(typed.text) && bits.some(({ kind, value }) => kind !== 'date' && value > 0)) return null
  const running = runningAmong(jars)
  const isNamed = bits.some(({ kind }) => kind === 'plant' || kind === 'jar')
  const named = bits.flatMap((bit) => jarsOf(bit, running))
  const jar = step?.options.jar
  const last = jar === undefined ? undefined : jars.find(({ id }) => `#${id}` === jar)
  const isPlain = UNDOES.test(typed.text) && !bits.some(({ kind, value }) => kind !== 'date' && value > 0)
  const wanted = isPlain ? stepNamed(typed.text) : null
  if (wanted !== null && typed.tokens.length <= 2 * MOST_WORDS)
    return undoneStep(wanted, isNamed ? [...new Set(named)] : [], last, running)
  if (step !== null && jar !== undefined && (!isNamed || (last !== undefined && named.includes(last)))) {
    // What was only asked about was not written down: it is not what stands before it that is to go.
    if (answersSince === 0 && !isNamed && question === null && last?.lastTold === undefined)
      return callReading(undoOf(jar), 'record')
    return undoAsked(step, last ?? { name: jar })
  }
  const words = typed.tokens.filter(({ kind }) => kind === 'word')
  if (words.length > (isNamed ? 1.5 : 1) * MOST_WORDS || !UNDOES.test(typed.text)) return null
  const meant = (isNamed ? [...new Set(named)] : running).slice(0, MOST_JARS)
  const choices = meant.map(({ name }) => undoOf(name))
  const [call] = choices
  if (meant.length === 1 && meant[0]?.lastTold !== undefined) return toldAsked(meant[0].name, meant[0].lastTold)
  return call === undefined ? null : jarAsked(call, choices, meant)
}

export const undoOf = (jar: string): CallRead => ({ command: 'jar undo', options: { jar } })

/** What a jar was told of last is a danger: that is said before it is forgotten. */
function toldAsked(jar: string, told: string): TalkReading {
  const call = undoOf(jar)
  return { kind: 'question', call, about: { kind: 'undo_told', told }, choices: [call], leftOut: [] }
}

/** Whether a step is to be taken back, or what was told of the jar since. */
export function undoAsked(
  { command: step }: CallRead,
  { name, lastTold }: Pick<TalkJar, 'name' | 'lastTold'>,
): TalkReading {
  if (lastTold !== undefined) return toldAsked(name, lastTold)
  const call = undoOf(name)
  return { kind: 'question', call, about: { kind: 'undo_step', step }, choices: [call], leftOut: [] }
}
