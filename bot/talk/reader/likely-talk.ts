import type { Sentence } from '../bits/bit.ts'
import type { TalkReading } from '../frames/reading.ts'
import { type TalkKind, talkKind } from '../hunch/talk-kind.ts'
import { NOTHING_SAID, type Remembered } from '../memory/remembered.ts'
import { lostNear } from './second-thought.ts'

/** From here on it is taken for what it looks like: of 90 such sentences of strangers one was something else. */
const LIKELY = 0.8

const MOST_WORDS = 14

/** What answers it; null where something would be written down or switched for a likeness. */
function answerTo(kind: TalkKind, { call }: Remembered): TalkReading | null {
  if (kind === 'thanks' || kind === 'greeting' || kind === 'help') return { kind: 'small_talk', key: kind }
  if (kind === 'never_mind') return { kind: 'last', what: 'let_be' }
  if (kind === 'more' || kind === 'why' || kind === 'how_sure')
    return call === null ? null : { kind: 'last', what: kind }
  if (kind === 'reminders_show')
    return { kind: 'call', call: { command: 'reminders', options: {} }, leftOut: [], does: 'compute' }
  if (kind === 'reminders_on' || kind === 'reminders_off') return lostNear('reminders')
  return kind === 'undo' ? lostNear('jar undo') : null
}

/** A small thing of the talk in words that no rule knew: `buonasera a lei`, `these numbers sure or not ah`. Null where it is of some matter. */
export function likelyTalk(sentence: Sentence, said: Remembered = NOTHING_SAID): TalkReading | null {
  if (sentence.bits.length > 0 || sentence.typed.tokens.length > MOST_WORDS) return null
  const { aim, share } = talkKind(sentence)
  return share < LIKELY ? null : answerTo(aim, said)
}
