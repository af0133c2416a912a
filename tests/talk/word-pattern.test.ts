import { expect, it } from 'vitest'
import { wordPatterns } from '../../bot/talk/emergency/word-pattern.ts'

const plainly = (pieces: readonly string[], text: string) =>
  [...text.matchAll(new RegExp(` (?:${pieces.join('|')})(?= )`, 'g'))].map(({ index, 0: found }) => [
    index,
    index + found.length,
  ])

/** Pieces of every kind that the lists of words hold. */
const PIECES = [
  ['drank|drunk', 'bit(?:ten)? (?:into|on)', 'had (?:\\w+ ){0,3}(?:sip|sips)'],
  ['s?he (?:is|was)', '(?:ol)?fire|fires?', 'mors[oi]|bevut[oaie]', '(?<! the )smells? of|the smell'],
  ['(?:a|one|\\d+) litres?', '9[0-7]|[1-3]\\d months', '\\w+cello', 'x+ray', '(?:very )?(?:ill|sick)(?! of)'],
  [
    '(?:jars?|(?:big |small )?bottles?|\\d stars?)',
    'no',
    'no more',
    '(?:not|(?:is|are)nt)(?= (?:ill|sick))',
    'o{2,3}h',
  ],
]

const TEXTS = [
  'she drank it and had a big sip . he is bitten on the hand , bit into glass',
  'the smell of smoke smells of gas the smells of gas',
  'limoncello 1 litre 12 litres 95 98 13 months 3 months old fire olfire fires',
  'very ill sick of it ill of very sick x xray xxray no no more ooh oooh oh ooooh',
  'bottle big bottles small bottle 4 stars isnt ill not sick arent well morso morsi bevute',
  '',
  'no',
]

it('finds what the expression finds as a whole', () => {
  const texts = TEXTS.map((text) => ` ${text} `)
  const found = PIECES.flatMap((pieces) => texts.map((text) => wordPatterns({ pieces }).in(text)('pieces')))
  expect(found).toEqual(PIECES.flatMap((pieces) => texts.map((text) => plainly(pieces, text))))
  expect(found.flat().length).toBeGreaterThan(25)
})
