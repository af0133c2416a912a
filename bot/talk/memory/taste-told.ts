import { wordsAlone } from '../../../core/quantity/read/tokens.ts'
import type { Sentence } from '../bits/bit.ts'
import { DEEDS } from '../lexicon/lexicon.ts'

/** Words for how something tastes. */
const TASTES =
  /(?<!\p{L})(?:lovely|nice|good|great|fine|perfect|delicious|brilliant|wonderful|excellent|superb|tasty|gorgeous|yum|yummy|awful|horrible|nasty|foul|bad|poor|meh|weak|strong|faint|mild|thin|bland|flat|sharp|sour|tart|bitter|sweet|dry|harsh|rough|hot|burns?|fiery|warm|smooth|round|rounded|soft|grassy|herby|green|woody|tannic|musty|medicinal|soapy|fruity|floral|spicy|fresh|raw|off|odd|funny|disgusting|buon[oa]|ottim[oa]|perfett[oa]|amar[oa]|aspr[oa]|dolce|forte|debole|delicat[oa]|cattiv[oa])(?!\p{L})/u

const MOST_WORDS = 14

/** How something tastes, in a few words without a number, a deed or a question; as it was typed. */
export function tasteTold({ typed, bits, has }: Sentence): string | null {
  const words = wordsAlone(typed)
  const isPlain = bits.every(({ kind }) => kind === 'plant' || kind === 'sugar' || kind === 'style')
  if (!isPlain || typed.tokens.length > MOST_WORDS || typed.text.includes('?')) return null
  if (!TASTES.test(words) || has('asking', 'done_word', ...DEEDS)) return null
  return typed.text.trim().replace(/[.!\s]+$/, '')
}
