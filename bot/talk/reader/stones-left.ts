import { type RefusedSaid, refusedIn } from '../../../core/botanical/refuse/refused-in.ts'
import { isStoneCracked } from './stone-cracked.ts'

const STONES = /\b(?:stones?|pits?|nocciol[oi])\b/iu

/** Whether they stay in the fruit, or come out. */
const KEPT =
  /\b(?:comes? out|coming out|take|taken|taking|leave|left|leaving|keep|stay|in or out|inside|remove\p{L}*|tolg\p{L}*|toglier\p{L}*|tolt[oi]|lasci\p{L}*|dentro)\b/iu
const ASKED = /\?|\b(?:is|are|do|does|should|shall|must|can|may|need|or (?:no|not|nah|what|out)|devo|vanno|o no)\b/iu

/** `Are mirabelle stones ok if they’re whole?`: asked of what nobody has opened. */
const WHOLE = /\b(?:whole|uncracked|unbroken|intact|inter[oi]|integr[oi])\b/iu
const HARMLESS =
  /\b(?:ok|okay|safe|fine|alright|all right|harmless|dangerous|poison\p{L}*|toxic|harm\p{L}*|problem|risk\p{L}*|matter|sicur[oi]|pericolos[oi]|velenos[oi]|problema|va(?:nno)? bene)\b/iu

/** Done to them so that what is in them gets out. */
const OPENED =
  /\b(?:crack\p{L}*|crush\p{L}*|gr(?:i|ou)nd\p{L}*|smash\p{L}*|br(?:oke|eak)\p{L}*|split|blitz\p{L}*|kernels?|bitter|noyau|only|just|use|using|eat\p{L}*|roast\p{L}*|boil\p{L}*|of the stones|rott[oi]|romp\p{L}*|spacc\p{L}*|pest\p{L}*|macin\p{L}*|trit\p{L}*|armellin\p{L}*|mandorl\p{L}*|us(?:o|are|i)|weeks?|months?|years?|settiman\p{L}*|mes[ei]|ann[oi])\b/iu

/** `Do the cherry stones come out first`: whether whole stones stay in, which the handbook answers; of what is in them nothing is asked. */
const isOfStonesLeft = (text: string, { id }: RefusedSaid): boolean =>
  id === 'kernels' &&
  STONES.test(text) &&
  (KEPT.test(text) || (WHOLE.test(text) && HARMLESS.test(text))) &&
  ASKED.test(text) &&
  !OPENED.test(text)

/** `I put cracked stones in already`: no plan is refused by that, of the jar it is told what becomes of it. */
const isInAlready = (text: string, { id }: RefusedSaid): boolean => OF_STONES.has(id) && isStoneCracked(text)

const OF_STONES: ReadonlySet<string> = new Set(['kernels', 'cracked_stones'])

/** What is refused in a sentence first, unless it only asks where the stones of its fruit go, or tells where cracked ones went. */
export const refusedOf = (text: string): RefusedSaid | undefined =>
  refusedIn(text).find((each) => !isOfStonesLeft(text, each) && !isInAlready(text, each))
