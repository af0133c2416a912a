import type { SymptomId } from '../../../core/trouble/symptoms.ts'
import type { Sentence } from '../bits/bit.ts'
import { DEEDS } from '../lexicon/lexicon.ts'
import { withoutMarks } from '../lexicon/plain-text.ts'

/** What an accident is answered by: an entry of the handbook, or what went wrong. */
export type Accident = { readonly entry: string } | { readonly symptom: SymptomId }

const SPILT =
  /\b(?:spilt|spilled|spills?|slopped|(?:knocked|tipped|kicked|fell|falls|toppled|went|got knocked) (?:\p{L}+ ){0,4}over|(?:lost|tipped|poured|went|gone) (?:[\p{L}\d.]+ ){0,6}(?:down the (?:sink|drain|plughole)|on the (?:floor|carpet|table|worktop|counter))|rovesciat\p{L}*|versat\p{L}* (?:\p{L}+ ){0,4}(?:per terra|sul tavolo|sul pavimento)|caduto (?:\p{L}+ ){0,3}per terra)\b/u

const DROPPED =
  /\b(?:dropped (?:the |my |a |that )?(?:\p{L}+ ){0,2}(?:jar|bottle|kilner)|(?:jar|bottle) (?:fell|hit the floor|slipped)|(?:mi e |e )?cadut[oa] (?:il |la |un |una )?(?:vaso|barattolo|bottiglia)|(?:vaso|barattolo|bottiglia) (?:mi )?e cadut[oa])\b/u

const LID_OFF =
  /\b(?:left|forgot|been|was|had) (?:\p{L}+ ){0,3}(?:lid|top|cap|cork) (?:off|open)|\b(?:lid|top|cap|cork) (?:was |has been |had been |been )?(?:left )?off\b|\b(?:left|lasciat[oa]) (?:\p{L}+ ){0,3}(?:open|uncovered|apert[oa]|senza (?:il )?(?:coperchio|tappo))\b/u

/** Whether something in there pushed is asked. */
const LID_CAME_OFF = /\b(?:lid|top|cap|cork|stopper)s? (?:has |s |have )?(?:come|came|popped|blown) off\b/u

const LEAKED = /\b(?:leaked|leaks|leaking|ha perso|perde)\b/u

/** Of something else than a jar that stands there. */
const ELSEWHERE = /\b(?:beans|secret|tea|coffee cup|news)\b/u

/**
 * A jar that was knocked over, dropped or left open, where no step is told with it: `strained it but spilt some, 850 ml` is a step. Null
 * where none is told.
 */
export function accidentTold(sentence: Sentence): Accident | null {
  const text = withoutMarks(sentence.typed.text).replace(/[^\p{L}\d.]+/gu, ' ')
  if (sentence.has(...DEEDS) || ELSEWHERE.test(text)) return null
  if (DROPPED.test(text)) return { symptom: 'broken_glass' }
  if (SPILT.test(text)) return { entry: 'spills' }
  if (LID_OFF.test(text)) return { entry: 'evaporation' }
  if (LID_CAME_OFF.test(text)) return { symptom: 'pressure' }
  const isOfJar = sentence.has('own_jar', 'glassware') || /\b(?:it|one)\b/.test(text)
  return LEAKED.test(text) && isOfJar ? { symptom: 'leaking_lid' } : null
}
