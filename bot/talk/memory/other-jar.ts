import { wordsFrom } from '../../../core/quantity/read/tokens.ts'
import type { Sentence, TalkJar } from '../bits/bit.ts'
import { isOver, jarCalled, jarsNamed, jarsOf } from '../bits/jars-of.ts'
import type { CallRead } from '../frames/reading.ts'
import { type Concept, DEEDS } from '../lexicon/lexicon.ts'
import { withOption } from './change-call.ts'
import { callReading, type Rule } from './rule.ts'
import { undoOf } from './undo-rule.ts'

/** Said before the jar that was meant, or with what was done taken back. */
const MEANT =
  /^(?:(?:ah|oh|och|aw|no|ma|but) )*(?:no|nope|nah|nay|non|och|sorry|soz|oops|whoops|ops|scusa|anzi|scrap that|scratch that|strike that|wrong(?: one| jar)?|not (?:that|this) (?:one|jar)|volevo dire|intendevo|dicevo|ho (?:detto|sbagliato)|i mean|meant|(?:i|ah|we) (?:said|meant)|(?:twas|it was|it were|era))(?!\p{L})|\b(?:(?:i|ah|a) (?:mean|meant|said)(?: to say)?|volevo dire|intendevo|dicevo|ho detto)$/u

const THE_OTHER = /\b(?:other (?:jar|one)|the other|wrong (?:jar|one)|l altr[oa]|altro vaso|vaso sbagliato)\b/

/** Before or behind the jar that it was not: `macché limone`, `it wasn’t the lemon`, `lemon? no`. */
const NO_BEFORE = /^(?:not|wasnt|isnt|no|nope|nah|non|macchi?e|mica)$/
const NO_BEHIND = /^(?:no|nope|nah|not|macchi?e|ma)$/
/** Where that is all that is said of it. */
const NO_MORE = /^(?:[,;.!]|it|i|we|that|the|was|ho|abbiamo|era|il|lo|la)$/
const ARTICLE = /^(?:the|my|our|il|lo|la|l|i|gli|le|era|e)$/
const SIGN = /^[,;.?!]$/

/** What is told again of the jar that it was, by the command it was told of before. */
const TOLD_AGAIN: Readonly<Partial<Record<CallRead['command'], readonly Concept[]>>> = {
  'jar shake': ['shook', 'shake'],
  'jar strain': ['strained', 'strain'],
  'jar bottle': ['bottled', 'bottle'],
  'jar sweeten': ['sweetened', 'sweeten'],
}

const STEPS: readonly Concept[] = ['shook', 'strained', 'bottled', 'sweetened']

const SHOWS = /^jar (?:show|label|tag)$/

const MOST_WORDS = 9

const MOST_CHOICES = 3

/** Only a jar is told, and that it is another one. */
function isCorrection({ typed, bits, has }: Sentence): boolean {
  const isPlain = bits.every(({ kind, value }) => (kind === 'plant' || kind === 'jar') && value === 0)
  const words = typed.tokens.filter(({ kind }) => kind === 'word')
  if (!isPlain || words.length > MOST_WORDS || typed.tokens.some(({ text }) => text === '?')) return false
  if (has(...DEEDS, 'hypothesis', 'wish', 'remind')) return false
  const said = wordsOf(typed)
  return THE_OTHER.test(said) || (bits.length === 1 && MEANT.test(said))
}

/** `Not the lemon, I strained the ginger`, where the lemon was shaken: what is told is another of these. */
const isOtherStep = ({ has }: Sentence, { command }: CallRead): boolean =>
  has(...STEPS.filter((deed) => TOLD_AGAIN[command]?.includes(deed) !== true))

const isOtherDeed = ({ has }: Sentence, { command }: CallRead): boolean =>
  has(...[...DEEDS].filter((deed) => TOLD_AGAIN[command]?.includes(deed) !== true))

/** `Macché limone, ho agitato lo zenzero`: that it was not this jar, before another one that the same was done to. */
function isDismissed(sentence: Sentence, own: TalkJar, last: CallRead): boolean {
  const { bits, jars, has } = sentence
  const { tokens } = sentence.typed
  // `No the lemon`: of the jar that it was not it is told that it was none.
  const [one, other, another] = jarsNamed(
    bits.map((bit) => (bit.role === 'left_out' ? { ...bit, role: null } : bit)),
    jars,
  )
  if (one === undefined || other === undefined || another !== undefined || bits.length > 2) return false
  const not = [one, other].find(({ jar }) => jar.id === own.id)?.bit
  if (not === undefined || isOtherDeed(sentence, last) || has('hypothesis', 'wish', 'remind')) return false
  let before = not.from - 1
  while (ARTICLE.test(tokens[before]?.text ?? '')) before--
  const said = tokens[before]?.text ?? ''
  const isMaChe = /^(?:che|quale)$/.test(said) && tokens[before - 1]?.text === 'ma'
  const isBehind =
    SIGN.test(tokens[not.to]?.text ?? '') &&
    NO_BEHIND.test(tokens[not.to + 1]?.text ?? '') &&
    NO_MORE.test(tokens[not.to + 2]?.text ?? '')
  const isWhat = said === 'what' && tokens[not.to]?.text === '?'
  return isWhat || NO_BEFORE.test(said) || isMaChe || (not.from <= 1 && isBehind)
}

const wordsOf = (typed: Sentence['typed']): string =>
  wordsFrom(typed)
    .replaceAll(/[’',.\s]+/gu, ' ')
    .trim()

/** The jars that may have been meant; none where none is named, and no other spoken of. */
function meantIn(sentence: Sentence, own: TalkJar): readonly string[] {
  const { bits, jars } = sentence
  const named = bits.flatMap((bit) => jarsOf(bit, jars)).filter(({ id }) => id !== own.id)
  if (named.length > 0) return [...new Set(named.map(({ name }) => name))]
  const isNamed = bits.some((bit) => jarsOf(bit, jars).length === 0)
  if (isNamed || !THE_OTHER.test(wordsOf(sentence.typed))) return []
  return jars.filter((jar) => jar.id !== own.id && !isOver(jar)).map(({ name }) => name)
}

/** `That was the ginger, not the lemon`, `no, the ginger one`: what was recorded is undone and said of the other jar, each by its line. */
export const ofOtherJar: Rule = (sentence, last) => {
  const { jar } = last.options
  if (jar === undefined || !last.command.startsWith('jar ')) return null
  const own = jarCalled(jar, sentence.jars)
  if (
    own === undefined ||
    isOtherStep(sentence, last) ||
    !(sentence.has('was_other_jar') || isCorrection(sentence) || isDismissed(sentence, own, last))
  )
    return null
  const others = meantIn(sentence, own)
  const [other] = others
  if (other === undefined) return null
  // Nothing was written down of what was only shown.
  if (SHOWS.test(last.command)) return others.length === 1 ? callReading(withOption(last, 'jar', other)) : null
  const choices: readonly CallRead[] = [undoOf(own.name), ...others.map((name) => withOption(last, 'jar', name))]
  return {
    kind: 'question',
    call: choices[0]!,
    about: { kind: 'which_reading' },
    choices: choices.slice(0, MOST_CHOICES),
    leftOut: [],
  }
}
