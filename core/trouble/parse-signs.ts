import { DomainError } from '../domain-error.ts'
import { shown } from '../quantity/read/tokens.ts'
import { type Sign, signNamed, signs, signText } from './signs.ts'

/** What stands between two of a list, or between its words where they are not read together. */
const BETWEEN = /\s*[+,]\s*|\s+and\s+/

const problem = (typed: string): DomainError =>
  new DomainError('bad_value', 'unknown_sign', { typed: shown(typed), known: signs.map(signText) })

/** Signs of a list, each once, in words or by name: `smells of vinegar + fizzes`, `growth fizz`. Throws `unknown_sign`. */
export function parseSigns(text: string): readonly Sign[] {
  const parts = text
    .toLowerCase()
    .split(BETWEEN)
    .map((part) => part.trim().replace(/\s+/g, ' '))
    .filter((part) => part !== '')
  const found = parts.flatMap((part) => {
    const whole = signNamed(part)
    if (whole !== null) return [whole]
    return part.split(' ').map((word) => {
      const sign = signNamed(word)
      if (sign === null) throw problem(parts.length > 1 || part.includes(' ') ? part : word)
      return sign
    })
  })
  if (found.length === 0) throw problem(text)
  return [...new Set(found)]
}
