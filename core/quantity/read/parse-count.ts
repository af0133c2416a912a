import { DomainError } from '../../domain-error.ts'
import type { Count, Piece } from '../quantities.ts'
import { accepted, isWithin } from './accepted-ranges.ts'
import { chooseReading, expectNumber } from './measure-at.ts'
import { expectEnd, readText, shown, type TypedText, textFrom } from './tokens.ts'
import { anyUnitAt } from './unit-at.ts'

const PIECES: ReadonlyMap<string, Piece> = new Map(
  (
    [
      ['stick', 'stick sticks quill quills stecca stecche bastoncino bastoncini'],
      ['pod', 'pod pods baccello baccelli'],
      ['bean', 'bean beans chicco chicchi'],
      ['clove', 'clove cloves spicchio spicchi'],
      ['leaf', 'leaf leaves foglia foglie'],
      ['sprig', 'sprig sprigs rametto rametti'],
      ['slice', 'slice slices fetta fette'],
      ['piece', 'piece pieces pezzo pezzi'],
      ['bunch', 'bunch bunches mazzo mazzi mazzetto mazzetti'],
      ['head', 'head heads testa teste ombrella ombrelle'],
      ['pinch', 'pinch pinches pizzico pizzichi'],
    ] as const
  ).flatMap(([piece, words]) => words.split(' ').map((word): [string, Piece] => [word, piece])),
)

const JOINING = new Set(['of', 'di', 'd', "'", '’'])
const NOUN_SIGNS = new Set(["'", '’', '-', '.', ',', '(', ')'])

/** `stick of cinnamon`, `cinnamon stick`; a piece word alone is the thing itself (`5 cloves`). */
const thingAt = (typed: TypedText, at: number): { piece: Piece | null; noun: string } => {
  const { tokens } = typed
  const first = PIECES.get(tokens[at]?.text ?? '')
  const last = PIECES.get(tokens.at(-1)?.text ?? '')
  if (tokens.length - at < 2) return { piece: null, noun: textFrom(typed, at) }
  if (first === undefined) {
    const end = last === undefined ? tokens.length : tokens.length - 1
    return { piece: last ?? null, noun: textFrom(typed, at, end) }
  }
  const noun = tokens.findIndex(({ text }, place) => place > at && !JOINING.has(text))
  return noun === -1
    ? { piece: null, noun: textFrom(typed, at, at + 1) }
    : { piece: first, noun: textFrom(typed, noun) }
}

/** 0.1 to 10,000 pieces: `10 lemons`, `½ limone`, `1 stick of cinnamon`, `5`. A weight or volume is `wrong_kind`. */
export const parseCount = (text: string): Count => {
  const typed = readText(text, 'count')
  const number = expectNumber(typed, 0)
  const unit = anyUnitAt(typed, number.next)?.unit
  if (unit !== undefined) {
    throw new DomainError('bad_value', 'wrong_kind', { typed: shown(text), got: unit.kind, wanted: 'count' })
  }
  const stray = typed.tokens.findIndex(
    ({ kind, text: piece }, at) =>
      at >= number.next && kind !== 'word' && (at === number.next || kind === 'number' || !NOUN_SIGNS.has(piece)),
  )
  if (stray !== -1) expectEnd(typed, stray)
  const { piece, noun } = thingAt(typed, number.next)
  const { value, assumed } = chooseReading(
    typed,
    number.readings,
    (each) => isWithin(accepted.countPieces, each),
    (choice) => `${choice} ${textFrom(typed, number.next)}`.trim(),
  )
  return { kind: 'count', count: value, piece, noun, assumed: assumed === null ? [] : [assumed] }
}
