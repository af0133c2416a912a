import type { Token } from '../../../core/quantity/read/tokens.ts'
import type { Lexicon } from './lexicon.ts'

/** Small words as they are said in Scotland and the North, and as they are thumbed; each has one meaning wherever it stands. */
const BROAD: ReadonlyMap<string, string> = new Map(
  Object.entries({
    teh: 'the',
    hte: 'the',
    adn: 'and',
    oot: 'out',
    doon: 'down',
    aff: 'off',
    awa: 'away',
    roond: 'round',
    wi: 'with',
    thru: 'through',
    thro: 'through',
    hae: 'have',
    hav: 'have',
    hiv: 'have',
    ahve: 'ive',
    ave: 'have',
    gie: 'give',
    gied: 'gave',
    gien: 'given',
    mair: 'more',
    yer: 'your',
    abt: 'about',
    bout: 'about',
    disnae: 'doesnt',
    doesnae: 'doesnt',
    didnae: 'didnt',
    isnae: 'isnt',
    wisnae: 'wasnt',
    wasnae: 'wasnt',
    cannae: 'cant',
    canny: 'cant',
    couldnae: 'couldnt',
    wouldnae: 'wouldnt',
    willnae: 'wont',
    havenae: 'havent',
    hivnae: 'havent',
    summat: 'something',
    owt: 'anything',
    tae: 'to',
    fae: 'from',
    frae: 'from',
    efter: 'after',
    jist: 'just',
    noo: 'now',
    naw: 'no',
    nay: 'no',
    wis: 'was',
    wasny: 'wasnt',
    wisny: 'wasnt',
    oan: 'on',
    ower: 'over',
    ablow: 'below',
    ablo: 'below',
    ahent: 'behind',
    ae: 'of',
    masel: 'myself',
    yersel: 'yourself',
    soz: 'sorry',
    wan: 'one',
    twa: 'two',
  }),
)

/** `No too sweet`, `nae that strong`: not; `nae flavour` is no flavour. */
const HOW = /^(?:too|that|so|very|awfy|as|quite|over|really)$/

const LIKE_THIS =
  /^(?:sweet|sugary|strong|boozy|dry|weak|bitter|sour|sharp|cloudy|thick|thin|hot|much|many|keen|good|bad)$/

/** `It's to sweet`, `a bit to strong`: no wish of what it is to be. */
const BEFORE_TOO =
  /^(?:is|its|are|was|were|theyre|thats|tastes?|came|come|turned|out|way|far|much|bit|little|tad|bloody)$/

const isNumber = ({ kind, text }: Token): boolean => kind === 'number' && !/^(?:8|11|18|80)\b/.test(text)

/** No English word takes `an` before these: `rum an sloes`, `lemons an a bottle`. */
const isAnd = (next: Token): boolean =>
  isNumber(next) ||
  /^(?:an?|the|some|half|one|my|our)$/.test(next.text) ||
  (next.kind === 'word' && !/^[aeiouh]/.test(next.text))

function meant(tokens: readonly Token[], at: number): string | null {
  const [before, token, next] = [tokens[at - 1], tokens[at]!, tokens[at + 1]]
  if (token.kind !== 'word') return null
  const isTooMuch = LIKE_THIS.test(next?.text ?? '') && BEFORE_TOO.test(before?.text ?? '')
  if (token.text === 'to' && isTooMuch) return 'too'
  if (token.text === 'nae') return HOW.test(next?.text ?? '') ? 'not' : 'no'
  const isSo = next?.text === 'too' || (next?.text === 'that' && LIKE_THIS.test(tokens[at + 2]?.text ?? ''))
  if (token.text === 'no' && isSo) return 'not'
  const isBetween = before !== undefined && next !== undefined && next.kind !== 'sign'
  if (token.text === 'n') return isBetween ? 'and' : null
  if (token.text === 'an') return isBetween && isAnd(next) ? 'and' : null
  if (token.text === 'o') return isBetween && before.kind === 'word' ? 'of' : null
  // `Tae ma sister`; `my ma` is hers.
  const isMine =
    token.text === 'ma' && next?.kind === 'word' && !/^(?:my|your|our|his|her|their|the)$/.test(before?.text ?? 'the')
  if (isMine) return 'my'
  if (token.text === 'w' && next?.text === '/' && next.from === token.to) return 'with'
  return BROAD.get(token.text) ?? null
}

/** The pieces of an English sentence with small words of other ways of speaking as the lexicon has them: `six lemons an a bottle o vodka`. */
export function broadMeant(tokens: readonly Token[], { id }: Lexicon, names: ReadonlySet<string>): readonly Token[] {
  if (id !== 'en') return tokens
  return tokens.flatMap((token, at) => {
    // `W/ the ginger`.
    const isOfWith = token.text === '/' && tokens[at - 1]?.text === 'w' && tokens[at - 1]!.to === token.from
    if (isOfWith) return []
    const text = names.has(token.text) ? null : meant(tokens, at)
    return [text === null ? token : { ...token, text }]
  })
}
