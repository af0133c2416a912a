import type { SaidOfHarm, WordClass, WordSpan } from './said.ts'
import { hasSign, isContent, isDenied, isOnlyAsked, isPoorly } from './signs.ts'
import { isTroubled, swallowed } from './swallowing.ts'
import { isSmellOfThing, OTHERS, PEOPLE, victimOf } from './victim.ts'

/** `My husband had some of the jar that smells of varnish`: a maker’s own sip is told as what is wrong with the jar, a glass is not. */
function isDrunk(said: SaidOfHarm, span: WordSpan): boolean {
  const kind = victimOf(said, span)
  if (isDenied(said, span)) return false
  return (
    (kind !== null && OTHERS.includes(kind)) ||
    /drank|drunk|glass|bevut|bicchier/.test(said.between(span.from, span.to))
  )
}

/** Something that nobody may drink was drunk, or what nobody knows made somebody ill. */
export function isMethanol(said: SaidOfHarm): boolean {
  const isIn = (name: WordClass, isEnough: (span: WordSpan) => boolean) =>
    [...swallowed(said), ...said.spans('partaken')].some(
      (span) => said.near(name, span, 16, 16) && isEnough(span) && !isDenied(said, span),
    )
  return (
    isIn('undrinkable', (span) => !isSmellOfThing(said, span) && (isTroubled(said) || !isContent(said, span))) ||
    isIn('doubtful', (span) => !isSmellOfThing(said, span) && isTroubled(said)) ||
    swallowed(said).some((span) => said.near('solventSmell', span, 16, 16) && isDrunk(said, span)) ||
    (hasSign(said) && said.spans('undrinkable').length + said.spans('doubtful').length > 0 && isPoorly(said, PEOPLE))
  )
}

/** Something that had gone off was drunk: `we drank some before I saw the mould`. */
export const isSpoiledDrunk = (said: SaidOfHarm): boolean =>
  swallowed(said).some(
    (span) =>
      said.near('spoiled', span, 12, 12) && !isOnlyAsked(said, span) && (isTroubled(said) || !isContent(said, span)),
  )
