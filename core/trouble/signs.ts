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
} as const satisfies Readonly<Record<string, 'yes' | 'no'>>

export const signs = Object.keys(table) as readonly Sign[]

/** Whether a yes speaks against it. */
export const isBadSign = (sign: Sign): boolean => table[sign] === 'yes'

export const isSign = (text: string): text is Sign => text in table
