import { plainWords } from '../lexicon/plain-text.ts'

const STONE = '(?:stones?|pits?|kernels?|nocciol[oi])'
const OPEN = '(?:cracked|split|broken|broke|crushed|smashed|open|burst|rott[oi]|spaccat[oi]|schiacciat[oi]|apert[oi])'

/** `A stone in the jar that’s cracked`, `some of the stones have split`; not what cracked the glass. */
const CRACKED = new RegExp(
  `\\b${STONE} (?:\\p{L}+ ){0,5}?(?:(?:thats|whats|is|are|was|were|has|have|had|got|looks?|look|come|came|e|sono|si e|si sono) )+(?:\\p{L}+ )?${OPEN}(?! (?:the|my|our|a|il|la) (?:jar|glass|bottle|lid|vaso|vetro))\\b`,
  'u',
)
const CRACKED_ONE = new RegExp(
  `\\b(?:theres|there is|there are|found|see|spotted|noticed|got|trovato|vedo|ci sono|c e) (?:\\p{L}+ ){0,3}?(?:${OPEN} (?:\\p{L}+ )?${STONE}|${STONE} ${OPEN})\\b`,
  'u',
)

/** Told as done, whoever did it. */
const DID =
  '(?:(?:i|we|he|she|they|ive|weve|my \\p{L}+) (?:have |had |has |ve )?(?:already |just |accidentally |stupidly )?|ho |abbiamo |ha |hanno )(?:gia )?'
const WENT_IN =
  '(?:put|added|dropped|threw|thrown|chucked|tipped|poured|left|used|bunged|stirred|included|kept|mess[oi]|aggiunt[oi]|lasciat[oi]|buttat[oi])'
const BROKE =
  '(?:cracked|crushed|smashed|broke|broken|ground|split|opened|blended|rott[oi]|spaccat[oi]|schiacciat[oi]|pestat[oi]|frullat[oi])'
const BROKEN_ONES = `(?:${OPEN} (?:\\p{L}+ ){0,2}?${STONE}|(?:\\p{L}+ ){0,2}?${STONE} ${OPEN}|(?:\\p{L}+ ){0,2}?kernels?)`

/** `I put 5 cracked apricot stones in`: open ones that went in already. */
const PUT_IN = new RegExp(
  `\\b${DID}${WENT_IN} (?=.*\\b(?:in|into|inside|with|to (?:the|my|our|it)|dentro|nel|nella|nell|al|alla)\\b)(?:[\\p{L}\\d]+ ){0,4}?${BROKEN_ONES}\\b`,
  'u',
)
/** `I cracked the stones and put them in the jar`: opened first. */
const BROKE_AND_PUT = new RegExp(
  `\\b${DID}${BROKE} (?:[\\p{L}\\d]+ ){0,4}?${STONE} (?:[\\p{L}\\d]+ ){0,5}?(?:and|then|e|poi) (?:then |then i |i |also |poi |li ho |ho )?(?:li ho )?${WENT_IN}\\b`,
  'u',
)

/** `I crushed a few stones and they’re in the jar already`: opened ones that lie in there. */
const BROKE_AND_THERE = new RegExp(
  `\\b${DID}${BROKE} (?:[\\p{L}\\d]+ ){0,4}?${STONE} (?:[\\p{L}\\d]+ ){0,5}?(?:theyre|they are|these are|those are|which are|its|sono|stanno) (?:all |already |now |still |gia )*(?:in|inside|dentro|nel|nella)\\b`,
  'u',
)

const ASKED = /^(?:if|can|could|should|do|does|would|is|are|what if|se|posso|devo)\b/u
const DENIED = /\b(?:no|not|none|never|without|isnt|arent|nessun[oa]?|non)\b/u

const TOLD: readonly RegExp[] = [CRACKED, CRACKED_ONE, PUT_IN, BROKE_AND_PUT, BROKE_AND_THERE]

/** Whether a fruit stone in there is told to be open: that is the kernel and its cyanide, and no glass. */
export function isStoneCracked(text: string): boolean {
  const plain = plainWords(text)
  return !ASKED.test(plain) && !DENIED.test(plain) && TOLD.some((told) => told.test(plain))
}
