import type { Sentence } from '../bits/bit.ts'
import type { TalkReading } from '../frames/reading.ts'
import type { Hunch } from '../hunch/hunch.ts'
import type { Remembered } from '../memory/remembered.ts'
import { isOwnTrouble, isWhyMine } from './asked-of-handbook.ts'
import { doubted } from './doubted.ts'
import { isAsked } from './is-told.ts'
import type { FindsInText } from './kept-finds.ts'
import { likelyTalk } from './likely-talk.ts'
import { otherwiseOf } from './read-otherwise.ts'
import { HARMFUL, isSettled, secondThought } from './second-thought.ts'
import { surelyAsked } from './surely-asked.ts'
import { symptomReading } from './symptom-reading.ts'

interface Knows extends FindsInText {
  readonly hunch: Hunch
  readonly said?: Remembered
}

/** From here on, and with an entry as likely, the handbook is asked, though it sounds like a trouble of one’s own. */
const SURELY = 0.9

/** What went wrong by a word or two, where strangers tell of something else in such words. */
function likelier(reading: TalkReading, sentence: Sentence, text: string, knows: Knows): TalkReading {
  if (reading.kind !== 'symptom' || HARMFUL.has(reading.id) || reading.options.symptom?.includes(' + ')) return reading
  const found = knows.findLikelierSymptom(text, reading.id)
  if (found === null || (HARMFUL.has(found.id) && reading.options.jar !== undefined)) return reading
  return symptomReading(sentence, found.id)
}

/** A reading by the rules, set against what such sentences are mostly after. `isPlain` tells whether it was said outright. */
export function byHunch(
  read: TalkReading,
  sentence: Sentence,
  text: string,
  knows: Knows,
  isPlain: () => boolean,
): TalkReading {
  const leanings = isSettled(read, sentence, knows.said) ? [] : knows.hunch(sentence, knows.said)
  const [likeliest] = leanings
  const isOfHandbook = () =>
    likeliest?.aim === 'handbook' &&
    likeliest.share >= SURELY &&
    (knows.rankEntries(text)[0]?.likelihood ?? 0) >= SURELY
  const isWhy = read.kind === 'symptom' && isWhyMine(sentence)
  const isOwn = isWhy || (read.kind === 'symptom' && isOwnTrouble(sentence, text) && !isOfHandbook())
  const other = { ...otherwiseOf(sentence, text, knows), ...(isOwn && { handbook: () => null }) }
  const sure = doubted(secondThought(read, leanings, other), leanings, other, {
    isPlain: () => isWhy || isPlain(),
    isAsked: isAsked(sentence),
    isNowhere: sentence.jars.length === 0,
  })
  if (sure.kind === 'lost') return likelyTalk(sentence, knows.said) ?? sure
  // `Do I slice the ginger`, behind its plan: the plant tells.
  const asked = knows.said?.call?.command === 'plan' ? null : surelyAsked(sure, sentence, text, knows.rankEntries)
  return asked ?? likelier(sure, sentence, text, knows)
}
