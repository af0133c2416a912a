import { lazily } from '../../../core/once.ts'
import { withoutMarks } from '../lexicon/plain-text.ts'
import {
  AGES,
  ASKED,
  agedIn,
  anniIn,
  avuto,
  GIOVANI,
  HELPS,
  had,
  isToldOfYoung,
  OF_AGE_LATER,
  SOFT,
  SPIRITED,
  SWALLOWED,
  WITHOUT,
  YOUNG,
  type YoungTold,
} from './child-words.ts'

const patterns = lazily(() => ({
  aged: [had(agedIn(AGES.child)), avuto(anniIn(AGES.child))],
  young: [had(YOUNG), avuto(GIOVANI)],
  nearly: [had(agedIn(AGES.nearly)), avuto(anniIn(AGES.nearly))],
}))

/** `A bottle and my brother two`: bottles that are counted, no age. */
const COUNTED =
  /(\bbottles? (?:to (?:\p{L}+ ){1,3})?(?:and|,) (?:my|our|his|her|their|the) \p{L}+) (?:[1-6]|one|two|three|four|five|six)(?=$| ?[.!,]| and\b)/gu

const plainly = (text: string): string =>
  withoutMarks(text)
    .replace(/[^\p{L}\d?.!,]+/gu, ' ')
    .replace(COUNTED, '$1')
    .trim()

/** A soft drink, a hand that is lent, or a bottle kept for later. */
const isHarmless = (plain: string): boolean =>
  WITHOUT.test(plain) ||
  (SOFT.test(plain) && !SPIRITED.test(plain)) ||
  (HELPS.test(plain) && !SWALLOWED.test(plain)) ||
  OF_AGE_LATER.test(plain)

/**
 * Whether somebody young is to have some: `can I give it to my 15 year old?`, `my mate who is 15 wants to try it`. At eighteen to
 * twenty they may or may not, by where they live; null where nobody young is told of.
 */
export function whoIsYoung(text: string): 'child' | 'nearly' | null {
  const plain = plainly(text)
  if (isHarmless(plain)) return null
  const { aged, young, nearly } = patterns()
  const isOf = (each: readonly YoungTold[]): boolean => each.some((told) => isToldOfYoung(told, plain))
  if (isOf(aged)) return 'child'
  if (!ASKED.test(plain)) return null
  if (isOf(young)) return 'child'
  return isOf(nearly) ? 'nearly' : null
}
