import { wordsFrom } from '../../../core/quantity/read/tokens.ts'
import type { Sentence, TalkJar } from '../bits/bit.ts'
import { isOver, jarCalled, jarsOf } from '../bits/jars-of.ts'
import type { CallRead } from '../frames/reading.ts'
import { DEEDS } from '../lexicon/lexicon.ts'
import { withOption } from './change-call.ts'
import { callReading, type Rule } from './rule.ts'
import { undoOf } from './undo-rule.ts'

/** Said before the jar that was meant, or with what was done taken back. */
const MEANT =
  /^(?:no|nope|non|sorry|oops|whoops|ops|scusa|anzi|scrap that|scratch that|strike that|wrong|volevo dire|intendevo|i mean|meant)(?!\p{L})|\b(?:i mean|i meant|volevo dire|intendevo)$/u

const THE_OTHER = /\b(?:other (?:jar|one)|the other|wrong (?:jar|one)|l altr[oa]|altro vaso|vaso sbagliato)\b/

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
  if (own === undefined || !(sentence.has('was_other_jar') || isCorrection(sentence))) return null
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
