import { symptoms } from '../../../core/trouble/symptoms.ts'
import type { CallRead } from '../frames/reading.ts'

const NOUN = '(?:bottles?|bottigli[ae])'

/** That it stands in bottles: `it’s bottled already, in swing-top bottles`, `I’ve filled the bottles`. */
const IN_BOTTLES = new RegExp(
  `\\b(?:(?:is|its|are|theyre|were|was|have|ive|weve|has|e|gia|sono) (?:\\p{L}+ ){0,3}?(?:bottled|imbottigliat[oaie])(?: (?:already|now|up|gia|ormai))?|(?:already|gia) (?:bottled|imbottigliat[oaie])|(?:bottled|imbottigliat[oaie]) (?:[\\p{L}\\p{N}]+ ){0,4}?(?:already|yesterday|ago|last (?:week|month|night|weekend|\\p{L}+day)|gia|ieri|scors[oaie])|bottled (?:some|half|most|part|a few|two|three|four|five|six)|(?:already|now|is|its|it|all|are|theyre|gia|ormai|e|tutt[oa]) (?:all |already )?(?:in|into|nelle|in delle) (?:\\p{L}+ ){0,3}?${NOUN}|(?:filled|corked|closed|sealed|capped|riempit[oaie]|tappat[oaie]|chius[oaie]) (?:\\p{L}+ ){0,3}?${NOUN}|${NOUN} (?:are |is |sono )?(?:already |gia )?(?:full|filled|corked|sealed|closed|pien[ea]|chius[ea]|tappat[ea]))(?!\\p{L})`,
  'u',
)

/** What is asked of bottles that are full: `are the bottles dangerous?`, `what do I do with the bottles?`, `could a bottle burst?`. */
const OF_BOTTLES = new RegExp(
  `\\b(?:(?:are|is|do|what|how|will|can|could|might|should|shall|about|with|of|sono|posson\\p{L}*|puo|cosa|che|come|faccio|con|e) (?:\\p{L}+ ){0,4}?(?:other |full |altre )?${NOUN})(?!\\p{L})`,
  'u',
)

/** What is asked of bottles that are to be filled, or of how many there are. */
const TO_FILL =
  /\b(?:how many|quante|(?:can|may|should|could|do|when|posso|quando) (?:i|we|lo|la)? ?(?:\p{L}+ )?(?:bottle|imbottigli\p{L}*)(?! (?:burst|explode|pop|break))|which bottles?|what (?:size|kind|sort) |new bottles?|clean(?:ing)?|wash(?:ing)?|steril\p{L}+|buy|label|if i (?:bottled?|fill)|not|havent|isnt|arent|never|non)(?!\p{L})/u

const OF_GAS: readonly string[] = [...symptoms.pressure.en, ...symptoms.pressure.it, ...symptoms.fermenting.en]

/** Whether what was told is gas: it pushes, hisses or fizzes. */
export const isOfGas = ({ symptom = '', yes = '' }: CallRead['options']): boolean =>
  OF_GAS.includes(symptom) || /\b(?:hisses again|fizzes)\b/.test(yes)

/** Behind gas: it stands in full bottles, or they are asked about. */
export const ofFullBottles = (plain: string): boolean =>
  /bott|imbott/.test(plain) && !TO_FILL.test(plain) && (IN_BOTTLES.test(plain) || OF_BOTTLES.test(plain))
