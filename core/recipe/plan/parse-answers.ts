import { DomainError } from '../../domain-error.ts'
import type { Span } from '../../quantity/quantities.ts'
import { readText, shown } from '../../quantity/read/tokens.ts'
import { parseSpan } from '../../quantity/time/parse-span.ts'

const ANSWERS: ReadonlyMap<string, boolean> = new Map([
  ['yes', true],
  ['sì', true],
  ['si', true],
  ['on', true],
  ['no', false],
  ['off', false],
])

/** `yes`, `sì`, `si`, `on`, or `no`, `off`; anything else throws `yes_or_no`. */
export function parseYesNo(text: string): boolean {
  const answer = ANSWERS.get(text.normalize('NFC').trim().toLowerCase())
  if (answer === undefined) throw new DomainError('bad_value', 'yes_or_no', { typed: shown(text) })
  return answer
}

/** A length of time; a number alone is days. */
export function parseDays(text: string): Span {
  const { tokens } = readText(text, 'span')
  const isBare = tokens.length === 1 && tokens[0]!.kind === 'number'
  return parseSpan(isBare ? `${text} days` : text)
}
