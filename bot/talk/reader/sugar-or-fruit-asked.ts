import type { Sentence } from '../bits/bit.ts'

/** `Can I make it without sugar`, which is no sugar without a syrup. */
const NO_SUGAR =
  /\b(?:without|no|leav(?:e|ing) out|skip(?:ping)?|omit(?:ting)?|senza) (?:any |all |the |added |lo )?(?:sugar|zucchero)\b(?! (?:syrup|free))|\b(?:leav(?:e|ing)|miss(?:ing)?) (?:the |all )?sugar out\b|\bnon (?:ci )?mett\p{L}+ (?:lo )?zucchero\b/u
const OF_SYRUP = /\b(?:syrup|sciroppo|honey|miele|melt|dissolv\p{L}*|freeze\p{L}*|keep|last|weak|strong)\b/u

/** Fruit that has lain about: `can I use old lemons`; a whole jar is another matter. */
const OLD =
  /\b(?:old|older|wrinkl(?:y|ed)|shrivell?ed|soft|tired|bruised|vecch[iaeo]|raggrinzit[ieao]|ammaccat[ieao]|appassit[ieao]) (?=\p{L})|\b\p{L}+ (?:vecchi|vecchie|raggrinzit[ie]|ammaccat[ie]|appassit[ie])\b/u
const USED =
  /\b(?:use|using|used|any good|good|ok|okay|all right|alright|fine|usar\p{L}*|uso|usa|vanno|van|buon[ie])\b/u

/** Whether it is asked without any sugar. */
export const isWithoutSugar = (text: string): boolean => NO_SUGAR.test(text) && !OF_SYRUP.test(text)

/** Whether fruit that has lain about is asked of: the plant stands beside the word for it. */
export const isOldFruit = (text: string, { bits, typed, has }: Sentence): boolean =>
  OLD.test(text) &&
  USED.test(text) &&
  !has('own_jar') &&
  bits.length === 1 &&
  bits[0]!.kind === 'plant' &&
  [typed.tokens[bits[0]!.from - 1], typed.tokens[bits[0]!.to]].some((token) => OLD.test(`${token?.text ?? ''} x`))
