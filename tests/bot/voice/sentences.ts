/** A line to type, to the end of its sentence's paragraph. */
const TO_TYPE = /(?:^|\s)\/[a-z][^\n]*$/u

/** Most words of a sentence on a first screen. */
export const MOST_WORDS = 25

/** A text in sentences, without the line to type at its end; what is joined by plus signs is read one by one. */
export const sentencesOf = (text: string): readonly string[] =>
  text
    .replaceAll('\u00a0', ' ')
    .split('\n')
    .flatMap((line) => line.replace(TO_TYPE, '').split(/(?<=[.?!])\s+(?=[\p{Lu}“\d])| \+ /u))
    .map((sentence) => sentence.trim())
    .filter((sentence) => sentence !== '')

export const wordsOf = (sentence: string): number =>
  sentence.split(/\s+/).filter((word) => /\p{L}|\d/u.test(word)).length
