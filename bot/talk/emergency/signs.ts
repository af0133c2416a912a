import { isMouthful } from './hot-taste.ts'
import { isColourOfDrink, isShaken } from './jar-deeds.ts'
import type { SaidOfHarm, WordClass, WordSpan } from './said.ts'
import { isVictim } from './victim.ts'
import type { WhoKind } from './who-words.ts'

/** Signs that say enough by themselves. */
export const GRAVE: readonly WordClass[] = ['senseless', 'breathless', 'fit']
/** Signs that say enough of somebody who is named. */
const PLAIN: readonly WordClass[] = ['limp', 'vomiting', 'ill', 'swelling', 'sightless', 'drunk', 'dying']
/** Signs that say enough with a reason to fear. */
const VAGUE: readonly WordClass[] = ['unwell', 'slack', 'smarting']

export const SIGNS: readonly WordClass[] = [...GRAVE, ...PLAIN, ...VAGUE]

const ONLY_ASKED =
  /(?:^| )(?:if|can|could|will|would|might|may|should|does|do|how|when|never|dont|se|puo|potrebbe|come|quando)(?: \w+){0,3}$/

/** Words right before it that ask of what may be: `can it …`, `does it …`. */
export const isOnlyAsked = (said: SaidOfHarm, { from }: WordSpan): boolean =>
  ONLY_ASKED.test(said.between(from - 4, from))

/** It did not happen; what somebody will not stop doing happens. */
export const isDenied = (said: SaidOfHarm, { from }: WordSpan): boolean =>
  said.near('denied', { from, to: from }, 2, 0) && !/stop|keep/.test(said.between(from - 2, from + 2))

/** Somebody asks what to do, and is afraid. */
export const isAlarmed = (said: SaidOfHarm): boolean => said.spans('alarm').length > 0

/** Told by somebody content, around there. */
export const isContent = (said: SaidOfHarm, span: WordSpan): boolean => said.near('content', span, 16, 22)

/** The signs of a class, but for those of a bot, a tap or a pump, of a jar or of a drink. */
export const signsOf = (said: SaidOfHarm, name: WordClass): readonly WordSpan[] =>
  said
    .spans(name)
    .filter((span) => name !== 'smarting' || !isMouthful(said, span))
    .filter((span) => !said.near('gadget', span, 4, 0) && !isShaken(said, span) && !isColourOfDrink(said, span))

export const hasSign = (said: SaidOfHarm, among: readonly WordClass[] = SIGNS): boolean =>
  among.some((name) => signsOf(said, name).length > 0)

/** The signs that are said of somebody of these. */
export const signsIn = (
  said: SaidOfHarm,
  kinds: readonly WhoKind[],
  among: readonly WordClass[] = SIGNS,
): readonly WordSpan[] =>
  among.flatMap((name) => signsOf(said, name).filter((span) => isVictim(said, span, kinds) && !isDenied(said, span)))

const TASTED = / (?:jar taste|tasted|tasting|tried some|assaggiat[oaie]|assaggiando) /

/** There is reason to fear: something was swallowed, there is drink about, it came after something, or somebody asks for help. */
export const isReasonToFear = (said: SaidOfHarm): boolean =>
  isAlarmed(said) ||
  TASTED.test(said.text) ||
  (['strong', 'swallowed', 'partaken', 'since'] as const).some((name) => said.spans(name).length > 0)

/** Whether two of them stand apart. */
export const isApart = (signs: readonly WordSpan[]): boolean =>
  signs.some((one) => signs.some((other) => one.to <= other.from))

/** Two signs apart, or one with a reason to fear, of somebody of these. */
export function isPoorly(said: SaidOfHarm, kinds: readonly WhoKind[]): boolean {
  const signs = signsIn(said, kinds)
  return isApart(signs) || (signs.length > 0 && isReasonToFear(said) && !signs.every((span) => isContent(said, span)))
}

/** Ill beyond doubt, of somebody of these. */
export const isIll = (said: SaidOfHarm, kinds: readonly WhoKind[]): boolean =>
  signsIn(said, kinds, PLAIN).some((span) => !isContent(said, span))
