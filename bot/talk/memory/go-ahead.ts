import { wordsAlone } from '../../../core/quantity/read/tokens.ts'
import type { Sentence } from '../bits/bit.ts'
import { isOnly } from './step-rules.ts'

const GO_AHEAD =
  /^(?:(?:yes|yeah|yep|ok|okay|right|good|great|fine|so|then|and|just|please|si|va bene|allora) )*(?:(?:start|begin|save|log|make|do|plan) (?:it|this|that|one|the jar)(?: one)?|go (?:ahead|on|for it)|lets (?:go|start|begin|do it)|inizial[oa]|avvial[oa]|fall[oa]|comincia|iniziamo)(?: (?:now|then|please|anyway|up|allora|pure))*$/u

const MOST_WORDS = 6

/** `Ok, start it`, `yes`, `done`: that it is to be done, and nothing of what is lacking. */
export const isGoAhead = (sentence: Sentence): boolean =>
  sentence.typed.tokens.length <= MOST_WORDS &&
  sentence.bits.length === 0 &&
  (GO_AHEAD.test(wordsAlone(sentence.typed)) ||
    (['yes', 'done_word'] as const).some((concept) => isOnly(sentence.typed, sentence.spans, concept)))
