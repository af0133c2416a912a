import type { Sentence } from '../bits/bit.ts'
import { featuresOf } from './features.ts'
import { leaningsBy } from './hunch.ts'
import learnt from './learnt-talk.json' with { type: 'json' }

/** What is said in a talk besides its matter; `other` is the matter. */
export type TalkKind =
  | 'more'
  | 'why'
  | 'how_sure'
  | 'done'
  | 'thanks'
  | 'greeting'
  | 'help'
  | 'never_mind'
  | 'undo'
  | 'yes'
  | 'no'
  | 'reminders_show'
  | 'reminders_on'
  | 'reminders_off'
  | 'other'

const leanings = leaningsBy<TalkKind>(() => learnt)

/** What of a talk a sentence most looks like, by itself, and how surely, 0 to 1. */
export function talkKind(sentence: Sentence): { readonly aim: TalkKind; readonly share: number } {
  return leanings(featuresOf(sentence, undefined))[0]!
}
