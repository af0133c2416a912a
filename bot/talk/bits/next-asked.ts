import { wordsAlone } from '../../../core/quantity/read/tokens.ts'
import type { Sentence } from './bit.ts'
import { jarsNamed } from './jars-of.ts'

const NEXT =
  /^(?:(?:so|and|ok|now|e|ora) )*(?:what|whats|cosa|che|che cosa) .*(?:\b(?:next|now|adesso|ora|poi)$|\bnext (?:for|with|on)\b|\bup next\b)/

/** `What comes next with the lemon`, `what do I do with the lemon now`: asked of one jar that is named, and of nothing else. */
export function isNextAsked({ bits, jars, typed }: Pick<Sentence, 'bits' | 'jars' | 'typed'>): boolean {
  const words = wordsAlone(typed)
  const isOnlyOfJar = bits.every(({ kind }) => kind === 'jar' || kind === 'plant')
  return isOnlyOfJar && jarsNamed(bits, jars).length === 1 && (NEXT.test(words) || /^next (?:for|with) /.test(words))
}
