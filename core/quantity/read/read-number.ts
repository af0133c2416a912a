import { DomainError } from '../../domain-error.ts'
import { shown, type Token, type TypedText } from './tokens.ts'

/** One way to read the digits typed. */
export interface Reading {
  readonly value: number
  /** Half of the last digit's place; infinite for a fraction, which has no last digit. */
  readonly halfDigit: number
  /** The same number as it can be typed with this one meaning. */
  readonly text: string
  /** What had to be assumed of its separator, or null. */
  readonly assumed: 'decimal_point' | 'thousands_separator' | null
}

export interface NumberRead {
  /** One reading, or two where a single separator is followed by exactly three digits. */
  readonly readings: readonly Reading[]
  readonly next: number
}

const VULGAR: ReadonlyMap<string, number> = new Map([
  ['½', 1 / 2],
  ['⅓', 1 / 3],
  ['⅔', 2 / 3],
  ['¼', 1 / 4],
  ['¾', 3 / 4],
  ['⅕', 1 / 5],
  ['⅖', 2 / 5],
  ['⅗', 3 / 5],
  ['⅘', 4 / 5],
  ['⅙', 1 / 6],
  ['⅚', 5 / 6],
  ['⅛', 1 / 8],
  ['⅜', 3 / 8],
  ['⅝', 5 / 8],
  ['⅞', 7 / 8],
  ['half', 1 / 2],
  ['mezzo', 1 / 2],
  ['mezza', 1 / 2],
])

const plainText = (value: number): string => {
  const text = String(value)
  // `1.255` would be asked back again.
  return /^[0-9]{1,3}\.[0-9]{3}$/.test(text) ? `${text}0` : text
}

const reading = (digits: string, assumed: Reading['assumed'] = null): Reading => {
  const value = Number(digits)
  const decimals = digits.includes('.') ? digits.length - digits.indexOf('.') - 1 : 0
  return { value, halfDigit: 0.5 * 10 ** -decimals, text: plainText(value), assumed }
}

const fraction = (value: number): Reading => ({
  value,
  halfDigit: Number.POSITIVE_INFINITY,
  text: plainText(value),
  assumed: null,
})

/** The ways to read digits with separators, or none. */
const digitReadings = (digits: string): readonly Reading[] => {
  const separators = digits.replace(/[0-9]/g, '')
  const groups = digits.split(/[.,]/)
  const [head = '', ...rest] = groups
  const tail = rest.at(-1) ?? ''
  if (separators === '') return [reading(digits)]
  const areGroups = (middle: readonly string[]) =>
    head.length >= 1 && head.length <= 3 && !head.startsWith('0') && middle.every(({ length }) => length === 3)
  if (separators.length === 1) {
    const isOpen = tail.length === 3 && head.length <= 3 && head !== ''
    const decimal = reading(`${head || '0'}.${tail}`, isOpen ? 'decimal_point' : null)
    return isOpen && areGroups(rest) ? [decimal, reading(head + tail, 'thousands_separator')] : [decimal]
  }
  const thousands = separators[0] ?? ''
  const isDecimalLast = separators.at(-1) !== thousands
  const middle = isDecimalLast ? rest.slice(0, -1) : rest
  const isGrouped = areGroups(middle) && separators.slice(0, -1) === thousands.repeat(separators.length - 1)
  if (!isGrouped) return []
  return [reading(head + middle.join('') + (isDecimalLast ? `.${tail}` : ''))]
}

const isWhole = (token: Token | undefined): token is Token => token?.kind === 'number' && !/[.,]/.test(token.text)

/** The fraction that begins at piece `at`: `¾`, `half`, `3/4`. */
const fractionAt = ({ tokens }: TypedText, at: number): { value: number; next: number } | null => {
  const vulgar = VULGAR.get(tokens[at]?.text ?? '')
  // `half a cup`
  const isArticle = tokens[at]?.text === 'half' && ['a', 'an'].includes(tokens[at + 1]?.text ?? '')
  if (vulgar !== undefined) return { value: vulgar, next: at + (isArticle ? 2 : 1) }
  const over = tokens[at]
  const under = tokens[at + 2]
  if (!isWhole(over) || tokens[at + 1]?.text !== '/' || !isWhole(under) || Number(under.text) === 0) return null
  return { value: Number(over.text) / Number(under.text), next: at + 3 }
}

/** `1 000`: groups of three digits with a space between, as one number. */
const spacedGroupsFrom = ({ tokens }: TypedText, at: number): { digits: string; next: number } | null => {
  let digits = tokens[at]?.text ?? ''
  let next = at + 1
  if (!/^[1-9][0-9]{0,2}$/.test(digits)) return null
  for (;;) {
    const [before, group] = [tokens[next - 1], tokens[next]]
    const follows = isWhole(group) && group.text.length === 3 && group.from - (before?.to ?? 0) === 1
    if (!follows || tokens[next + 1]?.text === '/') break
    digits += group.text
    next += 1
  }
  return next > at + 1 ? { digits, next } : null
}

const refuseBadNumber = (typed: TypedText, at: number): void => {
  const { tokens, text, wanted } = typed
  const [token, after, afterThat] = [tokens[at], tokens[at + 1], tokens[at + 2]]
  if (token?.kind !== 'number' || after === undefined || after.from !== token.to) return
  const isExponent =
    after.text === 'e' &&
    afterThat?.from === after.to &&
    (afterThat.kind === 'number' || ['+', '-'].includes(afterThat.text))
  if (isExponent) throw new DomainError('bad_value', 'exponent_number', { typed: shown(text), wanted })
  if (after.text === '.' || after.text === ',') {
    throw new DomainError('bad_value', 'bad_number', { typed: shown(text), number: shown(token.text + after.text) })
  }
}

/** Whether the number at piece `at` has a minus sign of its own: `-3`, `lemons -3`, not `1-3` or `- 3`. */
export const isBelowZero = ({ tokens }: TypedText, at: number): boolean => {
  const [before, sign, number] = [tokens[at - 2], tokens[at - 1], tokens[at]]
  if (sign?.text !== '-') return false
  return before === undefined || (before.to < sign.from && sign.to === number?.from)
}

/**
 * The number that begins at piece `at`, null where none does: `750`, `1,5`, `1 1/2`, `¾`, `half`. No sign.
 * Throws `exponent_number` for `1e3`, `bad_number` for `1.2.3`.
 */
export const readNumber = (typed: TypedText, at: number): NumberRead | null => {
  const token = typed.tokens[at]
  const alone = fractionAt(typed, at)
  if (alone !== null) return { readings: [fraction(alone.value)], next: alone.next }
  if (token?.kind !== 'number') return null
  refuseBadNumber(typed, at)
  if (isWhole(token)) {
    const part = fractionAt(typed, at + 1)
    if (part !== null && part.value < 1 && !/^\p{L}/u.test(typed.tokens[at + 1]?.text ?? '')) {
      return { readings: [fraction(Number(token.text) + part.value)], next: part.next }
    }
    const spaced = spacedGroupsFrom(typed, at)
    if (spaced !== null) return { readings: [reading(spaced.digits)], next: spaced.next }
  }
  const readings = digitReadings(token.text)
  if (readings.length === 0) {
    throw new DomainError('bad_value', 'bad_number', { typed: shown(typed.text), number: shown(token.text) })
  }
  return { readings, next: at + 1 }
}
