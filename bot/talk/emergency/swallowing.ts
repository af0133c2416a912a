import { isMouthful } from './hot-taste.ts'
import { isDrawnOff, isLent, isShaken, isStock } from './jar-deeds.ts'
import type { SaidOfHarm, WordClass, WordSpan } from './said.ts'
import {
  hasSign,
  isAlarmed,
  isContent,
  isDenied,
  isIll,
  isOnlyAsked,
  isPoorly,
  isReasonToFear,
  SIGNS,
  signsIn,
} from './signs.ts'
import { isNeverYet, isSupposedOf } from './supposed.ts'
import { CHILDREN, isSmellOfThing, isVictim, names, OTHERS, PEOPLE, victimOf } from './victim.ts'
import type { WhoKind } from './who-words.ts'

export const isTroubled = (said: SaidOfHarm): boolean => hasSign(said) || isAlarmed(said)

/** Asked for, or asked whether it may be: `chiede un sorso`, `can children have`. */
const WISHED =
  /(?:^| )(?:(?:chied\w+|chiesto|vuole|vogliono|vorrebbe|vorrebbero|puo|possono|posso|possiamo|va bene)(?: \w+){0,4}|(?:can|may|could|should|shall)(?: \w+){1,4})$/

/** It was had all the same: `potrebbe aver preso un sorso`, `ho visto il bambino bere un sorso`. */
const HAD_BEFORE =
  /(?:^| )(?:ha|hanno|ho|pres[oa]|fatt[oa]|dat[oa]|rubat[oa]|riuscit[oa]|vist[oa]|trovat[oa]|dopo|had|has|took|taken|got|saw|see|after)(?= |$)/

/** How old somebody is, which nobody has had. */
const AGED = /(?:che |non )?ha(?:nno)? (?:\w+ ){1,3}anni/

/** Words that do not tell that it was done. */
const UNDONE =
  /^(?:have (?:(?:a|an|some|any|the|my|our|your|this|that|of|bit|sip|taste|drop|little|small|glass|homemade|home|made) )*\w+|un (?:sorso|goccio|goccetto))$/

export function isWished(said: SaidOfHarm, { from, to }: WordSpan): boolean {
  const before = said
    .between(from - 6, from)
    .replace(/ha(?:nno)? chiesto/, 'chiesto')
    .replace(AGED, '')
  const isIllness = /^(?:poison|intox|in\b|on\b)/.test(said.between(to, to + 1))
  return !isIllness && UNDONE.test(said.between(from, to)) && WISHED.test(before) && !HAD_BEFORE.test(before)
}

/** Swallowed as people do at table. */
function isAtTable(said: SaidOfHarm, span: WordSpan, kind: WhoKind | null): boolean {
  if (isDenied(said, span)) return true
  // `I’ve got a litre of 96 % and eight lemons, what do I do?`
  if (isTroubled(said)) return !hasSign(said) && isStock(said, span)
  if (isWished(said, span)) return true
  if (isDrawnOff(said, span) || isLent(said, span)) return true
  const after = { from: span.to, to: span.to }
  const isHarmless = said.near('harmless', after, 0, 6) && !said.near('strong', after, 0, 9)
  const isGrazing =
    kind === 'animal' &&
    said.near('growing', span, 6, 12) &&
    !said.near('strong', after, 0, 6) &&
    !said.near('toxic', after, 0, 6)
  return isHarmless || isGrazing || (kind !== 'young' && kind !== 'animal' && isContent(said, span))
}

const swallowedBy = (said: SaidOfHarm, kinds: readonly WhoKind[], how: readonly WordClass[]): readonly WordSpan[] =>
  how.flatMap((name) =>
    said.spans(name).filter((span) => {
      const kind = victimOf(said, span)
      return kind !== null && kinds.includes(kind) && !isAtTable(said, span, kind) && !isNeverYet(said, span)
    }),
  )

export const swallowed = (said: SaidOfHarm): readonly WordSpan[] =>
  said.spans('swallowed').filter((span) => !isDenied(said, span) && (isTroubled(said) || !isDrawnOff(said, span)))

export const isPet = (said: SaidOfHarm): boolean =>
  swallowedBy(said, ['animal'], ['swallowed', 'gotAt', 'raided', 'hadSome', 'given']).length > 0 ||
  isSupposedOf(said, ['animal']) ||
  isIll(said, ['animal']) ||
  isPoorly(said, ['animal']) ||
  (
    [
      'senseless',
      'breathless',
      'fit',
      'burnt',
      'scalded',
      'struck',
      'hurt',
      'wound',
      'inhaled',
      'unwell',
      'slack',
    ] as const
  ).some((name) => said.spans(name).some((span) => isVictim(said, span, ['animal']) && !isDenied(said, span))) ||
  (names(said, ['animal']) && said.spans('rescue').length > 0)

