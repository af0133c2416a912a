import { wordsAlone } from '../../../core/quantity/read/tokens.ts'
import { type Bit, bit, type Sentence } from './bit.ts'

/** No sugar is wished: `no sugar`, `I don’t want any sugar in it`, `unsweetened`, `senza zucchero`. */
const NONE =
  /(?:^| )(?:(?:with ?out|with no|w ?o|no|zero|none of the|not? any|hold the|skip the|leave out the|leave the|omit the|forget the|minus the|less the|cut out the) (?:(?:added|any|more|extra|the|white|single bit of|grain of) )*(?:sugar|sugar syrup|syrup|sweetening)(?: out| off| at all| in it| for me)*|(?:dont|do not|didnt|wont|will not|would not|wouldnt|shouldnt|not going to|never|rather not|prefer not to) (?:(?:really|actually|think i|to|want|like|wish|plan) )*(?:want|like|need|add|put|use|have|get|take)(?:ing)? (?:(?:any|the|more|added|in|it|to) )*(?:sugar|syrup)|(?:want|like|make|keep|leave|have|get|prefer|drink|do) (?:(?:it|mine|this|that|them|the \p{L}+) )?(?:(?:totally|completely|quite|fully) )?(?:un ?sweetened|sugar ?free)|un ?sweetened|sugar ?less|sugar ?free|sugar stays out|(?:senza|niente|nessuno|no|zero) (?:(?:lo|aggiungere|altro|metterci) )*zucchero|non (?:voglio|vogliamo|ci va|metto|mettiamo|mettere|serve|aggiungo|aggiungere) (?:(?:lo|dello|nessuno|affatto) )*zucchero|non zuccherat[oa])(?= |$)/u

/** It is not there, or of something else: `I have no sugar`, `no sugar yet`, `is that without sugar?`. */
const OTHER =
  /(?:^| )(?:(?:have|had|got|ive|theres|there is|there was|with|contains?|bought|buy|ho|abbiamo|c e) (?:got )?no sugar|no sugar (?:yet|left|in the house|at home|here|substitutes?|in (?:the|this|that) (?:\p{L}+ )?(?:vodka|gin|rum|brandy|spirit)|recorded|so far|until|till|for now|today)|sweetener|stevia|honey instead|ran out|run out|too|forgot|already|tast(?:es|ed)|miele|dolcificante|perche|come)(?= |$)/u

/** Asked, or only thought of. */
const ASKED =
  /^(?:(?:and|so|but|ok|e|ma) )*(?:has|did|is|was|does|do|can|could|will|would|may|should|why|how|what|if|is it|perche|come|posso|si puo)(?= )(?! (?:not|it|without|the|this|that|mine) ?(?:want|without|unsweetened|sugar)?)/u

/** Words that say so, which are no others. */
const SAYS = /^(?:un-?sweetened|sugar-?free|sugarless|sugar|zucchero|zuccherat[oa]|free)$/

/** The words of it. */
export const noSugarWords = ({ tokens }: Sentence['typed']): readonly Bit[] =>
  tokens.flatMap(({ text }, at) => (SAYS.test(text) ? [bit('sugar', at, at + 1, 0, text)] : []))

/** Whether a drink without any sugar is wished. */
export function isNoSugar({ typed, bits }: Pick<Sentence, 'typed' | 'bits'>): boolean {
  const words = wordsAlone(typed).replace(/['’]/gu, '')
  const isAmount = bits.some(({ role, kind }) => role === 'of_sugar' || kind === 'sweetness')
  return !isAmount && !typed.text.includes('?') && NONE.test(words) && !OTHER.test(words) && !ASKED.test(words)
}

/** As it is noted. */
export const noSugarText = ({ lexicon }: Pick<Sentence, 'lexicon'>): string =>
  lexicon.id === 'it' ? 'senza zucchero' : 'no sugar'
