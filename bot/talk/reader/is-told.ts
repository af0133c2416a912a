import type { Path } from '../../calls/signatures.ts'
import type { Sentence } from '../bits/bit.ts'

/** Said as a wish and done at once: putting off, beginning again. */
const ORDERED = new Set<Path>(['jar later', 'again'])

/**
 * The one guard before anything is recorded: it is told as done, not asked, wished, denied or put off. `Ho filtrato, 930 ml a 85, come
 * arrivo a 30?` is a question.
 */
export function isToldNow(sentence: Sentence, command: Path): boolean {
  const { typed } = sentence
  const isQuestion = typed.tokens.some(({ text }) => text === '?') || sentence.has('asking')
  if (isQuestion) return false
  if (ORDERED.has(command)) return !sentence.has('denial')
  return !sentence.has('hypothesis') && !isDenied(sentence)
}

/** `not`, `havent`, `non` directly before what was done. */
function isDenied({ typed, spans }: Sentence): boolean {
  const deeds = spans.filter(({ concept }) => DEEDS.has(concept))
  return deeds.some(({ from }) =>
    typed.tokens
      .slice(Math.max(0, from - 3), from)
      .some(({ text }) =>
        /^(?:not|no|dont|didnt|havent|hasnt|never|non|mai|without|senza|almost|nearly|quasi)$/.test(text),
      ),
  )
}

const DEEDS = new Set(['shook', 'strained', 'sweetened', 'filtered', 'bottled', 'tasted', 'added', 'opened', 'started'])
