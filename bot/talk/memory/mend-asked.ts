import { wordsAlone } from '../../../core/quantity/read/tokens.ts'
import type { Sentence } from '../bits/bit.ts'
import { isOver, jarCalled, jarsNamed } from '../bits/jars-of.ts'
import type { CallRead, TalkReading } from '../frames/reading.ts'
import { symptomIn } from '../frames/symptoms.ts'
import type { Remembered } from './remembered.ts'
import { callReading } from './rule.ts'

const MENDS = '(?:fix|save|mend|rescue|sort|improve|better|help|correct|cure|tame|soften|balance|put (?:it|that) right)'

/** What is asked of a drink that was just judged: what to do about it. */
export const ASKS_MENDING = new RegExp(
  `^(?:what (?:do|should|can|could|shall|would|must) (?:i|we|you) (?:do|try|suggest)\\b.*|what (?:now|next|to do)\\b.*|now what\\b.*|what can be done\\b.*|any(?:thing)? (?:way|idea|ideas|fix|tip|tips|advice|suggestions?|hope|i can do|to be done|to do)\\b.*|(?:how|can|could|is there|is there any)\\b.*\\b${MENDS}(?:ed|d|able)?\\b.*|how do i make it better\\b.*|(?:is it |is that |is this )?(?:fixable|mendable|salvageable)|can it be (?:fixed|saved|mended|rescued)\\b.*|(?:please )?help|(?:come|cosa|che) (?:\\S+ ){0,3}(?:rimedio|rimediare|faccio|fare|fa|aggiusto|sistemo|salvo|correggo|miglioro)\\b.*|(?:si puo|posso|potrei|si riesce a) (?:\\S+ ){0,2}(?:rimediare|salvar\\S*|aggiustar\\S*|sistemar\\S*|corregger\\S*|migliorar\\S*)\\b.*|(?:qualche |c e un |hai un )?(?:rimedi[oa]?|idee|idea|consigli|consiglio)|aiuto)(?: \\?)*$`,
  'u',
)

/** Of a jar that is named, it has to be said that something is to be put right. */
const MENDS_NAMED =
  /^(?:how|can|could|come|posso|si puo)\b.*\b(?:fix|save|mend|rescue|sort out|improve|cure|salvare|aggiustare|sistemare|rimediare|correggere|salvo|aggiusto|sistemo|rimedio|correggo|miglioro)\b/

/** Words around the question. */
const BEFORE = /^(?:(?:ok|okay|oh|so|and|hm+|right|well|then|thanks|e|allora) )+/

const MOST_WORDS = 12

/** What mends it, of what the last answer offered: a trouble that was told is looked at, and what it takes is worked out. */
const offeredMend = (last: CallRead, offered: readonly CallRead[]): CallRead | undefined =>
  offered.find(({ command }) => (last.command === 'trouble' ? command === 'adjust' : command === 'trouble'))

/** `What can I do about it?` behind a taste that did not please or a trouble that was told; `how do I fix the raspberry?` of a jar. */
export function mendAsked(sentence: Sentence, { call, offered }: Remembered): TalkReading | null {
  const { bits, jars, typed } = sentence
  if (typed.tokens.length > MOST_WORDS || bits.some(({ kind }) => kind !== 'jar' && kind !== 'plant')) return null
  const words = wordsAlone(typed).replace(BEFORE, '')
  if (!ASKS_MENDING.test(words) || symptomIn(sentence) !== null) return null
  const mend = call === null ? undefined : offeredMend(call, offered)
  if (bits.length === 0) return mend === undefined ? null : callReading(mend)
  const [named, another] = jarsNamed(bits, jars)
  if (named === undefined || another !== undefined || bits.length > 1 || isOver(named.jar)) return null
  if (mend !== undefined && jarCalled(mend.options.jar, jars) === named.jar) return callReading(mend)
  return MENDS_NAMED.test(words) ? callReading({ command: 'trouble', options: { jar: named.jar.name } }) : null
}
