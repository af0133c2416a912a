/** What only the maker can see, smell or tell: each a question with yes or no. */
export type Sign = keyof typeof table

/**
 * By the answer that speaks against the jar, in the order in which they are asked: what kills first.
 * Source of the order: the project's own list of stop questions, reviewed for food safety.
 */
const table = {
  ill: 'yes',
  burnt: 'yes',
  bought: 'no',
  sure: 'no',
  known: 'no',
  fuel: 'yes',
  varnish: 'yes',
  burst: 'yes',
  growth: 'yes',
  slime: 'yes',
  glass: 'yes',
  hard: 'yes',
  stones: 'yes',
  dairy: 'yes',
  oil: 'yes',
  metal: 'yes',
  plastic: 'yes',
  perfume: 'yes',
  cleaner: 'yes',
  foam: 'yes',
  spoiled: 'yes',
  many: 'yes',
  vinegar: 'yes',
  rotten: 'yes',
  fizz: 'yes',
  recurs: 'yes',
} as const satisfies Readonly<Record<string, 'yes' | 'no'>>

export const signs = Object.keys(table) as readonly Sign[]

/** Whether a yes speaks against it. */
export const isBadSign = (sign: Sign): boolean => table[sign] === 'yes'

/** As a line says it that somebody may type; one word is said as it is. */
const WORDS: { readonly [Name in Sign]?: string } = {
  bought: 'bought spirit',
  sure: 'certain plants',
  known: 'contents known',
  fuel: 'smells of petrol',
  varnish: 'smells of nail varnish',
  growth: 'something grows',
  slime: 'slimy',
  glass: 'chipped',
  hard: 'hard clear bits',
  stones: 'cracked stones',
  dairy: 'old milk or egg',
  oil: 'oil in it',
  metal: 'stood in metal',
  plastic: 'soft plastic',
  perfume: 'essential oil',
  cleaner: 'smells of cleaner',
  foam: 'froths like soap',
  spoiled: 'mouldy fruit',
  vinegar: 'smells of vinegar',
  rotten: 'smells of rot',
  fizz: 'fizzes',
  recurs: 'hisses again',
}

export const signText = (sign: Sign): string => WORDS[sign] ?? sign

/** The sign that a text names, by its word or as a line says it; null where it names none. */
export const signNamed = (text: string): Sign | null =>
  signs.find((sign) => sign === text || signText(sign) === text) ?? null

export const isSign = (text: string): text is Sign => text in table
