import { DomainError } from '../../domain-error.ts'
import { shown } from '../../quantity/read/tokens.ts'
import { plainWords } from '../../spelling/normalise-name.ts'
import { isOneTypo } from '../../spelling/one-typo.ts'
import { type PhraseSpan, phrases } from '../spirit/phrases.ts'
import { type UndrinkableId, undrinkables, unharmed } from '../spirit/undrinkable.ts'

const good = phrases(unharmed)

const tables = undrinkables.map(({ id, anywhere, beside, made }) => ({
  id,
  anywhere: phrases(anywhere),
  beside: phrases(`${anywhere}, ${beside}`),
  made: phrases(made ?? ''),
}))

const LEAST_LETTERS = 6

/** Words in which a typo may hide what is undrinkable. */
const hidden = tables.flatMap(({ id, anywhere }) =>
  anywhere.single.filter(({ length }) => length >= LEAST_LETTERS).map((word) => ({ id, word })),
)

/** Ordinary words one letter away from one of those. */
const ORDINARY = new Set([
  ...[
    'ethanol',
    'etanolo',
    'etanol',
    'ethyl',
    'rubbings',
    'brushing',
    'thinned',
    'absolut',
    'surgically',
    'bubbling',
    'dubbing',
  ],
  ...['colonial', 'brazing', 'grubbing', 'benzoin', 'fuels', 'kerosine'],
])

/** What must not be drunk, and why; `word` as the tables compare it. */
export interface FoundUndrinkable {
  readonly id: UndrinkableId
  readonly word: string
}

const unharmedIn = (words: readonly string[]): readonly PhraseSpan[] =>
  words.flatMap((_, at) => {
    const length = good.longestAt(words, at)
    return length === 0 ? [] : [{ from: at, to: at + length }]
  })

type Where = 'anywhere' | 'beside' | 'made'

/** As Germans type an umlaut without its key. */
const withoutUmlauts = (word: string): string => word.replace(/([aou])e/g, '$1')

const foundIn = (words: readonly string[], where: readonly Where[]): FoundUndrinkable | null => {
  const taken = unharmedIn(words)
  for (const table of tables) {
    for (const place of where) {
      const span = table[place].firstIn(words, taken)
      if (span !== null) return { id: table.id, word: words.slice(span.from, span.to).join(' ') }
    }
  }
  return null
}

/** What must not be drunk and has a name of its own, anywhere in a text; null where nothing is. */
export const undrinkableIn = (text: string): FoundUndrinkable | null => foundSpelled(text, ['anywhere'])

/** Also as it may have been typed without its accents. */
const foundSpelled = (text: string, where: readonly Where[]): FoundUndrinkable | null => {
  const words = plainWords(text)
  const found = foundIn(words, where)
  return found !== null || !/[aou]e/.test(words.join(' ')) ? found : foundIn(words.map(withoutUmlauts), where)
}

const refuse = (found: FoundUndrinkable | null, typed: string): void => {
  if (found === null) return
  throw new DomainError('refused', 'refused_spirit', { typed, word: found.word, id: found.id })
}

/**
 * Throws `refused_spirit` where the words typed of a spirit name what must not be drunk. Empty is fine.
 * @param isMade - true of a liqueur or a wine, which may be made at home
 */
export const expectDrinkable = (text: string, isMade = false): void =>
  refuse(foundSpelled(text, isMade ? ['beside'] : ['beside', 'made']), shown(text))

/** Throws `near_refused_spirit` where one of these words, which mean nothing else, is one typo away from what must not be drunk. */
export const expectNotNearUndrinkable = (words: readonly string[], text: string): void => {
  for (const word of words) {
    const near = ORDINARY.has(word) ? undefined : hidden.find((each) => isOneTypo(word, each.word))
    if (near === undefined) continue
    throw new DomainError('ambiguous', 'near_refused_spirit', { typed: shown(text), word: near.word, id: near.id })
  }
}

/** Every word of the tables, for what must not even look like one. */
export const undrinkableWords: readonly string[] = tables.flatMap(({ beside, made }) => [
  ...beside.single,
  ...made.single,
])
