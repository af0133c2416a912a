/** A part of what there is, above 0 and at most 1. */
export interface PartOfIt {
  readonly kind: 'share'
  readonly share: number
}

const PARTS: Readonly<Record<string, number>> = {
  half: 2,
  halves: 2,
  third: 3,
  thirds: 3,
  quarter: 4,
  quarters: 4,
  fourth: 4,
  fourths: 4,
  fifth: 5,
  fifths: 5,
  metà: 2,
  meta: 2,
  mezzo: 2,
  terzo: 3,
  terzi: 3,
  quarto: 4,
  quarti: 4,
}

const NUMBERS: Readonly<Record<string, number>> = { a: 1, an: 1, one: 1, two: 2, three: 3, un: 1, due: 2, tre: 3 }

const SIGNS: Readonly<Record<string, number>> = { '½': 1 / 2, '⅓': 1 / 3, '⅔': 2 / 3, '¼': 1 / 4, '¾': 3 / 4 }

function shareOf(text: string): number | null {
  const said = text
    .trim()
    .toLowerCase()
    .replace(/\s+(?:of it|of the jar|of that)$/, '')
    .replaceAll(/[\s-]+/g, ' ')
  const sign = SIGNS[said]
  if (sign !== undefined) return sign
  const percent = /^(\d{1,3}(?:[.,]\d+)?) ?(?:%|per ?cent)$/.exec(said)?.[1]
  if (percent !== undefined) return Number(percent.replace(',', '.')) / 100
  const [, over, under] = /^(\d{1,2}) ?\/ ?(\d{1,2})$/.exec(said) ?? []
  if (over !== undefined) return Number(over) / Number(under)
  const words = said.split(' ')
  const [number, part] = words.length === 1 ? ['a', words[0]!] : [words[0]!, words[1]!]
  const [count, parts] = [NUMBERS[number], PARTS[part]]
  return words.length > 2 || count === undefined || parts === undefined ? null : count / parts
}

/** `half`, `a third`, `two thirds`, `25 %`, `1/4`; null where a text is no such part. */
export function parseShare(text: string): PartOfIt | null {
  const share = shareOf(text)
  return share !== null && share > 0 && share <= 1 ? { kind: 'share', share } : null
}

const NAMED: readonly (readonly [number, string])[] = [
  [1 / 2, 'half'],
  [1 / 3, 'a third'],
  [2 / 3, 'two thirds'],
  [1 / 4, 'a quarter'],
  [3 / 4, 'three quarters'],
]

/** The most parts that a fraction counts. */
const MOST_PARTS = 99

/** As `parseShare` reads it. */
export function writeShare({ share }: PartOfIt): string {
  const named = NAMED.find(([value]) => value === share)?.[1]
  if (named !== undefined) return named
  const percent = `${Number((100 * share).toPrecision(12))}%`
  if (parseShare(percent)?.share === share) return percent
  const parts = Array.from({ length: MOST_PARTS }, (_, at) => at + 1)
  const under = parts.find((each) => Math.round(share * each) / each === share)
  return under === undefined ? percent : `${Math.round(share * under)}/${under}`
}
