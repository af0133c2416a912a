import { wordsAlone } from '../../../core/quantity/read/tokens.ts'
import type { Sentence } from '../bits/bit.ts'
import { runningAmong } from '../bits/jars-of.ts'
import type { TalkReading } from '../frames/reading.ts'

/** Looked for before anything else. */
const CHEAP = /left|have|got|there|still|rest|rimast|abbiamo|\bho\b|casa/i

const WHERE =
  '(?: (?:in|on|at|of|to|from|up|now|here|there|indoors|home|over|still|so|far|drink|it|them|the|my|our|shelf|shelves|cupboard|pantry|larder|house|kitchen|cellar|stash|stock|bottles?|then|again|altogether|in casa|ora|adesso|ancora|sullo scaffale|in dispensa|in cantina|da bere))*'

/** What there is to drink: `what have I got left?`, `anything left on the shelf?`, `cosa mi resta?`. */
const ASKED = new RegExp(
  `^(?:(?:so|and|ok|now|e|ma|allora) )*(?:what(?:s| is| do| have| are| all)?(?: (?:i|we|there|still|have|got|do|is))*(?: (?:have|got|left|there|still))+|(?:is there |have (?:i|we) (?:got )?|got )?any(?:thing)?(?: still)? left|whats? (?:on the shelf|in the (?:cupboard|larder|pantry|cellar|house))|(?:che )?cosa (?:mi |ci |ne |c e |e |ho |abbiamo )*(?:ancora )?(?:resta|rimane|rimasto|avanza|ho|abbiamo|c e|in casa)|(?:mi |ci )?(?:e )?(?:resta|rimasto) qualcosa)${WHERE}$`,
  'u',
)

/** Bottles stand there: what is left is told by them. Null where nothing is in bottles, or something is named. */
export function shelfAsked({ typed, bits, jars }: Sentence): TalkReading | null {
  if (bits.length > 0 || !CHEAP.test(typed.text)) return null
  if (typed.tokens.length > MOST_WORDS || !ASKED.test(wordsAlone(typed).replaceAll(/['’]/gu, ''))) return null
  const isBottled = runningAmong(jars).some(({ stage }) => stage === 'resting' || stage === 'ready')
  return isBottled ? { kind: 'call', call: { command: 'bottles', options: {} }, leftOut: [], does: 'compute' } : null
}

const MOST_WORDS = 12
