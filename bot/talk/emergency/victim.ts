import type { Mention, SaidOfHarm, WordSpan } from './said.ts'
import type { WhoKind } from './who-words.ts'

export const CHILDREN: readonly WhoKind[] = ['young', 'grown']
/** People who are told of. */
export const OTHERS: readonly WhoKind[] = [...CHILDREN, 'adult', 'pronoun']
export const PEOPLE: readonly WhoKind[] = [...OTHERS, 'them', 'self']

/** So far before what is said of somebody their name may stand, in words. */
const REACH = 14

/** Between `I` or `we` and what they did. */
const BETWEEN_SELF =
  /^(?:(?:have|had|just|already|all|both|also|only|accidentally|think|ve|then|ho|abbiamo|might|may|must|really|feel|am|was|were|are|gia|appena|sono|stato|stata|do|cant|to|and|me) ?)*$/

/** Whoever does it after the verb: `drunk by my son`, `l'ha bevuto il cane`. */
const DOER_AFTER = /(?:^| )(?:by|da|dal|dalla|mio|mia|il|la|lo|l|i|le|un|una|suo|sua|nostro|nostra)(?: |$)/

const isNamed = ({ kind }: Mention): boolean => !['pronoun', 'them', 'self'].includes(kind)

/** `She drank it, she's only two`: who a pronoun stands for, where a child or an animal is named anywhere. */
const tenderOf = (said: SaidOfHarm): WhoKind | null =>
  (['young', 'animal'] as const).find((kind) => said.mentions().some((mention) => mention.kind === kind)) ?? null

const EXPLAINED =
  /(?:^| )(?:(?:hes|shes|he is|she is|its|it is) (?:a|an|my|our|only|just)|e (?:piccol[oa]|un[oa]?)|ha)(?: |$)/

/** `Rover drank it, he's a small dog`. */
const saidLater = (said: SaidOfHarm, span: WordSpan): WhoKind | null =>
  EXPLAINED.test(said.between(span.to, span.to + 14)) ? tenderOf(said) : null

/**
 * Whom a stretch of a text is said of: who stands in it or nearest before it, a name before a pronoun; else who stands right
 * after it. Null where nobody is named.
 */
export function victimOf(said: SaidOfHarm, span: WordSpan): WhoKind | null {
  let pronoun: WhoKind | null = null
  let isSelf = false
  for (const mention of said.mentions().toReversed()) {
    if (mention.from >= span.to) continue
    if (mention.to < span.from - REACH) break
    if (mention.kind === 'self') {
      isSelf ||= pronoun === null && BETWEEN_SELF.test(said.between(mention.to, span.from))
      if (isSelf) break
    } else if (mention.kind === 'pronoun' || mention.kind === 'them') pronoun ??= mention.kind
    else return mention.kind
  }
  const after = said
    .mentions()
    .find(
      (mention) =>
        isNamed(mention) &&
        mention.from >= span.to &&
        mention.from <= span.to + 3 &&
        (mention.from === span.to || DOER_AFTER.test(said.between(span.to, mention.from + 1))),
    )
  if (after !== undefined && !isSelf) return after.kind
  if (isSelf) return 'self'
  const isPointedAt = (mention: Mention) =>
    mention.kind === 'pronoun' && mention.from >= span.to && mention.from < span.to + 3
  if (pronoun === null && said.mentions().some(isPointedAt)) pronoun = 'pronoun'
  return pronoun === null ? saidLater(said, span) : (tenderOf(said) ?? pronoun)
}

export const isVictim = (said: SaidOfHarm, span: WordSpan, kinds: readonly WhoKind[]): boolean => {
  const kind = victimOf(said, span)
  return kind !== null && kinds.includes(kind)
}

const SMELLS = /^(?:smell|reek|stink|puzz|odor|sa |sanno )/

/** `The lemon jar smells of methylated spirit`: of a thing that smells, where nobody is named that would. */
export const isSmellOfThing = (said: SaidOfHarm, span: WordSpan): boolean =>
  SMELLS.test(said.between(span.from, span.to)) && victimOf(said, span) === null

/** Whether somebody of these is named at all. */
export const names = (said: SaidOfHarm, kinds: readonly WhoKind[]): boolean =>
  said.mentions().some(({ kind }) => kinds.includes(kind))
