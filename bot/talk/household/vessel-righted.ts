import type { VesselTaken } from '../frames/reading.ts'
import type { Remembered } from '../memory/remembered.ts'
import { vesselsIn, written } from './vessel-said.ts'

/** Said before what was meant: `I mean`, `no, just`, `sorry, it was`. */
const LEAD =
  /^(?:(?:sorry|oops|whoops|no|nope|nah|wait|hang on|hold on|actually|erm?|um|ah|oh|well|rather|or rather|correction|my mistake|i mean|i meant|i should (?:say|have said)|that should (?:be|have been)|make (?:it|that)|it(?:['’]s| is| was)|that(?:['’]s| is| was)|only|just|more like|more|like|not quite|anzi|scusa|no|volevo dire|intendevo|cioè|cioe|era|è|solo|soltanto|piuttosto)\b[\s,.;:–—-]*)+$/iu
/** That alone puts something right; `only` and `it was` do not. */
const RIGHTS =
  /\b(?:sorry|oops|whoops|no|nope|nah|wait|actually|rather|correction|mistake|mean|meant|should|make (?:it|that)|more like|anzi|scusa|volevo dire|intendevo|cio[eè])\b/iu
/** Behind it: what it was of, and what it was not. */
const BEHIND =
  /^(?:\s*(?:of|di)\s+(?:it|sugar|syrup|honey|zucchero))?(?:[\s,;–—-]*(?:not|and not|instead of|rather than|non|e non|invece di)\b.*)?[\s.!]*$/iu

/** Steps that an amount by a vessel puts right. */
const OF_AMOUNTS = /^jar (?:strain|sweeten)$/

/**
 * `I mean half a mug`, `no, just under one wine bottle`, right behind a straining or a sweetening: the same in ml, with what the vessel
 * was taken to hold; null for everything else.
 */
export function vesselRighted(
  text: string,
  said: Pick<Remembered, 'step' | 'call' | 'question'> | undefined,
  isUs: boolean,
): { readonly text: string; readonly taken: readonly VesselTaken[] } | null {
  if (said?.step == null || said.question !== null || !OF_AMOUNTS.test(said.step.command)) return null
  const [vessel] = vesselsIn(text, isUs)
  if (vessel === undefined) return null
  const [lead, behind] = [text.slice(0, vessel.from), text.slice(vessel.to)]
  if (!LEAD.test(lead) || !RIGHTS.test(lead) || !BEHIND.test(behind)) return null
  return { text: `I meant ${written(vessel.ml)}`, taken: [vessel.one] }
}
