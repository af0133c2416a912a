import { clean } from '../../text/clean.ts'

/** Scripts whose writing needs the joiners: in all others they only hide. */
const JOINED = ['Arab Syrc Nkoo Mand Mong', 'Deva Beng Guru Gujr Orya Taml Telu Knda Mlym Sinh Khmr Mymr Tibt']
  .join(' ')
  .split(' ')
  .map((script) => `\\p{Script=${script}}`)
  .join('')

/** Characters that show nothing by themselves but belong to what stands beside them. */
const KEPT = [
  // Emoji made of several, such as a farmer or the flag of pirates.
  '(?<=\\p{ExtPict}\\uFE0F?\\p{EMod}?)\\u200D(?=\\p{ExtPict})',
  // The flags of England, Scotland and Wales, which are spelt in tags.
  '(?<=\\u{1F3F4})[\\u{E0020}-\\u{E007E}]{3,6}\\u{E007F}',
  `(?<=[${JOINED}])[\\u200C\\u200D]`,
  // One selector of a form: emoji or text, a Mongolian letter, a Chinese character.
  '(?<=\\p{Emoji})[\\uFE0E\\uFE0F]',
  '(?<=\\p{Script=Mong})[\\u180B-\\u180D\\u180F]',
  '(?<=\\p{Script=Han})[\\uFE00-\\uFE02\\u{E0100}-\\u{E01EF}]',
].join('|')

const HIDDEN = new RegExp(`(${KEPT})|[\\p{DI}\\uFFF9-\\uFFFB]`, 'gu')

/**
 * Text of people and of ours without what moves, reorders or hides: control characters, halves of characters, marks of
 * direction, and characters without a shape (Unicode's Default_Ignorable_Code_Point), except where emoji or a script need
 * one to be written as typed.
 */
export const plainText = (text: string): string => clean(text).replace(HIDDEN, (_hidden, kept?: string) => kept ?? '')
