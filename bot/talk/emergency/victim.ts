import type { Mention, Said, Span } from './said.ts'
import type { WhoKind } from './who-words.ts'

export const CHILDREN: readonly WhoKind[] = ['young', 'grown']
/** People who are told of. */
export const OTHERS: readonly WhoKind[] = [...CHILDREN, 'adult', 'pronoun']
export const PEOPLE: readonly WhoKind[] = [...OTHERS, 'self']

/** So far before what is said of somebody their name may stand, in words. */
const REACH = 14

/** Between `I` or `we` and what they did. */
const BETWEEN_SELF =
  /^(?:(?:have|had|just|already|all|both|also|only|accidentally|think|ve|then|ho|abbiamo|might|may|must|really|feel|am|was|were|are|keep|gia|appena|sono|stato|stata|do|cant|to|and|me) ?)*$/

/** Whoever does it after the verb: `drunk by my son`, `l'ha bevuto il cane`. */
const DOER_AFTER = /(?:^| )(?:by|da|dal|dalla|mio|mia|il|la|lo|l|i|le|un|una|suo|sua|nostro|nostra)(?: |$)/

const isNamed = ({ kind }: Mention): boolean => kind !== 'pronoun' && kind !== 'self'

/**
 * Whom a stretch of a text is said of: who stands nearest before it, a name before a pronoun; else who stands right
 * after it. Null where nobody is named.
 */
export function victimOf(said: Said, span: Span): WhoKind | null {
  let pronoun: WhoKind | null = null
  let isSelf = false
  for (const mention of said.mentions().toReversed()) {
    if (mention.from >= span.from) continue
    if (mention.to < span.from - REACH) break
    if (mention.kind === 'self') {
      isSelf ||= pronoun === null && BETWEEN_SELF.test(said.between(mention.to, span.from))
      if (isSelf) break
    } else if (mention.kind === 'pronoun') pronoun ??= 'pronoun'
    else return mention.kind
  }
  const after = said
    .mentions()
    .find(
      (mention) =>
        isNamed(mention) &&
        mention.from >= span.to &&
        mention.from <= span.to + 3 &&
        DOER_AFTER.test(said.between(span.to, mention.from + 1)),
    )
  if (after !== undefined && !isSelf) return after.kind
  if (isSelf) return 'self'
  // `She drank it, she's only two`.
  return pronoun !== null && said.mentions().some(({ kind }) => kind === 'young') ? 'young' : pronoun
}

export const isVictim = (said: Said, span: Span, kinds: readonly WhoKind[]): boolean => {
  const kind = victimOf(said, span)
  return kind !== null && kinds.includes(kind)
}

/** Whether somebody of these is named at all. */
export const names = (said: Said, kinds: readonly WhoKind[]): boolean =>
  said.mentions().some(({ kind }) => kinds.includes(kind))
