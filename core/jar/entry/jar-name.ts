import { DomainError } from '../../domain-error.ts'
import { shown } from '../../quantity/read/tokens.ts'

/** Counted in code points of the NFC form: an accented letter is one, a flag of two letters two. */
export const MOST_NAME_CHARACTERS = 40

/** Control and direction characters, halves of a pair, line ends; the joiners that Persian and emoji need are let through. */
const FORBIDDEN = /[\p{Cc}\p{Cs}\p{Zl}\p{Zp}]|(?![\u200c\u200d])\p{Cf}/u
const VISIBLE = /[\p{L}\p{N}\p{P}\p{S}\p{Co}\p{Cn}]/u

/** Why a text cannot be a jar's name. */
export type BadName = 'empty' | 'too_long' | 'control' | 'all' | 'begins' | 'colon'

const wrongWith = (name: string): BadName | null => {
  if (FORBIDDEN.test(name)) return 'control'
  if (!VISIBLE.test(name)) return 'empty'
  if ([...name].length > MOST_NAME_CHARACTERS) return 'too_long'
  if (sameName(name, 'all')) return 'all'
  if (/^[#/]/u.test(name)) return 'begins'
  return name.endsWith(':') ? 'colon' : null
}

/** A jar's name as it is kept: NFC, no spaces around, single ones inside; throws `bad_jar_name`. */
export function parseJarName(text: string): string {
  const name = text
    .normalize('NFC')
    .trim()
    .replace(/\p{Zs}+/gu, ' ')
  const why = wrongWith(name)
  if (why !== null) throw new DomainError('bad_value', 'bad_jar_name', { typed: shown(text), why })
  return name
}

/** What names are compared by: capitals and composed or not make no difference, accents do. */
export const nameKey = (name: string): string => name.normalize('NFC').toUpperCase().normalize('NFC')

/** The same without accents, for whoever cannot type them. */
export const plainNameKey = (name: string): string =>
  nameKey(name)
    .normalize('NFD')
    .replace(/\p{M}+/gu, '')

export const sameName = (one: string, other: string): boolean => nameKey(one) === nameKey(other)

/** Names that differ in a space alone would be taken for one another. */
const looseKey = (name: string): string => nameKey(name).replaceAll(' ', '')

export const isNear = (one: string, other: string): boolean => looseKey(one) === looseKey(other)

/** The name itself where nobody has it, else the first of `lemon 2`, `lemon 3` … that nobody has. */
export function freeName(name: string, taken: readonly string[]): string {
  const keys = new Set(taken.map(looseKey))
  if (!keys.has(looseKey(name))) return name
  const [, stem = name, last = '1'] = /^(.*\S) ([1-9][0-9]{0,2})$/u.exec(name) ?? []
  for (let number = Number(last) + 1; ; number++) {
    const end = ` ${number}`
    const free =
      [...stem]
        .slice(0, MOST_NAME_CHARACTERS - end.length)
        .join('')
        .trimEnd() + end
    if (!keys.has(looseKey(free))) return free
  }
}
