import type { Bit, Sentence } from '../bits/bit.ts'
import { NEXT_DEED } from '../bits/new-name-at.ts'

/** `start it and call it midwinter`: its name as it was typed. */
const NAMED =
  /\b(?:(?:call(?:ed)?|named?)(?: (?:it|that|this))?|(?:start|begin) (?:it|this|that|one) as|chiamalo|chiamala|inizial[oa] come)\s+(.+?)(?:,? (?:please|pls|per favore))?[.!]*$/i

/** `Named lemon, 12 days ago`: the day is no part of the name. */
export function nameSaid({ text, tokens }: Sentence['typed'], day: Bit | null): string | undefined {
  const found = NAMED.exec(text)
  const name = found?.[1]?.replace(NEXT_DEED, '').trim()
  if (found === null || name === undefined || day === null) return name
  const begin = text.indexOf(name, found.index)
  const [from, to] = [tokens[day.from]!.from - begin, tokens[day.to - 1]!.to - begin]
  if (from <= 0) return name
  const behind = name.slice(Math.max(0, to)).trim()
  // `Yesterday’s lemon` is called so; a day that ends the name is none of it.
  const bare =
    behind === ''
      ? name
          .slice(0, from)
          .replace(/[\s,;]+(?:and|from|on|e|da|dal)?[\s,;]*$/i, '')
          .trim()
      : name
  return bare === '' ? name : bare
}
