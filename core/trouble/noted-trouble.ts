import type { JarState } from '../jar/state/jar-state.ts'
import type { IsoDay } from '../quantity/time/calendar-day.ts'
import { symptomsIn } from './find-symptom.ts'
import { HELD_FOR } from './held-for.ts'
import { smellsOfSolvent } from './signs-in-words.ts'
import type { SymptomId } from './symptoms.ts'
import { wasNothing } from './was-nothing.ts'

/** A word that is denied, or of what has stopped: `no sign of mould`, `not fizzing any more`. */
const DENIED =
  /(?<!\p{L})(?:no|not|never|\p{L}+n['’]t|(?:is|was|does|did|do)nt|without|stopped|non|senza|smesso(?: di)?)\s+(?:(?:longer|more|any|a|the|signs? of|più|piu|di)\s+)*(?:(?:smells?|smelling|odou?r|whiff|odore)\s+(?:of|like|di)\s+\p{L}+(?:\s+\p{L}+)?|\p{L}+)/giu

/** It is over: `the fizz is gone`, not `gone mouldy`; `all fine now`, not `fine white mould`. */
const OVER =
  /(?<!\p{L})(?:false alarm|was only|tutto bene|(?:gone|over|settled|cleared(?: up)?|fine|ok|okay|passat[oa]|a posto)(?=\s*(?:$|[,.;!)]|(?:down|now|again|since|today|ora|adesso)(?!\p{L}))))/iu

/** From so many points on it pleased. */
const PLEASED_RATING = 3

/** The worst that a text tells of; null where it is nothing that holds a jar up. */
function heldIn(text: string): SymptomId | null {
  const found = symptomsIn(text)
  return HELD_FOR.find((each) => found.includes(each)) ?? null
}

export interface NotedTrouble {
  readonly note: string
  readonly symptom: SymptomId
  readonly day: IsoDay
}

/** Whether it says that what was told of is over, or names it only to deny it. */
export const saysOver = (note: string): boolean =>
  OVER.test(note) || (heldIn(note.replace(DENIED, ' ')) === null && heldIn(note) !== null)

/** What a text tells of that may hold a jar up, what it denies left out; empty where it says that it is over. */
export function symptomsNoted(text: string): readonly SymptomId[] {
  if (OVER.test(text) || wasNothing(text)) return []
  const told = text.replace(DENIED, ' ')
  const held = symptomsIn(told).filter((each) => HELD_FOR.includes(each))
  return held.includes('solvent') || !smellsOfSolvent(told) ? held : [...held, 'solvent']
}

/**
 * What a jar's maker wrote down of it last that has to be cleared up before it is bottled; null where nothing was, where a later
 * note says that it is over, or where it was tasted and pleased since.
 */
export function notedTrouble({ happened }: JarState): NotedTrouble | null {
  for (const entry of happened.toReversed()) {
    if (entry.kind !== 'noted' && entry.kind !== 'tasted') continue
    if (entry.kind === 'noted' && entry.settled !== undefined) return null
    const { note } = entry
    const symptom = note === null ? null : heldIn(note.replace(DENIED, ' '))
    const isOver = note !== null && saysOver(note)
    if (symptom !== null && note !== null && !isOver) return { note, symptom, day: entry.day }
    const isPleasing = entry.kind === 'tasted' && entry.rating !== null && entry.rating >= PLEASED_RATING
    if (isOver || isPleasing) return null
  }
  return null
}
