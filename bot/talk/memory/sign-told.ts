import { type Sign, signs, signText } from '../../../core/trouble/signs.ts'
import { plainWords } from '../lexicon/plain-text.ts'

/** Words by which a sign is told or denied, and which other it may be an answer to. */
const TELLS: readonly (readonly [RegExp, Sign, Sign?])[] = [
  [/\b(?:hiss\p{L}*|push\p{L}* (?:up|out)|sfiata\p{L}*|sibila|spinge)(?!\p{L})/u, 'recurs', 'fizz'],
  [/\b(?:fizz\p{L}*|frizz\p{L}*|bubbl\p{L}*|foam\p{L}*|froth\p{L}*|bollicine|schiuma)(?!\p{L})/u, 'fizz', 'recurs'],
  [/\b(?:burst|bursts|exploded?|blew up|broke|broken|scoppiat[oaie]|esplos[oaie]|rott[oaie])(?!\p{L})/u, 'burst'],
  [/\b(?:fur|furry|fuzz\p{L}*|mould\p{L}*|mold\p{L}*|grow\p{L}*|muffa|pelo|cresce)(?!\p{L})/u, 'growth', 'slime'],
  [/\b(?:slim\p{L}*|melma|viscid[oa])(?!\p{L})/u, 'slime', 'growth'],
  [/\b(?:milk|cream|eggs?|latte|panna|uov[ao])(?!\p{L})/u, 'dairy'],
]

/** The sign of which a question is open, by the answer that is offered beyond what was told. */
export function askedOf(told: string | undefined, offered: string | undefined): Sign | null {
  const before = (told ?? '').split(' + ')
  const [asked] = (offered ?? '').split(' + ').filter((each) => !before.includes(each))
  return signs.find((sign) => signText(sign) === asked) ?? null
}

/** `No, it does not fizz` where something else was asked: the sign that it tells of; null where it tells of none, or of what was asked. */
export function otherSign(text: string, asked: Sign | null): Sign | null {
  const plain = plainWords(text)
  const told = TELLS.filter(([words]) => words.test(plain))
  const isOfAsked = told.some(([, ...of]) => of.some((sign) => sign === asked))
  return isOfAsked ? null : (told[0]?.[1] ?? null)
}
