import { DomainError } from '../domain-error.ts'
import { shown } from '../quantity/read/tokens.ts'
import { isSign, type Sign, signs } from './signs.ts'

/** Signs of a list, each once: `growth + fizz`. Throws `unknown_sign`. */
export function parseSigns(text: string): readonly Sign[] {
  const named = text
    .toLowerCase()
    .split(/[+,\s]+/)
    .filter((word) => word !== '' && word !== 'and')
  const found = named.map((word) => {
    if (isSign(word)) return word
    throw new DomainError('bad_value', 'unknown_sign', { typed: shown(word), known: signs })
  })
  if (found.length === 0) throw new DomainError('bad_value', 'unknown_sign', { typed: shown(text), known: signs })
  return [...new Set(found)]
}
