/** Lower case, without accents. */
export const withoutAccents = (text: string): string =>
  text
    .toLowerCase()
    .normalize('NFD')
    .replace(/[\u0300-\u036f]/g, '')

/** Lower case, without accents and apostrophes: `Cos'è` is `cose`, `can’t` is `cant`. */
export const withoutMarks = (text: string): string => withoutAccents(text).replace(/[’']/g, '')

/** Its words and numbers alone, with one blank between them. */
export const plainWords = (text: string): string => withoutMarks(text).replace(/[^\p{L}\d]+/gu, ' ')
