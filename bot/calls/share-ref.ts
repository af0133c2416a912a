import { DomainError } from '../../core/domain-error.ts'
import { shown } from '../../core/quantity/read/tokens.ts'
import { decodeBatch, encodeBatch } from '../../core/recipe/code/batch-code.ts'
import type { Recipe } from '../../core/recipe/code/recipe.ts'
import { ownerCode, ownerFrom } from './owner-code.ts'

/** A share and whose it is. */
export interface ShareRef {
  /** Discord's number of a person. */
  readonly owner: string
  readonly shareId: string
}

/** A recipe, and where it was shared; the owner is known only until a jar is started from it. */
export interface SharedRecipe {
  readonly recipe: Recipe
  readonly shareId: string | null
  readonly owner: string | null
}

const REF = /^([0-9a-z]{1,14})\.([0-9a-z]{8})$/
const MARKED = /^([^@]*)@(?:([0-9a-z]{1,14})\.)?([0-9a-z]{8})$/

/** `3w5e11264sn.3m8qv0zt`; null for an owner who is nobody in Discord. */
export function shareRef({ owner, shareId }: ShareRef): string | null {
  const coded = ownerCode(owner)
  return coded === null ? null : `${coded}.${shareId}`
}

/** Throws `bad_share`. */
export function parseShareRef(text: string): ShareRef {
  const [, coded = '', shareId = ''] = REF.exec(text.trim()) ?? []
  const owner = ownerFrom(coded)
  if (owner === null) throw new DomainError('bad_value', 'bad_share', { typed: shown(text) })
  return { owner, shareId }
}

function readCode(text: string): SharedRecipe {
  const marked = MARKED.exec(text.trim())
  if (marked === null) return { recipe: decodeBatch(text), shareId: null, owner: null }
  const [, code = '', coded, shareId = ''] = marked
  return { recipe: decodeBatch(code), shareId, owner: coded === undefined ? null : ownerFrom(coded) }
}

/** The longest beginning that is a code, in whole pieces; null where none is. */
function codeBefore(pieces: readonly string[]): string | null {
  for (let count = pieces.length - 1; count > 0; count--) {
    const code = pieces.slice(0, count).join(' ')
    try {
      readCode(code)
      return code
    } catch (error) {
      if (!(error instanceof DomainError)) throw error
    }
  }
  return null
}

/**
 * A batch's code, as it is or marked with where it was shared: `CODE@3w5e11264sn.3m8qv0zt`. Throws what `decodeBatch` does,
 * and `code_extra` where words stand behind it.
 */
export function parseSharedCode(text: string): SharedRecipe {
  try {
    return readCode(text)
  } catch (error) {
    const code = error instanceof DomainError ? codeBefore(text.trim().split(/\s+/)) : null
    if (code === null) throw error
    const extra = shown(text.trim().slice(code.length))
    throw new DomainError('bad_value', 'code_extra', { extra, fix: code })
  }
}

/** What `parseSharedCode` reads; the owner is left out where it is not known. */
export function sharedCode({ recipe, shareId, owner }: SharedRecipe): string {
  const code = encodeBatch(recipe)
  if (shareId === null) return code
  return `${code}@${owner === null ? shareId : (shareRef({ owner, shareId }) ?? shareId)}`
}

/** What a jar keeps of a marked code: which share it was, not whose. */
export const withoutOwner = (typed: string): string => typed.trim().replace(/@[0-9a-z]{1,14}\./, '@')
