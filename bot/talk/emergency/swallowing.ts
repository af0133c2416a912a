import type { Said, Span, WordClass } from './said.ts'
import { hasSign, isAlarmed, isContent, isDenied, isIll, isOnlyAsked, isPoorly, isReasonToFear } from './signs.ts'
import { CHILDREN, isVictim, names, OTHERS, PEOPLE, victimOf } from './victim.ts'
import type { WhoKind } from './who-words.ts'

const isTroubled = (said: Said): boolean => hasSign(said) || isAlarmed(said)

/** Swallowed as people do at table. */
function isAtTable(said: Said, span: Span, kind: WhoKind | null): boolean {
  if (isDenied(said, span)) return true
  if (isTroubled(said)) return false
  const after = { from: span.to, to: span.to }
  const isHarmless = said.near('harmless', after, 0, 6) && !said.near('strong', after, 0, 9)
  return isHarmless || (kind !== 'young' && kind !== 'animal' && isContent(said, span))
}

const swallowedBy = (said: Said, kinds: readonly WhoKind[], how: readonly WordClass[]): readonly Span[] =>
  how.flatMap((name) =>
    said.spans(name).filter((span) => {
      const kind = victimOf(said, span)
      return kind !== null && kinds.includes(kind) && !isAtTable(said, span, kind)
    }),
  )

/** `What if the dog eats it?` */
const isSupposedOf = (said: Said, kinds: readonly WhoKind[]): boolean =>
  said
    .spans('supposed')
    .some(
      ({ from, to }) =>
        said.mentions().some((each) => kinds.includes(each.kind) && each.from >= from && each.to <= to) &&
        !said.near('harmless', { from: to, to }, 0, 6),
    )

const swallowed = (said: Said): readonly Span[] => said.spans('swallowed').filter((span) => !isDenied(said, span))

export const isPet = (said: Said): boolean =>
  swallowedBy(said, ['animal'], ['swallowed', 'gotAt', 'raided']).length > 0 ||
  isSupposedOf(said, ['animal']) ||
  isIll(said, ['animal']) ||
  isPoorly(said, ['animal']) ||
  (
    ['senseless', 'breathless', 'fit', 'burnt', 'scalded', 'struck', 'hurt', 'wound', 'inhaled', 'unwell'] as const
  ).some((name) => said.spans(name).some((span) => isVictim(said, span, ['animal']) && !isDenied(said, span))) ||
  (names(said, ['animal']) && said.spans('rescue').length > 0)

export const isChild = (said: Said): boolean =>
  swallowedBy(said, CHILDREN, ['swallowed', 'gotAt']).length > 0 ||
  isSupposedOf(said, ['young']) ||
  isIll(said, ['young']) ||
  isPoorly(said, CHILDREN)

/** Something that nobody may drink was drunk, or what nobody knows made somebody ill. */
export function isMethanol(said: Said): boolean {
  const isIn = (name: WordClass, isEnough: (span: Span) => boolean) =>
    swallowed(said).some((span) => said.near(name, span, 16, 16) && isEnough(span))
  return (
    isIn('undrinkable', (span) => isTroubled(said) || !isContent(said, span)) ||
    isIn('doubtful', () => isTroubled(said)) ||
    (hasSign(said) && said.spans('undrinkable').length + said.spans('doubtful').length > 0 && isPoorly(said, PEOPLE))
  )
}

export const isPlant = (said: Said): boolean =>
  swallowed(said).some((span) => {
    if (said.near('toxic', span, 8, 12)) return isTroubled(said) || !isContent(said, span)
    if (!said.near('plant', span, 2, 9)) return false
    const kind = victimOf(said, span)
    if (kind !== null && CHILDREN.includes(kind)) return !isAtTable(said, span, kind)
    return isTroubled(said) || (said.near('unsure', span, 10, 12) && !isContent(said, span))
  })

const isTooMuch = (said: Said, span: Span): boolean => {
  if (hasSign(said)) return true
  const isSelf = victimOf(said, span) === 'self'
  if (isAlarmed(said)) return !isSelf || said.near('alarming', span, 6, 14)
  return !isSelf && said.near('alarming', span, 3, 12)
}

/** Nobody is named: who writes, or whoever it is. */
const isOfNobody = (said: Said): boolean =>
  swallowed(said).some((span) => victimOf(said, span) === null) &&
  (hasSign(said) || (isAlarmed(said) && said.spans('strong').length > 0))

const isIllAfterIt = (said: Said): boolean =>
  (['vomiting', 'ill', 'unwell', 'smarting'] as const).some((name) =>
    said
      .spans(name)
      .some(
        (span) =>
          !isContent(said, span) &&
          !isDenied(said, span) &&
          (name === 'ill' || name === 'vomiting' || isVictim(said, span, PEOPLE)) &&
          (name === 'vomiting' || (isReasonToFear(said) && !isOnlyAsked(said, span))),
      ),
  )

export const isAdult = (said: Said): boolean =>
  swallowedBy(said, PEOPLE, ['swallowed']).some((span) => isTooMuch(said, span)) ||
  isOfNobody(said) ||
  swallowed(said).some((span) => said.near('pregnant', span, 14, 14) && !isOnlyAsked(said, span)) ||
  isIll(said, OTHERS) ||
  isPoorly(said, OTHERS) ||
  isIllAfterIt(said)
