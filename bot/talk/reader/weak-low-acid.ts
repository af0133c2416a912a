import { botanicalById } from '../../../core/botanical/catalogue/catalogue.ts'
import { findFood } from '../../../core/botanical/foods/find-food.ts'
import { KEEPS_ABV_PERCENT } from '../../../core/liquid/keeping.ts'
import { textFrom } from '../../../core/quantity/read/tokens.ts'
import { isInGroup } from '../../../core/trouble/plant-groups.ts'
import type { Bit, Sentence } from '../bits/bit.ts'
import { plainWords } from '../lexicon/plain-text.ts'

/** What is drunk as it ferments, or fortified to below 20 %; what is only as sour as vinegar is another matter. */
const WEAK_DRINK =
  /\b(?:(?:red|white|rose|fortified|table|rice|plum|light) wine|wines?(?! (?:bottles?|glass(?:es)?|corks?|vinegar|gums?|shop|yeast|jugs?))|port(?! (?:bottles?|glass))|sherry|vermouth|madeira|marsala|prosecco|cava|champagne|cider(?! vinegar)|beer|ale|lager|mead|sake|soju|makgeolli|perry|vin[oi](?! d alcol)|birra|sidro|spumante|moscato|porto|sangria|(?:weak|watered down|watery|low (?:strength|alcohol|abv|proof)) (?:\p{L}+ )?(?:spirits?|alcohol|vodka|gin|rum|brandy|booze|liqueur|liquor)|alco+l (?:debole|leggero|a bassa gradazione|(?:a|da|di) 1?\d gradi))\b/u

const WEAKENED = /\b(?:weak|watered|watery|low|debole|leggero|bassa)\b/u

const OTHERWISE =
  /\b(?:vinegar|aceto|soup|stew|sauce|gravy|risotto|marinade|roast|chicken|beef|fish|pasta|zuppa|sugo|arrosto|dinner|cena|like (?:wine|beer|sherry|port))\b/u

const UNDER_OIL =
  /\b(?:in|under|with|and|into|sotto|con|nell|nel|covered (?:in|with)) (?:(?:the|some|good|extra|virgin|cold) )*(?:olive|sunflower|rapeseed|vegetable|cooking|seed|nut|groundnut)? ?(?:oil|olio)\b(?! (?:lamp|paint|drops?))|\bsott ?olio\b/u

const isDried = (text: string): boolean => /\b(?:dried|dry|powder(?:ed)?|secch[ei]|essiccat[oaie])\b/u.test(text)

/** Whether botulism may grow on it where nothing keeps it down: a vegetable, garlic, fresh chilli. */
function isLowAcid({ ids = [] }: Bit, text: string): boolean {
  if (isDried(text)) return false
  if (ids.length === 0) return findFood(text)?.food.kind === 'vegetable'
  return ids.some((id) => isInGroup(botanicalById(id), 'low_acid'))
}

const isHerb = ({ ids = [] }: Bit, text: string): boolean =>
  !isDried(text) && ids.some((id) => botanicalById(id).kind === 'herb')

/**
 * What botulism grows in, by what is named beside each other: a vegetable, garlic or fresh chilli in wine, beer or anything
 * below 20 %, or one of these or a herb under oil. The entry of the handbook that answers it; null where nothing of it is said.
 */
export function weakLowAcid({ bits, typed, has }: Sentence): 'garlic' | 'herb_oil' | null {
  const plain = plainWords(typed.text)
  if (OTHERWISE.test(plain)) return null
  const plants = bits.filter(({ kind }) => kind === 'plant')
  const isOf = (which: (each: Bit, text: string) => boolean): boolean =>
    plants.some((each) => which(each, textFrom(typed, each.from, each.to)))
  // `Verdure`, `mushrooms`: no plant of the catalogue.
  const isNamed = plants.length === 0 && has('garlic') && !isDried(plain)
  const isVegetable = isNamed || isOf(isLowAcid)
  if (UNDER_OIL.test(plain)) return isVegetable || isOf(isHerb) ? 'herb_oil' : null
  if (!isVegetable) return null
  const isWeak = bits.some(
    ({ kind, value, role }) => kind === 'strength' && role !== 'want' && value < KEEPS_ABV_PERCENT,
  )
  // Strong enough from the first day on; a strength that is told goes before what such a spirit usually has.
  if (bits.some(({ kind, value }) => kind === 'strength' && value >= KEEPS_ABV_PERCENT)) return null
  if (isWeak) return 'garlic'
  const isSpirit = bits.some(({ kind }) => kind === 'spirit') && !WEAKENED.test(plain)
  return !isSpirit && WEAK_DRINK.test(plain) ? 'garlic' : null
}
