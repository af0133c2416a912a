import type { Sentence } from '../bits/bit.ts'
import { plainWords } from '../lexicon/plain-text.ts'

/** Where a labelled bottle comes from. */
const FROM_A_SHOP =
  /\b(?:bought|purchased|(?:shop|store)s?|supermarkets?|off licences?|grocers?|comprat[oaie]|acquistat[oaie]|supermercato|negozio|enoteca)(?!\p{L})/u

/** Where nobody knows what was bought. */
const NOBODY_KNOWS =
  /\b(?:unlabel\p{L}*|label\p{L}*|home ?(?:made|brew\p{L}*|distill\p{L}*|still)|distill\p{L}*|moonshine|hooch|stills?|neighbou?rs?|friends?|mates?|market|stalls?|some(?:one|body)|(?:a|some|this) (?:man|guy|bloke|farmer|lad|woman)|car boot|online|internet|abroad|etichett[ae]|vicin[oaie]|amic[oaie]|mercat(?:o|ino)|bancarella|contadin[oaie]|distillat[oaie]|alambicco|qualcuno)(?!\p{L})/u

/** Whether a spirit is told to be from a shop, as what is sold for drinking is. */
export function isSpiritBought({ typed: { text }, bits }: Sentence): boolean {
  const plain = plainWords(text)
  const isSpirit = bits.some(({ kind, role }) => kind === 'spirit' || (kind === 'strength' && role !== 'want'))
  return isSpirit && FROM_A_SHOP.test(plain) && !NOBODY_KNOWS.test(plain)
}