/** A few words, in haste. */
const isShort = (said: SaidOfHarm): boolean => said.text.trim().split(' ').length <= 6

export const isChild = (said: SaidOfHarm): boolean =>
  swallowedBy(said, CHILDREN, ['swallowed', 'gotAt', 'hadSome']).length > 0 ||
  swallowedBy(said, ['young'], ['had', 'given']).length > 0 ||
  isSupposedOf(said, ['young']) ||
  (names(said, ['young']) && said.spans('alarm').length > 0 && said.spans('strong').length > 0 && isShort(said)) ||
  isIll(said, CHILDREN) ||
  isPoorly(said, CHILDREN)

const isToxic = (said: SaidOfHarm, span: WordSpan): boolean =>
  said.near('toxic', span, 12, 12) && !isDenied(said, span) && (isTroubled(said) || !isContent(said, span))

/** `I tasted a few of the hedge berries and feel sick`: of the plant itself, not of what it steeps in. */
const isTastedAndIll = (said: SaidOfHarm): boolean =>
  hasSign(said, BODILY) &&
  said
    .spans('partaken')
    .some(
      (span) => said.near('plant', span, 0, 5) && said.near('unsure', span, 6, 6) && !said.near('strong', span, 0, 6),
    )

export const isPlant = (said: SaidOfHarm): boolean =>
  [...swallowed(said), ...said.spans('partaken')].some((span) => isToxic(said, span)) ||
  // `Numb tongue after the monkshood liqueur`.
  (said.spans('toxic').some((span) => said.near('since', span, 3, 0)) && said.spans('ill').length > 0) ||
  swallowed(said).some((span) => said.near('misread', span, 20, 20) && (isTroubled(said) || !isContent(said, span))) ||
  isTastedAndIll(said) ||
  swallowed(said).some((span) => {
    if (!said.near('plant', span, 2, 9)) return false
    const kind = victimOf(said, span)
    if (kind !== null && CHILDREN.includes(kind)) return !isAtTable(said, span, kind)
    return isTroubled(said) || (said.near('unsure', span, 10, 12) && !isContent(said, span))
  })

const isTooMuch = (said: SaidOfHarm, span: WordSpan): boolean => {
  if (hasSign(said)) return true
  const isSelf = victimOf(said, span) === 'self'
  if (isAlarmed(said)) return true
  if (said.near('mistaken', span, 6, 14)) return true
  if (isSelf) return false
  if (said.near('gulped', span, 0, 0)) return true
  return victimOf(said, span) === 'pronoun' || said.near('alarming', span, 3, 12)
}

const isTipped = (said: SaidOfHarm, span: WordSpan): boolean =>
  said.near('alarming', span, 1, 8) && !isContent(said, span)

/** Signs that are of no drink. */
const BODILY: readonly WordClass[] = SIGNS.filter((name) => name !== 'drunk')

/** Nobody is named: who writes, or whoever it is. */
const isOfNobody = (said: SaidOfHarm): boolean =>
  swallowed(said).some(
    (span) =>
      victimOf(said, span) === null &&
      !isOnlyAsked(said, span) &&
      (hasSign(said, BODILY) ||
        (said.spans('strong').length > 0 &&
          !isSmellOfThing(said, span) &&
          (isAlarmed(said) || said.near('gulped', span, 0, 0) || isTipped(said, span)))),
  )

/** Cannot walk, stand or talk. */
const isHelpless = (said: SaidOfHarm): boolean =>
  signsIn(said, OTHERS, ['slack']).some(({ from, to }) =>
    /cant|wont|unable|barely|non|a malapena/.test(said.between(from, to)),
  )

const isIllAfterIt = (said: SaidOfHarm): boolean =>
  (['vomiting', 'ill', 'unwell', 'smarting'] as const).some((name) =>
    said
      .spans(name)
      .some(
        (span) =>
          !isContent(said, span) &&
          !isDenied(said, span) &&
          !(name === 'smarting' && isMouthful(said, span)) &&
          !isShaken(said, span) &&
          (name === 'ill' || name === 'vomiting' || isVictim(said, span, PEOPLE)) &&
          (name === 'vomiting' || (isReasonToFear(said) && !isOnlyAsked(said, span))),
      ),
  )

export const isAdult = (said: SaidOfHarm): boolean =>
  swallowedBy(said, PEOPLE, ['swallowed']).some((span) => isTooMuch(said, span)) ||
  isOfNobody(said) ||
  swallowed(said).some(
    (span) => said.near('pregnant', span, 14, 14) && !isOnlyAsked(said, span) && !isWished(said, span),
  ) ||
  isIll(said, OTHERS) ||
  isHelpless(said) ||
  (said.spans('drunk').length > 0 && isAlarmed(said)) ||
  isPoorly(said, OTHERS) ||
  isIllAfterIt(said)
