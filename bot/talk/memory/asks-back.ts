import type { Sentence } from '../bits/bit.ts'
import type { QuestionAbout } from '../frames/reading.ts'

const ASKS_BACK =
  /\?$|^(?:where|when|how|why|what|which|who|does|do|did|is|are|was|were|will|would|can|should|dove|quando|come|perch[eé]|cosa|chi|quanto)\b/iu

/** `Where does ginger go` is no yes to what would be written down of it. */
export const isAskedBack = ({ kind }: QuestionAbout, { typed }: Sentence): boolean =>
  kind === 'told_or_asked' && ASKS_BACK.test(typed.text.trim())
