import type { SaidOfHarm, WordSpan } from './said.ts'
import { isAlarmed, isOnlyAsked } from './signs.ts'
import { PEOPLE } from './victim.ts'

const JUST_BURNING = /^(?:(?:is|are|was|its|still|keeps|started|has been) ?)*(?:to )?burning$/
const ON_PURPOSE = /(?:^| )(?:set|sets|setting|light|lit|put)(?: \w+){0,3}$/
const NEVER_ON_PURPOSE =
  /\b(?:kitchen|house|home|curtains?|table|sleeve|hair|shirt|clothes|my|myself|himself|herself|cucina|casa)\b/
/** Burns to a crisp, not in flames. */
const SWEET_OR_VAGUE = /(?:^| )(?:sugar|caramel|syrup|it|its|this|thing|something|peel|stuff|there)(?: \w+){0,2}$/
const MAYBE = /^(?:catch|set|take|on fire$|a fuoco$)/
const SUPPOSED = /(?:^| )(?:if|can|could|will|se)(?: \w+){0,2}$/

/** It burns now: not whether it can, not the sugar in the pan, not what is lit on purpose. */
function isNow(said: SaidOfHarm, span: WordSpan): boolean {
  const before = said.between(span.from - 4, span.from)
  const own = said.between(span.from, span.to)
  // Eyes and throats burn without a fire.
  if (said.near('smarting', span, 0, 0) || said.near('eye', span, 2, 3)) return false
  if (ON_PURPOSE.test(before) && !NEVER_ON_PURPOSE.test(before)) return false
  if (JUST_BURNING.test(own) && (SWEET_OR_VAGUE.test(before) || own === 'its burning')) return isAlarmed(said)
  return MAYBE.test(own) ? !isOnlyAsked(said, span) : !SUPPOSED.test(before)
}

const burningNow = (said: SaidOfHarm): readonly WordSpan[] => said.spans('aflame').filter((span) => isNow(said, span))

/** Between somebody and the flames. */
const AUXILIARY = /^(?:(?:is|are|am|was|has|have|just|all|now|s|been|ha|e|sta) ?){0,3}$/

/** A person in flames. */
function isPerson(said: SaidOfHarm, span: WordSpan): boolean {
  const nearest = said.mentions().findLast(({ to }) => to <= span.from)
  if (nearest === undefined || !PEOPLE.includes(nearest.kind)) return false
  if (!AUXILIARY.test(said.between(nearest.to, span.from)) || said.near('burnable', span, 3, 0)) return false
  const isIdiom = nearest.kind === 'self' && /today|this week|brucia|burning/.test(said.text)
  return !isIdiom && !/smoke|spreading|^set/.test(said.between(span.from, span.to))
}

export const isClothesOnFire = (said: SaidOfHarm): boolean =>
  burningNow(said).some((span) => said.near('worn', span, 5, 4) || isPerson(said, span))

/** Said of nothing that does not burn. */
const ABLAZE = /into flames|in flames|ablaze|caught fire|fiamme|preso fuoco|incendi/

/** `Fire!`, and no more. */
const CRY = /^ (?:(?:fire|(?:(?:al|a|va a) )?fuoco|incendio|help|aiuto|please|quick) (?:[.,] )?)+$/

export const isSpiritFire = (said: SaidOfHarm): boolean =>
  (CRY.test(said.text) && /fire|fuoco|incendio/.test(said.text)) ||
  said.spans('extinguish').length > 0 ||
  said.spans('blaze').some((span) => !isOnlyAsked(said, span)) ||
  burningNow(said).some((span) => said.near('burnable', span, 5, 4) || ABLAZE.test(said.between(span.from, span.to)))
