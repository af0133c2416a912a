import { type RefusedSaid, refusedIn } from '../../../core/botanical/refuse/refused-in.ts'

const STONES = /\b(?:stones?|pits?|nocciol[oi])\b/iu

/** Whether they stay in the fruit, or come out. */
const KEPT =
  /\b(?:comes? out|coming out|take|taken|taking|leave|left|leaving|keep|stay|in or out|inside|remove\p{L}*|tolg\p{L}*|toglier\p{L}*|tolt[oi]|lasci\p{L}*|dentro)\b/iu
const ASKED = /\?|\b(?:do|does|should|shall|must|can|may|need|or (?:no|not|nah|what|out)|devo|vanno|o no)\b/iu

/** Done to them so that what is in them gets out. */
const OPENED =
  /\b(?:crack\p{L}*|crush\p{L}*|gr(?:i|ou)nd\p{L}*|smash\p{L}*|br(?:oke|eak)\p{L}*|split|blitz\p{L}*|kernels?|bitter|noyau|only|just|use|using|eat\p{L}*|roast\p{L}*|boil\p{L}*|of the stones|rott[oi]|romp\p{L}*|spacc\p{L}*|pest\p{L}*|macin\p{L}*|trit\p{L}*|armellin\p{L}*|mandorl\p{L}*|us(?:o|are|i)|weeks?|months?|years?|settiman\p{L}*|mes[ei]|ann[oi])\b/iu

/** `Do the cherry stones come out first`: whether whole stones stay in, which the handbook answers; of what is in them nothing is asked. */
const isOfStonesLeft = (text: string, { id }: RefusedSaid): boolean =>
  id === 'kernels' && STONES.test(text) && KEPT.test(text) && ASKED.test(text) && !OPENED.test(text)

/** What is refused in a sentence first, unless it only asks where the stones of its fruit go. */
export const refusedOf = (text: string): RefusedSaid | undefined =>
  refusedIn(text).find((each) => !isOfStonesLeft(text, each))
