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

const ASKED = /^(?:if|can|could|should|do|does|would|is|are|what if|se|posso|devo)\b/u
const DENIED = /\b(?:no|not|none|never|without|isnt|arent|nessun[oa]?|non)\b/u

/** Whether a fruit stone in there is told to be open: that is the kernel and its cyanide, and no glass. */
export function isStoneCracked(text: string): boolean {
  const plain = plainWords(text)
  return !ASKED.test(plain) && !DENIED.test(plain) && (CRACKED.test(plain) || CRACKED_ONE.test(plain))
}
