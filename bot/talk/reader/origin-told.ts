import { signText } from '../../../core/trouble/signs.ts'
import type { CallRead } from '../frames/reading.ts'

export const NOT_DENIED = /\b(?:not|didnt|wasnt|never|non) (?:\p{L}+ ){0,2}?(?:bought|purchased|comprat[oa])/u

const OF_SPIRIT =
  /\b(?:vodka|gin|rum|brandy|grappa|whisk(?:e)?y|bourbon|tequila|spirits?|alcohol|booze|liquor|everclear|alcool|alcol|acquavite)\b/u
const OF_SHOP =
  /\b(?:bought|purchased|(?:super)?market|shop|store|off licence|labell?ed|(?:proper|real|known|big|good|famous|expensive|decent) (?:brand|label|make)|sealed|comprat[oa]|supermercato|negozio|enoteca|etichetta|marca)(?!\p{L})/u
const OF_NOBODY =
  /\b(?:distill?ed|home ?made|moonshine|hooch|poteen|unlabell?ed|(?:no|without|missing) (?:a |any )?label|distillat[oa]|fatt[oa] in casa|senza etichetta)(?!\p{L})/u
const OF_ANOTHER = /\b(?:another|new|more|fresh|next|instead|again|tomorrow|altr[oa]|nuov[oa])\b/u

/** Where its spirit came from, told unasked: it answers the danger that stands, and clears nothing; null where it is not told. */
export function originTold(plain: string, options: CallRead['options']): CallRead['options'] | null {
  if (!OF_SPIRIT.test(plain) || OF_ANOTHER.test(plain)) return null
  const isNot = OF_NOBODY.test(plain) || NOT_DENIED.test(plain)
  if (!isNot && !OF_SHOP.test(plain)) return null
  const sign = signText('bought')
  const isAnswered = [options.yes, options.no].some((told) => told?.split(' + ').includes(sign))
  if (isAnswered) return {}
  const key = isNot ? 'no' : 'yes'
  return { [key]: options[key] === undefined ? sign : `${options[key]} + ${sign}` }
}
