const WORDS = [
  'a an one un una uno',
  'two due',
  'three tre',
  'four quattro',
  'five cinque',
  'six sei',
  'seven sette',
  'eight otto',
  'nine nove',
  'ten dieci',
]

/** Whole numbers from one to ten, in English and Italian. */
export const numberWords: ReadonlyMap<string, number> = new Map(
  WORDS.flatMap((words, index) => words.split(' ').map((word): [string, number] => [word, index + 1])),
)
