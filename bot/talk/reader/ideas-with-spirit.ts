import { wordsFrom } from '../../../core/quantity/read/tokens.ts'
import type { Sentence } from '../bits/bit.ts'
import type { TalkReading } from '../frames/reading.ts'
import { NOTHING_SAID, type Remembered } from '../memory/remembered.ts'

/** `Something with bourbon`, `anything nice with rum`, `ideas for gin`, `qualcosa con la grappa`. */
const IDEA =
  /^(?:(?:and|ok|now|so|maybe|or|please|make|do|lets|let us|i want|i d like|how about|what about|vorrei|fammi|facciamo) )*(?:something|anything|ideas?|suggestions?|qualcosa|idee) (?:(?:nice|good|else|different|new|to make|di buono|altro) )*(?:with|for|using|from|con|per) (?:(?:the|a|an|my|some|il|la|lo|l|un|del|della|bottle of|bottiglia di) )*/u

/** Where nothing was said before, what goes in it is asked. */
const MAKE =
  /^(?:(?:and|ok|so) )?(?:what (?:can|could|should|shall|would) (?:i|we|you) (?:make|do)|(?:che|cosa) (?:posso|possiamo) fare) (?:with|of|con) /u

const MOST_WORDS = 10

/** What is made of a spirit, where nothing else is named: what goes with it, and not the last fruit again. */
export function ideasWithSpirit({ bits, typed }: Sentence, { call }: Remembered = NOTHING_SAID): TalkReading | null {
  const [spirit, other] = bits.filter(({ kind }) => kind !== 'bottles')
  if (spirit?.kind !== 'spirit' || other !== undefined || typed.tokens.length > MOST_WORDS) return null
  const words = wordsFrom(typed)
  return IDEA.test(words) || (call !== null && MAKE.test(words))
    ? { kind: 'topic', entry: 'brown_spirit', more: [] }
    : null
}
