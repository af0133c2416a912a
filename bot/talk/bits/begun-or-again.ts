import type { ConceptSpan } from '../lexicon/concepts.ts'
import type { Sentence } from './bit.ts'
import { onceMore } from './once-more.ts'
import { startedThen } from './started-then.ts'

/** That a batch is told as begun, or is to be made once more. */
export const begunOrAgain = (told: Pick<Sentence, 'typed' | 'bits' | 'spans'>): readonly ConceptSpan[] => [
  ...startedThen(told),
  ...onceMore(told),
]
